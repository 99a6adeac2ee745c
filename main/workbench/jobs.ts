import type { DoorEvent } from '../../shared/contract/door.ts';
import type { Result } from '../../shared/contract/fault.ts';

/** What a long piece of work says and asks between its parts. */
export interface Job {
  /** Tells the window, lets waiting requests through, and answers false once the job is cancelled. */
  report(done: number, total: number, sentence: string): Promise<boolean>;
}

const millisecondsBetweenEvents = 80;

/** Long work under the window's own name for it: progress as events, cancel, one closing event each. */
export class Jobs {
  readonly #publish: (event: DoorEvent) => void;
  readonly #running = new Map<string, { cancelled: boolean; settled: Promise<unknown> }>();

  constructor(publish: (event: DoorEvent) => void) {
    this.#publish = publish;
  }

  /** True when there was something to cancel; its closing event says whether it came in time. */
  cancel(job: string): boolean {
    const entry = this.#running.get(job);
    if (entry === undefined) return false;
    entry.cancelled = true;
    return true;
  }

  async cancelAll(): Promise<void> {
    const entries = [...this.#running.values()];
    for (const entry of entries) entry.cancelled = true;
    await Promise.allSettled(entries.map(({ settled }) => settled));
  }

  async run<T>(id: string, work: (job: Job) => Promise<Result<T>>): Promise<Result<T>> {
    if (this.#running.has(id))
      return { ok: false, faults: [{ code: 'refused', sentence: `The job "${id}" is already running.` }] };
    const entry = { cancelled: false, settled: Promise.resolve() as Promise<unknown> };
    this.#running.set(id, entry);
    let lastEvent = Number.NEGATIVE_INFINITY;
    let known = { done: 0, total: 0, sentence: '' };
    const close = (state: 'done' | 'cancelled' | 'failed', faults: Result<T>): void => {
      this.#publish({
        type: 'job',
        job: id,
        state,
        ...known,
        ...(state === 'done' ? { done: known.total } : {}),
        ...(faults.ok || state === 'cancelled' ? {} : { faults: faults.faults }),
      });
    };
    const job: Job = {
      report: async (done, total, sentence) => {
        known = { done, total, sentence };
        const now = performance.now();
        if (now - lastEvent > millisecondsBetweenEvents) {
          lastEvent = now;
          this.#publish({ type: 'job', job: id, state: 'running', ...known });
        }
        await new Promise((resolve) => setImmediate(resolve));
        return !entry.cancelled;
      },
    };
    const settled = work(job);
    entry.settled = settled;
    try {
      const result = await settled;
      const cancelled = !result.ok && result.faults.some(({ code }) => code === 'cancelled');
      close(result.ok ? 'done' : cancelled ? 'cancelled' : 'failed', result);
      return result;
    } catch (error) {
      close('failed', { ok: false, faults: [{ code: 'internal', sentence: 'Something went wrong here.' }] });
      throw error;
    } finally {
      this.#running.delete(id);
    }
  }
}
