import type { Selector } from '../../../contract/check.ts';
import { carriedConcept } from '../carry.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { cellSelector } from '../selector.ts';

/** "The darkest cell of the white field is the bottom right corner": the place of an extreme, no order among sets. */
export function readWorstCell(scene: Scene, findings: Findings): undefined {
  const at = scene.items.findIndex(
    (item, index) =>
      /^(?:darkest|dimmest|brightest|weakest|worst)$/.test(item.text) &&
      (plays(scene.items[index + 1], 'spots') ||
        (isWord(scene.items[index + 1], 'bit') && isWord(item, 'worst'))),
  );
  if (at < 0) return readAtItsWorst(scene, findings);
  const said = scene.items.findIndex(
    (item, index) => index > at && isWord(item, 'is', 'was', 'sits', 'lies', 'lay', "'s"),
  );
  // "…, with the darkest part in the lower left corner"
  const isWith =
    isWord(scene.items[at + 2], 'in', 'at', 'along', 'near', 'towards') &&
    scene.items.slice(Math.max(0, at - 2), at).some((item) => isWord(item, 'with'));
  const verb = said < 0 && isWith ? at + 2 : said;
  const behind = scene.items.slice(verb + 1).filter((item) => isWord(item, ...placeWords));
  // "The bottom left is the dimmest spot"
  const link = scene.items.findIndex((item, index) => index < at && isWord(item, 'is', 'was'));
  const leads = verb < 0 && link >= 0 && link >= at - 3;
  const ahead = leads ? scene.items.slice(0, link).filter((item) => isWord(item, ...placeWords)) : [];
  const place = leads ? ahead : behind;
  // "The worst part" may be of anything but where the field was spoken of.
  const uneven =
    (scene.concept ?? carriedConcept(scene.carry)) === 'uniformity' || levelOf(scene) !== undefined;
  // "The worst corner lies 12 % below the centre": how far, and not where.
  const isFar = scene.items.some(
    ({ number, index }) => number?.dimension === 'percent' && index > scene.items[at]!.index,
  );
  if (isFar || (verb < 0 && !leads) || place.length === 0 || (isWord(scene.items[at], 'worst') && !uneven))
    return;
  const words: Item[] = scene.items.slice(at, at + 2).concat(place);
  const quantity = quantityById(`uniformity.${levelOf(scene) ?? scene.conditions.level ?? 'white'}.cell`);
  const extreme = scene.items[at]!.text === 'brightest' ? 'max' : 'min';
  const there = leads ? ahead : scene.items.slice(verb + 1);
  const cell = anyCell(there, extreme) ?? cellSelector({ ...scene, items: there });
  if (cell.stat !== 'at' && cell.at === undefined)
    return refuse(findings, scene, 'worstCell', 'the words do not say which corner or edge is meant', words);
  const level = scene.items.filter((item) => keyOf(item, 'level'));
  proposeWorst(scene, findings, quantity, cell, extreme, [...words, scene.items[verb], ...level]);
}

/** "Its weakest cell lies in a corner": in any of them. */
function anyCell(items: readonly Item[], extreme: 'min' | 'max'): Selector | undefined {
  const sides = items.some((item) => isWord(item, 'top', 'bottom', 'upper', 'lower', 'left', 'right'));
  const place = items.find(
    (item, at) =>
      (isWord(item, 'corner', 'edge') && isWord(items[at - 1], 'a', 'an', 'one', 'the')) ||
      isWord(item, 'corners', 'edges'),
  );
  if (sides || !place) return undefined;
  return { stat: extreme, at: isWord(place, 'corner', 'corners') ? 'corner' : 'edge' };
}

/** "The set is at its dimmest in the bottom left corner", "a white field is dimmest in the top right" */
function readAtItsWorst(scene: Scene, findings: Findings): undefined {
  const at = scene.items.findIndex(
    (item, index) =>
      isWord(item, 'darkest', 'dimmest', 'brightest') &&
      ((isWord(scene.items[index - 1], 'its') && isWord(scene.items[index - 2], 'at')) ||
        isWord(scene.items[index - 1], 'is', 'was', 'looks', "'s")) &&
      isWord(scene.items[index + 1], 'in', 'at', 'near', 'along', 'towards', 'toward'),
  );
  if (at < 0) return;
  const behind = scene.items.slice(at + 1, at + 7);
  const place = behind.filter((item) => isWord(item, ...placeWords));
  const cell = cellSelector({ ...scene, items: behind });
  if (place.length === 0 || cell.stat !== 'at') return;
  const quantity = quantityById(`uniformity.${levelOf(scene) ?? scene.conditions.level ?? 'white'}.cell`);
  const extreme = isWord(scene.items[at], 'brightest') ? 'max' : 'min';
  proposeWorst(scene, findings, quantity, cell, extreme, [...scene.items.slice(at - 2, at + 1), ...place]);
}

const placeWords = [
  'top',
  'bottom',
  'upper',
  'lower',
  'left',
  'right',
  'centre',
  'corner',
  'corners',
  'edge',
  'edges',
];

/** "11 %, with the lower left corner as the culprit": the place of the worst that was just stated. */
export function readCulprit(scene: Scene, findings: Findings): undefined {
  const culprit = scene.items.find(
    (item, at) =>
      (!scene.used.has(item) || isWord(item, 'at worst', 'at its worst')) &&
      // "The darkest spot", which `readWorstCell` reads.
      (isWord(item, 'weak') || !plays(scene.items[at + 1], 'spots')) &&
      isCulprit(scene, item),
  );
  const said = [...(scene.said ?? []), ...(scene.previous?.said ?? [])].findLast(
    (check) => check.kind === 'value',
  );
  if (!culprit || said?.kind !== 'value' || said.operand.type !== 'quantity') return;
  const level = /^uniformity\.([^.]+)$/.exec(said.operand.id)?.[1];
  const near = scene.items.find(
    (item) => isWord(item, ...placeWords) && Math.abs(item.index - culprit.index) <= 6,
  );
  const place = near
    ? scene.items.filter((item) => isWord(item, ...placeWords) && item.index - near.index < 4)
    : [];
  if (level === undefined || place.length === 0) return;
  const cell = cellSelector({ ...scene, items: place });
  if (cell.stat !== 'at') return;
  proposeWorst(scene, findings, quantityById(`uniformity.${level}.cell`), cell, 'min', [...place, culprit]);
}

function isCulprit(scene: Scene, item: Item): boolean {
  return (
    isWord(
      item,
      'culprit',
      'offender',
      'weakest',
      'weak',
      'worst',
      'darkest',
      'dimmest',
      'at worst',
      'at its worst',
    ) || isWhere(scene, item)
  );
}

/** "…, which sits in the bottom right corner": the place of the worst spot that the clause before named. */
function isWhere({ items, previous }: Scene, item: Item): boolean {
  return (
    isWord(item, 'sits') &&
    isWord(items[0], 'which') &&
    (previous?.items.some((word) => /\b(?:worst|darkest|dimmest|weakest)$/.test(word.text)) ?? false)
  );
}

/** No other place is darker (or brighter): nothing lies between this one and the extreme. */
function proposeWorst(
  scene: Scene,
  findings: Findings,
  quantity: Quantity,
  cell: Selector,
  extreme: 'min' | 'max',
  words: readonly (Item | undefined)[],
): undefined {
  propose(
    findings,
    scene,
    'worstCell',
    {
      kind: 'difference',
      a: operandOf(scene, quantity, cell),
      b: operandOf(scene, quantity, { stat: extreme }),
      stated: { x: 0, low: 0, high: 0, unit: 'points' },
    },
    words,
  );
}

/** "The dimmest spot on white" */
function levelOf(scene: Scene): string | undefined {
  const said = scene.items.find((item) => keyOf(item, 'level') ?? isWord(item, 'white', 'grey', 'black'));
  return keyOf(said, 'level') ?? (said && { white: 'white', grey: 'grey50', black: 'black' }[said.text]);
}
