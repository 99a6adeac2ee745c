import { type Item, isWord, keyOf, meaningOf } from './items.ts';

/** A set by name, or by a word that stands for one. */
export function isSet(item: Item | undefined): boolean {
  const pronoun = keyOf(item, 'pronoun');
  return (
    (keyOf(item, 'unit') ?? keyOf(item, 'maker')) !== undefined || pronoun === 'own' || pronoun === 'rival'
  );
}

/** A number that may say how much or how many; "none" counts as one. */
export function isAmount(item: Item): boolean {
  if (isWord(item, 'none')) return true;
  const { number } = item;
  return (
    number !== undefined &&
    number.outOf === undefined &&
    (number.role === undefined || number.role === 'value' || number.role === 'money')
  );
}

/** "HDMI 2.1 ports", "USB sockets", "zones" from `at` on: what is counted; empty where nothing is. */
export function countedAt(items: readonly Item[], at: number): Item[] {
  const item = items[at]!;
  if (!isWord(item, 'hdmi', 'usb')) return meaningOf(item, 'fact')?.data === 'count' ? [item] : [];
  const version = /^\d\.\d$/.test(items[at + 1]?.text ?? '') ? 1 : 0;
  const noun = /^(?:ports?|inputs?|sockets?|connect(?:ions?|ors?)|terminals?)$/.test(
    items[at + 1 + version]?.text ?? '',
  );
  return items.slice(at, at + 1 + version + (noun ? 1 : 0));
}

/** Gives a number without a unit the unit of another that it stands beside. */
export function takeUnit(amount: Item | undefined, model: Item | undefined): undefined {
  const [number, other] = [amount?.number, model?.number];
  // "Two years, the Kasulind one": only of a warranty is a number in words a measure.
  if (!number || !other || number.dimension !== '' || (number.spelled && other.dimension !== 'months'))
    return;
  number.dimension = other.dimension;
  number.unit = other.unit;
  number.factor = other.factor;
  if (other.role === 'money') number.role = 'money';
}
