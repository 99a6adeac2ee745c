import type { SeriesName } from '../contract/reading.ts';

/** Keys of the house's limits that a quantity is held against where a sentence names none. */
export type LimitKey =
  | 'visibleDe2000'
  | 'visibleDeItp'
  | 'tint'
  | 'saturationPercent'
  | 'hueDegrees'
  | 'eotfPercent'
  | 'gamma'
  | 'cctKelvin';

export interface CatalogueRow {
  /** Id as in `docs/measuring.md`; `<hue>`, `<level>`, `<channel>`, `<gamut>`, `<diagram>`, `<mode>` stand for parts. */
  pattern: string;
  /** For people; the same placeholders are filled in. */
  label: string;
  short: string;
  /** As printed; empty for a bare number */
  unit: string;
  axisUnit?: string;
  direction: 'lower' | 'higher' | 'neither';
  /** Decimals that are conventional in print */
  decimals: number;
  /** How much a reader would miss it if the article left it out, 0 to 1 */
  importance: number;
  series: SeriesName;
  limit?: LimitKey;
}
