import { create } from 'zustand';
import type { ReadingRef } from '../plots/figure.ts';
import { currentRoute, go } from '../shell/route.ts';

interface PickedStore {
  ref: ReadingRef | null;
  /** Run in whose margin the note stands */
  shownIn: string | null;
  /** Picks readings; those of the run itself go into the address, so that they can be linked to. */
  pick(ref: ReadingRef, shownIn: string): void;
  clear(): void;
}

/** The reading or readings that the Bench speaks of just now. */
export const usePicked = create<PickedStore>((set) => ({
  ref: null,
  shownIn: null,
  pick(ref, shownIn) {
    set({ ref, shownIn });
    const first = ref.rows[0];
    if (first !== undefined && ref.run === shownIn && currentRoute().path[0] === ref.unit)
      go('bench', [ref.unit, ref.run, String(first)]);
  },
  clear() {
    set({ ref: null, shownIn: null });
    const { room, path } = currentRoute();
    if (room === 'bench' && path.length > 2) go('bench', path.slice(0, 2));
  },
}));
