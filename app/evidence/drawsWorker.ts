import { createMeasurer } from '../../shared/certainty/index.ts';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { QuantityDraws } from '../../shared/contract/measurement.ts';
import { createDrawQueue } from './drawQueue.ts';

/** To the worker: a unit's evidence, sent once for each state of it, then single quantities by name, then haste. */
export type DrawsRequest =
  | { type: 'unit'; unit: UnitEvidence }
  | DrawRequest
  | { type: 'prefer'; tickets: readonly string[] };

interface DrawRequest {
  type: 'draw';
  ticket: string;
  unit: string;
  run: RunOfDraw;
  quantity: string;
}

/** The digest of one of the unit's runs, or a run that only this question knows. */
type RunOfDraw = string | RunEvidence;

export interface DrawsReply {
  ticket: string;
  /** null: the quantity carries no uncertainty */
  draws: QuantityDraws | null;
}

const units = new Map<string, UnitEvidence>();
const measurer = createMeasurer();
const queue = createDrawQueue<DrawRequest>();
// Between two pieces of work the worker listens, so that what has become urgent can go first.
const { port1: turn, port2: nextTurn } = new MessageChannel();
let isWorking = false;

self.onmessage = ({ data }: MessageEvent<DrawsRequest>) => {
  if (data.type === 'unit') units.set(data.unit.id, data.unit);
  else if (data.type === 'prefer') queue.prefer(data.tickets);
  else {
    queue.add(data);
    if (isWorking) return;
    isWorking = true;
    nextTurn.postMessage(null);
  }
};

turn.onmessage = () => {
  const work = queue.next();
  isWorking = work !== undefined;
  if (!work) return;
  const unit = units.get(work.unit);
  const run =
    typeof work.run === 'string' ? unit?.runs.find((candidate) => candidate.digest === work.run) : work.run;
  const draws = unit && run ? measurer.draws(unit, run, work.quantity) : null;
  // A copy leaves: the draws of one run share memory, and a transfer would take it from the others.
  self.postMessage({ ticket: work.ticket, draws } satisfies DrawsReply);
  nextTurn.postMessage(null);
};
