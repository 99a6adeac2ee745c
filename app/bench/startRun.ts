import { create } from 'zustand';
import type { Run } from '../../shared/contract/run.ts';

/** What a step of the protocol asks of a run that is about to be taken. */
export interface RunDraft {
  /** The step in words */
  title?: string;
  conditions?: Partial<Run>;
  cautions?: readonly string[];
}

interface RunDraftStore {
  /** Null while no form is open */
  draft: RunDraft | null;
}

/** The form for a new run, if it is open; steps of the protocol open it with what they ask for. */
export const useRunDraft = create<RunDraftStore>(() => ({ draft: null }));

export function startRun(draft: RunDraft = {}): void {
  useRunDraft.setState({ draft });
}
