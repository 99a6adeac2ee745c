import { exportDossier } from '../../dossier/exportDossier.ts';
import { openLibrary } from '../../library/openLibrary.ts';
import { type Command, report, required } from './command.ts';

export const exportCommand: Command = {
  name: 'export',
  usage: 'export LIBRARY --to FOLDER',
  summary:
    'Writes the whole library as a dossier: a plain folder of text files that comes back without loss.',
  optionHelp: { '--to FOLDER': 'a new or empty folder, or a dossier to bring up to date' },
  options: { to: { type: 'string' } },
  positionals: 1,
  async run(input, terminal) {
    const to = required(input, 'to', terminal);
    if (to === undefined) return 2;
    const opened = await openLibrary(input.positionals[0]!, { create: false, readOnly: true });
    if (!opened.ok) return report(opened.faults, terminal);
    const written = await exportDossier(opened.value, to);
    await opened.value.close();
    if (!written.ok) return report(written.faults, terminal);
    for (const note of written.value.notes) terminal.error(`Note: ${note}\n`);
    terminal.out(`Wrote ${written.value.files} files to ${to}.\n`);
    return 0;
  },
};
