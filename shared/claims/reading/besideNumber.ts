import { type Item, isWord, keyOf } from './items.ts';
import { firstWith, hasKey, type Scene } from './scene.ts';
import { statOf } from './selector.ts';

/** "Gamma is 2.3 at 50 %", "above 2.2 throughout": of levels, not of their average. */
export function isOfEachLevel(scene: Scene): boolean {
  return (
    scene.axes.some(({ at }) => at !== undefined) || ['all', 'none', 'never'].includes(statOf(scene) ?? '')
  );
}

/** "…, at 402", "on our bench it is 498": a number with no noun behind it that it could count. */
export function countsNothing(scene: Scene, number: Item): boolean {
  const before = leadOf(scene, number);
  const next = scene.sentence[number.index + 1];
  const led =
    isWord(before, 'at', 'is', 'measured', 'to') ||
    (isWord(before, ':') && scene.conditions.window !== undefined);
  const counts = next !== undefined && next.type !== 'mark' && !isWord(next, 'in', 'at', 'over', 'with');
  return led && !counts;
}

/** The word before a number, its hedges and limits: "a sustained 1,020 cd/m²". */
export function leadOf(scene: Scene, number: Item): Item | undefined {
  let at = number.index - 1;
  while (keyOf(scene.sentence[at], 'hedge') ?? keyOf(scene.sentence[at], 'comparator')) at -= 1;
  return scene.sentence[at];
}

/** "No step is visible": a house word said of the levels. */
export function seesSteps(scene: Scene): boolean {
  return (
    scene.items.some(
      (item) => isWord(item, 'level', 'levels', 'step', 'steps') && item.meanings.length === 0,
    ) && firstWith(scene, 'house') !== undefined
  );
}

/** "At full saturation red reaches 5.7": beside a percentage a bare number of a hue is its error. */
export function isAtFullSaturation(scene: Scene): boolean {
  return scene.axes.some(({ tone, at }) => tone && at === 100) && hasKey(scene, 'concept', 'saturation');
}

/** "out by 5.7", "wrong by some 5.7", "misses by 5.7" */
export function isOutBy({ items }: Scene, number: Item): boolean {
  let at = items.indexOf(number) - 1;
  while (keyOf(items[at], 'hedge') !== undefined || keyOf(items[at], 'comparator') !== undefined) at -= 1;
  return (
    isWord(items[at], 'by') &&
    isWord(
      items[at - 1],
      ...[
        'out',
        'off',
        'wrong',
        'misses',
        'missing',
        'missed',
        'shifted',
        'shift',
        'drifted',
        'drift',
        'strayed',
      ],
    )
  );
}
