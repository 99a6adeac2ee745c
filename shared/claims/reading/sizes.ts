import type { ReadingContext } from '../../contract/articleText.ts';
import { type Item, isWord, keyOf } from './items.ts';

/** Does nothing follow that a number could count? */
function standsAlone(next: Item | undefined): boolean {
  return (
    next === undefined ||
    next.type === 'mark' ||
    keyOf(next, 'verb') !== undefined ||
    keyOf(next, 'unit') !== undefined ||
    isWord(
      next,
      'is',
      'has',
      "'s",
      'weighs',
      'for',
      'at',
      'and',
      'but',
      'or',
      'version',
      'model',
      'size',
      'one',
      'which',
      'adds',
      'comes',
      'needs',
      'takes',
      'draws',
      'in',
      'as',
    )
  );
}

/** "There is a fifty-five for £1,219" */
function isOffered(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at - 1], 'a', 'an') &&
    isWord(items[at + 1], 'for', 'at') &&
    items.slice(at + 2, at + 5).some(({ number }) => number?.role === 'money')
  );
}

/** "The 65 costs £1,299", "dearer than the 55": a bare number that is the diagonal of a set of the library. */
export function settleBareSizes(items: readonly Item[], context: ReadingContext): undefined {
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    const { number } = item;
    if (
      !number ||
      number.role !== undefined ||
      number.dimension !== '' ||
      number.place !== 1 ||
      number.x < 20 ||
      number.x > 120 ||
      number.to !== undefined ||
      number.outOf !== undefined ||
      !(isWord(items[at - 1], 'the', 'this', 'our') || isOffered(items, at)) ||
      !standsAlone(items[at + 1])
    )
      continue;
    const isDiagonal = context.units.some(
      (unit) => unit.diagonalInches === number.x || unit.variantInches.includes(number.x),
    );
    if (isDiagonal) number.role = 'size';
  }
}

/** The size that a clause is about: the first that does not stand behind "than". */
export function sizeNamed(items: readonly Item[]): { inches: number; item: Item } | undefined {
  for (const item of items) {
    if (isWord(item, 'than')) return undefined;
    if (item.number?.role === 'size' && item.number.x >= 20) return { inches: item.number.x, item };
  }
  return undefined;
}

/** "£200 dearer than the 55": the size that a comparison is made with. */
export function sizeCompared(items: readonly Item[]): { inches: number; item: Item } | undefined {
  const than = items.findIndex((item) => isWord(item, 'than'));
  if (than < 0) return undefined;
  const item = items.slice(than + 1, than + 4).find((word) => word.number?.role === 'size');
  return item && { inches: item.number!.x, item };
}
