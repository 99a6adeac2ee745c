import type { Check } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { othersThan } from '../knownGroup.ts';
import { placeBehind, placeOfAll } from '../ownStatement.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { hasVerb } from '../verbs.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import { comparedQuantity } from './compared.ts';
import { groupNamed } from './group.ts';
import { concepts } from './orderWords.ts';

/** "Second in peak luminance": the place, where its words begin, and the quantity's words behind it. */
interface Place {
  item: Item;
  /** Undefined: the last */
  n: number | undefined;
  words: readonly Item[];
}

function placesOf({ items }: Scene): Place[] {
  const starts = items.flatMap((item, at) => {
    const ordinal = keyOf(item, 'ordinal');
    const isPlace = ordinal !== undefined || isWord(item, 'last');
    // "Second place for peak luminance"
    const end = isWord(items[at + 1], 'place', 'spot', 'position') ? at + 2 : at + 1;
    // "Last of the three for contrast"
    const group = isPlace && isWord(items[end], 'of') ? items.slice(end + 1, end + 4) : [];
    const count = group.findIndex(({ number }) => number?.dimension === '');
    const next = items[count < 0 ? end : end + count + 2];
    const leads = isWord(next, 'in', 'for', 'on');
    return isPlace && (leads || isLastOf(items, at))
      ? [{ item, at, leads, n: ordinal === undefined ? undefined : Number(ordinal) }]
      : [];
  });
  return starts.flatMap(({ item, at, leads, n }, order) => {
    const words = leads ? items.slice(at, starts[order + 1]?.at) : items;
    const named = leads ? words.slice(0, 7) : items.slice(0, at);
    return named.some((word) => keyOf(word, 'concept') ?? isPrice(word)) ? [{ item, n, words }] : [];
  });
}

const comes = [
  ...['comes', 'came', 'finishes', 'finished', 'ranks', 'ranked', 'ends', 'ended', 'lands', 'landed'],
  ...['places', 'placed'],
];

const putting = ['puts', 'leaves', 'makes', 'ranks'];

/** "For contrast it comes last": the place ends what is said. */
function isLastOf(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  return (
    isWord(items[at], 'last') &&
    items
      .slice(Math.max(0, at - 4), at)
      .some(
        (word, place, lead) =>
          isWord(word, ...comes) || (isWord(word, ...putting) && place < lead.length - 1),
      ) &&
    (next === undefined || next.type === 'mark' || isWord(next, 'of', 'among', 'and', 'but'))
  );
}

function isPrice(word: Item): boolean {
  return keyOf(word, 'concept') === 'price' || isWord(word, 'price');
}

/** "Second only to the Plain", "which leaves the Hearth second behind the Plain": its place, and who is ahead. */
function readBehind(scene: Scene, findings: Findings): boolean {
  const { items, units, context } = scene;
  const at = placeBehind(items);
  const place = items[at];
  const leader = units.find(({ item }) => place && item.index > place.index && item.index <= place.index + 4);
  if (!place || !leader || scene.used.has(place)) return false;
  const id = resolveMention(leader, scene.carry, context);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  const words = [place, items[at + 1], leader.item, ...concepts(scene)];
  const subject = scene.units.some(({ item }) => item.index < place.index) ? scene.unit : undefined;
  const own = splitVariant(subject).unit ?? context.own;
  const compared = othersThan(scene, own);
  if (id === undefined || id === own || !compared || 'problem' in quantity || quantity.better === 'target') {
    const why = 'problem' in quantity ? quantity.problem : 'the words do not say among which sets';
    refuse(findings, scene, 'order', why, words);
    return true;
  }
  const n = Number(keyOf(place, 'ordinal'));
  const position = { type: 'position' as const, n };
  const { unit: _unit, ...conditions } = scene.conditions;
  const of = own === context.own ? { ...scene, unit: undefined, conditions } : scene;
  propose(
    findings,
    of,
    'order',
    orderCheck(of, quantity, quantity.better, position, { units: compared }),
    words,
  );
  if (n === 2)
    propose(
      findings,
      of,
      'order',
      orderCheck(of, quantity, quantity.better, { type: 'behind' }, { units: [id] }),
      [items[at + 1], leader.item],
    );
  if (of.said) scene.said = of.said;
  return true;
}

/** What was last stated of the set that the clause is about: "… 80 % of P3, where the Plain manages 99.7 %, and comes last of the three". */
function valueBefore({ previous, unit }: Scene): Check | undefined {
  for (let before = previous; before; before = before.previous) {
    const said = before.said?.at(-1);
    if (said && before.unit === unit) return said;
    if (said && before === previous && unit === undefined && before.previous === null) return said;
  }
  return undefined;
}

/** "The lag is 12.1 ms, second of the three" */
function readPlaceOfAll(scene: Scene, findings: Findings): boolean {
  const place = placeOfAll(scene.items);
  const said = valueBefore(scene);
  if (!place || scene.used.has(place) || said?.kind !== 'value' || said.operand.type !== 'quantity')
    return false;
  const { better } = quantityById(said.operand.id);
  const { cohort, items } = cohortOf(scene);
  const group = groupNamed(scene);
  const isKnown = cohort.units !== undefined || scene.context.units.length === group?.n;
  if (better === 'target' || !isKnown) {
    refuse(findings, scene, 'order', 'the words do not say among which sets, or in what', [place]);
    return true;
  }
  const others = othersThan(scene, splitVariant(said.operand.conditions.unit).unit ?? scene.context.own);
  if (cohort.units && others) cohort.units = others;
  const last = others === undefined ? group?.n : others.length + 1;
  const n = isWord(place, 'last') ? last : Number(keyOf(place, 'ordinal'));
  if (n === undefined) return false;
  const rank = n === 1 ? ({ type: 'best' } as const) : ({ type: 'position', n } as const);
  const check = { kind: 'order' as const, key: said.operand, direction: better, rank, cohort };
  propose(findings, scene, 'order', check, [place, ...items]);
  return true;
}

/** "Among the three it is second in peak luminance, first in native contrast and last in grey error." */
export function readRankList(scene: Scene, findings: Findings): undefined {
  if (readBehind(scene, findings) || readPlaceOfAll(scene, findings)) return;
  if (!hasVerb(scene.items) && !scene.items.some((item) => isWord(item, ...comes, ...putting))) return;
  const places = placesOf(scene).filter(({ item }) => !scene.used.has(item));
  if (places.length === 0) return;
  const group = groupNamed(scene);
  const { cohort, items } = cohortOf(scene);
  // Without a word of which sets, a place is among those that the review compares.
  const compared =
    group || !scene.context.against?.length ? undefined : othersThan(scene, scene.unit ?? scene.context.own);
  if (compared) cohort.units = compared;
  const isKnown = !group || cohort.units !== undefined || scene.context.units.length === group.n;
  for (const { item, n, words } of places) {
    const part: Scene = { ...scene, items: words };
    const price = words.find(isPrice);
    const quantity = comparedQuantity(part, { concept: price ? 'price' : '', direction: 'higher' });
    const said = [item, ...concepts(part), price];
    if ('problem' in quantity || quantity.better === 'target') {
      const why = 'problem' in quantity ? quantity.problem : 'better has no direction for this quantity';
      refuse(findings, scene, 'order', why, said);
      continue;
    }
    const place = n ?? group?.n ?? (compared && compared.length + 1);
    if (place === undefined || !isKnown) {
      refuse(findings, scene, 'order', 'the words do not say among which sets', said);
      continue;
    }
    const rank = place === 1 ? ({ type: 'best' } as const) : ({ type: 'position', n: place } as const);
    const check = orderCheck(part, quantity, quantity.better, rank, cohort);
    const { key } = check;
    // An error without a statistic is compared by its average.
    const average =
      key.type === 'quantity' && key.id === 'grey.de2000' && key.selector.stat === 'scalar'
        ? { ...key, selector: { ...key.selector, stat: 'average' as const } }
        : key;
    propose(findings, scene, 'order', { ...check, key: average }, said);
  }
  for (const item of [...items, ...(group?.items ?? [])]) scene.used.add(item);
}
