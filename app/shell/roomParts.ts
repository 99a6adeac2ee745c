import { type FetchedPart, fetchedPart } from './Fetched.tsx';
import type { Room } from './route.ts';

/** Each room, its program fetched when it is first gone to. */
export const roomParts: Record<Room, FetchedPart> = {
  shelf: fetchedPart(async () => (await import('../shelf/ShelfRoom.tsx')).ShelfRoom),
  bench: fetchedPart(async () => (await import('../bench/BenchRoom.tsx')).BenchRoom),
  draft: fetchedPart(async () => (await import('../draft/DraftRoom.tsx')).DraftRoom),
  score: fetchedPart(async () => (await import('../rooms/ScoreRoom.tsx')).ScoreRoom),
  desk: fetchedPart(async () => (await import('../rooms/DeskRoom.tsx')).DeskRoom),
  release: fetchedPart(async () => (await import('../rooms/ReleaseRoom.tsx')).ReleaseRoom),
};
