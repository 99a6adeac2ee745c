import { create } from 'zustand';
import type { Verdict } from '../../shared/contract/claim.ts';
import type { Standing } from '../theme/VerdictGlyph.tsx';

/** A sentence that rests on a piece of evidence. */
export interface Citation {
  article: string;
  title: string;
  sentence: string;
  /** UTF-16 offset of the claim in the article's plain text */
  start: number;
  verdict: Standing;
}

interface CitationStore {
  state: 'idle' | 'gathering' | 'ready';
  byEvidence: ReadonlyMap<string, readonly Citation[]>;
  /** Claims of each verdict, by article */
  totals: ReadonlyMap<string, Readonly<Record<Verdict, number>>>;
  gather(): Promise<void>;
}

/** `unit/<u>/run/<r>#<n>`, as evidence is named across units. */
export function citationKey(unit: string, run: string, row: number): string {
  return `unit/${unit}/run/${run}#${row}`;
}

export const useCitations = create<CitationStore>(() => ({
  state: 'idle',
  byEvidence: new Map(),
  totals: new Map(),
  async gather() {},
}));
