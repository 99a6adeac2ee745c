import { seriesNames } from '../../shared/contract/reading.ts';

/** What a column of a readings file may hold. Other columns are kept as text. */
export type ColumnKind =
  | { holds: 'number'; low?: number; high?: number; lowOpen?: boolean; what: string }
  | { holds: 'word'; words: readonly string[] }
  | { holds: 'place' }
  | { holds: 'time' }
  | { holds: 'text' };

const percent = (what: string): ColumnKind => ({ holds: 'number', low: 0, high: 100, what });
/** Beyond any display: a larger luminance is a slip of columns or units. */
const greatestLuminance = 1_000_000;

/** The columns that Nitproof reads, by their case-sensitive header name. */
export const readingColumns: ReadonlyMap<string, ColumnKind> = new Map<string, ColumnKind>([
  ['series', { holds: 'word', words: seriesNames }],
  ['x', { holds: 'number', what: 'x' }],
  ['y', { holds: 'number', what: 'y' }],
  ['Y', { holds: 'number', low: 0, high: greatestLuminance, what: 'luminance' }],
  ['X', { holds: 'number', low: 0, high: greatestLuminance, what: 'X' }],
  ['Z', { holds: 'number', low: 0, high: greatestLuminance, what: 'Z' }],
  ['stimulus', percent('stimulus in %')],
  ['code', { holds: 'number', low: 0, what: 'code value' }],
  ['signal_r', percent('signal in %')],
  ['signal_g', percent('signal in %')],
  ['signal_b', percent('signal in %')],
  ['hue', { holds: 'word', words: ['red', 'green', 'blue', 'cyan', 'magenta', 'yellow', 'white', 'black'] }],
  ['saturation', percent('saturation in %')],
  ['patch', { holds: 'text' }],
  ['ref_L', { holds: 'number', what: 'reference L*' }],
  ['ref_a', { holds: 'number', what: 'reference a*' }],
  ['ref_b', { holds: 'number', what: 'reference b*' }],
  ['ref_x', { holds: 'number', what: 'reference x' }],
  ['ref_y', { holds: 'number', what: 'reference y' }],
  ['ref_Y', { holds: 'number', low: 0, what: 'reference Y' }],
  ['window', { holds: 'number', low: 0, lowOpen: true, high: 100, what: 'window in % of the screen' }],
  ['seconds', { holds: 'number', low: 0, what: 'time in seconds' }],
  ['pattern', { holds: 'word', words: ['full-white', 'full-black', 'chequer-white', 'chequer-black'] }],
  ['position', { holds: 'place' }],
  ['level', { holds: 'text' }],
  ['angle', { holds: 'number', low: -90, high: 90, what: 'angle in degrees' }],
  ['plane', { holds: 'word', words: ['horizontal', 'vertical'] }],
  ['quantity', { holds: 'text' }],
  ['value', { holds: 'number', what: 'value' }],
  ['unit', { holds: 'text' }],
  ['taken', { holds: 'time' }],
]);

/** What a row of each series cannot do without; a list is a choice. Checked for each row that has the series. */
export const neededColumns: Readonly<Record<string, readonly (readonly string[])[]>> = {
  greyscale: [['stimulus', 'code']],
  primaries: [['hue']],
  saturation: [['hue'], ['saturation']],
  chart: [],
  window: [['window']],
  contrast: [['pattern']],
  uniformity: [['position']],
  angle: [['angle']],
  single: [['quantity'], ['value']],
};

/**
 * Luminance columns whose header names the unit. 1 fL = 1/π cd/ft² = 3.4262590996 cd/m² (from 0.3048 m a foot).
 */
export function luminanceHeader(name: string): { factor: number; unit: string } | null {
  const match = /^Y[ _]?[([]?(cd\/m²|cd\/m2|cd_m2|nits?|fL|ft-?L)[)\]]?$/.exec(name);
  if (match === null) return null;
  return /^f/.test(match[1]!) ? { factor: 3.4262590996, unit: 'foot-lambert' } : { factor: 1, unit: 'cd/m²' };
}
