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
    const slopes = monotoneSlopes(x, y);
    return x[i]! + width * rootOf(before, slopes[i]! * width, after, slopes[i + 1]! * width);
  }
  return undefined;
}

function monotoneSlopes(x: readonly number[], y: readonly number[]): number[] {
  const last = x.length - 1;
  const secant = (i: number) => (y[i + 1]! - y[i]!) / (x[i + 1]! - x[i]!);
  const slopes = new Array<number>(x.length);
  slopes[0] = secant(0);
  slopes[last] = secant(last - 1);
  for (let i = 1; i < last; i += 1) {
    const left = secant(i - 1);
    const right = secant(i);
    slopes[i] = left * right <= 0 ? 0 : (left + right) / 2;
  }
  for (let i = 0; i < last; i += 1) {
    const rise = secant(i);
    if (rise === 0) {
      slopes[i] = 0;
      slopes[i + 1] = 0;
      continue;
    }
    const a = slopes[i]! / rise;
    const b = slopes[i + 1]! / rise;
    const size = Math.sqrt(a * a + b * b);
    if (size <= 3) continue;
    slopes[i] = (3 * a * rise) / size;
    slopes[i + 1] = (3 * b * rise) / size;
  }
  return slopes;
}

/**
 * Where the cubic from `before` to `after`, with those slopes at its ends, is 0 in 0 to 1: 26 halvings, a millionth of
 * a degree between directions 60° apart. Precondition: the ends differ in sign.
 */
function rootOf(before: number, slopeBefore: number, after: number, slopeAfter: number): number {
  const square = 3 * (after - before) - 2 * slopeBefore - slopeAfter;
  const cube = 2 * (before - after) + slopeBefore + slopeAfter;
  let low = 0;
  let high = 1;
  for (let round = 0; round < 26; round += 1) {
    const t = (low + high) / 2;
    if ((before + t * (slopeBefore + t * (square + t * cube))) * before > 0) low = t;
    else high = t;
  }
  return (low + high) / 2;
}
