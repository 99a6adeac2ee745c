import { create } from 'zustand';
import { looksSame, type ProofItem } from './proofItem.ts';

interface ProofStore {
  items: readonly ProofItem[];
  focus: string | null;
}

/**
 * The proofs as the margin shows them. Written when verdicts or the focus change, not when typing merely moves
 * positions: those live in the editor's state.
 */
export const useProofs = create<ProofStore>(() => ({ items: [], focus: null }));

/**
 * Hands the editor's proofs to the margin. What looks as it did stays the same object, so that a check that changes
 * one verdict renders one proof; nothing at all changes when typing only moved things.
 */
export function showProofs({ items, focus }: ProofStore): void {
  const shown = useProofs.getState();
  const before = new Map(shown.items.map((item) => [item.key, item]));
  let same = items.length === shown.items.length;
  const next = items.map((item, index) => {
    const old = before.get(item.key);
    const kept = old && looksSame(old, item) ? old : item;
    same &&= kept === shown.items[index];
    return kept;
  });
  if (!same || focus !== shown.focus) useProofs.setState({ items: same ? shown.items : next, focus });
}
