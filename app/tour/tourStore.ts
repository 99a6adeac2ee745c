import { create } from 'zustand';
import { useLibrary } from '../stores/library.ts';
import { rememberedTour, type Tour, type TourEvent, tourAfter, tourArticle } from './tourState.ts';

const storageKey = 'nitproof.first-steps';

/** The first steps on this machine: remembered here, never in the library. */
export const useTour = create<Tour>(() => rememberedTour(localStorage.getItem(storageKey)));

/** Tells the first steps what happened, and remembers where they stand. */
export function tellTour(event: TourEvent): void {
  const before = useTour.getState();
  const after = tourAfter(before, event);
  if (after === before) return;
  useTour.setState(after, true);
  remember(after);
}

function remember(tour: Tour): void {
  try {
    localStorage.setItem(storageKey, JSON.stringify(tour));
  } catch {
    // A window without storage is shown the steps again the next time.
  }
}

/**
 * Takes over what another window of this machine did: ended or begun there is ended or begun here, and a step ticked
 * there stays ticked. A window that had not yet heard that they were ended or begun here is told again. Returns the way
 * to stop.
 */
export function followOtherWindows(): () => void {
  const onStored = ({ key, newValue }: StorageEvent) => {
    if (key !== storageKey) return;
    const theirs = rememberedTour(newValue);
    const own = useTour.getState();
    if (newValue !== null && theirs.words < own.words) remember(own);
    else useTour.setState(theirs, true);
  };
  window.addEventListener('storage', onStored);
  return () => window.removeEventListener('storage', onStored);
}

/** The steps are taken on the demo library only: they name its article. */
export function isTourPossible({ description, articles } = useLibrary.getState()): boolean {
  return description?.demo === true && articles.some(({ id }) => id === tourArticle);
}
