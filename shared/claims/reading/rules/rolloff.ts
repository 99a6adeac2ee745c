import type { DirectionCheck, StatedNumber } from '../../../contract/check.ts';
import type { AxisSpan } from '../axis.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { isGapped } from '../gapped.ts';
import { isWord, keyOf } from '../items.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';

/** "Rolls off at 70 %", "from 70 % upwards": the level at which the curve leaves its target. */
export function rolloffFrom(level: number): StatedNumber {
  return { x: level, low: level - 0.5, high: level + 0.5, unit: '%', place: 1 };
}

const leaving = ['leaves', 'leave', 'left', 'departs', 'parts'];

/** "The curve leaves PQ at 70 %": where it leaves its target, whatever it does from there. */
export function readLeavesCurve(scene: Scene, findings: Findings): undefined {
  const at = scene.items.findIndex((item) => isWord(item, ...leaving));
  const [from, target] = scene.items.slice(at + 1).filter((item) => !isWord(item, 'the', 'its'));
  const noun = isWord(from, 'from') ? target : from;
  const isCurve = keyOf(noun, 'concept') === 'eotf' || isWord(noun, 'target', 'standard');
  const ofCurve = scene.items.slice(0, at).some((item) => keyOf(item, 'concept') === 'eotf');
  const [axis, other] = scene.axes.filter(({ kind, tone }) => kind === 'stimulus' && !tone);
  const level = levelOf(axis);
  if (at < 0 || !isCurve || !(ofCurve || keyOf(noun, 'concept') === 'eotf') || !axis) return;
  if (other || level === undefined) {
    const places = [...axis.items, ...(other?.items ?? [])];
    return refuse(findings, scene, 'leavesCurve', 'the words name several levels: say it of each', places);
  }
  const operand = operandOf(scene, quantityById('eotf.rolloff'), { stat: 'scalar' });
  propose(findings, scene, 'leavesCurve', { kind: 'value', operand, stated: rolloffFrom(level) }, [
    scene.items[at],
    noun,
    ...axis.items,
  ]);
}

/** "The Umbra clips from 70 %, and the Plain from 80 %": another set's level, with the verb left out. */
export function readRolloffAgain(scene: Scene, findings: Findings): undefined {
  const doesSo = scene.items.some(
    (item, at) => isWord(item, 'does', 'did') && isWord(scene.items[at + 1], 'so'),
  );
  const said = scene.previous?.said?.find(
    (check): check is DirectionCheck =>
      check.kind === 'direction' &&
      (check.from !== undefined ||
        // "The curve clips, and it does so from 90 %"
        (doesSo && check.operand.type === 'quantity' && check.operand.id === 'eotf.rolloff')),
  );
  const [axis, other] = scene.axes.filter(({ kind, tone }) => kind === 'stimulus' && !tone);
  const level = levelOf(axis);
  if (!said || !axis || other || level === undefined || !(doesSo || isGapped(scene.items))) return;
  const set = scene.items.find((item) => keyOf(item, 'unit') ?? keyOf(item, 'maker'));
  const conditions = conditionsFor(scene, quantityById('eotf.rolloff'));
  const check = { ...said, operand: { ...said.operand, conditions }, from: rolloffFrom(level) };
  propose(findings, scene, 'rolloffAgain', check, [set, ...axis.items]);
}

function levelOf(axis: AxisSpan | undefined): number | undefined {
  return axis?.from ?? axis?.at;
}
