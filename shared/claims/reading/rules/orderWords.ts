import { type Item, isWord, keyOf } from '../items.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';

export function negated(scene: Scene, item: Item): { negated?: true } {
  return scene.items.some(
    (other) =>
      other.index < item.index &&
      !isWord(other, 'barely', 'scarcely', 'hardly') &&
      (keyOf(other, 'negation') !== undefined ||
        keyOf(other, 'stat') === 'never' ||
        // "no brighter than the Veltrane"
        (isWord(other, 'no') && scene.items.indexOf(item) - scene.items.indexOf(other) === 1)),
  )
    ? { negated: true }
    : {};
}

export function concepts(scene: Scene): Item[] {
  return scene.items.filter((item) => keyOf(item, 'concept'));
}

/** "better": the side that is better for the quantity. */
export function betterDirection(
  entry: ComparativeEntry,
  key: string,
  quantity: Quantity,
): 'higher' | 'lower' | undefined {
  if (entry.concept !== '') return entry.direction;
  if (['better', 'best'].includes(key)) return quantity.better === 'target' ? undefined : quantity.better;
  if (['worse', 'worst'].includes(key))
    return quantity.better === 'target' ? undefined : quantity.better === 'higher' ? 'lower' : 'higher';
  return entry.direction;
}
