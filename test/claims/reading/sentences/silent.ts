import type { SentenceRow } from './row.ts';

/** Sentences that claim nothing. */
export const silent: readonly SentenceRow[] = [
  ['There is a hint of red in the logo.'],
  ['It is made for bright rooms.'],
  ['I carried it up two flights of stairs.'],
  ['The intern says the Veltrane will reach 900 nits.'],
  ['More than one of us fell asleep.'],
  ['The picture editor came with a cold.'],
  ['Skin looks alive, and the tint hides behind both.'],
  ['The stand leads the cable through a hole.'],
];
