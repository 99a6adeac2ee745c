import { existsSync } from 'node:fs';
import { openLibrary } from '../../library/openLibrary.ts';
import { type Command, report, required } from './command.ts';

export const backupCommand: Command = {
  name: 'backup',
  usage: 'backup LIBRARY --to FILE',
  summary: 'Makes a safe, verified copy of a library, also while it is open elsewhere.',
  optionHelp: { '--to FILE': 'a file that does not exist yet' },
  options: { to: { type: 'string' } },
  positionals: 1,
  async run(input, terminal) {
    const to = required(input, 'to', terminal);
    if (to === undefined) return 2;
    if (existsSync(to))
      return report(
        [
          {
            code: 'refused',
            sentence: 'There is a file already.',
            mend: 'Name a new one.',
            place: { file: to },
          },
        ],
        terminal,
      );
    const opened = await openLibrary(input.positionals[0]!, { create: false, readOnly: true });
    if (!opened.ok) return report(opened.faults, terminal);
    const copied = await opened.value.backup(to);
    await opened.value.close();
    if (!copied.ok) return report(copied.faults, terminal);
    terminal.out(`Copied to ${to} (${copied.value.bytes} bytes), verified.\n`);
    return 0;
  },
};
