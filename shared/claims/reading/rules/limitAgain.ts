import type { OnsetCheck } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';

/** "It passes 3 from 50 % upwards and 5 from 70 % upwards": the same series passes another limit, with the verb left out. */
export function readLimitAgain(scene: Scene, findings: Findings): undefined {
  const said = scene.previous?.said?.find((check): check is OnsetCheck => check.kind === 'onset');
  const [axis, other] = scene.axes.filter(({ kind, tone }) => kind === 'stimulus' && !tone);
  if (
    !said ||
    said.houseWord !== undefined ||
    said.from === undefined ||
    !axis ||
    other ||
    axis.from === undefined
  )
    return;
  const [first, ...rest] = isWord(scene.items[0], 'and', 'but') ? scene.items.slice(1) : scene.items;
  const isLimit =
    first?.number?.dimension === '' && first.number.role === undefined && first.number.to === undefined;
  const isBare = rest.every(
    (item) =>
      axis.items.includes(item) || item.type === 'mark' || isWord(item, 'upwards', 'up', 'on', 'onwards'),
  );
  if (!first || !isLimit || !isBare || keyOf(first, 'concept') !== undefined) return;
  const check: OnsetCheck = {
    ...said,
    limit: first.number!.x,
    from: axis.from,
    edge: axis.fromIncluded ? 'included' : 'excluded',
  };
  propose(findings, scene, 'limit', check, [first, ...axis.items]);
}
