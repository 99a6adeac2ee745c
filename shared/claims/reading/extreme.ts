import { type Item, isWord } from './items.ts';

const least = ['lowest', 'smallest', 'least', 'shortest', 'narrowest'];
const most = ['highest', 'largest', 'greatest', 'biggest', 'longest'];

/** "The lowest lag", "the shortest of the three": the low end, whatever is measured. */
export function isLeast(item: Item | undefined): boolean {
  return isWord(item, ...least);
}

/** "Lowest", "longest", "best": the first or the last in something that other words name. */
export function isExtreme(item: Item | undefined): boolean {
  return isLeast(item) || isWord(item, ...most, 'best', 'worst');
}
