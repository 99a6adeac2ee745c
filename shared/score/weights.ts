/**
 * Weighted mean of the points: Σ w·p / Σ w. Null where a criterion of weight above 0 has no points: a total over
 * what happens to be measured would favour sets that were measured little.
 */
export function weightedTotal(parts: readonly { weight: number; points: number | null }[]): number | null {
  const heavy = parts.filter(({ weight }) => weight > 0);
  if (heavy.length === 0 || heavy.some(({ points }) => points === null)) return null;
  const weights = heavy.reduce((sum, { weight }) => sum + weight, 0);
  return heavy.reduce((sum, { weight, points }) => sum + weight * points!, 0) / weights;
}
