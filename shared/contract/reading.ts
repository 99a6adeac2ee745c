/** The series that a readings file may hold, in the order in which they are listed everywhere. */
export const seriesNames = [
  'greyscale',
  'primaries',
  'saturation',
  'chart',
  'window',
  'contrast',
  'uniformity',
  'angle',
  'single',
] as const;
export type SeriesName = (typeof seriesNames)[number];

export type Hue = 'red' | 'green' | 'blue' | 'cyan' | 'magenta' | 'yellow' | 'white' | 'black';

/**
 * One row of a readings file, typed. Tristimulus rows are already turned into x, y, Y;
 * a code value is already turned into `stimulus` by the run's source bits and range.
 * Chromaticity is CIE 1931 2°, luminance in cd/m², null where the row has none.
 */
export interface Reading {
  /** Data row from 1, as evidence names it (`run#row`). */
  row: number;
  series: SeriesName;
  x: number | null;
  y: number | null;
  /** cd/m² */
  Y: number | null;
  /** % of the non-linear signal's nominal range */
  stimulus?: number;
  /** The pattern actually sent, % of range for R′, G′, B′ */
  signal?: readonly [number, number, number];
  hue?: Hue;
  /** % */
  saturation?: number;
  patch?: string;
  /** CIELAB under D50, 2° */
  referenceLab?: readonly [number, number, number];
  /** x, y, Y under the target white, white = 1 */
  referencexyY?: readonly [number, number, number];
  /** % of the screen area */
  window?: number;
  seconds?: number;
  pattern?: 'full-white' | 'full-black' | 'chequer-white' | 'chequer-black';
  /** `r1c1` … from top left */
  position?: string;
  level?: string;
  /** Degrees off the perpendicular, right and up positive */
  angle?: number;
  plane?: 'horizontal' | 'vertical';
  quantity?: string;
  value?: number;
  unit?: string;
}
