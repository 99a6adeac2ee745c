import type { BoundCheck, Check, OnsetCheck } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';

/** What was said of a series from a level on, with the clause's own limit and level, in % stimulus. */
function again(said: OnsetCheck | BoundCheck, x: number, from: number, included: boolean): Check | undefined {
  if (said.kind === 'onset')
    return said.from === undefined
      ? undefined
      : { ...said, limit: x, from, edge: included ? 'included' : 'excluded' };
  const [bound, other] = said.bounds;
  if (!bound || other || bound.operand.type !== 'quantity' || bound.operand.selector.from === undefined)
    return undefined;
  const { fromIncluded: _included, ...selector } = bound.operand.selector;
  const operand = {
    ...bound.operand,
    selector: { ...selector, from, ...(!included && { fromIncluded: false }) },
  };
  return { ...said, bounds: [{ ...bound, x, operand }] };
}

/** "It passes 3 from 50 % upwards and 5 from 70 % upwards": the same series and another limit, with the verb left out. */
export function readLimitAgain(scene: Scene, findings: Findings): undefined {
  const said = scene.previous?.said?.find((check) => check.kind === 'onset' || check.kind === 'bound');
  const [axis, other] = scene.axes.filter(({ kind, tone }) => kind === 'stimulus' && !tone);
  if (!said || said.houseWord !== undefined || !axis || other || axis.from === undefined) return;
  const [first, ...rest] = isWord(scene.items[0], 'and', 'but', 'or') ? scene.items.slice(1) : scene.items;
  const { number } = first ?? {};
  const isLimit = number?.dimension === '' && number.role === undefined && number.to === undefined;
  const isBare = rest.every(
    (item) =>
      axis.items.includes(item) || item.type === 'mark' || isWord(item, 'upwards', 'up', 'on', 'onwards'),
  );
  if (!first || !isLimit || !isBare || keyOf(first, 'concept') !== undefined) return;
  const check = again(said, number.x, axis.from, axis.fromIncluded);
  if (check) propose(findings, scene, 'limit', check, [first, ...axis.items]);
}
