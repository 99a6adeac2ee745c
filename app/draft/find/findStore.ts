import { create } from 'zustand';

export const useFind = create<{ open: boolean; turn: number }>(() => ({ open: false, turn: 0 }));

/** Opens the find line, or moves the focus into it when it is open. */
export function openFind(): void {
  useFind.setState(({ turn }) => ({ open: true, turn: turn + 1 }));
}

export function closeFind(): void {
  useFind.setState({ open: false });
}
