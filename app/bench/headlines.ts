import type { Estimate, RunMeasurements } from '../../shared/contract/measurement.ts';
import { catalogueEntry } from '../../shared/measure/index.ts';
import { plusMinus } from '../plots/numberText.ts';

/** A quantity that stands for a run in a line or a table, with how it is taken from its series. */
export interface Headline {
  id: string;
  stat: 'scalar' | 'average' | 'max';
}

export type HeadlineValue = Estimate | { over: number };

/** In the order in which a reader asks; labels, units and decimals are the catalogue's. */
export const runHeadlines: readonly Headline[] = [
  { id: 'grey.de2000', stat: 'average' },
  { id: 'grey.de2000', stat: 'max' },
  { id: 'chart.de2000', stat: 'average' },
  { id: 'gamma.average', stat: 'scalar' },
  { id: 'white.cct', stat: 'scalar' },
  { id: 'white', stat: 'scalar' },
  { id: 'peak', stat: 'max' },
  { id: 'peak.hold', stat: 'scalar' },
  { id: 'black', stat: 'scalar' },
  { id: 'contrast.native', stat: 'scalar' },
  { id: 'contrast.chequer', stat: 'scalar' },
  { id: 'coverage.bt709.uv', stat: 'scalar' },
  { id: 'coverage.p3.uv', stat: 'scalar' },
  { id: 'coverage.p3.xy', stat: 'scalar' },
  { id: 'coverage.bt2020.uv', stat: 'scalar' },
  { id: 'uniformity.white', stat: 'scalar' },
  { id: 'lag', stat: 'scalar' },
];

/** "Colour error of the greyscale, average" */
export function headlineLabel(headline: Headline): string {
  const label = catalogueEntry(headline.id)?.label ?? headline.id;
  if (headline.stat === 'average') return `${label}, average`;
  if (headline.stat === 'max' && catalogueEntry(headline.id)?.direction === 'lower') return `${label}, worst`;
  return label;
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
