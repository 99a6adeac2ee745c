import type {
  Figure,
  FigurePoint,
  GridCell,
  GridFigure,
  LevelsFigure,
  Patch,
  PatchesFigure,
  ReadingRef,
} from './figure.ts';
import { listText, numberText, plusMinus, withUnit } from './numberText.ts';
import { patchPairs } from './pairs.ts';

/** `Red, 60 %: 3.4 ± 0.3` */
export function levelText(figure: LevelsFigure, line: string, point: FigurePoint): string {
  const at = withUnit(point.x, figure.x.unit, Number.isInteger(point.x) ? 0 : 1);
  const value = plusMinus(point.y, point.u, figure.y.unit, figure.valueDecimals);
  return `${line ? `${line}, ` : ''}${at}: ${value}${point.counts ? '' : ', does not count'}`;
}

/** `reading 7` or `readings 7, 8 and 9` */
export function rowsText(ref: ReadingRef | null): string {
  if (!ref || ref.rows.length === 0) return '';
  const rows = ref.rows.map(String);
  return `${rows.length === 1 ? 'reading' : 'readings'} ${listText(rows)}`;
}

/** One mark of any figure, for moving from mark to mark by key and for the table. */
export interface Spot {
  key: string;
  text: string;
  ref: ReadingRef | null;
}

/** Every mark of a figure in reading order. */
export function spotsOf(figure: Figure): Spot[] {
  if (figure.form === 'levels')
    return figure.lines.flatMap((line, l) =>
      line.points.map((point, p) => ({
        key: `${l}.${p}`,
        text: levelText(figure, line.label, point),
        ref: point.ref,
      })),
    );
  if (figure.form === 'plane')
    return figure.areas.flatMap((area, a) =>
      area.corners.flatMap((corner, c) =>
        corner.ref
          ? [
              {
                key: `${a}.${c}`,
                text: `${area.label}, ${corner.label}: ${numberText(corner.x, 4)}, ${numberText(corner.y, 4)}`,
                ref: corner.ref,
              },
            ]
          : [],
      ),
    );
  if (figure.form === 'patches')
    return patchPairs(figure).flatMap(({ own, other, otherIndex }, p) => [
      { key: `${p}`, text: patchText(figure, own, figure.other?.lead), ref: own.ref },
      ...(other
        ? [{ key: otherKey(otherIndex), text: patchText(figure, other, figure.other?.label), ref: other.ref }]
        : []),
    ]);
  const own = figure.cells.map((cell, c) => ({
    key: `${c}`,
    text: cellText(figure, cell, figure.other?.lead),
    ref: cell.ref,
  }));
  const others = (figure.other?.cells ?? []).map((cell, c) => ({
    key: otherKey(c),
    text: cellText(figure, cell, figure.other?.label),
    ref: cell.ref,
  }));
  return [...own, ...others];
}

/** Key of a mark of the run laid over, by its place in that run's list */
export function otherKey(index: number): string {
  return `o${index}`;
}

/** `07, adjusted: 1.4 ± 0.1` */
function patchText(figure: PatchesFigure, patch: Patch, run: string | undefined): string {
  return `${[patch.label, run].filter(Boolean).join(', ')}: ${plusMinus(patch.value, patch.u, figure.unit, figure.decimals)}`;
}

/** `row 1, column 3, adjusted: −20 ± 0.4 %` */
function cellText(figure: GridFigure, cell: GridCell, run: string | undefined): string {
  const place = [`row ${cell.row}, column ${cell.column}`, run].filter(Boolean).join(', ');
  return `${place}: ${plusMinus(cell.value, cell.u, figure.unit, figure.decimals)}`;
}
