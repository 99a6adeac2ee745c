import type { Article } from '../../shared/contract/article.ts';
import type { House } from '../../shared/contract/house.ts';
import type { Reading } from '../../shared/contract/reading.ts';
import type { Run } from '../../shared/contract/run.ts';
import type { ScoreSheet } from '../../shared/contract/scoreSheet.ts';
import type { StoredClaim } from '../../shared/contract/storedClaim.ts';
import type { Unit } from '../../shared/contract/unit.ts';
import type { CellTable } from '../intake/cellTable.ts';
import type { ObservationsFile } from '../intake/observations.ts';
import type { Document } from './parseDocument.ts';

/** A whole library outside SQLite: what a dossier folder says, checked, with every text as an export writes it. */
export interface Dossier {
  /** `dossier.json` */
  description: Document<unknown>;
  /** Sorted by id */
  units: DossierUnit[];
  /** Sorted by id */
  articles: DossierArticle[];
  house: Document<House> | null;
  scoreSheet: Document<ScoreSheet> | null;
  /** `protocol.json`, `recipes/*.json` by path */
  documents: Map<string, string>;
  /** Files that Nitproof does not know, kept byte for byte, by path */
  others: Map<string, Uint8Array>;
  /** Lines of `history.jsonl` without their ends */
  history: string[];
}

export interface DossierUnit {
  id: string;
  document: Document<Unit>;
  /** Sorted by id, then version */
  runs: DossierRun[];
  observations: ObservationsFile | null;
  photos: DossierPhoto[];
}

export interface DossierRun {
  id: string;
  /** 0 is the run itself, 1 … its superseded versions `<run>@<n>` */
  version: number;
  document: Document<Run>;
  /** Null when the run has no readings yet */
  table: CellTable | null;
  readings: Reading[];
}

interface DossierPhoto {
  /** Path under `photos/` */
  name: string;
  bytes: Uint8Array;
}

export interface DossierArticle {
  id: string;
  document: Document<Article>;
  markdown: string;
  /** Canonical text of `<article>.claims.jsonld` and the claims in it */
  claims: { text: string; claims: StoredClaim[] } | null;
  /** Canonical text of `<article>.remarks.json` */
  remarks: string | null;
}

/** `runs/<run>` or `runs/<run>@<n>` without its ending */
export function runFileName({ id, version }: { id: string; version: number }): string {
  return version === 0 ? id : `${id}@${version}`;
}
