import type { DoorClient, DoorEvent, Reply, RequestName } from '../../shared/contract/door.ts';

/** What a lost session means for the window: the door is shut until the one-time link is opened again. */
export type Refused = (status: number) => void;

/**
 * The door over the loopback host: one POST a request, server-sent events for news. Network trouble comes
 * back as a fault; nothing is thrown.
 */
export function createLoopbackClient(refused: Refused): DoorClient {
  const listeners = new Set<(event: DoorEvent) => void>();
  let source: EventSource | null = null;

  let leaving = false;
  window.addEventListener(
    'pagehide',
    () => {
      leaving = true;
    },
    true,
  );
  window.addEventListener('pageshow', () => {
    leaving = false;
  });

  function listen() {
    source = new EventSource('/events');
    source.onmessage = async (message) => {
      let raw: unknown;
      try {
        raw = JSON.parse(message.data as string);
      } catch {
        return;
      }
      // The schema is fetched with the first news; nothing that a window begins with needs it.
      const { eventSchema } = await import('../../shared/contract/door.ts');
      const event = eventSchema.safeParse(raw);
      if (event.success) for (const listener of listeners) listener(event.data);
    };
  }

  return {
    async ask<N extends RequestName>(name: N, input: unknown): Promise<Reply<N>> {
      try {
        const body = JSON.stringify(input);
        const response = await fetch(`/door/${name}`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body,
          // A last save outlives the window; browsers carry at most 64 KiB of such.
          keepalive: (leaving || document.visibilityState === 'hidden') && body.length < 60_000,
          credentials: 'same-origin',
        });
        if (response.status === 401 || response.status === 403) {
          refused(response.status);
          return fault('refused', 'This window is no longer signed in to the library.');
        }
        return (await response.json()) as Reply<N>;
      } catch {
        return fault('unreadable', 'The library does not answer.', 'Is Nitproof still running?');
      }
    },
    subscribe(listener) {
      listeners.add(listener);
      if (!source) listen();
      return () => {
        listeners.delete(listener);
        if (listeners.size === 0) {
          source?.close();
          source = null;
        }
      };
    },
  };
}

function fault<N extends RequestName>(
  code: 'refused' | 'unreadable',
  sentence: string,
  mend?: string,
): Reply<N> {
  return { ok: false, faults: [{ code, sentence, ...(mend ? { mend } : {}) }] };
}
