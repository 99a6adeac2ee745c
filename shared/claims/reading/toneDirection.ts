import { type Item, isWord, keyOf } from './items.ts';
import { firstWith, type Scene } from './scene.ts';

/** The word for too much or too little light in the clause, or before it where the clause is no more than "by 16 %". */
export function directionOfTone(scene: Scene): Item | undefined {
  const own = firstWith(scene, 'direction', 'over', 'under') ?? followsCurve(scene);
  const before =
    scene.previous && isDistance(scene) ? firstWith(scene.previous, 'direction', 'over', 'under') : undefined;
  const item = own ?? before;
  if (!item) return undefined;
  // "At 10 % it is 16 % under its target": a level of the greyscale has no other target in percent.
  const ofLevel =
    /target/.test(item.text) &&
    scene.hue === undefined &&
    scene.axes.some(({ kind, at, tone }) => kind === 'stimulus' && at !== undefined && !tone);
  return ofLevel || /bright|dark|dim|light|pq|1886|curve|eotf/.test(item.text) ? item : undefined;
}

/** "It follows PQ to within 10 %" */
function followsCurve(scene: Scene): Item | undefined {
  const item = firstWith(scene, 'direction', 'on-target');
  return scene.items.some((entry) => isWord(entry, 'within', 'to within')) ? item : undefined;
}

/** "…, by 16 %" */
export function isDistance({ items }: Scene): boolean {
  return (
    isWord(items[0], 'by') &&
    items.every(
      (item) =>
        item.number ??
        (item.meanings.length === 0 || keyOf(item, 'hedge') !== undefined || item.index === items[0]!.index),
    )
  );
}

/** "After adjustment it is 10.5 % below": how far from a target that was named before, at the place named there. */
export function isFromTarget({ items }: Scene): boolean {
  return (
    items.some((item) => keyOf(item, 'pronoun') === 'it') &&
    items.some(
      ({ number }, at) =>
        number?.dimension === 'percent' && isWord(items[at + 1], 'below', 'above', 'under', 'over', 'short'),
    ) &&
    !items.some((item) => keyOf(item, 'concept') ?? keyOf(item, 'hue'))
  );
}
