import { createMeasurer } from '../../shared/certainty/index.ts';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { QuantityDraws } from '../../shared/contract/measurement.ts';

/** To the worker: a unit's evidence, sent once for each state of it, then single quantities by name. */
export type DrawsRequest =
  | { type: 'unit'; unit: UnitEvidence }
  | { type: 'draw'; ticket: string; unit: string; run: RunOfDraw; quantity: string };

/** The digest of one of the unit's runs, or a run that only this question knows. */
type RunOfDraw = string | RunEvidence;

export interface DrawsReply {
  ticket: string;
  /** null: the quantity carries no uncertainty */
  draws: QuantityDraws | null;
}

const units = new Map<string, UnitEvidence>();
const measurer = createMeasurer();

self.onmessage = ({ data }: MessageEvent<DrawsRequest>) => {
  if (data.type === 'unit') {
    units.set(data.unit.id, data.unit);
    return;
  }
  const unit = units.get(data.unit);
  const run =
    typeof data.run === 'string' ? unit?.runs.find((candidate) => candidate.digest === data.run) : data.run;
  const draws = unit && run ? measurer.draws(unit, run, data.quantity) : null;
  // A copy leaves: the draws of one run share memory, and a transfer would take it from the others.
  self.postMessage({ ticket: data.ticket, draws } satisfies DrawsReply);
};
