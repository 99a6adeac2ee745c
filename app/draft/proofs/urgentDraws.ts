import type { EditorView } from 'prosemirror-view';
import type { JudgedClaim } from '../../../shared/contract/claim.ts';
import { mostUrgentFirst } from '../../evidence/urgency.ts';
import type { Standing } from '../../theme/VerdictGlyph.tsx';
import { standingOf } from './proofItem.ts';
import { useProofs } from './proofStore.ts';

/** Milliseconds between two looks at what is in view while the page moves. */
const pace = 120;

/**
 * Says which claims are waited for most, whenever the proofs, the focus or the view change: those that a person
 * looks at before those further down. Returns the way to stop.
 */
export function followUrgency(
  view: EditorView,
  prefer: (claims: readonly JudgedClaim[]) => void,
): () => void {
  const stood = new Map<string, Standing>();
  let timer: ReturnType<typeof setTimeout> | undefined;

  function look(): void {
    timer = undefined;
    if (view.isDestroyed) return;
    const { items, focus } = useProofs.getState();
    const waiting = items.filter((item) => {
      const standing = standingOf(item);
      if (standing === 'working') return true;
      stood.set(item.key, standing);
      return false;
    });
    if (waiting.length < 2) return;
    const shown = keysInView(view.dom);
    prefer(
      mostUrgentFirst(
        waiting.map((item) => ({
          claim: item.claim,
          isOpened: item.key === focus,
          isInView: shown.has(item.key),
          before: stood.get(item.key) ?? item.claim.accepted?.verdict ?? null,
        })),
      ),
    );
  }
  const soon = () => {
    timer ??= setTimeout(look, pace);
  };

  const stop = useProofs.subscribe(soon);
  window.addEventListener('scroll', soon, { capture: true, passive: true });
  return () => {
    clearTimeout(timer);
    stop();
    window.removeEventListener('scroll', soon, { capture: true });
  };
}

function keysInView(article: HTMLElement): Set<string> {
  const keys = new Set<string>();
  for (const span of article.querySelectorAll<HTMLElement>('[data-proof]')) {
    const { top, bottom } = span.getBoundingClientRect();
    if (bottom > 0 && top < window.innerHeight) keys.add(span.dataset.proof!);
  }
  return keys;
}
