import type { OrderCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { othersThan } from '../knownGroup.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';

const fillers =
  /^(?:and|but|while|with|the|a|is|was|comes|came|in|takes|close|behind|finishes|ranks|then|place|goes|to|follows)$/;

/** "… the Hearth has the lowest average error and the Plain is second": a place in the ranking that was just spoken of. */
export function readNextRank(scene: Scene, findings: Findings): undefined {
  const before = scene.previous?.said?.findLast((check) => check.kind === 'order');
  if (before?.kind !== 'order' || (before.rank.type !== 'best' && before.rank.type !== 'position')) return;
  const place = scene.items.find((item) => keyOf(item, 'ordinal') !== undefined || isWord(item, 'last'));
  const [mention, other] = scene.units.filter(({ role }) => role !== 'maker');
  const says = (item: Item) =>
    item === place || item === mention?.item || item.type === 'mark' || fillers.test(item.text);
  if (!place || !mention || other || !scene.items.every(says)) return;
  placeNext(scene, findings, before, mention, place);
}

/** Gives a set its place in a ranking that was spoken of for another set. */
export function placeNext(
  scene: Scene,
  findings: Findings,
  before: OrderCheck,
  mention: UnitMention,
  place: Item,
): undefined {
  const { own } = scene.context;
  const id = resolveMention(mention, scene.carry, scene.context);
  const units = id === undefined ? undefined : othersThan(scene, id);
  const size = before.cohort.units && before.cohort.units.length + 1;
  const n = isWord(place, 'last') ? size : Number(keyOf(place, 'ordinal'));
  const words = [mention.item, place];
  if (id === undefined || n === undefined || (before.cohort.units && !units))
    return refuse(findings, scene, 'order', 'the words do not say among which sets', words);
  const { unit: _unit, mode: _mode, ...rest } = before.key.conditions;
  const conditions =
    id === own
      ? rest
      : { ...rest, unit: splitVariant(id).unit!, origin: { ...rest.origin, unit: 'named' as const } };
  const cohort = before.cohort.units ? { ...before.cohort, units: units! } : before.cohort;
  const rank = n === 1 ? ({ type: 'best' } as const) : ({ type: 'position', n } as const);
  propose(
    findings,
    { ...scene, unitProblem: undefined, group: undefined },
    'order',
    { ...before, key: { ...before.key, conditions }, rank, cohort },
    words,
  );
}
