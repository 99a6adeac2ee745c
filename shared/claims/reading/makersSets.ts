import type { ReadingContext } from '../../contract/articleText.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { narrowed } from './unitMentions.ts';

/**
 * "The Kasulind" is the maker's set, as good as by its model's name, where the library has only one of that maker; "the
 * Kasulind claims" and "the Kasulind box" stay the maker's.
 */
export function nameMakersSets(items: readonly Item[], context: ReadingContext): undefined {
  for (const [at, item] of items.entries()) {
    const maker = keyOf(item, 'maker');
    const next = items[at + 1];
    if (maker === undefined || keyOf(item, 'unit') !== undefined || !isWord(items[at - 1], 'the')) continue;
    const isMakers =
      keyOf(next, 'saying') !== undefined ||
      isWord(next, 'itself', 'claim', 'figure', 'number', 'promise', 'brochure', 'box', 'camp', 'people') ||
      (isWord(next, "'s", "'") && keyOf(items[at + 2], 'saying') !== undefined);
    const id = narrowed(maker, context);
    if (!isMakers && !id.includes('|')) item.meanings = [{ kind: 'unit', key: id }, ...item.meanings];
  }
}
