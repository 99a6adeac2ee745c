import { createMeasurer } from '../../shared/certainty/index.ts';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { createDrawQueue } from './drawQueue.ts';
import type { DrawRequest, DrawsReply, DrawsRequest } from './drawsRequest.ts';

const units = new Map<string, UnitEvidence>();
// The window keeps the answers; here they are only kept for as long as one may be part of the next.
const measurer = createMeasurer(8 * 1024 * 1024);
const queue = createDrawQueue<DrawRequest>();
// Between two pieces of work the worker listens, so that what has become urgent can go first.
const { port1: turn, port2: nextTurn } = new MessageChannel();
let isWorking = false;

self.onmessage = ({ data }: MessageEvent<DrawsRequest>) => {
  if (data.type === 'unit') units.set(data.unit.id, data.unit);
  else if (data.type === 'prefer') queue.prefer(data.tickets);
  else if (data.type === 'drop') queue.drop(data.tickets);
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
  const draws = unit && run ? measurer.draws(unit, run, work.quantity) : 'gone';
  // A copy leaves: the draws of one run share memory, and a transfer would take it from the others.
  self.postMessage({ ticket: work.ticket, draws } satisfies DrawsReply);
  nextTurn.postMessage(null);
};
