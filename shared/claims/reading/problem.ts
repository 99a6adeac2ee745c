import type { Item } from './items.ts';

/** Why words that look like a claim make no check, and which words say so. */
export interface Problem {
  why: string;
  words: readonly (Item | undefined)[];
}
