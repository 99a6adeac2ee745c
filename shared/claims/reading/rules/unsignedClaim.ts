import { type Item, isWord } from '../items.ts';

/** "The claim of 1,000 nits", "a promise of 12 ms" */
export function isClaimOf(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at], 'claim', 'promise', 'pledge', 'boast') &&
    isWord(items[at + 1], 'of') &&
    (items[at + 2]?.number ?? items[at + 3]?.number) !== undefined
  );
}

/** "1,000 nits were claimed", "of the 1,000 nits claimed": said by the maker, whom nobody names. */
export function isPassive(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (!isWord(item, 'claimed', 'promised', 'quoted', 'advertised', 'pledged')) return false;
  const before = items[at - 1];
  const next = items[at + 1];
  const ends =
    next === undefined ||
    next.type === 'mark' ||
    isWord(next, 'and', 'but', 'for', 'by') ||
    next.index > item!.index + 1;
  const isSaid =
    isWord(before, 'is', 'are', 'was', 'were') &&
    items.slice(Math.max(0, at - 5), at - 1).some(({ number }) => number);
  return ends && (isSaid || before?.number !== undefined);
}
