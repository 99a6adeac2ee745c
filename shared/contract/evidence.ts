import type { Article } from './article.ts';
import type { Observation } from './observation.ts';
import type { Reading } from './reading.ts';
import type { Run } from './run.ts';
import type { Unit } from './unit.ts';

/** A run with its readings. `digest` is SHA-256 (hex) over conditions and readings; it seeds the run's draws. */
export interface RunEvidence {
  id: string;
  conditions: Run;
  readings: readonly Reading[];
  digest: string;
}

/** Everything the library knows of one unit. */
export interface UnitEvidence {
  id: string;
  unit: Unit;
  /** Sorted by id */
  runs: readonly RunEvidence[];
  observations: readonly Observation[];
}

/** An article's own statements that other articles may be compared with (dates, scores). */
export interface ArticleRecord {
  id: string;
  meta: Article;
}

/** What verdicts are computed from: the own unit, its rivals and the cohort alike. */
export interface Evidence {
  units: ReadonlyMap<string, UnitEvidence>;
  articles: readonly ArticleRecord[];
}
