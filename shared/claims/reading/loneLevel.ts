import { type Item, isWord } from './items.ts';
import { plays } from './parts.ts';

/** "One poor patch reaches 4.2": the level that stands out. */
export function isLoneLevel(items: readonly Item[]): boolean {
  return items.some((item, at) => {
    if (!(item.number?.spelled && item.number.x === 1) && !isWord(item, 'single')) return false;
    const noun = items.slice(at + 1, at + 4).findIndex((word) => plays(word, 'levels'));
    return noun >= 0 && items.slice(at + 1, at + 1 + noun).every((word) => plays(word, 'verdict'));
  });
}
