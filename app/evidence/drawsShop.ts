import { type JudgingBench, judge } from '../../shared/claims/index.ts';
import type { Claim } from '../../shared/contract/claim.ts';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { QuantityDraws } from '../../shared/contract/measurement.ts';
import type { DrawsReply, DrawsRequest } from './drawsRequest.ts';

/** What one article asks for its draws. */
export interface DrawsSource {
  /** The draws where they are known, `pending` while they are computed; never waits. */
  draws(unit: UnitEvidence, run: RunEvidence, quantity: string): QuantityDraws | 'pending' | null;
  /** Makes the draws that these claims wait for before all others, in this order. */
  prefer(claims: readonly Claim[], bench: JudgingBench): void;
  /** Nobody waits any more for what only this article asked for. */
  close(): void;
}

/** The window's draws: one worker makes them for every article that is open after another. */
export interface DrawsShop {
  /** `arrived` is called once for each batch of answers, so that claims shown as working are judged again. */
  open(arrived: () => void): DrawsSource;
}

/** The parts of a Worker that are needed here. */
export interface DrawsMaker {
  onmessage: ((event: MessageEvent<DrawsReply>) => void) | null;
  postMessage(message: DrawsRequest): void;
}

/** Bytes of draws that are kept for the articles to come. */
const keptBytes = 64 * 1024 * 1024;

interface Customer {
  used: Set<string>;
  tell(): void;
}

/** `start` is called with the first question: a window that asks for no draws starts no worker. */
export function createDrawsShop(start: () => DrawsMaker, limitBytes = keptBytes): DrawsShop {
  let maker: DrawsMaker | null = null;
  /** Least recently asked for first */
  const known = new Map<string, QuantityDraws | null>();
  const waiting = new Map<string, Set<Customer>>();
  const sent = new Map<string, UnitEvidence>();
  const customers = new Set<Customer>();

  function send(message: DrawsRequest): void {
    if (!maker) {
      maker = start();
      maker.onmessage = ({ data }) => onReply(data);
    }
    maker.postMessage(message);
  }

  function onReply(reply: DrawsReply): void {
    if (reply.draws !== 'gone') known.set(reply.ticket, reply.draws);
    const whoWait = waiting.get(reply.ticket);
    waiting.delete(reply.ticket);
    for (const customer of whoWait ?? []) customer.tell();
  }

  /** Lets go what is over the limit and what no open article uses, the least recently asked for first. */
  function trim(): void {
    let bytes = 0;
    for (const draws of known.values()) bytes += draws?.values.byteLength ?? 0;
    for (const [ticket, draws] of known) {
      if (bytes <= limitBytes) return;
      if ([...customers].some(({ used }) => used.has(ticket))) continue;
      bytes -= draws?.values.byteLength ?? 0;
      known.delete(ticket);
    }
  }

  function ask(
    customer: Customer,
    ticket: string,
    unit: UnitEvidence,
    run: RunEvidence,
    quantity: string,
  ): void {
    const alsoWait = waiting.get(ticket);
    if (alsoWait) {
      alsoWait.add(customer);
      return;
    }
    waiting.set(ticket, new Set([customer]));
    if (sent.get(unit.id) !== unit) {
      sent.set(unit.id, unit);
      send({ type: 'unit', unit });
    }
    // A run that is not the unit's own, such as one put on target to find the instrument's floor, goes along.
    const own = unit.runs.some((candidate) => candidate.digest === run.digest);
    send({ type: 'draw', ticket, unit: unit.id, run: own ? run.digest : run, quantity });
  }

  return {
    open(arrived) {
      let announcing: ReturnType<typeof setTimeout> | undefined;
      const customer: Customer = {
        used: new Set(),
        tell() {
          announcing ??= setTimeout(() => {
            announcing = undefined;
            arrived();
          }, 0);
        },
      };
      customers.add(customer);
      return {
        draws(unit, run, quantity) {
          const ticket = ticketOf(unit, run, quantity);
          const found = known.get(ticket);
          if (!customer.used.has(ticket)) {
            customer.used.add(ticket);
            if (found !== undefined) {
              known.delete(ticket);
              known.set(ticket, found);
            }
          }
          if (found !== undefined) return found;
          ask(customer, ticket, unit, run, quantity);
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
          clearTimeout(announcing);
          if (!customers.delete(customer)) return;
          const tickets: string[] = [];
          for (const [ticket, whoWait] of waiting) {
            if (!whoWait.delete(customer) || whoWait.size > 0) continue;
            waiting.delete(ticket);
            tickets.push(ticket);
          }
          if (tickets.length > 0) send({ type: 'drop', tickets });
          trim();
        },
      };
    },
  };
}

/** What a draw depends on beside its seed; the facts of the set are those that quantities read. */
function ticketOf({ id, unit }: UnitEvidence, run: RunEvidence, quantity: string): string {
  const facts = JSON.stringify([unit.panel, unit.backlight, unit.zones]);
  return `${id}\n${facts}\n${run.id}\n${run.digest}\n${quantity}`;
}
