import { createContext, type ReactNode, useContext } from 'react';
import { createPortal } from 'react-dom';

/** Places in the window's frame that the room on show fills: the nav under the rooms, the status line. */
export interface SlotPlaces {
  nav: HTMLElement | null;
  status: HTMLElement | null;
}

export const SlotContext = createContext<SlotPlaces>({ nav: null, status: null });

/** Puts its children into the navigation column, under the list of rooms. */
export function InNav({ children }: { children: ReactNode }) {
  const { nav } = useContext(SlotContext);
  return nav ? createPortal(children, nav) : null;
}

/** Puts its children into the status line at the foot of the window. */
export function InStatusLine({ children }: { children: ReactNode }) {
  const { status } = useContext(SlotContext);
  return status ? createPortal(children, status) : null;
}
