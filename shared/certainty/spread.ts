import { addTerms } from './terms.ts';

/** A tail so long that the standard deviation of the draws hangs on a few of them (of a quotient near 0). */
const longTail = 8;

/**
 * Standard deviation of the finite draws. Where the tail is so long that a few draws decide it, half the width of
 * the central 68.27 % interval instead, which is the same for a normal distribution and stays finite for a quotient
 * whose divisor may be 0. Null when hardly a draw has a value.
 */
export function deviationOf(column: Float64Array): number | null {
  const spread = spreadOf(column);
  if (!spread) return deviationOfFinite(column);
  if (column.length < 2) return null;
  return spread.hasLongTail ? halfCentral(column) : spread.deviation;
}

/**
 * {@link deviationOf} an extreme. A value that leads in few worlds gives it a long tail too, and there the plain standard
 * deviation is right: the interval would say that such worlds do not exist. Only where one of the values itself has a
 * long tail does the interval stand.
 */
export function deviationOfExtreme(extreme: Float64Array, columns: readonly Float64Array[]): number | null {
  const spread = spreadOf(extreme);
  if (!spread?.hasLongTail || columns.some((column) => spreadOf(column)?.hasLongTail ?? true))
    return deviationOf(extreme);
  return spread.deviation;
}

/** Plain standard deviation, and whether a few draws decide it; undefined where not every square is finite. */
function spreadOf(column: Float64Array): { deviation: number; hasLongTail: boolean } | undefined {
  // Counted from one of the draws, so that squares of a large value do not swallow a small spread.
  const from = column[0]!;
  let sum = 0;
  let squares = 0;
  let least = 0;
  let most = 0;
  for (let d = 0; d < column.length; d += 1) {
    const value = column[d]! - from;
    sum += value;
    squares += value * value;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (!Number.isFinite(squares)) return undefined;
  const mean = sum / column.length;
  const deviation = Math.sqrt(Math.max(squares - sum * mean, 0) / (column.length - 1));
  return { deviation, hasLongTail: Math.max(most - mean, mean - least) > longTail * deviation };
}

/** The same where some draws have no value, or values are too large to be squared. */
function deviationOfFinite(column: Float64Array): number | null {
  const finite = column.filter(Number.isFinite);
  if (finite.length < 2 || finite.length < column.length / 2) return null;
  return finite.length === column.length ? halfCentral(column) : deviationOf(finite);
}

function halfCentral(column: Float64Array): number {
  const sorted = column.slice().sort();
  const quantile = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return (quantile(0.84134) - quantile(0.15866)) / 2;
}

/** Mean over columns, draw by draw. */
export function meanColumn(columns: readonly Float64Array[], mean: Float64Array): Float64Array {
  const share = 1 / columns.length;
  addTerms(
    mean.fill(0),
    columns,
    columns.map(() => share),
  );
  return mean;
}

/** Greatest or smallest over columns, draw by draw; a draw without a value counts only where it stands first. */
export function extremeColumn(
  columns: readonly Float64Array[],
  which: 'max' | 'min',
  extreme: Float64Array,
): Float64Array {
  const sign = which === 'max' ? 1 : -1;
  extreme.set(columns[0]!);
  let k = 1;
  for (; k + 3 < columns.length; k += 4)
    outdoFour(extreme, columns[k]!, columns[k + 1]!, columns[k + 2]!, columns[k + 3]!, 0.5 * sign);
  for (; k < columns.length; k += 1) outdo(extreme, columns[k]!, 0.5 * sign);
  // A draw without a value shows in the sum.
  let sum = 0;
  for (let d = 0; d < extreme.length; d += 1) sum += extreme[d]!;
  return Number.isFinite(sum) ? extreme : extremeOfSome(columns, sign, extreme);
}

/*
 * The greater of two is their mean plus half of what they differ by: a comparison that turns out now so, now so costs
 * several times as much.
 */

function outdo(extreme: Float64Array, column: Float64Array, half: number): void {
  for (let d = 0; d < extreme.length; d += 1) {
    const ahead = column[d]! - extreme[d]!;
    extreme[d]! += 0.5 * ahead + half * Math.abs(ahead);
  }
}

function outdoFour(
  extreme: Float64Array,
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
  e: Float64Array,
  half: number,
): void {
  for (let d = 0; d < extreme.length; d += 1) {
    const fromA = b[d]! - a[d]!;
    const ofTwo = a[d]! + (0.5 * fromA + half * Math.abs(fromA));
    const fromC = e[d]! - c[d]!;
    const ofOthers = c[d]! + (0.5 * fromC + half * Math.abs(fromC));
    const between = ofOthers - ofTwo;
    const ahead = ofTwo + (0.5 * between + half * Math.abs(between)) - extreme[d]!;
    extreme[d]! += 0.5 * ahead + half * Math.abs(ahead);
  }
}

/** The same by comparison, where some draws have no value or an infinite one. */
function extremeOfSome(columns: readonly Float64Array[], sign: 1 | -1, extreme: Float64Array): Float64Array {
  extreme.set(columns[0]!);
  for (const column of columns.slice(1))
    for (let d = 0; d < extreme.length; d += 1)
      if (sign * column[d]! > sign * extreme[d]!) extreme[d] = column[d]!;
  return extreme;
}

/** A value this many u of the difference behind the found extreme is not it in 2,000 worlds. */
const outOfReach = 5;

/** The values that could be the greatest (smallest) in some world; the extreme has no other draws to look at. */
export function contendersOf(
  found: Float64Array,
  among: readonly number[],
  which: 'max' | 'min',
  differenceU: (one: number, other: number) => number,
): number[] {
  const sign = which === 'max' ? 1 : -1;
  const leader = among.reduce((best, i) => (sign * found[i]! > sign * found[best]! ? i : best));
  const behind = (i: number) => sign * (found[leader]! - found[i]!);
  return among.filter((i) => i === leader || behind(i) <= outOfReach * differenceU(leader, i));
}
