import { type Item, isWord } from './items.ts';
import type { Scene } from './scene.ts';

/** "The error crosses 3 between 60 and 70 %": somewhere in the stretch, so that nothing is said of all its levels. */
export function crossesBetween({ items, axes }: Scene): Item[] | undefined {
  const stretch = axes.find(
    (axis) => axis.from !== undefined && axis.to !== undefined && isWord(axis.items[0], 'between'),
  );
  const verb = items.find((item) =>
    isWord(item, ...['crosses', 'cross', 'crossed', 'passes', 'passed', 'becomes', 'become', 'became']),
  );
  return stretch && verb ? [verb, ...stretch.items] : undefined;
}
