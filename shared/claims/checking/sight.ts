import type { ArticleRecord, RunEvidence, UnitEvidence } from '../../contract/evidence.ts';
import type { Measurement, QuantityDraws } from '../../contract/measurement.ts';
import type { Observation } from '../../contract/observation.ts';
import type { FactStatement } from '../../contract/unit.ts';
import type { JudgingBench } from './bench.ts';
import { factsOf } from './facts.ts';
import { fold } from './fold.ts';

/** Something that a verdict looked at, whether or not it used it; its state tells whether to judge again. */
export type Dependency =
  | { on: 'article' }
  | { on: 'units' }
  | { on: 'dates' }
  | { on: 'sheet' }
  | { on: 'identity'; unit: string }
  | { on: 'runs'; unit: string; id: string; replaced?: true }
  | { on: 'run'; unit: string; run: string }
  | { on: 'fact'; unit: string; key: string; inches: number | undefined }
  | { on: 'observations'; unit: string; topic: string };

/**
 * The evidence as one claim sees it. It remembers what was looked at (`dependencies`: judge again when their
 * state changes) and what the verdict rests on (`used`: the digest that an accepted proof stores).
 */
export interface Sight {
  readonly bench: JudgingBench;
  readonly own: string;
  readonly used: Map<string, string>;
  readonly dependencies: Map<string, Dependency>;
  unit(id: string): UnitEvidence | undefined;
  /** Every unit but one, by id. */
  rivals(of: string): UnitEvidence[];
  /**
   * Runs that nothing supersedes, by id, with what each says of a quantity. `replaced`: the superseded ones too, for
   * words that name an earlier state of the set.
   */
  runs(
    unit: UnitEvidence,
    id: string,
    replaced?: 'replaced',
  ): { run: RunEvidence; measurement: Measurement }[];
  /** The quantity of a chosen run: from here on the verdict rests on this run. */
  measurement(unit: UnitEvidence, run: RunEvidence, id: string): Measurement | undefined;
  draws(unit: UnitEvidence, run: RunEvidence, id: string): QuantityDraws | 'pending' | null;
  facts(unit: UnitEvidence, key: string, inches?: number): FactStatement[];
  observations(unit: UnitEvidence, topic: string): Observation[];
  /** The article on a rival, the earliest when there are several. */
  articleOf(unit: UnitEvidence): ArticleRecord | undefined;
  /** Calendar date of a unit: its earliest article's, else the day of its latest run; null when neither has one. */
  dated(unit: UnitEvidence): string | null;
}

const current = new WeakMap<UnitEvidence, readonly RunEvidence[]>();

/** Runs of a unit that no other run of it replaces, in order of id. Evidence is never changed in place. */
export function currentRuns(unit: UnitEvidence): readonly RunEvidence[] {
  let runs = current.get(unit);
  if (!runs) {
    runs = runsNotReplaced(unit);
    current.set(unit, runs);
  }
  return runs;
}

function runsNotReplaced(unit: UnitEvidence): RunEvidence[] {
  const replaced = new Set(unit.runs.map((run) => run.conditions.supersedes).filter(Boolean));
  return unit.runs.filter((run) => !replaced.has(run.id));
}

export function createSight(bench: JudgingBench): Sight {
  const used = new Map<string, string>();
  const dependencies = new Map<string, Dependency>();
  const look = (dependency: Dependency) => {
    dependencies.set(dependencyKey(dependency), dependency);
  };
  const own = bench.article.meta.unit;
  look({ on: 'article' });
  return {
    bench,
    own,
    used,
    dependencies,
    unit(id) {
      look({ on: 'identity', unit: id });
      return bench.evidence.units.get(id);
    },
    rivals(of) {
      look({ on: 'units' });
      return [...bench.evidence.units.values()]
        .filter((unit) => unit.id !== of)
        .sort((one, other) => (one.id < other.id ? -1 : 1));
    },
    runs(unit, id, replaced) {
      look({ on: 'runs', unit: unit.id, id, ...(replaced && { replaced: true }) });
      return (replaced ? unit.runs : currentRuns(unit)).flatMap((run) => {
        const measurement = bench.measure(unit, run).get(id);
        return measurement ? [{ run, measurement }] : [];
      });
    },
    measurement(unit, run, id) {
      look({ on: 'run', unit: unit.id, run: run.id });
      used.set(`unit/${unit.id}/run/${run.id}`, run.digest);
      return bench.measure(unit, run).get(id);
    },
    draws: (unit, run, id) => bench.draws(unit, run, id),
    facts(unit, key, inches) {
      look({ on: 'fact', unit: unit.id, key, inches });
      const statements = factsOf(unit.unit, key, inches);
      used.set(`unit/${unit.id}/fact/${key}${inches ? `@${inches}` : ''}`, JSON.stringify(statements));
      return statements;
    },
    observations(unit, topic) {
      look({ on: 'observations', unit: unit.id, topic });
      return observationsOn(unit, topic);
    },
    articleOf(unit) {
      look({ on: 'dates' });
      return articlesOn(bench, unit)[0];
    },
    dated(unit) {
      look({ on: 'dates' });
      return dateOfUnit(bench, unit);
    },
  };
}

/** Observations of one topic, whatever the spelling of its words. */
function observationsOn(unit: UnitEvidence, topic: string): Observation[] {
  const wanted = fold(topic);
  return unit.observations.filter((observation) => fold(observation.topic) === wanted);
}

function dateOfUnit(bench: JudgingBench, unit: UnitEvidence): string | null {
  if (unit.id === bench.article.meta.unit && bench.article.meta.date) return bench.article.meta.date;
  const published = articlesOn(bench, unit).find((article) => article.meta.date);
  if (published) return published.meta.date!;
  const taken = unit.runs.flatMap((run) => run.conditions.taken?.slice(0, 10) ?? []).sort();
  return taken.at(-1) ?? null;
}

/** Articles on a unit, dated ones first, by date and then by id. */
function articlesOn(bench: JudgingBench, unit: UnitEvidence): ArticleRecord[] {
  const order = (article: ArticleRecord) => `${article.meta.date ?? '9999'} ${article.id}`;
  return bench.evidence.articles
    .filter((article) => article.meta.unit === unit.id)
    .sort((one, other) => (order(one) < order(other) ? -1 : 1));
}

export function dependencyKey(dependency: Dependency): string {
  switch (dependency.on) {
    case 'identity':
      return `identity\u0000${dependency.unit}`;
    case 'runs':
      return `runs\u0000${dependency.unit}\u0000${dependency.id}\u0000${dependency.replaced ?? ''}`;
    case 'run':
      return `run\u0000${dependency.unit}\u0000${dependency.run}`;
    case 'fact':
      return `fact\u0000${dependency.unit}\u0000${dependency.key}\u0000${dependency.inches ?? ''}`;
    case 'observations':
      return `observations\u0000${dependency.unit}\u0000${dependency.topic}`;
    default:
      return dependency.on;
  }
}

/** The present state of a dependency as text; equal texts mean that the verdict cannot have changed by it. */
export function dependencyState(bench: JudgingBench, dependency: Dependency): string {
  const { units, articles } = bench.evidence;
  if (dependency.on === 'article') return JSON.stringify(bench.article.meta);
  if (dependency.on === 'sheet') return JSON.stringify(bench.scoreSheet ?? null);
  if (dependency.on === 'units') return [...units.keys()].sort().join();
  if (dependency.on === 'dates')
    return JSON.stringify([
      articles.map((article) => [article.id, article.meta.unit, article.meta.date, article.meta.conditions]),
      [...units.values()].map((unit) => [unit.id, dateOfUnit(bench, unit)]),
    ]);
  const unit = units.get(dependency.unit);
  if (!unit) return '';
  switch (dependency.on) {
    case 'identity':
      return JSON.stringify({ ...unit.unit, facts: undefined });
    case 'run':
      return unit.runs.find((run) => run.id === dependency.run)?.digest ?? '';
    case 'runs':
      return JSON.stringify(
        (dependency.replaced ? unit.runs : currentRuns(unit)).map((run) => [
          run.id,
          bench.measure(unit, run).get(dependency.id)?.state ?? null,
          run.conditions,
        ]),
      );
    case 'fact':
      return JSON.stringify(factsOf(unit.unit, dependency.key, dependency.inches));
    case 'observations':
      return JSON.stringify(observationsOn(unit, dependency.topic));
  }
}
