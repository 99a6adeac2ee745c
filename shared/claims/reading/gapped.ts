import { type Item, keyOf } from './items.ts';
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

/**
 * The set or hue of a conjunct that leaves out what the one before it said (quantity, condition, verb): "…, on the
 * Kasulind from 70 % upwards", "… and the Veltrane 49 %", "… and blue by 9 %". Undefined where it says more.
 */
export function subjectOfGapped(items: readonly Item[]): Item | undefined {
  if (items.length > 14 || hasVerb(items) || !items.some(isSaying)) return undefined;
  const subjects = items.filter(isSubject);
  return subjects.length === 1 && items.every((item) => isSubject(item) || isSaying(item) || isFiller(item))
    ? subjects[0]
    : undefined;
}

export function isGapped(items: readonly Item[]): boolean {
  return subjectOfGapped(items) !== undefined;
}
