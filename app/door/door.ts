import type { DoorClient } from '../../shared/contract/door.ts';
import { createLoopbackClient } from './loopbackClient.ts';

declare global {
  interface Window {
    /** Put there by the desktop host's preload script */
    nitproof?: DoorClient;
  }
}

const refusalListeners = new Set<() => void>();
let refusedAlready = false;

/** Calls back when the host no longer knows this window (its one-time link was used or has lapsed). */
export function onRefused(listener: () => void): () => void {
  refusalListeners.add(listener);
  if (refusedAlready) listener();
  return () => refusalListeners.delete(listener);
}

function createDoor(): DoorClient {
  return (
    window.nitproof ??
    createLoopbackClient(() => {
      refusedAlready = true;
      for (const listener of refusalListeners) listener();
    })
  );
}

/** The window's one door to the library. */
export const door: DoorClient = createDoor();

/** Names this window in leases and events, so that it can ignore its own echo. */
export const clientId: string = crypto.randomUUID();

/** The person's name for proofs and history, asked for once and kept on this machine. */
export const person = {
  name(): string {
    return localStorage.getItem('nitproof.person') ?? 'reviewer';
  },
  rename(name: string): void {
    localStorage.setItem('nitproof.person', name.trim() || 'reviewer');
  },
};
