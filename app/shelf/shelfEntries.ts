import type { ArticleSummary, UnitSummary } from '../../shared/contract/door.ts';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { RunMeasurements } from '../../shared/contract/measurement.ts';
import { type Headline, type HeadlineValue, headlineValue } from '../bench/headlines.ts';
import { headlineRuns } from './headlineRuns.ts';
import type { MeasuredEvidence } from './useMeasuredEvidence.ts';

export interface Spoken {
  run: RunEvidence;
  measured: RunMeasurements;
}

/** One set as a line of the Shelf. */
export interface ShelfEntry {
  summary: UnitSummary;
  unit: UnitEvidence | null;
  /** Runs that may speak for it, first choice first */
  sdr: readonly Spoken[];
  hdr: readonly Spoken[];
  articles: readonly ArticleSummary[];
}

export const shelfHeadlines = {
  error: { signal: 'sdr', headline: { id: 'grey.de2000', stat: 'average' } },
  peak: { signal: 'hdr', headline: { id: 'peak', stat: 'max' } },
  contrast: { signal: 'sdr', headline: { id: 'contrast.native', stat: 'scalar' } },
  gamut: { signal: 'hdr', headline: { id: 'coverage.p3.uv', stat: 'scalar' } },
} as const satisfies Record<string, { signal: 'sdr' | 'hdr'; headline: Headline }>;
export type ShelfColumn = keyof typeof shelfHeadlines;

export function shelfEntries(
  units: readonly UnitSummary[],
  articles: readonly ArticleSummary[],
  known: MeasuredEvidence | null,
): ShelfEntry[] {
  return units.map((summary) => {
    const unit = known?.evidence.units.get(summary.id) ?? null;
    const spoken = (signal: 'SDR' | 'HDR') =>
      known && unit
        ? headlineRuns(unit, signal, known.evidence.articles).map((run) => ({
            run,
            measured: known.measurementsOf(unit, run),
          }))
        : [];
    return {
      summary,
      unit,
      sdr: spoken('SDR'),
      hdr: spoken('HDR'),
      articles: articles.filter((article) => article.unit === summary.id),
    };
  });
}

export function columnValue(entry: ShelfEntry, column: ShelfColumn): HeadlineValue | null {
  const { signal, headline } = shelfHeadlines[column];
  for (const { measured } of entry[signal]) {
    const value = headlineValue(measured, headline);
    if (value) return value;
  }
  return null;
}

export type SortKey = 'latest' | 'name' | 'price' | ShelfColumn;

export interface ShelfFilter {
  words: string;
  maker: string;
  panel: string;
  priceUnder: number | null;
}

/** Sets that fit every part of the filter; each word must stand in maker, model, panel, backlight or an article's title. */
export function fits(entry: ShelfEntry, filter: ShelfFilter): boolean {
  const { summary } = entry;
  if (filter.maker && summary.maker !== filter.maker) return false;
  if (filter.panel && summary.panel !== filter.panel) return false;
  if (filter.priceUnder !== null && !(summary.price && summary.price.amount <= filter.priceUnder))
    return false;
  const text = [
    summary.maker,
    summary.model,
    summary.panel,
    summary.backlight,
    summary.diagonalInches && `${summary.diagonalInches} inch`,
    ...entry.articles.map((article) => article.title),
  ]
    .join(' ')
    .toLowerCase();
  return filter.words
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** Made once: a comparison that names its language each time makes a collator each time. */
const names = new Intl.Collator('en');

/** Best first for what can be better; cheapest first; sets without a value at the end. */
export function sorted(entries: readonly ShelfEntry[], key: SortKey): ShelfEntry[] {
  const name = (entry: ShelfEntry) => `${entry.summary.maker} ${entry.summary.model}`;
  const rank = (entry: ShelfEntry): number => {
    if (key === 'price') return entry.summary.price?.amount ?? Number.POSITIVE_INFINITY;
    if (key === 'name' || key === 'latest') return 0;
    const value = columnValue(entry, key);
    if (!value) return Number.POSITIVE_INFINITY;
    const number = 'over' in value ? value.over : value.value;
    return key === 'error' ? number : -number;
  };
  return [...entries].sort((a, b) => {
    if (key === 'latest') {
      const [dayOfA, dayOfB] = [a.summary.latestRun ?? '', b.summary.latestRun ?? ''];
      if (dayOfA !== dayOfB) return dayOfA < dayOfB ? 1 : -1;
    }
    const [first, second] = [rank(a), rank(b)];
    return first === second ? names.compare(name(a), name(b)) : first < second ? -1 : 1;
  });
}
