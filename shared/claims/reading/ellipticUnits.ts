import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

const withUnits = new Set([
  'luminance',
  'ratio',
  'percent',
  'temperature',
  'time',
  'power',
  'noise',
  'de',
  'mass',
]);

/** "Heavier by nearly two": led by "by" behind a word that compares, with no noun behind it. */
function isDifference(items: readonly Item[], item: Item): boolean {
  const at = items.indexOf(item);
  const lead = keyOf(items[at - 1], 'hedge') === undefined ? at - 1 : at - 2;
  return (
    isWord(items[lead], 'by') &&
    keyOf(items[lead - 1], 'comparative') !== undefined &&
    (items[at + 1]?.type ?? 'mark') === 'mark'
  );
}

/** "the Plain manages 412 nits, the Hearth 742": a bare number takes the unit of the one before. */
export function settleEllipsis(scene: Scene): void {
  const { previous } = scene;
  if (
    !previous ||
    scene.items.some(
      (item) => keyOf(item, 'concept') || ['average', 'max', 'min'].includes(keyOf(item, 'stat') ?? ''),
    )
  )
    return;
  const model = previous.items
    .filter(
      (item) =>
        item.number &&
        withUnits.has(item.number.dimension) &&
        (item.number.role === undefined || item.number.role === 'value'),
    )
    .at(-1);
  if (!model) return;
  const cued =
    scene.units.length > 0 ||
    scene.items.some(
      (item) =>
        keyOf(item, 'stage') ||
        keyOf(item, 'signal') ||
        keyOf(item, 'mode') ||
        keyOf(item, 'diagram') ||
        keyOf(item, 'gamut') ||
        keyOf(item, 'fullScreen') ||
        item.number?.role === 'window' ||
        isWord(
          item,
          'measured',
          'clocked',
          'timed',
          'recorded',
          'found',
          'saw',
          'got',
          'metre',
          'ours',
          'there',
          'here',
        ),
    );
  if (!cued) return;
  for (const item of scene.items) {
    const number = item.number;
    if (!number || number.role || number.dimension !== '' || number.outOf !== undefined) continue;
    // "… and the Veltrane heavier by nearly two": counted in what the number before is.
    if (number.spelled && !isDifference(scene.items, item)) continue;
    number.dimension = model.number!.dimension;
    number.unit = model.number!.unit;
    number.factor = model.number!.factor;
  }
}
