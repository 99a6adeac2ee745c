import type { Article } from '../../shared/contract/article.ts';
import type { ArticleDocument, ArticleSummary, UnitSummary } from '../../shared/contract/door.ts';
import type { Evidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { Result } from '../../shared/contract/fault.ts';
import type { House } from '../../shared/contract/house.ts';
import type { Observation } from '../../shared/contract/observation.ts';
import type { Run } from '../../shared/contract/run.ts';
import type { ScoreSheet } from '../../shared/contract/scoreSheet.ts';
import type { StoredClaim } from '../../shared/contract/storedClaim.ts';
import type { Unit } from '../../shared/contract/unit.ts';
import type { Dossier } from '../dossier/dossier.ts';
import type { ReadingsFile } from '../intake/readReadings.ts';

/** Told the share done (0–1); a false answer cancels, and nothing partial stays. */
type Progress = (share: number) => Promise<boolean>;

interface LibraryDescription {
  /** File name without its folder */
  name: string;
  file: string;
  units: number;
  articles: number;
  revision: number;
  readOnly: boolean;
}

export interface Revised {
  revision: number;
}

export interface SaveReadingsOptions {
  progress?: Progress;
  /** Default true; an import from the command line adds no line to the history */
  record?: boolean;
}

export interface ArticleChange {
  meta: Article;
  markdown: string;
  claims: StoredClaim[];
  /** Revision that the change was made on */
  revision: number;
  by: string;
}

export interface HistoryEvent {
  at: string;
  by: string;
  what: string;
  of: string;
  [more: string]: unknown;
}

export interface MergeReport extends Revised {
  units: number;
  articles: number;
  notes: string[];
}

/** What `verify` found; an empty list of findings is a sound library. */
export interface Verification {
  findings: string[];
  checked: { runs: number; photos: number; articles: number; history: number };
}

/**
 * A newsroom's evidence and articles, in whole operations; the adapter decides how they are stored. Every operation
 * either happens whole or not at all. Errors of input, conflicts and full disks are values.
 */
export interface Library {
  readonly file: string;
  readonly readOnly: boolean;
  describe(): Promise<LibraryDescription>;
  listShelf(): Promise<{ units: UnitSummary[]; articles: ArticleSummary[] }>;

  /** Current runs only; superseded versions are kept but are no evidence. */
  readEvidence(): Promise<Evidence>;
  readUnit(unit: string): Promise<Result<UnitEvidence>>;
  /** Creates the unit when it is new. Number texts and unknown keys that the content repeats stay as they were. */
  saveUnit(unit: string, content: Unit): Promise<Result<Revised>>;
  saveRun(unit: string, run: string, conditions: Run): Promise<Result<Revised>>;
  /** Readings of a run that has some already become its superseded version `<run>@<n>`. */
  saveReadings(
    unit: string,
    run: string,
    conditions: Run | undefined,
    readings: ReadingsFile,
    options?: SaveReadingsOptions,
  ): Promise<Result<Revised>>;
  saveObservation(unit: string, observation: Observation): Promise<Result<Revised>>;
  removeObservation(unit: string, id: string): Promise<Result<Revised>>;

  listPhotos(unit: string): Promise<{ name: string; mime: string; bytes: number }[]>;
  /** A name that is taken gets a number; returns the name used. */
  addPhoto(unit: string, name: string, bytes: Uint8Array): Promise<Result<Revised & { name: string }>>;
  readPhoto(unit: string, name: string): Promise<Result<{ mime: string; bytes: Uint8Array }>>;

  readArticle(article: string): Promise<Result<ArticleDocument>>;
  createArticle(
    article: string,
    meta: Article,
    markdown: string,
    claims?: readonly StoredClaim[],
  ): Promise<Result<Revised>>;
  /** Fails with `stale-revision` when somebody else saved in between. */
  saveArticle(article: string, change: ArticleChange): Promise<Result<Revised & { savedAt: string }>>;
  /** One writer an article for `leaseSeconds`; true when this client holds it now. */
  leaseArticle(article: string, client: string, release: boolean): Promise<Result<boolean>>;

  /** Null: the shipped house words apply. */
  readHouse(): Promise<House | null>;
  saveHouse(house: House): Promise<Result<Revised>>;
  readScoreSheet(): Promise<ScoreSheet | null>;
  saveScoreSheet(scoreSheet: ScoreSheet): Promise<Result<Revised>>;
  /** Text of `protocol.json` or a recipe */
  readDocument(path: string): Promise<string | null>;
  listHistory(of?: string): Promise<HistoryEvent[]>;

  takeDossier(): Promise<Dossier>;
  /** All or nothing; adds no line to the history. Other content under the same id is a `conflict` without `prefer`. */
  mergeDossier(dossier: Dossier, prefer?: 'theirs' | 'ours'): Promise<Result<MergeReport>>;

  verify(): Promise<Verification>;
  /** A safe copy of the live library through the database's own backup. */
  backup(file: string): Promise<Result<{ bytes: number }>>;
  close(): Promise<void>;
}

/** A lease lapses when its holder has not renewed it for this long. */
export const leaseSeconds = 15;
