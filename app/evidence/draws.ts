import { type JudgingBench, judge } from '../../shared/claims/index.ts';
import type { Claim } from '../../shared/contract/claim.ts';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { QuantityDraws } from '../../shared/contract/measurement.ts';
import type { DrawsReply, DrawsRequest } from './drawsWorker.ts';

export interface DrawsSource {
  /** The draws where they are known, `pending` while they are computed; never waits. */
  draws(unit: UnitEvidence, run: RunEvidence, quantity: string): QuantityDraws | 'pending' | null;
  /** Makes the draws that these claims wait for before all others, in this order. */
  prefer(claims: readonly Claim[], bench: JudgingBench): void;
  close(): void;
}

function ticketOf(unit: UnitEvidence, run: RunEvidence, quantity: string): string {
  return `${unit.id}\n${run.id}\n${run.digest}\n${quantity}`;
}

/**
 * Draws are made in a worker, so that typing never waits for them. `arrived` is called once for each batch of
 * answers, so that claims shown as working are judged again.
 */
export function createDrawsSource(arrived: () => void): DrawsSource {
  // Begun with the first question: an article that asks for no draws costs none.
  let worker: Worker | null = null;
  let closed = false;
  const known = new Map<string, QuantityDraws | null>();
  const asked = new Set<string>();
  const sent = new Map<string, UnitEvidence>();
  let announcing = false;

  const onReply = ({ data }: MessageEvent<DrawsReply>) => {
    known.set(data.ticket, data.draws);
    asked.delete(data.ticket);
    if (announcing) return;
    announcing = true;
    setTimeout(() => {
      announcing = false;
      arrived();
    }, 0);
  };

  function send(message: DrawsRequest): void {
    if (closed) return;
    if (!worker) {
      worker = new Worker(new URL('./drawsWorker.ts', import.meta.url), { type: 'module' });
      worker.onmessage = onReply;
    }
    worker.postMessage(message);
  }

  return {
    draws(unit, run, quantity) {
      const ticket = ticketOf(unit, run, quantity);
      const found = known.get(ticket);
      if (found !== undefined) return found;
      if (!asked.has(ticket)) {
        asked.add(ticket);
        if (sent.get(unit.id) !== unit) {
          sent.set(unit.id, unit);
          send({ type: 'unit', unit });
        }
        // A run that is not the unit's own, such as one put on target to find the instrument's floor, goes along.
        const own = unit.runs.some((candidate) => candidate.digest === run.digest);
        send({ type: 'draw', ticket, unit: unit.id, run: own ? run.digest : run, quantity });
      }
      return 'pending';
    },
    prefer(claims, bench) {
      const tickets = new Set<string>();
      // Judging says what a claim asks for; nothing is asked twice, so this only reads what is known.
      const asking: JudgingBench = {
        ...bench,
        draws(unit, run, quantity) {
          const ticket = ticketOf(unit, run, quantity);
          const found = known.get(ticket);
          if (found !== undefined) return found;
          tickets.add(ticket);
          return 'pending';
        },
      };
      for (const claim of claims) judge(claim, asking);
      if (tickets.size > 0) send({ type: 'prefer', tickets: [...tickets] });
    },
    close() {
      closed = true;
      worker?.terminate();
    },
  };
}
