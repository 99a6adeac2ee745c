import type { ArticleRecord, RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { Measurement, RunMeasurements } from '../contract/measurement.ts';
import type { Criterion, ScoreSheet } from '../contract/scoreSheet.ts';
import { awardFor } from './award.ts';
import { pointsOnCurve, roundTo } from './curve.ts';
import { weightedTotal } from './weights.ts';

/** Points of one criterion: with the value and run that feed them, or why there are none. */
export interface CriterionScore {
  id: string;
  label: string;
  weight: number;
  points: number | null;
  value?: number;
  u?: number | null;
  run?: string;
  why?: string;
}

export interface UnitScore {
  criteria: CriterionScore[];
  total: number | null;
  award: string | null;
  /** Labels of the criteria that lack points */
  missing: string[];
  /** Runs and quantities that the points rest on */
  used: { run: string; quantity: string }[];
}

/** What scoring may look at beside the unit. */
export interface ScoringBench {
  article?: ArticleRecord | undefined;
  measure(run: RunEvidence): RunMeasurements;
}

/** Scores one unit by the sheet: curves on measured values, points given by hand, weights, award rule. */
export function scoreUnit(sheet: ScoreSheet, unit: UnitEvidence, bench: ScoringBench): UnitScore {
  const criteria = sheet.criteria.map((criterion) => scoreCriterion(sheet, criterion, unit, bench));
  const raw = weightedTotal(criteria);
  const total = raw === null ? null : roundTo(raw, sheet.decimals);
  const points = new Map(criteria.map(({ id, points: earned }) => [id, earned]));
  return {
    criteria,
    total,
    award: total === null ? null : awardFor(sheet.awards ?? [], total, points),
    missing: criteria
      .filter(({ points: earned, weight }) => earned === null && weight > 0)
      .map(({ label }) => label),
    used: criteria.flatMap(({ run, id }) => {
      const quantity = sheet.criteria.find((criterion) => criterion.id === id)?.quantity;
      return run && quantity ? [{ run, quantity }] : [];
    }),
  };
}

function scoreCriterion(
  sheet: ScoreSheet,
  criterion: Criterion,
  unit: UnitEvidence,
  bench: ScoringBench,
): CriterionScore {
  const { id, label, weight } = criterion;
  const given = sheet.given?.[unit.id]?.[id];
  if (given !== undefined) return { id, label, weight, points: given };
  if (!criterion.quantity || !criterion.curve)
    return { id, label, weight, points: null, why: 'no points were given by hand' };
  const run = runFor(criterion, unit, bench);
  if (typeof run === 'string') return { id, label, weight, points: null, why: run };
  const fed = fedBy(bench.measure(run).get(criterion.quantity)!, criterion.stat);
  if (typeof fed === 'string') return { id, label, weight, points: null, why: fed };
  const earned = pointsOnCurve(criterion.curve, fed.value);
  const points = criterion.decimals === undefined ? earned : roundTo(earned, criterion.decimals);
  return { id, label, weight, points, value: fed.value, u: fed.u, run: run.id };
}

/** The run that feeds a criterion: its signal, the article's conditions, as delivered, the only one that fits. */
function runFor(criterion: Criterion, unit: UnitEvidence, bench: ScoringBench): RunEvidence | string {
  const replaced = new Set(unit.runs.map(({ conditions }) => conditions.supersedes));
  const isHdr = criterion.signal
    ? criterion.signal !== 'SDR'
    : /^(peak|eotf\.rolloff)/.test(criterion.quantity!);
  let fitting = unit.runs.filter((run) => {
    const { signal } = run.conditions;
    if (replaced.has(run.id)) return false;
    const state = bench.measure(run).get(criterion.quantity!)?.state;
    if (state !== 'measured' && state !== 'over') return false;
    if (criterion.signal && criterion.signal !== 'HDR') return signal === criterion.signal;
    return (signal !== 'SDR') === isHdr;
  });
  if (fitting.length === 0) return `no ${isHdr ? 'HDR' : 'SDR'} run has ${criterion.quantity}`;
  const narrow = (test: (run: RunEvidence) => boolean) => {
    const rest = fitting.filter(test);
    if (fitting.length > 1 && rest.length > 0) fitting = rest;
  };
  narrow(({ conditions }) => {
    const wanted = bench.article?.meta.conditions?.[conditions.signal];
    return (
      wanted !== undefined &&
      (wanted.mode === undefined || wanted.mode === conditions.mode) &&
      (wanted.stage === undefined || wanted.stage === conditions.stage)
    );
  });
  narrow(({ conditions }) => conditions.stage === 'as-delivered');
  if (fitting.length > 1)
    return `${fitting.length} runs have ${criterion.quantity}, and nothing says which counts`;
  return fitting[0]!;
}

function fedBy(
  measurement: Measurement,
  stat: Criterion['stat'],
): { value: number; u: number | null } | string {
  if (measurement.state === 'undefined') return measurement.undefined;
  if (measurement.state === 'over') return { value: measurement.over, u: null };
  const estimate =
    stat === 'average' || stat === 'max' || stat === 'min'
      ? measurement[stat]
      : measurement.values.length === 1
        ? measurement.values[0]
        : measurement.id.startsWith('peak')
          ? measurement.max
          : undefined;
  return estimate ?? `${measurement.id} has several values, and the criterion names no statistic`;
}
