import type { GridCell, GridFigure, Patch, PatchesFigure } from './figure.ts';

/** A mark of the leading run and its partner in the run laid over, with the partner's place in its own list. */
export interface Pair<T> {
  own: T;
  other: T | null;
  otherIndex: number;
}

/** Each patch beside the same patch of the run laid over. */
export function patchPairs(figure: PatchesFigure): Pair<Patch>[] {
  return pairs(figure.patches, figure.other?.patches ?? [], (patch) => patch.label);
}

/** Each place beside the same place of the run laid over; places of another grid are other places of the screen. */
export function cellPairs(figure: GridFigure): Pair<GridCell>[] {
  return pairs(
    figure.cells,
    sharesGrid(figure) ? figure.other!.cells : [],
    (cell) => `${cell.row} ${cell.column}`,
  );
}

export function sharesGrid({ rows, columns, other }: GridFigure): boolean {
  return other !== undefined && other.rows === rows && other.columns === columns;
}

function pairs<T>(own: readonly T[], others: readonly T[], nameOf: (each: T) => string): Pair<T>[] {
  const places = new Map(others.map((each, index) => [nameOf(each), index]));
  return own.map((each) => {
    const otherIndex = places.get(nameOf(each)) ?? -1;
    return { own: each, other: others[otherIndex] ?? null, otherIndex };
  });
}
