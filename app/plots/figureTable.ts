import type { Figure, GridCell, Patch, ReadingRef } from './figure.ts';
import { cellPairs, patchPairs, sharesGrid } from './pairs.ts';

/** The readings of a row stand in it as what they are, so that a table on the page can pick them. */
export type TableCell = string | number | null | ReadingRef;

/** A figure as rows and columns: the alternative for screen readers and the content of the CSV export. */
export interface FigureTable {
  columns: readonly { label: string; unit: string }[];
  rows: readonly (readonly TableCell[])[];
}

/** `sdr-calm#7 sdr-calm#8` */
export function refText(ref: ReadingRef): string {
  return ref.rows.map((row) => `${ref.run}#${row}`).join(' ');
}

export function figureTable(figure: Figure): FigureTable {
  const end = [
    { label: 'U = 2u', unit: '' },
    { label: 'readings', unit: '' },
  ];
  const laidOver =
    'other' in figure && figure.other
      ? [
          { label: figure.other.label, unit: figure.unit },
          { label: `U = 2u, ${figure.other.label}`, unit: '' },
          { label: `readings, ${figure.other.label}`, unit: '' },
        ]
      : [];
  const expanded = (u: number | null) => (u === null ? null : 2 * u);
  const beside = (laid: unknown, other: Patch | GridCell | null) =>
    laid === undefined ? [] : [other?.value ?? null, expanded(other?.u ?? null), other?.ref ?? null];
  switch (figure.form) {
    case 'levels':
      return {
        columns: [
          ...(figure.lines.length > 1 ? [{ label: 'line', unit: '' }] : []),
          { label: figure.x.label, unit: figure.x.unit },
          { label: figure.y.label, unit: figure.y.unit },
          ...end,
        ],
        rows: figure.lines.flatMap((line) =>
          line.points.map((point) => [
            ...(figure.lines.length > 1 ? [line.label] : []),
            point.x,
            point.y,
            expanded(point.u),
            point.ref,
          ]),
        ),
      };
    case 'plane':
      return {
        columns: [
          { label: 'area', unit: '' },
          { label: 'corner', unit: '' },
          { label: figure.diagram === 'xy' ? 'x' : 'u′', unit: '' },
          { label: figure.diagram === 'xy' ? 'y' : 'v′', unit: '' },
          { label: 'readings', unit: '' },
        ],
        rows: figure.areas.flatMap((area) =>
          area.corners.map((corner, index) => [
            area.label,
            ['red', 'green', 'blue'][index] ?? corner.label,
            corner.x,
            corner.y,
            corner.ref,
          ]),
        ),
      };
    case 'patches':
      return {
        columns: [{ label: 'patch', unit: '' }, { label: 'error', unit: figure.unit }, ...end, ...laidOver],
        rows: patchPairs(figure).map(({ own, other }) => [
          own.label,
          own.value,
          expanded(own.u),
          own.ref,
          ...beside(figure.other, other),
        ]),
      };
    case 'grid':
      return {
        columns: [
          { label: 'row', unit: '' },
          { label: 'column', unit: '' },
          { label: 'against the centre', unit: figure.unit },
          ...end,
          ...laidOver,
        ],
        rows: [
          ...cellPairs(figure).map(({ own, other }) => [
            own.row,
            own.column,
            own.value,
            expanded(own.u),
            own.ref,
            ...beside(figure.other, other),
          ]),
          ...(figure.other && !sharesGrid(figure)
            ? figure.other.cells.map((cell) => [
                cell.row,
                cell.column,
                null,
                null,
                '',
                ...beside(figure.other, cell),
              ])
            : []),
        ],
      };
  }
}

/** RFC 4180 with LF, one header row, numbers with a decimal point and at most six significant digits. */
export function figureCsv(figure: Figure): string {
  const { columns, rows } = figureTable(figure);
  const header = columns.map((column) => (column.unit ? `${column.label} (${column.unit})` : column.label));
  const text = (cell: TableCell) => {
    if (typeof cell === 'number') return String(Number(cell.toPrecision(6)));
    return typeof cell === 'string' ? cell : cell === null ? '' : refText(cell);
  };
  const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return `${[header, ...rows.map((row) => row.map(text))].map((row) => row.map(quoted).join(',')).join('\n')}\n`;
}
