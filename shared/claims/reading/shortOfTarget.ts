import { type Item, isWord, keyOf } from './items.ts';

/** "Greens come up short of where they should be", "past where it ought to be": on that side of the target, and not on it. */
export function nameShortOfTarget(items: readonly Item[]): undefined {
  for (const [at, item] of items.entries()) {
    if (keyOf(item, 'direction') !== 'on-target' || !/(?:should|ought to) be$/.test(item.text)) continue;
    const before = items[at - 1];
    if (isWord(before, 'short of', 'below', 'under', 'shy of'))
      item.meanings = [{ kind: 'direction', key: 'under' }];
    else if (isWord(before, 'past', 'beyond', 'above', 'over'))
      item.meanings = [{ kind: 'direction', key: 'over' }];
  }
}
