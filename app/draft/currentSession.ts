import { create } from 'zustand';
import type { DraftSession } from './session.ts';

/** The open article's session, for commands and panels outside the editor. */
export const useSession = create<{ session: DraftSession | null }>(() => ({ session: null }));

export function currentSession(): DraftSession | null {
  return useSession.getState().session;
}
