import type { Bound } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { isWord } from '../items.ts';
import { operandOf } from '../operand.ts';
import { firstWith, type Scene, valueNumbers } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { tidy } from '../stated.ts';
import { subjectOf } from '../subject.ts';

/** "White is within 150 K of 6,500 K": no farther from the second number than the first, on either side. */
export function readNearTo(scene: Scene, findings: Findings): undefined {
  for (const item of valueNumbers(scene)) {
    const at = scene.items.indexOf(item);
    const far = item.number!;
    const next = isWord(scene.items[at + 2], 'the', 'its', 'a') ? at + 3 : at + 2;
    const middle = scene.items[next];
    if (!['<', '<='].includes(far.comparator ?? '') || !isWord(scene.items[at + 1], 'of') || !middle?.number)
      continue;
    if (middle.number.dimension !== far.dimension || middle.number.role !== undefined) continue;
    // "Gamma stays within 0.05 of 2.2"; "under 3 of 11 levels" counts.
    const ofGamma = firstWith(scene, 'concept', 'gamma') !== undefined && far.x < 1 && middle.number.x > 1;
    if (far.dimension === '' && !ofGamma) continue;
    scene.focus = middle;
    const subject = subjectOf(scene, far.dimension, middle);
    const words = [scene.items[at - 1], item, middle];
    const ranged = scene.axes.some((axis) => axis.kind === 'stimulus' && axis.at === undefined);
    if (!isSettled(subject) || (ranged && subject.quantity.axis === null)) {
      const why = isSettled(subject) ? 'the quantity is not measured along these levels' : subject.problem;
      refuse(findings, scene, 'limit', why, words);
      continue;
    }
    const { quantity } = subject;
    const x = middle.number.x * middle.number.factor;
    const span = far.x * far.factor;
    const bound = (op: Bound['op'], limit: number, use: 'over' | 'under'): Bound => ({
      operand: operandOf(scene, quantity, selectorOf(scene, quantity, use)),
      op,
      x: tidy(limit),
      ...(quantity.unit && { unit: quantity.unit }),
    });
    const bounds = [bound('>=', x - span, 'over'), bound('<=', x + span, 'under')];
    propose(findings, scene, 'limit', { kind: 'bound', bounds }, [...words, ...subject.items]);
  }
}
