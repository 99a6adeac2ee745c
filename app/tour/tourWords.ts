import type { TourStep } from './tourState.ts';

/** One step in words. Words between backquotes are the keys of the command of that id. */
interface StepWords {
  /** What to do next, one sentence */
  ask: string;
  /** How, with the keys */
  how: string;
  /** Said beside the tick */
  did: string;
}

export const stepWords: Readonly<Record<TourStep, StepWords>> = {
  open: {
    ask: 'Open “{title}”: mistakes are planted in it.',
    how: 'Press `palette.open`, type “{start}” and Enter.',
    did: 'Article opened',
  },
  problem: {
    ask: 'Go to its first problem.',
    how: '`draft.next-problem` goes to the next one, `draft.previous-problem` to the one before.',
    did: 'Problem found',
  },
  proof: {
    ask: 'Read its proof.',
    how: '`draft.to-proof` goes from the sentence to its proof, Escape back to the words.',
    did: 'Proof read',
  },
  settle: {
    ask: 'Settle it.',
    how: 'Escape goes back to the words: type what was found in their place, or press `draft.accept` to accept the verdict as it stands.',
    did: 'Sentence settled',
  },
  readings: {
    ask: 'See the readings behind a sentence.',
    how: '`draft.next-problem` to one with levels, `draft.to-proof` to its proof, Tab to Readings, Enter.',
    did: 'Readings seen',
  },
  desk: {
    ask: 'Look at the article as its editor does.',
    how: '`room.desk` is the Desk: every claim, the worst first.',
    did: 'Desk seen',
  },
  write: {
    ask: 'Begin an article of your own.',
    how: '`article.new` asks for a title and a set; `draft.phrase` puts in a sentence with its number.',
    did: 'Article begun',
  },
};

/** Steps that can only be taken in the Draft, and what is said of them elsewhere. */
export const inDraft: ReadonlySet<TourStep> = new Set(['problem', 'proof', 'settle']);
export const backToDraft = '`room.draft` goes back to the Draft.';

/** Keys of commands that only a room registers, for when it is not on show. */
export const keysElsewhere: Readonly<Record<string, string>> = {
  'draft.next-problem': 'F8',
  'draft.previous-problem': 'Shift+F8',
  'draft.to-proof': 'F7',
  'draft.accept': 'Mod+Enter',
  'draft.phrase': 'Alt+H',
};

/** Said when every step was taken. */
export const finishedWords = {
  ask: 'That is the whole way of a sentence.',
  how: '`palette.open` finds every command, `help.open` lists the keys.',
};

/** A piece of a step's words: plain, or the keys of a command. */
export type Piece = { text: string } | { command: string };

/** Cuts `how` at its backquotes. */
export function piecesOf(words: string): Piece[] {
  return words
    .split('`')
    .map((part, index): Piece => (index % 2 === 1 ? { command: part } : { text: part }))
    .filter((piece) => !('text' in piece) || piece.text !== '');
}

/** Puts the article's title in, and the first word that finds it. */
export function withTitle(words: string, title: string): string {
  const start = /[\p{L}\p{N}]+/u.exec(title)?.[0].toLowerCase() ?? title;
  return words.replace('{title}', title).replace('{start}', start);
}
