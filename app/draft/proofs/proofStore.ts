import { create } from 'zustand';
import type { ProofItem } from './proofItem.ts';

interface ProofStore {
  items: readonly ProofItem[];
  focus: string | null;
}

/**
 * The proofs as the margin shows them. Written when verdicts or the focus change, not when typing merely moves
 * positions: those live in the editor's state.
 */
export const useProofs = create<ProofStore>(() => ({ items: [], focus: null }));
