import { openLibrary } from '../../library/openLibrary.ts';
import { type Command, report, requiredNewFile } from './command.ts';

export const restoreCommand: Command = {
  name: 'restore',
  usage: 'restore FILE --to LIBRARY',
  summary: 'Brings a backup back as a library; an existing library is never overwritten.',
  optionHelp: { '--to LIBRARY': 'a library file that does not exist yet' },
  options: { to: { type: 'string' } },
  positionals: 1,
  async run(input, terminal) {
    const inTheWay = {
      sentence: 'There is a library already.',
      mend: 'Name a new file, or move the old one away first.',
    };
    const to = requiredNewFile(input, 'to', inTheWay, terminal);
    if (to === undefined) return 2;
    const opened = await openLibrary(input.positionals[0]!, { create: false, readOnly: true });
    if (!opened.ok) return report(opened.faults, terminal);
    const { findings } = await opened.value.verify();
    if (findings.length > 0) {
      await opened.value.close();
      for (const finding of findings) terminal.error(`${input.positionals[0]}: ${finding}\n`);
      return 1;
    }
    const copied = await opened.value.backup(to);
    await opened.value.close();
    if (!copied.ok) return report(copied.faults, terminal);
    terminal.out(`Restored ${to}.\n`);
    return 0;
  },
};
