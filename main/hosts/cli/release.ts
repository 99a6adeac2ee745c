import type { Command } from './command.ts';

export const releaseCommand: Command = {
  name: 'release',
  usage: 'release LIBRARY --article A --to FOLDER',
  summary: 'Publishes a signed-off article with its evidence. (Not in this version.)',
  optionHelp: {},
  options: { article: { type: 'string' }, to: { type: 'string' } },
  positionals: 1,
  async run(_input, terminal) {
    terminal.error('This version of Nitproof has no release command yet; nothing was changed.\n');
    return 2;
  },
};
