import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { RunMeasurements } from '../../shared/contract/measurement.ts';
import type { ReadingRef } from '../plots/figure.ts';
import { measurementsOf } from '../stores/measurements.ts';
import { type Headline, headlineShort, headlinesFor, headlineText, headlineValue } from './headlines.ts';

/** The run's key figures with their ±, in running lines; pressing one picks the readings it rests on. */
export function KeyFigures({
  unit,
  run,
  onPick,
}: {
  unit: UnitEvidence;
  run: RunEvidence;
  onPick: (ref: ReadingRef) => void;
}) {
  const measured = measurementsOf(unit, run);
  const figures = headlinesFor(run.conditions.signal).flatMap((headline) => {
    const value = headlineValue(measured, headline);
    return value ? [{ headline, value }] : [];
  });
  if (figures.length === 0) return null;
  return (
    <dl className="key-figures">
      {figures.map(({ headline, value }) => (
        <div key={headline.id + headline.stat}>
          <dt>{headlineShort(headline)}</dt>
          <dd>
            <button
              type="button"
              onClick={() => onPick({ unit: unit.id, run: run.id, rows: rowsOf(measured, headline) })}
            >
              {headlineText(headline, value)}
            </button>
          </dd>
        </div>
      ))}
    </dl>
  );
}

function rowsOf(measured: RunMeasurements, headline: Headline): readonly number[] {
  const found = measured.get(headline.id);
  if (!found || found.state === 'undefined') return [];
  if (found.state === 'over') return found.rows;
  if (headline.stat === 'max')
    return found.values.find((value) => value.axis === found.max?.axis)?.rows ?? [];
  const values =
    headline.stat === 'average' ? found.values.filter((value) => value.counts) : found.values.slice(0, 1);
  return [...new Set(values.flatMap((value) => value.rows))];
}
