/** Scores: curve (value to points), weights, award, scoreUnit (all of it for one unit), ranks in a cohort, drift of words. */
export { awardFor } from './award.ts';
export { pointsOnCurve, roundTo, valueForPoints } from './curve.ts';
export { clearlyDifferent, type Drift, driftOfWords, turnedWords, type WordUse } from './drift.ts';
export { cohortRanks, type Ranked } from './ranks.ts';
export { type CriterionScore, type ScoringBench, scoreUnit, type UnitScore } from './scoreUnit.ts';
export { weightedTotal } from './weights.ts';
