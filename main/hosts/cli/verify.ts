import { openLibrary } from '../../library/openLibrary.ts';
import { type Command, report } from './command.ts';

export const verifyCommand: Command = {
  name: 'verify',
  usage: 'verify LIBRARY',
  summary:
    'Checks the file, the history’s chain and every stored digest; refuses with status 1 when something differs.',
  optionHelp: {},
  options: {},
  positionals: 1,
  async run(input, terminal) {
    const opened = await openLibrary(input.positionals[0]!, { create: false, readOnly: true });
    if (!opened.ok) return report(opened.faults, terminal);
    const { findings, checked } = await opened.value.verify();
    await opened.value.close();
    for (const finding of findings) terminal.error(`${input.positionals[0]}: ${finding}\n`);
    if (findings.length > 0) return 1;
    terminal.out(
      `Sound: ${checked.runs} runs, ${checked.photos} photos, ${checked.articles} articles, ${checked.history} lines of history.\n`,
    );
    return 0;
  },
};
