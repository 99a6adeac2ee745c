import type { Command } from './command.ts';

export const spokenCommand: Command = {
  name: 'spoken',
  usage: 'spoken LIBRARY --article A --cues FILE.vtt|.srt [--json]',
  summary: 'Checks a recorded take against the evidence. (Not in this version.)',
  optionHelp: {},
  options: { article: { type: 'string' }, cues: { type: 'string' }, json: { type: 'boolean' } },
  positionals: 1,
  async run(_input, terminal) {
    terminal.error('This version of Nitproof has no spoken command yet; nothing was changed.\n');
    return 2;
  },
};
