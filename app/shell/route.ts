import { useSyncExternalStore } from 'react';

export const rooms = ['shelf', 'bench', 'draft', 'score', 'desk', 'release'] as const;
export type Room = (typeof rooms)[number];

export const roomNames: Record<Room, string> = {
  shelf: 'Shelf',
  bench: 'Bench',
  draft: 'Draft',
  score: 'Score sheet',
  desk: 'Desk',
  release: 'Release',
};

/** Where the window stands: `#/bench/orrinvale-hearth-55/calm-sdr?row=12`. */
export interface Route {
  room: Room;
  /** Ids after the room: unit and run on the Bench, article in the Draft */
  path: readonly string[];
  query: Readonly<Record<string, string>>;
}

export function parseRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/, '').split('?');
  const [room, ...rest] = path.split('/').filter(Boolean).map(decodeURIComponent);
  return {
    room: rooms.find((name) => name === room) ?? 'draft',
    path: rest,
    query: Object.fromEntries(new URLSearchParams(query)),
  };
}

export function hashOf(room: Room, path: readonly string[] = [], query: Record<string, string> = {}): string {
  const search = new URLSearchParams(query).toString();
  return `#/${[room, ...path].map(encodeURIComponent).join('/')}${search ? `?${search}` : ''}`;
}

export function go(room: Room, path: readonly string[] = [], query: Record<string, string> = {}): void {
  window.location.hash = hashOf(room, path, query);
}

let last = { hash: '\u0000', route: parseRoute('') };

function current(): Route {
  const { hash } = window.location;
  if (hash !== last.hash) last = { hash, route: parseRoute(hash) };
  return last.route;
}

function subscribe(listener: () => void): () => void {
  window.addEventListener('hashchange', listener);
  return () => window.removeEventListener('hashchange', listener);
}

/** The route, followed live; the same object until the address changes. */
export function useRoute(): Route {
  return useSyncExternalStore(subscribe, current);
}

/** For code outside components. */
export const currentRoute = current;
