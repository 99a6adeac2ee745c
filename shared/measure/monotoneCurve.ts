/**
 * Where a curve through points first passes a limit, walking up x. Between points it is the monotone cubic of Fritsch
 * and Carlson 1980 (from memory), which makes no bump that the points do not have. Undefined when the limit is not
 * passed. Precondition: x strictly ascending, as many y.
 */
export function crossingOf(x: readonly number[], y: readonly number[], limit: number): number | undefined {
  for (let i = 0; i + 1 < x.length; i += 1) {
    const before = y[i]! - limit;
    const after = y[i + 1]! - limit;
    if (before === 0) return x[i]!;
    if (before * after > 0) continue;
    if (after === 0) return x[i + 1]!;
    const width = x[i + 1]! - x[i]!;
    const slopes = monotoneSlopes(x, y, Math.min(i + 2, x.length - 1));
    return x[i]! + width * rootOf(before, slopes[i]! * width, after, slopes[i + 1]! * width);
  }
  return undefined;
}

/** Slopes of the curve at the points before `until`; those farther up do not act back on them. */
function monotoneSlopes(x: readonly number[], y: readonly number[], until: number): Float64Array {
  const last = x.length - 1;
  if (slopes.length < x.length) slopes = new Float64Array(2 * x.length);
  let left = (y[1]! - y[0]!) / (x[1]! - x[0]!);
  slopes[0] = left;
  for (let i = 1; i <= until; i += 1) {
    if (i === last) {
      slopes[i] = left;
      break;
    }
    const right = (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!);
    slopes[i] = left * right <= 0 ? 0 : (left + right) / 2;
    left = right;
  }
  for (let i = 0; i < until; i += 1) {
    const rise = (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!);
    if (rise === 0) {
      slopes[i] = 0;
      slopes[i + 1] = 0;
      continue;
    }
    const a = slopes[i]! / rise;
    const b = slopes[i + 1]! / rise;
    const square = a * a + b * b;
    if (square <= 9) continue;
    const shrink = 3 / Math.sqrt(square);
    slopes[i]! *= shrink;
    slopes[i + 1]! *= shrink;
  }
  return slopes;
}

// Room for the slopes of one curve; nothing is kept between calls.
let slopes = new Float64Array(32);

/**
 * Where the cubic from `before` to `after`, with those slopes at its ends, is 0 in 0 to 1: Newton's steps, halving
 * where one would leave the interval that holds the root. Precondition: the ends differ in sign.
 */
function rootOf(before: number, slopeBefore: number, after: number, slopeAfter: number): number {
  const square = 3 * (after - before) - 2 * slopeBefore - slopeAfter;
  const cube = 2 * (before - after) + slopeBefore + slopeAfter;
  let low = 0;
  let high = 1;
  let t = before / (before - after);
  for (let round = 0; round < 60 && high - low > 1e-12; round += 1) {
    const value = before + t * (slopeBefore + t * (square + t * cube));
    if (value * before > 0) low = t;
    else high = t;
    const next = t - value / (slopeBefore + t * (2 * square + t * 3 * cube));
    if (Math.abs(next - t) < 1e-12) return next;
    t = next > low && next < high ? next : (low + high) / 2;
  }
  return t;
}
