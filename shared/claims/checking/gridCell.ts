/**
 * The cell of a uniformity grid (`r1c1` is the top left) that words name: two sides are a corner, one side is the
 * middle of that edge, "centre" the middle. Undefined where the words or the grid leave it open.
 */
export function cellAt(words: string, cells: readonly string[]): string | undefined {
  if (/^r\d+c\d+$/.test(words)) return words;
  const rows = Math.max(0, ...cells.map((cell) => Number(/^r(\d+)/.exec(cell)?.[1] ?? 0)));
  const columns = Math.max(0, ...cells.map((cell) => Number(/c(\d+)$/.exec(cell)?.[1] ?? 0)));
  if (rows % 2 === 0 || columns % 2 === 0) return undefined;
  const named = new Set(words.toLowerCase().split(/\s+/));
  const place = (first: string, last: string, count: number) => {
    if (named.has(first) && named.has(last)) return undefined;
    return named.has(first) ? 1 : named.has(last) ? count : (count + 1) / 2;
  };
  const row = place('top', 'bottom', rows);
  const column = place('left', 'right', columns);
  const isKnown = ['top', 'bottom', 'left', 'right', 'centre'].some((word) => named.has(word));
  return isKnown && row !== undefined && column !== undefined ? `r${row}c${column}` : undefined;
}
