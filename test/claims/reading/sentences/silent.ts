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
  ['The effect shows when the two stand together, which is not how anybody lives.'],
  ['The palette of the cinema is known as P3, and a set that cannot cover it paints with too few pots.'],
  ['The greys are off, and an honest installer will show you the figures before and after.'],
  ['A viewer who has never seen the film before will accept it as weather.'],
];
