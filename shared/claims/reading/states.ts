import { type Carry, carriedConditions } from './carry.ts';
import { type Item, isOneOf, isWord, keyOf, type NumberPhrase } from './items.ts';
import type { Part } from './labelList.ts';
import { changeWords, comeWords, formerWords } from './lexicon/grammar.ts';
import { meets, needBits, type Signs } from './needs.ts';
import { saysWorkDone } from './workDone.ts';

/** Dimensions of what a set shows in one state and in another; a price or a size is none. */
const measured = new Set([
  '',
  'percent',
  'luminance',
  'ratio',
  'temperature',
  'time',
  'power',
  'noise',
  'de',
  'duv',
  'gamma',
]);

function isReading(item: Item | undefined): item is Item & { number: NumberPhrase } {
  const number = item?.number;
  return (
    number !== undefined &&
    measured.has(number.dimension) &&
    number.outOf === undefined &&
    (number.role === undefined || number.role === 'value')
  );
}

function isChange(item: Item): boolean {
  return ['fall', 'rise', 'cut'].includes(keyOf(item, 'verb') ?? '') || isOneOf(item, changeWords);
}

/** "has fallen", "it's gone", "have since come down": what was done is over. */
function isPerfect(items: readonly Item[], change: Item): boolean {
  return (
    /^ha(?:s|ve) /.test(change.text) ||
    items
      .slice(Math.max(0, change.index - 4), change.index)
      .some((item) => isWord(item, 'has', 'have', "'s", "'ve"))
  );
}

/** "from 742 nits in a 10 % window to 310 on the full screen": each number has a patch of its own. */
function namesPatches(items: readonly Item[]): boolean {
  return items.filter((item) => item.number?.role === 'window' || keyOf(item, 'fullScreen')).length > 1;
}

/** Along a time, an angle, the signal or from patch to patch a number changes without another state of the set. */
function runsAlong(items: readonly Item[], signs: Signs): boolean {
  const worked = saysWorkDone(items, signs);
  return (
    namesPatches(items) ||
    items.some(
      ({ number, index }) =>
        (number?.role === 'seconds' && !worked) ||
        number?.dimension === 'angle' ||
        (number?.dimension === 'percent' && isWord(items[index - 1], 'by')),
    )
  );
}

/** Is the set spoken of as adjusted, by this sentence or by those before? */
export function speaksOfAdjusted(items: readonly Item[], signs: Signs, carry: Carry): boolean {
  return (
    carriedConditions(carry).stage === 'adjusted' ||
    items.some(
      (item) =>
        keyOf(item, 'stage') === 'adjusted' ||
        isWord(item, 'adjustment', 'calibration', 'adjusting', 'calibrating'),
    ) ||
    saysWorkDone(items, signs)
  );
}

/** The reading that a preposition leads to, past hedges, limits and statistics: "to under 10 %", "to an average of 0.5". */
function readingAfter(items: readonly Item[], at: number): (Item & { number: NumberPhrase }) | undefined {
  for (let ahead = at + 1; ahead <= at + 3; ahead += 1) {
    const item = items[ahead];
    if (item?.number) return isReading(item) ? item : undefined;
    if (
      !keyOf(item, 'hedge') &&
      !keyOf(item, 'comparator') &&
      !keyOf(item, 'stat') &&
      !isWord(item, 'a', 'an', 'the', 'just', 'of')
    )
      return undefined;
  }
  return undefined;
}

/** "from 462 to 511 cd/m²" as the two numbers that it is made of. */
function partRange(item: Item & { number: NumberPhrase }): Item[] {
  const { to, firstEnd } = item.number;
  const number = {
    ...item.number,
    to: undefined,
    firstEnd: undefined,
    rangeWord: undefined,
    moves: undefined,
  };
  const [end, start] = [firstEnd ?? item.end, to!.start ?? item.end];
  return [
    { ...item, text: String(number.x), end, number: { ...number, state: 'before', partner: to!.x } },
    {
      type: 'word',
      text: 'to',
      meanings: [],
      start: end,
      end: start,
      capital: false,
      glued: false,
      index: 0,
      number: undefined,
    },
    {
      ...item,
      text: String(to!.x),
      start,
      number: { ...number, x: to!.x, place: to!.place, state: 'now', partner: number.x },
    },
  ];
}

const ofStates = needBits([{ words: ['from', '→', ...formerWords] }]);

/**
 * Finds the numbers of two states, "has fallen from 26 to 21 dB(A)", "87 W, down from 94 W", "4,570:1, against 4,550:1
 * before", and marks each by its state, so that each can be read as a statement of its own. What changes along a scale,
 * an angle or a time is left as it is.
 * @returns the items, where a range was two states with its numbers parted
 */
export function markStates(items: readonly Item[], signs: Signs, carry: Carry): readonly Item[] {
  if (!meets(signs, ofStates)) return items;
  const along = runsAlong(items, signs);
  const adjusted = !along && speaksOfAdjusted(items, signs, carry);
  const parted: Item[] = [];
  let turned = false;
  for (const [at, item] of items.entries()) {
    parted.push(item);
    if (isReading(item) && isOneOf(items[at + 1], formerWords) && endsStatement(items[at + 2])) {
      item.number.state = 'before';
      continue;
    }
    // "3.8 → 0.7 after calibration"
    const beyond = items[at + 2];
    if (isReading(item) && isWord(items[at + 1], '→') && isReading(beyond)) {
      item.number.state = adjusted && !along ? 'before' : 'open';
      beyond.number.state = adjusted && !along ? 'now' : 'open';
      continue;
    }
    const from = leadOf(items, at);
    if (!isReading(item) || !isWord(items[from], 'from') || item.number.state) continue;
    // "… up to 70 %, and from 80 % upwards it clips": places on the scale.
    if (isWord(items[at + 1], 'up', 'upward', 'upwards', 'on', 'onward', 'onwards', 'and above', 'and up'))
      continue;
    // "Follows PQ up to 60 %, then rolls off from 70 %": a place, too.
    if (['rolls-off', 'clips'].includes(keyOf(items[from - 1], 'direction') ?? '')) continue;
    const change = items.findLast((entry) => entry.index < at && isChange(entry));
    const second = item.number.to ? item : reachedAfter(items, at);
    const verb =
      second && (items.findLast((entry) => entry.index < second.index && isChange(entry)) ?? change);
    if (second) {
      const turns =
        !along && (verb ? adjusted || isPerfect(items, verb) : turned || (item.number.moves && adjusted));
      if (!turns) {
        if (second !== item && verb && isPerfect(items, verb) && !namesPatches(items))
          item.number.state = second.number.state = 'open';
        continue;
      }
      turned = true;
      // "Has gone from … to": moved, not lost.
      if (verb && keyOf(verb, 'verb') === 'lose') verb.meanings = [];
      if (second === item) parted.splice(-1, 1, ...partRange(item));
      else {
        item.number.state = 'before';
        second.number.state = 'now';
        item.number.partner = second.number.x;
        second.number.partner = item.number.x;
        if (item.number.dimension === '')
          for (const key of ['dimension', 'unit', 'factor'] as const)
            (item.number as unknown as Record<string, unknown>)[key] = second.number[key];
      }
    } else {
      const reached = reachedBefore(items, from, item);
      if (!reached) continue;
      item.number.state = along ? 'open' : 'before';
      if (!along) reached.number.state = 'now';
    }
  }
  return parted.length === items.length ? items : parted.map((item, index) => ({ ...item, index }));
}

/** The preposition that leads to a number, past hedges and limits. */
function leadOf(items: readonly Item[], at: number): number {
  let left = at - 1;
  while (
    keyOf(items[left], 'hedge') ||
    keyOf(items[left], 'comparator') ||
    keyOf(items[left], 'stat') ||
    isWord(items[left], 'a', 'an', 'the', 'of')
  )
    left -= 1;
  return left;
}

function endsStatement(item: Item | undefined): boolean {
  return item === undefined || item.type === 'mark' || isWord(item, 'and', 'but', 'which', 'so');
}

/** "from 5.5 % under to 1 % under": the reading that the change led to. */
function reachedAfter(items: readonly Item[], at: number): (Item & { number: NumberPhrase }) | undefined {
  for (let ahead = at + 1; ahead < Math.min(items.length, at + 14); ahead += 1) {
    if (isWord(items[ahead], ';', '(', 'and') || isReading(items[ahead])) return undefined;
    if (isWord(items[ahead], 'to')) {
      const reached = readingAfter(items, ahead);
      if (reached) return reached;
    }
  }
  return undefined;
}

/** "87 W, down from 94 W", "drops to 0.91 from 3.4": the reading that the change led to, said before. */
function reachedBefore(items: readonly Item[], from: number, item: Item & { number: NumberPhrase }) {
  return items
    .slice(0, from)
    .filter(isReading)
    .findLast(
      (other) =>
        other.number.dimension === item.number.dimension &&
        (isOneOf(items[from - 1], comeWords) || isWord(items[leadOf(items, other.index)], 'to')),
    );
}

/** Words that stand behind a number and belong to it: "5.5 % under", "2.4 as delivered". */
function belongs(item: Item | undefined): boolean {
  return (
    keyOf(item, 'direction') !== undefined ||
    keyOf(item, 'stage') !== undefined ||
    isWord(item, 'under', 'over', 'above', 'below', 'short', 'high', 'low', 'too', 'its', 'target')
  );
}

/** A clause with numbers of two states as two clauses, each with all other words. */
export function partStates(part: Part): Part[] {
  const { items } = part;
  const numbers = items.filter(({ number }) => number?.state === 'before' || number?.state === 'now');
  const [first, second] = numbers;
  if (!first || !second || numbers.length > 2 || first.number!.state === second.number!.state) return [part];
  const [own, other] = [first, second].map((number) => {
    const at = items.indexOf(number);
    let end = at + 1;
    while (belongs(items[end])) end += 1;
    return new Set(items.slice(Math.max(0, leadOf(items, at)), end));
  }) as [Set<Item>, Set<Item>];
  // "From an average of 2.7 to 0.29": the statistic is said once for both.
  const isStat = (item: Item) => ['average', 'max', 'min'].includes(keyOf(item, 'stat') ?? '');
  if (![...other].some(isStat)) for (const item of [...own].filter(isStat)) own.delete(item);
  const shared = items.filter((item) => !own.has(item) && !other.has(item));
  const lent = part.borrowed ?? [];
  return [
    {
      ...part,
      items: items.filter((item) => !other.has(item)),
      borrowed: new Set([...lent, ...shared.filter((item) => item.index > first.index)]),
    },
    { ...part, items: items.filter((item) => !own.has(item)), borrowed: new Set([...lent, ...shared]) },
  ];
}
