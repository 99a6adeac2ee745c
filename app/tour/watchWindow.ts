import { onPerformed } from '../commands/registry.ts';
import { isProblem } from '../draft/proofs/proofItem.ts';
import { useProofs } from '../draft/proofs/proofStore.ts';
import { currentRoute } from '../shell/route.ts';
import { useArticle } from '../stores/article.ts';
import { useLibrary } from '../stores/library.ts';
import type { Sight } from './tourState.ts';
import { followOtherWindows, isTourPossible, tellTour, useTour } from './tourStore.ts';

const goingToProblems: readonly string[] = ['draft.next-problem', 'draft.previous-problem'];

/** What the window shows now. `performed` is the command that has just been carried out, if one was. */
function sightNow(performed: string | null): Sight {
  const { room, path } = currentRoute();
  const { items, focus } = useProofs.getState();
  const library = useLibrary.getState();
  const inFocus = items.find((item) => item.key === focus);
  const isFocusProblem = inFocus !== undefined && isProblem(inFocus);
  const isWorking = items.some(({ claim }) => claim.judgement.verdict === 'working');
  const proof = document.activeElement?.closest<HTMLElement>('.proof');
  return {
    room,
    articles: library.state === 'ready' ? library.articles.map(({ id }) => id) : null,
    article: room === 'draft' && items.length > 0 ? useArticle.getState().id : null,
    wentToProblem: isFocusProblem && performed !== null && goingToProblems.includes(performed),
    isInProof: isFocusProblem && proof?.dataset.key === focus,
    counts:
      items.length === 0 || isWorking
        ? null
        : {
            problems: items.filter(isProblem).length,
            accepted: items.filter(({ claim }) => claim.accepted !== undefined).length,
          },
    run: room === 'bench' ? (path[1] ?? null) : null,
  };
}

/** Looks whenever something a step may ask for has changed. Returns the way to stop. */
export function watchWindow(): () => void {
  const look = (performed: string | null = null) => {
    if (useTour.getState().state === 'running' && isTourPossible())
      tellTour({ type: 'saw', sight: sightNow(performed) });
  };
  const plainLook = () => look();
  const stops = [
    followOtherWindows(),
    onPerformed(look),
    useProofs.subscribe(plainLook),
    useArticle.subscribe((now, before) => {
      if (now.id !== before.id) look();
    }),
    useLibrary.subscribe(plainLook),
    // Begun again where the first of them is taken already.
    useTour.subscribe(plainLook),
  ];
  window.addEventListener('hashchange', plainLook);
  document.addEventListener('focusin', plainLook);
  return () => {
    for (const stop of stops) stop();
    window.removeEventListener('hashchange', plainLook);
    document.removeEventListener('focusin', plainLook);
  };
}
