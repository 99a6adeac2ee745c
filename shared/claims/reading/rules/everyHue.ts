import type { Bound } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
import { firstWith, nearestAxis, type Scene, valueNumbers } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { operatorOf } from './limitOperator.ts';

const primaries = ['red', 'green', 'blue'];
const secondaries = ['cyan', 'magenta', 'yellow'];

/** The hues that the words bind together, with their words: "none of the six hues", "the other five hues". */
function huesBound(scene: Scene): { hues: readonly string[] | undefined; items: Item[] } | undefined {
  for (const [at, item] of scene.items.entries()) {
    const group = plays(item, 'primaries') ? primaries : plays(item, 'secondaries') ? secondaries : undefined;
    const swept =
      isWord(item, 'colour', 'colours') && scene.items.some((word) => /sweeps?$|^saturation/.test(word.text));
    if (!group && !swept && !isWord(item, 'hue', 'hues')) continue;
    const items = [item];
    let others = false;
    let left = at - 1;
    for (; ; left -= 1) {
      const word = scene.items[left];
      const isCount = word?.number?.spelled && word.number.dimension === '';
      if (isWord(word, 'other', 'others', 'remaining', 'rest')) others = true;
      else if (!isCount && !isWord(word, 'of', 'the', 'its')) break;
      items.push(word!);
    }
    const stat = scene.items[left];
    if (!['none', 'all'].includes(keyOf(stat, 'stat') ?? '') && !isWord(stat, 'both')) return undefined;
    items.push(stat!);
    // How many they are is no claim of its own.
    for (const { number } of items) if (number) number.role = 'ignored';
    const all = group ?? [...primaries, ...secondaries];
    const before = scene.previous?.hue ?? scene.hue;
    if (others && before === undefined) return { hues: undefined, items };
    return { hues: others ? all.filter((hue) => hue !== before) : all, items };
  }
  return undefined;
}

/** "Cyan, magenta and yellow all sit within 5 % of target": the saturation of each, on both sides. */
function readWithinTarget(scene: Scene, findings: Findings): undefined {
  const hues = scene.items.filter((item) => keyOf(item, 'hue'));
  if (hues.length < 2 || scene.items.some((item) => keyOf(item, 'negation') !== undefined)) return;
  const item = valueNumbers(scene).find(
    ({ number }) => number!.dimension === 'percent' && ['<', '<='].includes(number!.comparator ?? ''),
  );
  const ofTarget = scene.items.filter(
    (word) => /target/.test(word.text) || keyOf(word, 'concept') === 'saturation',
  );
  if (!item || ofTarget.length === 0 || firstWith(scene, 'concept', 'luminance')) return;
  const x = item.number!.x;
  const bounds = hues.flatMap((hue): Bound[] => {
    const quantity = quantityById(`sweep.${keyOf(hue, 'hue')}.saturation`);
    const { stat, ...part } = selectorOf(scene, quantity, 'under');
    const bound = (op: Bound['op'], side: 'max' | 'min', limit: number): Bound => ({
      operand: operandOf(scene, quantity, { ...part, stat: ['max', 'min'].includes(stat) ? side : stat }),
      op,
      x: limit,
      unit: quantity.unit,
    });
    return [bound('<=', 'max', x), bound('>=', 'min', -x)];
  });
  propose(findings, scene, 'limit', { kind: 'bound', bounds }, [item, ...hues, ...ofTarget]);
}

/** "At full saturation none of the six hues goes past 3": one limit on the colour error of each. */
export function readEveryHue(scene: Scene, findings: Findings): undefined {
  readWithinTarget(scene, findings);
  const bound = huesBound(scene);
  if (!bound) return;
  // "The error at 45° stays under 3 in every hue": a sweep is measured in front.
  if (
    isOffAxis(scene) ||
    scene.items.some((item, at) => item.number?.dimension === 'angle' && isWord(scene.items[at - 1], 'at'))
  )
    return refuse(findings, scene, 'limit', 'the hues are not measured to the side', [
      ...valueNumbers(scene),
      ...bound.items,
    ]);
  for (const item of valueNumbers(scene)) {
    const limit = operatorOf(scene, item);
    if (!limit || !['', 'de'].includes(item.number!.dimension)) continue;
    const words = [item, ...limit.items, ...bound.items];
    if (!bound.hues || !limit.op.startsWith('<')) {
      refuse(findings, scene, 'limit', 'the words do not say which hues are meant', words);
      continue;
    }
    const axis =
      nearestAxis(scene, 'stimulus') ??
      (scene.previous ? nearestAxis(scene.previous, 'stimulus') : undefined);
    const bounds = bound.hues.map((hue): Bound => {
      const quantity = quantityById(`sweep.${hue}.de2000`);
      const operand = operandOf(
        scene,
        quantity,
        axis?.at === undefined ? { stat: 'max' } : { stat: 'at', at: axis.at },
      );
      return { operand, op: limit.op, x: item.number!.x };
    });
    propose(findings, scene, 'limit', { kind: 'bound', bounds }, [...words, ...(axis?.items ?? [])]);
  }
}
