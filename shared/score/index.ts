/** Scores: curve (value to points), weights, award, scoreUnit (all of it for one unit), ranks in a cohort, drift of words. */
export { awardFor } from './award.ts';
export { pointsOnCurve, roundTo, valueForPoints } from './curve.ts';
export { driftOfWords, turnedWords } from './drift.ts';
export { cohortRanks } from './ranks.ts';
export { scoreUnit } from './scoreUnit.ts';
export { weightedTotal } from './weights.ts';
