import { useSyncExternalStore } from 'react';
import { useLook } from '../theme/themeChoice.ts';

/** As in the style sheets of the Bench: from here on the page has a second column of plots. */
const wideRem = 105;

/** Is the window wide enough for two plots beside each other? */
export function useWideWindow(): boolean {
  // A media query's rem do not grow with the size that a person chose; those of the style sheets' containers do.
  const query = `(min-width: ${wideRem * useLook((look) => look.zoom)}rem)`;
  return useSyncExternalStore(
    (changed) => {
      const media = window.matchMedia(query);
      media.addEventListener('change', changed);
      return () => media.removeEventListener('change', changed);
    },
    () => window.matchMedia(query).matches,
  );
}
