/**
 * The cell of a uniformity grid (`r1c1` is the top left) that words name: two sides are a corner, one side is the
 * middle of that edge, "centre" the middle. Undefined where the words or the grid leave it open.
 */
export function cellAt(words: string, cells: readonly string[]): string | undefined {
  if (/^r\d+c\d+$/.test(words)) return words;
  const { rows, columns } = sizeOf(cells);
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

/** The cells of a uniformity grid that lie in a corner, or along an edge, its corners among them. */
export function cellsOf(place: string, cells: readonly string[]): readonly string[] {
  const { rows, columns } = sizeOf(cells);
  return cells.filter((cell) => {
    const [, row, column] = /^r(\d+)c(\d+)$/.exec(cell) ?? [];
    const ends = [
      Number(row) === 1 || Number(row) === rows,
      Number(column) === 1 || Number(column) === columns,
    ];
    return place === 'corner' ? ends.every(Boolean) : ends.some(Boolean);
  });
}

function sizeOf(cells: readonly string[]): { rows: number; columns: number } {
  const greatest = (part: RegExp) => Math.max(0, ...cells.map((cell) => Number(part.exec(cell)?.[1] ?? 0)));
  return { rows: greatest(/^r(\d+)/), columns: greatest(/c(\d+)$/) };
}
