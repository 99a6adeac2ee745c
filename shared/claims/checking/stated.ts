import type { StatedNumber } from '../../contract/check.ts';
import { catalogueEntry } from '../../measure/catalogue.ts';
import { onTheLimit } from './decide.ts';
import type { OperandValue } from './operandValue.ts';
import { plain } from './terms.ts';

/** True for a number inside the stated interval; an open end ("almost", "just over") is not part of it. */
export function isInside(value: number, stated: StatedNumber): boolean {
  const aboveLow = stated.lowOpen ? value > stated.low : value >= stated.low - onTheLimit;
  const belowHigh = stated.highOpen ? value < stated.high : value <= stated.high + onTheLimit;
  return aboveLow && belowHigh;
}

/** How far a number lies outside the stated interval; 0 inside. */
export function missBy(value: number, stated: StatedNumber): number {
  if (isInside(value, stated)) return 0;
  return value <= stated.low ? stated.low - value : value - stated.high;
}

/** "range, 2.95 to 3.05", or the number itself where nothing is left to rounding. */
export function intervalWords(stated: StatedNumber, unit: string): string {
  if (stated.low === stated.high) return plain(tidy(stated.x), unit);
  if (stated.highOpen)
    return `range, ${plain(tidy(stated.low))} to just under ${plain(tidy(stated.high), unit)}`;
  if (stated.lowOpen)
    return `range, just over ${plain(tidy(stated.low))} to ${plain(tidy(stated.high), unit)}`;
  return `range, ${plain(tidy(stated.low))} to ${plain(tidy(stated.high), unit)}`;
}

/** Six significant digits: 0.1 + 0.2 reads 0.3. */
export function tidy(value: number): number {
  return Number(value.toPrecision(6));
}

/**
 * What a reader should know about a number that holds: that its digits are finer than the instrument can tell, and
 * that it differs from what was found by rounding or hedging only.
 */
export function digitNotes(value: OperandValue, stated: StatedNumber): string[] {
  const notes: string[] = [];
  if (value.u !== null && stated.place !== undefined && !stated.hedge && stated.place < value.u)
    notes.push(`finer than the instrument (±${plain(Number((2 * value.u).toPrecision(2)))})`);
  if (!stated.exact && isInside(value.value, stated) && !stated.hedge && onlyRounding(value, stated))
    notes.push(`only rounding saves ${plain(stated.x)}`);
  return notes;
}

/** At the digits that are conventional for the quantity the two numbers still differ. */
function onlyRounding({ id, value }: OperandValue, stated: StatedNumber): boolean {
  const decimals = catalogueEntry(id)?.decimals;
  if (decimals === undefined)
    return Math.abs(value - stated.x) > onTheLimit + 0.25 * (stated.high - stated.low);
  return value.toFixed(decimals) !== stated.x.toFixed(decimals);
}
