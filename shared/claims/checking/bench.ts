import type { ArticleRecord, Evidence, RunEvidence, UnitEvidence } from '../../contract/evidence.ts';
import type { House } from '../../contract/house.ts';
import type { QuantityDraws, RunMeasurements } from '../../contract/measurement.ts';
import type { ScoreSheet } from '../../contract/scoreSheet.ts';

/** Everything that a verdict may look at. `measure` and `draws` are memoised by whoever supplies them. */
export interface JudgingBench {
  evidence: Evidence;
  article: ArticleRecord;
  house: House;
  scoreSheet?: ScoreSheet | null;
  measure(unit: UnitEvidence, run: RunEvidence): RunMeasurements;
  /** null: the quantity carries no uncertainty; `pending`: a worker is still drawing. */
  draws(unit: UnitEvidence, run: RunEvidence, id: string): QuantityDraws | 'pending' | null;
}
