/**
 * Points that a measured value earns on a curve of corners (value, points) with rising value: straight lines
 * between corners, flat outside the first and the last.
 * @throws RangeError for a curve without corners
 */
export function pointsOnCurve(corners: readonly (readonly [number, number])[], value: number): number {
  const first = corners[0];
  if (!first) throw new RangeError('a curve needs at least one corner');
  if (value <= first[0]) return first[1];
  for (let i = 1; i < corners.length; i++) {
    const [x0, y0] = corners[i - 1]!;
    const [x1, y1] = corners[i]!;
    if (value <= x1) return x1 === x0 ? y1 : y0 + ((value - x0) / (x1 - x0)) * (y1 - y0);
  }
  return corners.at(-1)![1];
}

/**
 * The measured value that earns `points`, for "what the score would need": the first place on the curve where it
 * reaches them. Null where no value does.
 */
export function valueForPoints(
  corners: readonly (readonly [number, number])[],
  points: number,
): number | null {
  for (let i = 1; i < corners.length; i++) {
    const [x0, y0] = corners[i - 1]!;
    const [x1, y1] = corners[i]!;
    if (points < Math.min(y0, y1) || points > Math.max(y0, y1)) continue;
    return y1 === y0 ? x0 : x0 + ((points - y0) / (y1 - y0)) * (x1 - x0);
  }
  return corners.length === 1 && corners[0]![1] === points ? corners[0]![0] : null;
}

/** Decimal rounding, halves away from zero, without the binary surprises of 1.005. */
export function roundTo(value: number, decimals: number): number {
  const shifted = Number(`${Math.abs(value).toPrecision(15)}e${decimals}`);
  const rounded = Number(`${Math.round(shifted)}e-${decimals}`);
  return value < 0 ? -rounded : rounded;
}
