import type { JudgedClaim, Judgement, Unsaid } from '../contract/claim.ts';
import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { MeasuredSeries, Measurement } from '../contract/measurement.ts';
import { catalogueEntry } from '../measure/catalogue.ts';
import { isDistance } from './checking/floor.ts';
import { currentRuns, type JudgingBench } from './checking/index.ts';
import { describeRun } from './checking/resolve.ts';
import { targetOf } from './checking/targets.ts';
import { findingWords, seenWords } from './unsaidWords.ts';

/** Standard uncertainties that a finding must lie beyond its limit by: certain at the 95 % level, one-sided. */
const certain = 1.645;

/** Severity from which something seen belongs into a review: visible. */
const worthTelling = 2;

/** A finding before it is known whether the article mentions it. */
export interface Finding extends Unsaid {
  family: string;
  signal: string;
}

/**
 * Everything of the own unit that lies past a limit with certainty, the most important first: of each kind the worst,
 * for every signal, in runs under the article's conditions or as delivered.
 */
export function findingsOf(bench: JudgingBench): Finding[] {
  const unit = bench.evidence.units.get(bench.article.meta.unit);
  if (!unit) return [];
  const all = [
    ...runsThatCount(bench, unit).flatMap((run) => findingsOfRun(bench, unit, run)),
    ...seen(unit),
  ];
  all.sort((one, other) => other.importance - one.importance || (one.quantity < other.quantity ? -1 : 1));
  const best = new Map<string, Finding>();
  for (const finding of all) {
    const key = `${finding.family}|${finding.signal}`;
    if (!best.has(key)) best.set(key, finding);
  }
  return [...best.values()];
}

/** Findings that no sentence covers: none of the same kind for the same signal, on the own unit. */
export function unsaidOf(
  findings: readonly Finding[],
  claims: readonly JudgedClaim[],
  own: string,
): Unsaid[] {
  const covered = new Set<string>();
  for (const { judgement } of claims) for (const key of coveredBy(judgement, own)) covered.add(key);
  const list: Unsaid[] = [];
  for (const { family, signal, ...unsaid } of findings)
    if (!covered.has(`${family}|${signal}`) && !covered.has(`${family}|`)) list.push(unsaid);
  return list;
}

/** {@link unsaidOf}, found again only when a finding or a judgement changed. */
export function createUnsaid(): { of: (...args: Parameters<typeof unsaidOf>) => readonly Unsaid[] } {
  let before: Parameters<typeof unsaidOf> | undefined;
  let list: readonly Unsaid[] = [];
  return {
    of(findings, claims, own) {
      let same = before?.[0] === findings && before[2] === own && before[1].length === claims.length;
      for (let i = 0; same && i < claims.length; i++)
        same = claims[i]!.judgement === before![1][i]!.judgement;
      if (!same) list = unsaidOf(findings, claims, own);
      before = [findings, claims, own];
      return list;
    },
  };
}

const coveredKeys = new WeakMap<Judgement, { own: string; keys: readonly string[] }>();

/** The kinds of finding, each with its signal or with none, that a judgement speaks of. */
function coveredBy(judgement: Judgement, own: string): readonly string[] {
  const known = coveredKeys.get(judgement);
  if (known?.own === own) return known.keys;
  const keys = keysCoveredBy(judgement, own);
  coveredKeys.set(judgement, { own, keys });
  return keys;
}

function keysCoveredBy({ quantity, verdict, conditions, found }: Judgement, own: string): string[] {
  if (quantity === null || verdict === 'opinion') return [];
  const { unit, signal: named } = conditions;
  if (unit !== undefined && unit !== own) return [];
  // Something seen is told whatever the signal it was seen with.
  const signal = quantity.startsWith('observation.') ? undefined : named;
  const also = Array.isArray(found.also) ? (found.also as { quantity: string }[]) : [];
  return [quantity, ...also.map((one) => one.quantity)].map(
    (id) => `${familyOf(id)}|${signal === undefined ? '' : String(signal)}`,
  );
}

function runsThatCount({ article }: JudgingBench, unit: UnitEvidence): RunEvidence[] {
  const conditions = article.meta.conditions ?? {};
  return currentRuns(unit).filter(({ conditions: run }) => {
    const stated = conditions[run.signal];
    if (!stated) return run.stage === 'as-delivered';
    const { mode = run.mode, stage = 'as-delivered' } = stated;
    return run.mode === mode && run.stage === stage;
  });
}

function findingsOfRun(bench: JudgingBench, unit: UnitEvidence, run: RunEvidence): Finding[] {
  const found: Finding[] = [];
  for (const measurement of bench.measure(unit, run).values()) {
    const finding = findingOf(bench, unit, run, measurement);
    if (finding) found.push(finding);
  }
  return found;
}

function findingOf(
  bench: JudgingBench,
  unit: UnitEvidence,
  run: RunEvidence,
  measurement: Measurement,
): Finding | null {
  if (measurement.state !== 'measured') return null;
  const entry = catalogueEntry(measurement.id);
  if (!entry?.limit || entry.importance === 0) return null;
  const limit = bench.house.limits[entry.limit];
  const target = isDistance(measurement.id) ? 0 : targetOf(measurement, run, bench.measure(unit, run));
  if (target === null) return null;
  const estimate = worstOf(measurement);
  if (!estimate) return null;
  const away = Math.abs(estimate.value - target);
  if (away - certain * (estimate.u ?? 0) <= limit) return null;
  return {
    quantity: measurement.id,
    run: run.id,
    reason: `${findingWords(measurement.id, estimate, measurement.unit, target, run.conditions.signal)}; ${describeRun(run)}.`,
    conditions: describeRun(run),
    importance: entry.importance * (1 + Math.log2(away / limit)),
    evidence: estimate.rows.map((row) => `run/${run.id}#${row}`),
    family: familyOf(measurement.id),
    signal: run.conditions.signal,
  };
}

type Worst = {
  value: number;
  u: number | null;
  axis?: number | string;
  rows: readonly number[];
  stat: string;
};

/** Distances are held against their maximum, signed deviations against their average. */
function worstOf(series: MeasuredSeries): Worst | null {
  const counting = series.values.filter(({ counts }) => counts);
  if (counting.length === 0) return null;
  if (counting.length === 1) {
    const only = counting[0]!;
    return { ...only, stat: '' };
  }
  if (isDistance(series.id) && series.max) {
    const { axis, value, u } = series.max;
    const at = counting.find((level) => level.axis === axis);
    return { value, u, ...(axis === undefined ? {} : { axis }), rows: at?.rows ?? [], stat: 'maximum' };
  }
  if (!series.average) return null;
  return { ...series.average, rows: counting.flatMap(({ rows }) => rows), stat: 'average' };
}

function seen(unit: UnitEvidence): Finding[] {
  return unit.observations
    .filter(({ severity, angle }) => severity >= worthTelling && (angle === undefined || angle === 0))
    .map((observation) => {
      const { id, topic, severity } = observation;
      return {
        quantity: `observation.${topic}`,
        run: '',
        reason: `${seenWords(observation)}.`,
        importance: 0.5 * (1 + Math.log2(severity / worthTelling)) + 0.01 * severity,
        evidence: [`observation/${id}`],
        family: familyOf(`observation.${topic}`),
        signal: '',
      };
    });
}

/** Quantities that a reader takes for one thing: one sentence on any of them covers the others. */
export function familyOf(id: string): string {
  if (/^grey\.de/.test(id)) return 'grey error';
  if (/^(grey\.tint|grey\.balance|white\.(cct|duv|distance))/.test(id)) return 'tint';
  if (/^(gamma|eotf\.error)/.test(id)) return 'tone curve';
  if (/^sweep\./.test(id)) return id.split('.').slice(0, 2).join('.');
  if (/^chart\./.test(id)) return 'chart';
  if (/^uniformity\./.test(id)) return 'uniformity';
  if (/^angle\..*de2000/.test(id)) return 'angle colour';
  if (/^angle\./.test(id)) return 'angle luminance';
  if (/^observation\./.test(id)) return id.toLowerCase().replace(/[\s_-]+/g, '-');
  return id;
}
