import { type Findings, propose, refuse } from '../finding.ts';
import { isWord } from '../items.ts';
import { operandOf } from '../operand.ts';
import { type Scene, valueNumbers } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { tidy } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { otherOperand } from './compare.ts';

/** "Its lag is within 2 ms of the Umbra's": no farther from the other set's number than so much, on either side. */
export function readSetApart(scene: Scene, findings: Findings): undefined {
  for (const item of valueNumbers(scene)) {
    const at = scene.items.indexOf(item);
    const far = item.number!;
    const other = scene.units.find(
      ({ role, item: name }) => role !== 'subject' && role !== 'maker' && name.index > item.index,
    );
    if (
      far.comparator !== '<=' ||
      !isWord(scene.items[at - 1], 'within') ||
      !isWord(scene.items[at + 1], 'of')
    )
      continue;
    if (!other || other.item.index > item.index + 4 || far.dimension === '' || far.dimension === 'percent')
      continue;
    scene.focus = item;
    const subject = subjectOf(scene, far.dimension, item);
    const words = [scene.items[at - 1], item, other.item];
    if (!isSettled(subject)) {
      refuse(findings, scene, 'setApart', subject.problem, words);
      continue;
    }
    const { quantity } = subject;
    const against = otherOperand(scene, quantity);
    if (!against || 'problem' in against) {
      refuse(
        findings,
        scene,
        'setApart',
        against?.problem ?? 'the words do not say which set that is',
        words,
      );
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
  }
}
