import { type Item, isWord, keyOf } from './items.ts';
import { gappedFillers } from './lexicon/grammar.ts';
import { hasVerb } from './verbs.ts';

/** What a conjunct without a verb says of its set: a number, or how much something shows. */
function isSaying(item: Item): boolean {
  const { number } = item;
  if (number) return number.role !== 'name' && number.role !== 'ignored' && number.role !== 'date';
  return keyOf(item, 'severity') !== undefined || keyOf(item, 'house') !== undefined;
}

/** Words that change nothing of which set or what is said of it. */
function isFiller(item: Item): boolean {
  return (
    item.type === 'mark' ||
    gappedFillers.has(item.text) ||
    (keyOf(item, 'hedge') ??
      keyOf(item, 'comparator') ??
      keyOf(item, 'intensity') ??
      keyOf(item, 'trailing') ??
      keyOf(item, 'opinion')) !== undefined
  );
}

/** A set or a hue, of which something was said before of another. */
function isSubject(item: Item): boolean {
  return (keyOf(item, 'unit') ?? keyOf(item, 'maker') ?? keyOf(item, 'hue')) !== undefined;
}

/** "The Plain's from 60 %", "the Plain's does so from 60 %", "the Plain's is from 60 %": what only takes up the verb says no more. */
function withoutEcho(items: readonly Item[]): readonly Item[] {
  const owner = items.findIndex((item, at) => isWord(item, "'s") && isSubject(items[at - 1] ?? item));
  if (owner < 0) return items;
  const from = items.findIndex((item, at) => at > owner && isWord(item, 'from'));
  const between = items.slice(owner + 1, Math.max(owner + 1, from));
  const isEcho = from > owner && between.every((item) => isWord(item, 'does', 'is', 'so', 'did', 'was'));
  return isEcho ? [...items.slice(0, owner), ...items.slice(from)] : items;
}

/** "…, for those whose wrists depend on it": what stands behind the number and its comma says nothing of the set. */
function withoutTail(items: readonly Item[]): readonly Item[] {
  const end = items.findIndex(
    (item, at) =>
      isWord(item, 'for', 'if', 'as') &&
      item.index > (items[at - 1]?.index ?? item.index) + 1 &&
      items.slice(0, at).some(isSaying),
  );
  return end > 0 && !items.slice(end).some((item) => isSaying(item) || isSubject(item))
    ? items.slice(0, end)
    : items;
}

/**
 * The set or hue of a conjunct that leaves out what the one before it said (quantity, condition, verb): "…, on the
 * Kasulind from 70 % upwards", "… and the Veltrane 49 %", "… and blue by 9 %". Undefined where it says more.
 */
export function subjectOfGapped(all: readonly Item[]): Item | undefined {
  const items = withoutTail(withoutEcho(all));
  if (items.length > 14 || hasVerb(items) || !items.some(isSaying)) return undefined;
  const subjects = items.filter(isSubject);
  const [subject] = subjects;
  if (!subject || subjects.length > 1) return undefined;
  const isPlain = items.every((item) => isSubject(item) || isSaying(item) || isFiller(item));
  return isPlain && !isOtherSide(items, subject) ? subject : undefined;
}

/** "£50 above the Nocthale", "20 nits from the Kasulind": the set is what the number is measured from. */
function isOtherSide(items: readonly Item[], subject: Item): boolean {
  let at = items.indexOf(subject) - 1;
  while (isWord(items[at], 'the', 'a')) at -= 1;
  return (
    keyOf(items[at], 'comparator') !== undefined ||
    isWord(items[at], 'by', 'to', 'from', 'at', 'over', 'under')
  );
}

/** "… and £899 respectively": only what is said, of a set that its place in the list tells. */
export function isOnlyNumber(items: readonly Item[]): boolean {
  return items.length <= 8 && items.some(isSaying) && items.every((item) => isSaying(item) || isFiller(item));
}

export function isGapped(items: readonly Item[]): boolean {
  return subjectOfGapped(items) !== undefined;
}
