import type { Check } from './check.ts';

export const verdicts = ['holds', 'breaks', 'close', 'unproven', 'stale', 'opinion'] as const;
export type Verdict = (typeof verdicts)[number];

/** Severity order for a sentence, worst first. */
export const verdictSeverity: readonly Verdict[] = [
  'breaks',
  'stale',
  'close',
  'unproven',
  'holds',
  'opinion',
];

/** UTF-16 offsets in the article's plain text, end exclusive. */
export interface Span {
  start: number;
  end: number;
}

/** One sentence of the article's plain text. Sentences never cross blocks. */
export interface Sentence extends Span {
  index: number;
  text: string;
  /** Index of the block (paragraph, heading, list item, table cell, caption, alt text) it stands in. */
  block: number;
}

/**
 * What reading proposes for a span: a check, or null with a reason (`why`) when the words make a claim
 * that no check covers, or that can mean two things (`asks`).
 */
export interface Proposal extends Span {
  text: string;
  /** Index of the sentence it stands in. */
  sentence: number;
  check: Check | null;
  /** Set when there is no check: why, in one plain sentence. */
  why?: string;
  /** The readings that the words allow when there is more than one; the person chooses. */
  asks?: readonly Check[];
  /** True when the span is an opinion candidate rather than a claim that lacks a check. */
  opinion?: boolean;
  /** Id of the reading rule and the words it used, shown in the proof. */
  rule: string;
  words: readonly Span[];
}

export type ClaimOrigin = 'proposed' | 'accepted' | 'manual';

/** A claim under judgement: a proposal, or an accepted or hand-made one with its stored proof. */
export interface Claim extends Proposal {
  id: string;
  /** The whole sentence that it stands in, as printed; a proof is bound to it. */
  sentenceText?: string;
  origin: ClaimOrigin;
  accepted?: AcceptedProof;
  /** What became of the anchor after outside edits. */
  anchor?: 'same' | 'moved' | 'changed' | 'lost';
}

/** What was accepted, by whom and on which state of text, check, house words and evidence. */
export interface AcceptedProof {
  verdict: Verdict;
  reason: string;
  found?: Found;
  /** Digests (SHA-256, hex) of what the verdict rested on; any difference makes the proof stale. */
  digests: { sentence: string; check: string; house: string; evidence: string };
  by: string;
  /** RFC 3339 time */
  at: string;
}

/** What was found: a number, or `[axis, value]` pairs, with standard uncertainty where it exists. */
export interface Found {
  value?:
    | number
    | string
    | boolean
    | readonly (readonly [number | string, number])[]
    | readonly (string | number)[];
  /** Standard uncertainty; for a list, one for each pair. */
  u?: number | readonly (number | null)[];
  unit?: string;
  /** More named results: `onset`, `average`, `members` … */
  [more: string]: unknown;
}

/** Data for the small picture beside a proof; drawn by the app, built where the verdict is. */
export type ProofFigure =
  | {
      form: 'levels';
      title: string;
      axisUnit: string;
      points: readonly { axis: number; value: number; u: number | null; counts: boolean; out: boolean }[];
      limit?: { value: number; label: string };
      /** Stated part of the axis */
      from?: number;
      to?: number;
    }
  | {
      form: 'gamut';
      title: string;
      diagram: 'xy' | 'uv';
      measured: readonly (readonly [number, number])[];
      reference: readonly (readonly [number, number])[];
    }
  | {
      form: 'tint';
      title: string;
      points: readonly { axis: number; du: number; dv: number }[];
      average: readonly [number, number];
    }
  | {
      form: 'interval';
      title: string;
      unit: string;
      stated: readonly [number, number];
      found: number;
      u: number | null;
      other?: { label: string; value: number; u: number | null };
    }
  | {
      form: 'ranking';
      title: string;
      unit: string;
      members: readonly { label: string; value: number; u: number | null; own: boolean }[];
    };

/** The outcome of judging one claim. `working`: draws are pending, never shown as holds. */
export interface Judgement {
  verdict: Verdict | 'working';
  /** P(the statement is true), null for kinds that ask only what was reported. */
  probability: number | null;
  reason: string;
  /** Shape by kind as in `formats.md`. */
  stated: Record<string, unknown>;
  found: Found;
  conditions: Record<string, unknown>;
  quantity: string | null;
  kind: Check['kind'] | null;
  /** `run#row`, `fact/<key>`, `observation/<id>`; `unit/<u>/…` for other units. */
  evidence: readonly string[];
  /** For a stale claim: what the claim would be now. */
  now?: Verdict;
  /** How many standard uncertainties or units it fails by, for ordering and display. */
  figure?: ProofFigure;
  /** A wording that would hold, when there is an obvious one ("from 60 %"). */
  suggestion?: string;
  /** The checks that the words allow, when the verdict is unproven because a person has to choose. */
  asks?: readonly Check[];
}

export interface JudgedClaim extends Claim {
  judgement: Judgement;
}

export interface Agreement {
  /** [sentence index, claim index within that sentence] of both claims */
  claims: readonly [readonly [number, number], readonly [number, number]];
  verdict: 'holds' | 'breaks';
  reason: string;
}

export interface Unsaid {
  quantity: string;
  run: string;
  /** A short finding, then the run's conditions behind a semicolon */
  reason: string;
  /** The run's conditions by themselves; absent for something seen */
  conditions?: string;
  importance: number;
  evidence: readonly string[];
}
