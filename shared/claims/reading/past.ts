import { type Item, isWord } from './items.ts';

/** The condition that such words name, and that no run answers to. */
export const earlierTime = 'at the earlier time that the words name';

/** "The worst level used to be off by 8.1", "with the old firmware it averaged 3.8": not what the set does now. */
export function speaksOfThePast(items: readonly Item[]): boolean {
  return items.some((item, at) => {
    const next = items[at + 1];
    if (isWord(item, 'used'))
      return (
        isWord(next, 'to') &&
        isWord(items[at + 2], 'be', 'have', 'reach', 'cost', 'average', 'peak', 'measure', 'show', 'draw')
      );
    if (isWord(item, 'old', 'earlier', 'previous', 'first', 'original'))
      return isWord(next, 'firmware') && isWord(items[at - 1], 'the', 'its', 'an', 'our');
    if (isWord(item, 'formerly', 'previously')) return true;
    return (
      isWord(item, 'before') &&
      isWord(next, 'the') &&
      isWord(items[at + 2], 'update', 'firmware', 'patch', 'fix')
    );
  });
}
