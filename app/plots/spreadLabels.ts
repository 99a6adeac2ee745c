/**
 * Moves labels apart so that each has `gap`, keeping their order and as near as can be to where they belong,
 * inside `from` to `to` (px).
 */
export function spreadLabels(wanted: readonly number[], gap: number, from: number, to: number): number[] {
  const order = wanted.map((y, index) => ({ y, index })).sort((a, b) => a.y - b.y);
  const placed = new Array<number>(wanted.length);
  let floor = from;
  for (const { y, index } of order) {
    placed[index] = Math.max(y, floor);
    floor = placed[index] + gap;
  }
  let ceiling = to;
  for (const { index } of order.reverse()) {
    placed[index] = Math.min(placed[index]!, ceiling);
    ceiling = placed[index] - gap;
  }
  return placed;
}
