import { carriedConcept } from '../carry.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
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
  if (at < 0) return;
  const verb = scene.items.findIndex(
    (item, index) => index > at && isWord(item, 'is', 'was', 'sits', 'lies', 'lay', "'s"),
  );
  const place = scene.items
    .slice(verb + 1)
    .filter((item) =>
      isWord(item, 'top', 'bottom', 'upper', 'lower', 'left', 'right', 'centre', 'corner', 'edge'),
    );
  // "The worst part" may be of anything but where the field was spoken of.
  const uneven =
    (scene.concept ?? carriedConcept(scene.carry)) === 'uniformity' || levelOf(scene) !== undefined;
  if (verb < 0 || place.length === 0 || (isWord(scene.items[at], 'worst') && !uneven)) return;
  const words: Item[] = scene.items.slice(at, at + 2).concat(place);
  const quantity = quantityById(`uniformity.${levelOf(scene) ?? scene.conditions.level ?? 'white'}.cell`);
  const rest = { ...scene, items: scene.items.slice(verb + 1) };
  const cell = cellSelector(rest);
  if (cell.stat !== 'at')
    return refuse(findings, scene, 'worstCell', 'the words do not say which corner or edge is meant', words);
  const extreme = scene.items[at]!.text === 'brightest' ? 'max' : 'min';
  // No other place is darker: nothing lies between this one and the extreme.
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
    [...words, scene.items[verb], ...scene.items.filter((item) => keyOf(item, 'level'))],
  );
}

/** "The dimmest spot on white" */
function levelOf(scene: Scene): string | undefined {
  const said = scene.items.find((item) => keyOf(item, 'level') ?? isWord(item, 'white', 'grey', 'black'));
  return keyOf(said, 'level') ?? (said && { white: 'white', grey: 'grey50', black: 'black' }[said.text]);
}
