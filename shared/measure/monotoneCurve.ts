/**
 * Where a curve through points first passes a limit, walking up x. Between points it is the monotone cubic of Fritsch
 * and Carlson 1980 (from memory), which makes no bump that the points do not have. Undefined when the limit is not
 * passed. Precondition: x strictly ascending, as many y.
 */
export function crossingOf(x: readonly number[], y: readonly number[], limit: number): number | undefined {
  const slopes = monotoneSlopes(x, y);
  for (let i = 0; i + 1 < x.length; i += 1) {
    const [before, after] = [y[i]! - limit, y[i + 1]! - limit];
    if (before === 0) return x[i]!;
    if (before * after > 0) continue;
    if (after === 0) return x[i + 1]!;
    return bisect(x[i]!, x[i + 1]!, (at) => hermite(x, y, slopes, i, at) - limit, before);
  }
  return undefined;
}

function monotoneSlopes(x: readonly number[], y: readonly number[]): number[] {
  const secants = x.slice(1).map((at, i) => (y[i + 1]! - y[i]!) / (at - x[i]!));
  const slopes = x.map((_, i) => {
    const [left, right] = [secants[i - 1], secants[i]];
    if (left === undefined) return right ?? 0;
    if (right === undefined) return left;
    return left * right <= 0 ? 0 : (left + right) / 2;
  });
  secants.forEach((secant, i) => {
    if (secant === 0) {
      slopes[i] = 0;
      slopes[i + 1] = 0;
      return;
    }
    const [a, b] = [slopes[i]! / secant, slopes[i + 1]! / secant];
    const size = Math.sqrt(a * a + b * b);
    if (size <= 3) return;
    slopes[i] = (3 * a * secant) / size;
    slopes[i + 1] = (3 * b * secant) / size;
  });
  return slopes;
}

function hermite(
  x: readonly number[],
  y: readonly number[],
  slopes: readonly number[],
  i: number,
  at: number,
): number {
  const width = x[i + 1]! - x[i]!;
  const t = (at - x[i]!) / width;
  return (
    y[i]! * (1 + 2 * t) * (1 - t) ** 2 +
    slopes[i]! * width * t * (1 - t) ** 2 +
    y[i + 1]! * t * t * (3 - 2 * t) +
    slopes[i + 1]! * width * t * t * (t - 1)
  );
}

/** 26 halvings: a millionth of a degree between directions 60° apart. */
function bisect(from: number, to: number, f: (at: number) => number, atFrom: number): number {
  let [low, high] = [from, to];
  for (let round = 0; round < 26; round += 1) {
    const middle = (low + high) / 2;
    if (f(middle) * atFrom > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
