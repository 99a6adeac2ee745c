/** Windows that are commonly measured, % of the screen area: neighbours in this row are near enough. */
const windows = [1, 2, 5, 10, 18, 25, 50, 75, 100] as const;

/**
 * True where two measured places are so close that an onset between them is located: 10 points of stimulus,
 * 25 of saturation, 15°, or the neighbour in the row of windows.
 */
export function nearEnough(id: string, one: number, other: number): boolean {
  const distance = Math.abs(one - other) - 1e-9;
  if (id.startsWith('angle.')) return distance <= 15;
  if (id.startsWith('sweep.')) return distance <= 25;
  if (/^peak(\.|$)/.test(id)) {
    const [low, high] = [Math.min(one, other), Math.max(one, other)];
    return windows.filter((window) => window > low + 1e-9 && window < high - 1e-9).length === 0;
  }
  return distance <= 10;
}
