import { type Item, isWord } from './items.ts';

/** Numbers in a row, parted by commas and "and": their places in the sentence. */
interface List {
  at: number[];
  /** The first and the last item of the row, the words that lead to it left out */
  from: number;
  to: number;
}

/** One reading of a sentence with two lists: nothing but one number of each is left. */
export interface Pair {
  items: Item[];
  /** The number that is stated, as it stands in the sentence */
  stated: Item;
}

/**
 * "At 15, 30 and 45 degrees it keeps 88, 68 and 45 % respectively", "1.8, 2.6 and 4.4 at 30, 50 and 100 %": each place of
 * one list with the number of the other that has its turn, as sentences of their own. Undefined where there are not
 * just two lists of one length, of which one names places.
 */
export function pairedLists(items: readonly Item[]): Pair[] | undefined {
  const lists = listsOf(items);
  const [one, other] = lists;
  if (!one || !other || lists.length !== 2 || one.at.length !== other.at.length) return undefined;
  const [places, values] = namesPlaces(items, one) ? [one, other] : [other, one];
  if (!namesPlaces(items, places) || namesPlaces(items, values) || !isMeasured(items, values))
    return undefined;
  for (const list of [places, values]) shareUnit(items, list);
  if (ofWindows(items, places)) for (const place of places.at) items[place]!.number!.role = 'window';
  return places.at.map((place, order) => {
    const kept = new Set([place, values.at[order]!]);
    const inList = (at: number) => lists.some(({ from, to }) => at >= from && at <= to);
    const left = items.filter((item, at) => kept.has(at) || !(inList(at) || isWord(item, 'respectively')));
    return {
      // A number's role is found anew in each of them.
      items: left.map((item, index) => ({
        ...item,
        index,
        ...(item.number && { number: { ...item.number } }),
      })),
      stated: items[values.at[order]!]!,
    };
  });
}

function listsOf(items: readonly Item[]): List[] {
  const lists: List[] = [];
  for (let from = 0; from < items.length; from += 1) {
    if (!isListed(items[from])) continue;
    const at = [from];
    let to = from;
    while (true) {
      let next = to + 1;
      if (isWord(items[next], ',')) next += 1;
      if (isWord(items[next], 'and')) next += 1;
      if (next === to + 1 || !isListed(items[next])) break;
      at.push(next);
      to = next;
    }
    if (at.length > 1) lists.push({ at, from, to });
    from = to;
  }
  return lists;
}

function isListed(item: Item | undefined): boolean {
  const number = item?.number;
  return (
    number !== undefined &&
    number.to === undefined &&
    number.outOf === undefined &&
    (number.role === undefined ||
      number.role === 'window' ||
      number.role === 'angle' ||
      number.role === 'axis')
  );
}

/** Places: degrees, or percentages behind "at" or "in windows of". */
function namesPlaces(items: readonly Item[], { from, to }: Pick<List, 'from' | 'to'>): boolean {
  const last = items[to]!.number!;
  if (last.dimension === 'angle') return true;
  if (last.dimension !== 'percent' && last.dimension !== '') return false;
  return (last.dimension === 'percent' && isWord(items[from - 1], 'at')) || ofWindows(items, { from, to });
}

/** "In windows of 2, 10 and 100 %", "in 2, 10 and 100 % windows" */
function ofWindows(items: readonly Item[], { from, to }: Pick<List, 'from' | 'to'>): boolean {
  const windows = ['windows', 'patches', 'boxes'];
  const led = isWord(items[from - 1], 'of') && isWord(items[from - 2], ...windows);
  return items[to]!.number!.dimension === 'percent' && (led || isWord(items[to + 1], ...windows));
}

/** All of one dimension, or bare with the unit behind the last. */
function isMeasured(items: readonly Item[], { at }: List): boolean {
  const last = items[at.at(-1)!]!.number!.dimension;
  return at.every((place) => ['', last].includes(items[place]!.number!.dimension)) && last !== 'angle';
}

function shareUnit(items: readonly Item[], { at }: List): undefined {
  const { dimension, unit, factor } = items[at.at(-1)!]!.number!;
  // "Under 1 and 2": the limit word stands before the first, and holds for all.
  const { comparator } = items[at[0]!]!.number!;
  for (const place of at) Object.assign(items[place]!.number!, { dimension, unit, factor, comparator });
}
