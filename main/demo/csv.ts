import type { Row } from './patterns.ts';

const columns = [
  'series',
  'stimulus',
  'signal_r',
  'signal_g',
  'signal_b',
  'hue',
  'saturation',
  'patch',
  'ref_L',
  'ref_a',
  'ref_b',
  'window',
  'seconds',
  'pattern',
  'position',
  'level',
  'angle',
  'plane',
  'x',
  'y',
  'Y',
  'quantity',
  'value',
  'unit',
] as const;

/** A readings file: header and rows, with the columns that any row uses. No value here needs quoting. */
export function readingsFile(rows: readonly Row[]): string {
  const used = columns.filter((column) => rows.some((row) => (row[column] ?? '') !== ''));
  const lines = rows.map((row) => used.map((column) => row[column] ?? '').join(','));
  return [used.join(','), ...lines, ''].join('\n');
}
