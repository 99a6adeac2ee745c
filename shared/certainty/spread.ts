/** A tail so long that the standard deviation of the draws hangs on a few of them (of a quotient near 0). */
const longTail = 8;

/**
 * Standard deviation of the finite draws. Where the tail is so long that a few draws decide it, half the width of
 * the central 68.27 % interval instead, which is the same for a normal distribution and stays finite for a quotient
 * whose divisor may be 0. Null when hardly a draw has a value.
 */
export function deviationOf(column: Float64Array): number | null {
  let n = 0;
  let sum = 0;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let d = 0; d < column.length; d += 1) {
    const value = column[d]!;
    if (!Number.isFinite(value)) continue;
    n += 1;
    sum += value;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (n < 2 || n < column.length / 2) return null;
  const mean = sum / n;
  let squares = 0;
  for (let d = 0; d < column.length; d += 1) {
    const value = column[d]!;
    if (Number.isFinite(value)) squares += (value - mean) ** 2;
  }
  const deviation = Math.sqrt(squares / (n - 1));
  if (Math.max(most - mean, mean - least) <= longTail * deviation) return deviation;
  const sorted = column.filter(Number.isFinite).sort();
  const quantile = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return (quantile(0.84134) - quantile(0.15866)) / 2;
}

/** Mean over columns, draw by draw. */
export function meanColumn(columns: readonly Float64Array[]): Float64Array {
  const mean = new Float64Array(columns[0]!.length);
  for (const column of columns)
    for (let d = 0; d < mean.length; d += 1) mean[d]! += column[d]! / columns.length;
  return mean;
}

/** Greatest or smallest over columns, draw by draw. */
export function extremeColumn(columns: readonly Float64Array[], which: 'max' | 'min'): Float64Array {
  const extreme = columns[0]!.slice();
  for (const column of columns.slice(1))
    for (let d = 0; d < extreme.length; d += 1) {
      const value = column[d]!;
      if (which === 'max' ? value > extreme[d]! : value < extreme[d]!) extreme[d] = value;
    }
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
