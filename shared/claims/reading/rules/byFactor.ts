import { type Findings, propose } from '../finding.ts';
import { isWord } from '../items.ts';
import { saidOf } from '../retarget.ts';
import type { Scene } from '../scene.ts';
import { hedgeBefore, multipleAt, ratioStated } from './ratioNumber.ts';

/** "It is brighter than the Plain, by a factor of three": how far ahead, behind the comma. */
export function readByFactor(scene: Scene, findings: Findings): undefined {
  const before = scene.previous?.said?.at(-1);
  const [first] = scene.items.filter(({ type }) => type !== 'mark');
  if (before?.kind !== 'order' || before.negated || !isWord(first, 'by')) return;
  const [other, second] = before.cohort.units ?? [];
  const isOfTwo = before.rank.type === 'ahead' || before.rank.type === 'behind';
  const multiple = multipleAt(scene);
  const number = scene.items.find(
    ({ number: said }) => said?.dimension === 'times' && said.role === undefined,
  );
  const anchor = number ?? multiple?.item;
  if (!isOfTwo || other === undefined || second !== undefined || !anchor || anchor.index > first!.index + 3)
    return;
  const hedge = number ? undefined : hedgeBefore(scene, anchor);
  const stated = ratioStated(number, number ? undefined : multiple, hedge, false, false);
  const there = saidOf({ kind: 'value', operand: before.key, stated: stated! }, other, scene.context.own);
  if (!stated || there?.kind !== 'value') return;
  const isMore = (before.direction === 'higher') === (before.rank.type === 'ahead');
  const [a, b] = isMore ? [before.key, there.operand] : [there.operand, before.key];
  propose(findings, scene, 'byFactor', { kind: 'ratio', a, b, stated }, [first, hedge, anchor]);
}
