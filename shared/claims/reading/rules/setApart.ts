import type { Operand } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled, settled } from '../settled.ts';
import { tidy } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { factConditions } from './factCheck.ts';
import { makerKey } from './makersNumber.ts';
import { otherOperand } from './otherOperand.ts';

/** "Its lag is within 2 ms of the Umbra's": no farther from the other number than so much, on either side. */
export function readSetApart(scene: Scene, findings: Findings): undefined {
  for (const [at, item] of scene.items.entries()) {
    const far = item.number;
    if (!far || scene.used.has(item) || (far.role && far.role !== 'value' && far.role !== 'money')) continue;
    if (!isWord(scene.items[at - 1], 'within') || !isWord(scene.items[at + 1], 'of')) continue;
    if (far.dimension === '' || far.dimension === 'percent') continue;
    const mention = scene.units.find(
      ({ role, item: name }) =>
        role !== 'subject' && role !== 'maker' && name.index > item.index && name.index <= item.index + 4,
    );
    // "Within 1 ms of both rivals"
    const several = mention && scene.units.filter((other) => other.item === mention.item).length > 1;
    const saying = promiseAfter(scene, item);
    if (!mention && !saying) continue;
    scene.focus = item;
    const subject =
      far.role === 'money' ? settled('fact:price', 'price', []) : subjectOf(scene, far.dimension, item);
    const words = [scene.items[at - 1], item, mention?.item ?? saying];
    if (!isSettled(subject)) {
      refuse(findings, scene, 'setApart', subject.problem, words);
      continue;
    }
    if (several) {
      refuse(findings, scene, 'setApart', 'two sets at once are no check: say it of each', words);
      continue;
    }
    const { quantity } = subject;
    const against = mention
      ? otherOperand(scene, quantity)
      : { operand: promised(scene, quantity), items: [] };
    if (!against || 'problem' in against) {
      const why = against?.problem ?? 'the words do not say which set that is';
      refuse(findings, scene, 'setApart', why, words);
      continue;
    }
    const x = tidy(far.x * far.factor);
    propose(
      findings,
      scene,
      'setApart',
      {
        kind: 'difference',
        a: operandOf(scene, quantity, selectorOf(scene, quantity, 'value')),
        b: against.operand,
        stated: { x: 0, low: -x, high: x, ...(far.unit && { unit: far.unit }), exact: true },
      },
      [...words, ...subject.items, ...against.items],
    );
    for (const word of scene.items) if (keyOf(word, 'saying')) scene.used.add(word);
  }
}

/** "… of what Orrinvale promises": the maker of the set that is spoken of gives the other number. */
function promiseAfter({ items, units, unit, context }: Scene, { index }: Item): Item | undefined {
  const maker = units.find(({ role, item }) => role === 'maker' && item.index > index);
  if (!maker || maker.id !== (unit ?? context.own)) return undefined;
  return items.find((item) => item.index > index && keyOf(item, 'saying') !== undefined);
}

function promised(scene: Scene, quantity: Quantity): Operand {
  const conditions = factConditions(scene);
  return { type: 'fact', key: makerKey(scene, quantity.id), by: 'maker', conditions };
}
