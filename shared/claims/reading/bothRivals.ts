import { type Item, isWord } from './items.ts';

/** "It is ahead of both of them", "brighter than both": the two sets that the review compares with. */
export function nameBoth(items: readonly Item[]): undefined {
  for (const item of items) {
    if (!isWord(item, 'both')) continue;
    const before = items[item.index - 1];
    const [of, them, next] = items.slice(item.index + 1, item.index + 4);
    const ofThem =
      isWord(of, 'of') && isWord(them, 'them', 'these', 'those') && (next?.type ?? 'mark') === 'mark';
    // "The tint hides behind both": of a place.
    const stands =
      !isWord(before, 'behind') ||
      isWord(items[item.index - 2], ',', 'and', 'but', 'is', "'s", 'was', 'comes', 'finishes', 'stays');
    // "Faster than both is the Vane"
    const isIn = isWord(of, 'in', 'on', 'for', 'is', 'are');
    const compared = isWord(before, 'than', 'ahead of', 'behind', 'above', 'below');
    if (!compared || !stands || !(ofThem || isIn || (of?.type ?? 'mark') === 'mark')) continue;
    item.meanings = [{ kind: 'pronoun', key: 'rival' }];
    if (ofThem) them!.meanings = [];
  }
}
