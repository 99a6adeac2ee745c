import type { DoorClient } from '../../../shared/contract/door.ts';

export interface Lease {
  /** Ask again now, as when another window has just closed. */
  renew(): Promise<boolean>;
  release(): void;
}

const everyMilliseconds = 4000;

/**
 * One writer an article: asks for the lease and renews it while the article is open. `changed` hears whether this
 * window writes or follows; a host that does not answer leaves things as they are.
 */
export function holdLease(
  ask: DoorClient['ask'],
  article: string,
  client: string,
  changed: (holder: boolean) => void,
): Lease {
  let holder: boolean | null = null;
  let released = false;
  async function renew(): Promise<boolean> {
    const reply = await ask('article.lease', { article, client });
    if (released || !reply.ok) return holder ?? true;
    if (reply.value.holder !== holder) {
      holder = reply.value.holder;
      changed(holder);
    }
    return holder;
  }
  const timer = setInterval(() => void renew(), everyMilliseconds);
  void renew();
  return {
    renew,
    release() {
      released = true;
      clearInterval(timer);
      void ask('article.lease', { article, client, release: true });
    },
  };
}
