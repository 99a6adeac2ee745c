import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { QuantityDraws } from '../../shared/contract/measurement.ts';

/** To the worker: a unit's evidence, sent once for each state of it, single quantities by name, haste, and no more. */
export type DrawsRequest =
  | { type: 'unit'; unit: UnitEvidence }
  | DrawRequest
  | { type: 'prefer'; tickets: readonly string[] }
  | { type: 'drop'; tickets: readonly string[] };

export interface DrawRequest {
  type: 'draw';
  ticket: string;
  unit: string;
  /** The digest of one of the unit's runs, or a run that only this question knows */
  run: string | RunEvidence;
  quantity: string;
}

export interface DrawsReply {
  ticket: string;
  /** null: the quantity carries no uncertainty; gone: the unit no longer has the run, ask anew */
  draws: QuantityDraws | null | 'gone';
}
