import { affirming } from '../echoWords.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord } from '../items.ts';
import { quantityById } from '../quantity.ts';
import { nearestAxis, type Scene } from '../scene.ts';
import { limitCheck } from './limit.ts';

/** "Below 80 % nothing is visible. From 90 % up, it is": past the limit that nothing passed before. */
export function readVisibleFrom(scene: Scene, findings: Findings): undefined {
  const axis = nearestAxis(scene, 'stimulus');
  const { statement } = scene.carry;
  const before =
    scene.previous?.said?.length === 1
      ? scene.previous.said[0]
      : statement?.asked
        ? undefined
        : statement?.check;
  if (!axis || before?.kind !== 'bound' || before.negated || before.houseWord === undefined) return;
  const [bound] = before.bounds;
  const isUnder = before.bounds.length === 1 && bound!.op === '<=' && bound!.operand.type === 'quantity';
  const rest = scene.items.filter(
    (item) =>
      item.type !== 'mark' && !axis.items.includes(item) && !isWord(item, 'and', 'but', 'though', 'then'),
  );
  const [subject, verb] = rest;
  if (!isUnder || rest.length !== 2 || !isWord(subject, 'it', 'they') || !affirming.test(verb!.text)) return;
  const quantity = quantityById((bound!.operand as { id: string }).id);
  const options = { houseWord: before.houseWord, ...(bound!.unit && { unit: bound!.unit }) };
  const check = limitCheck(scene, quantity, '>', bound!.x, options);
  if (check.kind === 'onset') propose(findings, scene, 'visibleFrom', check, [...axis.items, ...rest]);
}
