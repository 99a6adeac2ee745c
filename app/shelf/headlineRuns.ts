import type { ArticleRecord, RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { entryOrder, supersededBy } from '../bench/runOrder.ts';

/**
 * The runs that may speak for a unit under a signal, first choice first: as its own article says, then as delivered,
 * then what else stands. A quantity is taken from the first that has it, never by its number.
 */
export function headlineRuns(
  unit: UnitEvidence,
  signal: 'SDR' | 'HDR',
  articles: readonly ArticleRecord[],
): RunEvidence[] {
  const fits = entryOrder(unit.runs).filter(
    (run) => (run.conditions.signal === 'SDR') === (signal === 'SDR') && !supersededBy(run, unit.runs),
  );
  const own = articles.find((article) => article.meta.unit === unit.id)?.meta.conditions ?? {};
  const stated = Object.entries(own).find(([name]) => (name === 'SDR') === (signal === 'SDR'))?.[1];
  const asStated = (run: RunEvidence) =>
    stated !== undefined &&
    (stated.mode === undefined || run.conditions.mode === stated.mode) &&
    (stated.stage === undefined || run.conditions.stage === stated.stage) &&
    (stated.dimming === undefined || (run.conditions.dimming ?? 'as-set') === stated.dimming);
  const rank = (run: RunEvidence) => (asStated(run) ? 0 : run.conditions.stage === 'as-delivered' ? 1 : 2);
  return fits.sort((a, b) => rank(a) - rank(b));
}
