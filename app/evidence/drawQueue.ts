/** Work that waits to be done, in the order in which it was asked for unless something is preferred. */
export interface DrawQueue<T extends { ticket: string }> {
  add(work: T): void;
  /** These first, in this order, in place of what was preferred before; unknown tickets are passed over. */
  prefer(tickets: readonly string[]): void;
  /** Nobody waits for these any more. */
  drop(tickets: readonly string[]): void;
  /** Takes out what is to be done next. */
  next(): T | undefined;
}

export function createDrawQueue<T extends { ticket: string }>(): DrawQueue<T> {
  const waiting = new Map<string, T>();
  let preferred: string[] = [];
  const take = (ticket: string | undefined): T | undefined => {
    if (ticket === undefined) return undefined;
    const work = waiting.get(ticket);
    waiting.delete(ticket);
    return work;
  };
  return {
    add(work) {
      waiting.set(work.ticket, work);
    },
    prefer(tickets) {
      preferred = [...tickets].reverse();
    },
    drop(tickets) {
      for (const ticket of tickets) waiting.delete(ticket);
    },
    next() {
      while (preferred.length > 0) {
        const work = take(preferred.pop());
        if (work) return work;
      }
      return take(waiting.keys().next().value);
    },
  };
}
