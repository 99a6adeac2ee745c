import type { Estimate, RunMeasurements } from '../../shared/contract/measurement.ts';
import { catalogueEntry } from '../../shared/measure/index.ts';
import { plusMinus } from '../plots/numberText.ts';

/** A quantity that stands for a run in a line or a table, with how it is taken from its series. */
export interface Headline {
  id: string;
  stat: 'scalar' | 'average' | 'max';
  /** Absent: under either */
  signal?: 'SDR' | 'HDR';
}

export type HeadlineValue = Estimate | { over: number };

/** In the order in which a reader asks; labels, units and decimals are the catalogue's. */
const headlines: readonly Headline[] = [
  { id: 'grey.de2000', stat: 'average' },
  { id: 'grey.de2000', stat: 'max' },
  { id: 'chart.de2000', stat: 'average' },
  { id: 'gamma.average', stat: 'scalar', signal: 'SDR' },
  { id: 'white.cct', stat: 'scalar' },
  { id: 'white', stat: 'scalar', signal: 'SDR' },
  { id: 'peak', stat: 'max', signal: 'HDR' },
  { id: 'peak.hold', stat: 'scalar', signal: 'HDR' },
  { id: 'black', stat: 'scalar', signal: 'SDR' },
  { id: 'contrast.native', stat: 'scalar', signal: 'SDR' },
  { id: 'contrast.sequential', stat: 'scalar', signal: 'SDR' },
  { id: 'contrast.chequer', stat: 'scalar', signal: 'SDR' },
  { id: 'coverage.bt709.uv', stat: 'scalar', signal: 'SDR' },
  { id: 'coverage.p3.uv', stat: 'scalar', signal: 'HDR' },
  { id: 'coverage.p3.xy', stat: 'scalar', signal: 'HDR' },
  { id: 'coverage.bt2020.uv', stat: 'scalar', signal: 'HDR' },
  { id: 'uniformity.white', stat: 'scalar' },
  { id: 'lag', stat: 'scalar' },
];

/** The headlines that a run under this signal has something to say on. */
export function headlinesFor(signal: string): readonly Headline[] {
  const dynamic = signal === 'SDR' ? 'SDR' : 'HDR';
  return headlines.filter((headline) => headline.signal === undefined || headline.signal === dynamic);
}

/** "Colour error of the greyscale, average" */
export function headlineLabel(headline: Headline): string {
  const label = catalogueEntry(headline.id)?.label ?? headline.id;
  if (headline.stat === 'average') return `${label}, average`;
  if (headline.stat === 'max' && catalogueEntry(headline.id)?.direction === 'lower') return `${label}, worst`;
  return label;
}

/** "grey error, worst": for lines where many stand together. */
export function headlineShort(headline: Headline): string {
  const entry = catalogueEntry(headline.id);
  const diagram = headline.id.endsWith('.uv') ? ', u′v′' : headline.id.endsWith('.xy') ? ', xy' : '';
  const name = (entry?.short ?? headline.id) + diagram;
  if (headline.stat === 'average') return `${name}, average`;
  return headline.stat === 'max' && entry?.direction === 'lower' ? `${name}, worst` : name;
}

/** The headline's value in a run's measurements, a lower bound, or null when the run has none. */
export function headlineValue(measured: RunMeasurements, headline: Headline): HeadlineValue | null {
  const found = measured.get(headline.id);
  if (!found || found.state === 'undefined') return null;
  if (found.state === 'over') return { over: found.over };
  if (headline.stat === 'average') return found.average ?? null;
  if (headline.stat === 'max') return found.max ?? null;
  return found.values[0] ?? null;
}

/** `742 ± 15 cd/m²`, `over 75,000:1` */
export function headlineText(headline: Headline, value: HeadlineValue): string {
  const entry = catalogueEntry(headline.id);
  const unit = entry?.unit ?? '';
  const decimals = entry?.decimals ?? 1;
  if ('over' in value) return `over ${plusMinus(value.over, null, unit, decimals)}`;
  return plusMinus(value.value, value.u, unit, decimals);
}
