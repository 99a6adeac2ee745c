import type { QuantityDraws } from '../contract/measurement.ts';
import { meanOfCounting } from '../measure/statistics.ts';

/** Standard deviations over the draws: of each value and of average, max and min of those that count. */
export interface DrawnSpread {
  values: (number | null)[];
  average: number | null;
  max: number | null;
  min: number | null;
}

/** A tail so long that the standard deviation of the draws hangs on a few of them (of a quotient near 0). */
const longTail = 8;

export function spreadOf(draws: QuantityDraws): DrawnSpread {
  const { count, counts, values } = draws;
  const size = counts.length;
  const column = new Float64Array(count);
  const each = Array.from({ length: size }, (_, i) => {
    for (let d = 0; d < count; d += 1) column[d] = values[d * size + i]!;
    return deviationOf(column);
  });
  if (!counts.some(Boolean)) return { values: each, average: null, max: null, min: null };
  for (let d = 0; d < count; d += 1) column[d] = meanOfCounting(values, d * size, counts)!;
  return {
    values: each,
    average: deviationOf(column),
    ...extremes(draws),
  };
}

/** u of max and min alone, for quantities whose other u is known at first order. */
export function extremes({ count, counts, values }: QuantityDraws): Pick<DrawnSpread, 'max' | 'min'> {
  const size = counts.length;
  const highest = new Float64Array(count);
  const lowest = new Float64Array(count);
  for (let d = 0; d < count; d += 1) {
    let high = Number.NEGATIVE_INFINITY;
    let low = Number.POSITIVE_INFINITY;
    for (let i = 0; i < size; i += 1) {
      if (!counts[i]) continue;
      const value = values[d * size + i]!;
      if (value > high) high = value;
      if (value < low) low = value;
    }
    highest[d] = high;
    lowest[d] = low;
  }
  return { max: deviationOf(highest), min: deviationOf(lowest) };
}

/**
 * Standard deviation of the finite draws. Where the tail is so long that a few draws decide it, half the width of
 * the central 68.27 % interval instead, which is the same for a normal distribution and stays finite for a quotient
 * whose divisor may be 0. Null when hardly a draw has a value.
 */
export function deviationOf(column: Float64Array): number | null {
  let n = 0;
  let mean = 0;
  let squares = 0;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const value of column) {
    if (!Number.isFinite(value)) continue;
    n += 1;
    const step = value - mean;
    mean += step / n;
    squares += step * (value - mean);
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (n < 2 || n < column.length / 2) return null;
  const deviation = Math.sqrt(squares / (n - 1));
  if (Math.max(most - mean, mean - least) <= longTail * deviation) return deviation;
  const sorted = column.filter(Number.isFinite).sort();
  const quantile = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
  return (quantile(0.84134) - quantile(0.15866)) / 2;
}
