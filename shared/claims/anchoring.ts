import type { StoredAnchor } from '../contract/storedClaim.ts';
import { type AnchorResult, anchorClaim, mayErr, resembles } from './anchors.ts';

/** Finds anchors in one state of a text after another. */
export interface Anchoring {
  /** The text in which anchors are found from now on. */
  enter(text: string): void;
  /** As {@link anchorClaim} finds it. */
  find(anchor: StoredAnchor): AnchorResult;
}

/**
 * Remembers quotes that nothing in the text resembles. Looking for one takes a pass over the whole text; as long as
 * nothing was like it, only what has been typed since can be, so that a keystroke costs a few words.
 */
export function createAnchoring(): Anchoring {
  let text = '';
  /** Found nowhere in `text` */
  let nowhere = new Set<StoredAnchor>();
  /** Those that were found nowhere in the text before, and what has changed in it */
  let before = nowhere;
  let changed = { start: 0, end: 0 };
  return {
    enter(next) {
      before = nowhere;
      if (before.size > 0) changed = changedPart(text, next);
      nowhere = new Set();
      text = next;
    },
    find(anchor) {
      if (before.has(anchor)) {
        const reach = anchor.exact.length + mayErr(anchor);
        const part = text.slice(Math.max(0, changed.start - reach), changed.end + reach);
        if (!resembles(part, anchor)) {
          nowhere.add(anchor);
          return { outcome: 'lost' };
        }
      }
      const result = anchorClaim(text, anchor);
      if (result.outcome === 'lost' && !resembles(text, anchor)) nowhere.add(anchor);
      return result;
    },
  };
}

/** The part of `next` that is not what `text` begins and ends with. */
function changedPart(text: string, next: string): { start: number; end: number } {
  const shorter = Math.min(text.length, next.length);
  const start = longest(shorter, (length) => text.slice(0, length) === next.slice(0, length));
  const same = longest(
    shorter - start,
    (length) => text.slice(text.length - length) === next.slice(next.length - length),
  );
  return { start, end: next.length - same };
}

/** The greatest length up to `most` that passes, where all shorter ones pass too. */
function longest(most: number, passes: (length: number) => boolean): number {
  let low = 0;
  let high = most;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (passes(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
