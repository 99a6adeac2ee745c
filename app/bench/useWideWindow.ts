import { useSyncExternalStore } from 'react';

/** As in the style sheets of the Bench: from here on the page has a second column of plots. */
const query = '(min-width: 105rem)';

/** Is the window wide enough for two plots beside each other? */
export function useWideWindow(): boolean {
  return useSyncExternalStore(
    (changed) => {
      const media = window.matchMedia(query);
      media.addEventListener('change', changed);
      return () => media.removeEventListener('change', changed);
    },
    () => window.matchMedia(query).matches,
  );
}
