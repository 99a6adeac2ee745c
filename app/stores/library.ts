import { create } from 'zustand';
import type { ArticleSummary, RequestReply, UnitSummary } from '../../shared/contract/door.ts';
import type { Fault } from '../../shared/contract/fault.ts';
import { door } from '../door/door.ts';

interface LibraryStore {
  state: 'loading' | 'ready' | 'failed';
  faults: readonly Fault[];
  description: RequestReply<'library.describe'> | null;
  units: readonly UnitSummary[];
  articles: readonly ArticleSummary[];
  /** Reads the lists again; called at start and whenever the backend says that something changed. */
  load(): Promise<void>;
}

/** What the library holds, in one line a unit and one line an article. */
export const useLibrary = create<LibraryStore>((set) => ({
  state: 'loading',
  faults: [],
  description: null,
  units: [],
  articles: [],
  async load() {
    const [description, lists] = await Promise.all([
      door.ask('library.describe', {}),
      door.ask('shelf.list', {}),
    ]);
    if (!description.ok) return set({ state: 'failed', faults: description.faults });
    if (!lists.ok) return set({ state: 'failed', faults: lists.faults });
    set({ state: 'ready', faults: [], description: description.value, ...lists.value });
  },
}));

/** "Orrinvale Hearth 55" */
export function unitName(unit: Pick<UnitSummary, 'maker' | 'model'>): string {
  return `${unit.maker} ${unit.model}`;
}
