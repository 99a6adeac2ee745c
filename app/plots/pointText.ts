import type { Figure, FigurePoint, LevelsFigure, ReadingRef } from './figure.ts';
import { listText, numberText, plusMinus, withUnit } from './numberText.ts';

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
    return figure.patches.map((patch, p) => ({
      key: `${p}`,
      text: `${patch.label}: ${plusMinus(patch.value, patch.u, figure.unit, figure.decimals)}`,
      ref: patch.ref,
    }));
  return figure.cells.map((cell, c) => ({
    key: `${c}`,
    text: `row ${cell.row}, column ${cell.column}: ${plusMinus(cell.value, cell.u, figure.unit, figure.decimals)}`,
    ref: cell.ref,
  }));
}
