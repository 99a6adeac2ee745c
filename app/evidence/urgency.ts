import type { Standing } from '../theme/VerdictGlyph.tsx';

/** A claim that still waits for its draws, as a person sees it. */
export interface WaitingClaim<T> {
  claim: T;
  /** Its proof is the one that is open or in focus. */
  isOpened: boolean;
  isInView: boolean;
  /** How it stood before its evidence changed, or when it was accepted; null where nobody knows. */
  before: Standing | null;
}

/** The proof that is open first, then those in view, then what was a problem, then the rest, each in their order. */
export function mostUrgentFirst<T>(waiting: readonly WaitingClaim<T>[]): T[] {
  const rank = ({ isOpened, isInView, before }: WaitingClaim<T>) => {
    if (isOpened) return 0;
    if (isInView) return 1;
    return before === 'breaks' || before === 'close' || before === 'stale' ? 2 : 3;
  };
  return [...waiting].sort((a, b) => rank(a) - rank(b)).map(({ claim }) => claim);
}
