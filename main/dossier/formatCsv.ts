import type { CellTable } from '../intake/cellTable.ts';
import { withGuard } from '../intake/formulaGuard.ts';

/**
 * CSV as every export writes it (RFC 4180 with LF): a header row, quotes only where a cell needs them, and an
 * apostrophe before text that a spreadsheet would run.
 */
export function formatCsv({ columns, rows }: CellTable): string {
  const lines = [columns.map(quoted).join(',')];
  for (const cells of rows) {
    const line = cells.map((cell) => quoted(withGuard(cell))).join(',');
    // A lone empty cell and a comment look like a line to skip.
    lines.push(line === '' || (cells.length === 1 && line.startsWith('#')) ? `"${line}"` : line);
  }
  return `${lines.join('\n')}\n`;
}

function quoted(cell: string): string {
  return /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
