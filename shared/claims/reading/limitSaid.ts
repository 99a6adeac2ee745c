import type { Check } from '../../contract/check.ts';
import { type Item, isWord, keyOf, numberPhrase } from './items.ts';
import { quantityById } from './quantity.ts';

/** A limit that a sentence put on a series of levels, for the words that take it up. */
export interface LimitSaid {
  x: number;
  dimension: string;
  unit: string;
}

/** The one limit that these checks put on a colour error or a share; undefined where they put none, or several. */
export function limitSaid(checks: readonly Check[]): LimitSaid | undefined {
  let found: LimitSaid | undefined;
  for (const check of checks)
    for (const limit of limitsOf(check)) {
      if (found && (found.x !== limit.x || found.dimension !== limit.dimension)) return undefined;
      found = limit;
    }
  return found;
}

function limitsOf(check: Check): LimitSaid[] {
  const parts =
    check.kind === 'onset'
      ? [{ operand: check.operand, x: check.limit }]
      : check.kind === 'bound'
        ? check.bounds
        : [];
  return parts.flatMap(({ operand, x }) => {
    if (operand.type !== 'quantity') return [];
    const { dimension } = quantityById(operand.id);
    // A colour error is written as a bare number.
    if (dimension === 'de') return [{ x, dimension: '', unit: '' }];
    return dimension === 'percent' ? [{ x, dimension, unit: '%' }] : [];
  });
}

/** Does the sentence speak of levels, of which a limit can be said? "I got over it" does not. */
function speaksOfLevels(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      (keyOf(item, 'stat') ?? keyOf(item, 'concept')) !== undefined || item.number?.dimension === 'percent',
  );
}

/**
 * "No level rises above 3. From 60 % upwards every step is over it", "no step exceeds 3 below 50 %, but from there on
 * every step does": a pronoun behind a comparator, or a verb that stands for the whole of what was said, takes up the
 * limit of this sentence or of the one before. It is read as that number, in its own place.
 */
export function takeUpLimit(items: readonly Item[], before: LimitSaid | undefined): undefined {
  if (!speaksOfLevels(items)) return;
  let limit: (LimitSaid & { comparator?: string; at?: number }) | undefined = before;
  for (const item of items) {
    const comparator = comparatorOf(items, item);
    if (comparator !== undefined) {
      // Nobody knows which of two limits is meant; a share behind a limit is a place on the scale ("below 50 %").
      const isFirst = limit === undefined || limit === before;
      if (item.number!.dimension === '' && isFirst)
        limit = { x: item.number!.x, dimension: '', unit: '', comparator, at: item.index };
      else if (item.number!.dimension === '' || isFirst) limit = undefined;
      continue;
    }
    // "The limit is 3, and every step stays below it"
    if (isLimitItself(items, item)) limit = { x: item.number!.x, dimension: '', unit: '' };
    if (!limit) continue;
    const taken =
      ofPronoun(items, item) ??
      (limit.at === undefined ? undefined : ofVerb(items, item, limit.at, limit.comparator));
    if (!taken) continue;
    item.type = 'number';
    item.meanings = [];
    item.number = numberPhrase({
      x: limit.x,
      place: 1,
      dimension: limit.dimension,
      unit: limit.unit,
      factor: 1,
      spelled: false,
    });
    item.number.comparator = taken;
    const line = items[item.index + 1];
    if (isLineWord(line)) line!.meanings = [];
  }
}

/** The comparator of a number that is a limit; "up to 50 %" is a place. */
function comparatorOf(items: readonly Item[], { number, index }: Item): string | undefined {
  if (!number || number.role !== undefined || (number.dimension !== '' && number.dimension !== 'percent'))
    return undefined;
  if (number.comparator !== undefined) return number.comparator === 'upTo' ? undefined : number.comparator;
  return keyOf(items[index - 1], 'verb') === 'exceed' ? '>' : undefined;
}

/** "The limit for a visible error is 3", "a threshold of 3": a number that is the limit, and nothing measured. */
export function isLimitItself(items: readonly Item[], { number, index }: Item): boolean {
  if (number?.dimension !== '' || number.role !== undefined || number.comparator !== undefined) return false;
  const link = items[index - 1];
  if (!isWord(link, 'is', 'of', 'at', 'was', 'stands at', 'lies at', 'being')) return false;
  const lead = items.slice(Math.max(0, index - 9), index - 1);
  const noun = lead.findLastIndex((word) =>
    isWord(word, 'limit', 'threshold', 'the threshold', 'bar', 'yardstick', 'cut-off', 'line', 'the line'),
  );
  if (noun < 0) return false;
  const between = lead.slice(noun + 1);
  return (
    !between.some((word) => word.type === 'mark' || word.number || keyOf(word, 'verb') !== undefined) &&
    (between.length === 0 || isWord(between[0], 'for', 'of', 'to', 'between', 'above', 'below'))
  );
}

function isLineWord(item: Item | undefined): boolean {
  return isWord(item, 'line', 'mark', 'limit', 'level', 'bar', 'threshold');
}

/** "goes over", "crosses": the side of a limit that a verb says */
function sideOfVerb(item: Item | undefined): string | undefined {
  const verb = keyOf(item, 'verb');
  if (verb === 'rise' && / (?:over|above)$/.test(item!.text)) return '>';
  if (verb === 'fall' && / (?:under|below)$/.test(item!.text)) return '<';
  return verb === 'exceed' ? '>' : undefined;
}

/** "over it", "under that", "goes over that line" */
function ofPronoun(items: readonly Item[], item: Item): string | undefined {
  const before = items[item.index - 1];
  const line = items[item.index + 1];
  const isLine = isWord(item, 'that', 'this') && isLineWord(line);
  // "Above that mark errors show": without a verb it is a place of the scale.
  const moved = isLine
    ? (sideOfVerb(before) ?? (keyOf(items[item.index - 2], 'verb') && keyOf(before, 'comparator')))
    : undefined;
  const comparator = isLine ? moved : keyOf(before, 'comparator');
  if ((comparator !== '>' && comparator !== '<') || !isWord(item, 'it', 'that', 'this')) return undefined;
  const next = isLine ? items[item.index + 2] : line;
  const ends =
    !next ||
    next.type === 'mark' ||
    keyOf(next, 'stat') === 'all' ||
    isWord(next, 'and', 'but', 'from', 'at', 'in', 'on', 'while', 'by', 'throughout');
  return ends ? comparator : undefined;
}

/** "… but from 50 % upwards every step does": at the end of a later clause that says of how many levels. */
function ofVerb(
  items: readonly Item[],
  item: Item,
  limitAt: number,
  comparator: string | undefined,
): string | undefined {
  if (!isWord(item, 'does', 'do', 'is', 'are')) return undefined;
  const next = items[item.index + 1];
  if (next && next.type !== 'mark') return undefined;
  const between = items.slice(limitAt + 1, item.index);
  const isLater = between.some(
    (entry) => entry.type === 'mark' || isWord(entry, 'and', 'but', 'while', 'though'),
  );
  const counts = between.some(
    (entry) =>
      ['all', 'none', 'mostly'].includes(keyOf(entry, 'stat') ?? '') || isWord(entry, 'every', 'none'),
  );
  return isLater && counts ? comparator : undefined;
}
