import { openLibrary } from '../../library/openLibrary.ts';
import { type Command, report, requiredNewFile } from './command.ts';

export const backupCommand: Command = {
  name: 'backup',
  usage: 'backup LIBRARY --to FILE',
  summary: 'Makes a safe, verified copy of a library, also while it is open elsewhere.',
  optionHelp: { '--to FILE': 'a file that does not exist yet' },
  options: { to: { type: 'string' } },
  positionals: 1,
  async run(input, terminal) {
    const inTheWay = { sentence: 'There is a file already.', mend: 'Name a new one.' };
    const to = requiredNewFile(input, 'to', inTheWay, terminal);
    if (to === undefined) return 2;
    const opened = await openLibrary(input.positionals[0]!, { create: false, readOnly: true });
    if (!opened.ok) return report(opened.faults, terminal);
    const copied = await opened.value.backup(to);
    await opened.value.close();
    if (!copied.ok) return report(copied.faults, terminal);
    terminal.out(`Copied to ${to} (${copied.value.bytes} bytes), verified.\n`);
    return 0;
  },
};
