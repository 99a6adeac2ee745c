import { create } from 'zustand';
import type { ArticleSummary, RequestReply, UnitSummary } from '../../shared/contract/door.ts';
import type { Fault } from '../../shared/contract/fault.ts';
import { door } from '../door/door.ts';

interface LibraryStore {
  state: 'loading' | 'ready' | 'failed';
  faults: readonly Fault[];
  description: RequestReply<'shelf.list'>['library'] | null;
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
    const lists = await door.ask('shelf.list', {});
    if (!lists.ok) return set({ state: 'failed', faults: lists.faults });
    const { library: description, units, articles } = lists.value;
    set({ state: 'ready', faults: [], description, units, articles });
  },
}));

/** "Orrinvale Hearth 55" */
export function unitName(unit: Pick<UnitSummary, 'maker' | 'model'>): string {
  return `${unit.maker} ${unit.model}`;
}
