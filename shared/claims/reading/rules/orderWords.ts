import { type Item, isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';

export function negated(scene: Scene, item: Item): { negated?: true } {
  return scene.items.some(
    (other) =>
      other.index < item.index &&
      !isWord(other, 'barely', 'scarcely', 'hardly') &&
      (keyOf(other, 'negation') !== undefined || keyOf(other, 'stat') === 'never'),
  )
    ? { negated: true }
    : {};
}

export function concepts(scene: Scene): Item[] {
  return scene.items.filter((item) => keyOf(item, 'concept'));
}
