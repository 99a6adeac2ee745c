import type { Figure, ReadingRef } from './figure.ts';

/** A figure as rows and columns: the alternative for screen readers and the content of the CSV export. */
export interface FigureTable {
  columns: readonly { label: string; unit: string }[];
  rows: readonly (readonly (string | number | null)[])[];
}

const source = (ref: ReadingRef | null) => (ref ? ref.rows.map((row) => `${ref.run}#${row}`).join(' ') : '');

export function figureTable(figure: Figure): FigureTable {
  const end = [
    { label: 'U = 2u', unit: '' },
    { label: 'readings', unit: '' },
  ];
  const laidOver =
    'other' in figure && figure.other !== undefined ? [{ label: figure.other, unit: figure.unit }] : [];
  const expanded = (u: number | null) => (u === null ? null : 2 * u);
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
            source(point.ref),
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
            source(corner.ref),
          ]),
        ),
      };
    case 'patches':
      return {
        columns: [{ label: 'patch', unit: '' }, { label: 'error', unit: figure.unit }, ...end, ...laidOver],
        rows: figure.patches.map((patch) => [
          patch.label,
          patch.value,
          expanded(patch.u),
          source(patch.ref),
          ...(figure.other === undefined ? [] : [patch.other ?? null]),
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
        rows: figure.cells.map((cell) => [
          cell.row,
          cell.column,
          cell.value,
          expanded(cell.u),
          source(cell.ref),
          ...(figure.other === undefined ? [] : [cell.other ?? null]),
        ]),
      };
  }
}

/** RFC 4180 with LF, one header row, numbers with a decimal point and at most six significant digits. */
export function figureCsv(figure: Figure): string {
  const { columns, rows } = figureTable(figure);
  const header = columns.map((column) => (column.unit ? `${column.label} (${column.unit})` : column.label));
  const text = (cell: string | number | null) =>
    cell === null ? '' : typeof cell === 'number' ? String(Number(cell.toPrecision(6))) : cell;
  const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return `${[header, ...rows.map((row) => row.map(text))].map((row) => row.map(quoted).join(',')).join('\n')}\n`;
}
