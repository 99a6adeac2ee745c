import { useEffect } from 'react';
import { keyLabel } from '../commands/keys.ts';
import { useCommands } from '../commands/registry.ts';
import { go, useRoute } from '../shell/route.ts';
import { useLibrary } from '../stores/library.ts';
import { nextStep, type TourStep, tourArticle, tourSteps } from './tourState.ts';
import { isTourPossible, tellTour, useTour } from './tourStore.ts';
import {
  backToDraft,
  finishedWords,
  inDraft,
  keysElsewhere,
  piecesOf,
  stepWords,
  withTitle,
} from './tourWords.ts';
import { watchWindow } from './watchWindow.ts';
import './tour.css';

/**
 * One line over the status line: the next of the first steps, and a tick for the last one taken. It says no more
 * than one thing at a time and is never in the way of anything.
 */
export function TourLine() {
  const tour = useTour();
  const { room } = useRoute();
  const possible = useLibrary(isTourPossible);
  const title = useLibrary((state) => state.articles.find(({ id }) => id === tourArticle)?.title ?? '');
  useEffect(watchWindow, []);
  const step = nextStep(tour);
  const last = tour.done.at(-1);
  const isShown = possible && tour.state !== 'ended';
  const words = step ? stepWords[step] : finishedWords;
  const ask = withTitle(words.ask, title);
  const how = step && room !== 'draft' && inDraft.has(step) ? backToDraft : withTitle(words.how, title);
  return (
    <>
      <div className="unseen" aria-live="polite">
        {isShown ? (
          <>
            {last ? `Done: ${stepWords[last].did}. ` : ''}
            {step ? 'Next: ' : ''}
            {ask} <How words={how} />
          </>
        ) : null}
      </div>
      {isShown ? (
        <aside className="tour" aria-label="First steps" tabIndex={-1}>
          <Ticks done={tour.done} />
          <p>
            {last ? <span className="tour-did">{stepWords[last].did}. </span> : null}
            <b>{ask}</b> <How words={how} />
          </p>
          <span className="tour-acts">
            {step === 'open' ? (
              <button type="button" className="act" onClick={() => go('draft', [tourArticle])}>
                Open it
              </button>
            ) : null}
            {step ? (
              <button type="button" className="act" onClick={() => tellTour({ type: 'skip' })}>
                Skip
              </button>
            ) : (
              <button type="button" className="act" onClick={() => tellTour({ type: 'begin' })}>
                Begin again
              </button>
            )}
            <button type="button" className="act" onClick={() => tellTour({ type: 'end' })}>
              {step ? 'End' : 'Close'}
            </button>
          </span>
        </aside>
      ) : null}
    </>
  );
}

/** How far one is: a tick for each step taken, a dot for each to come. */
function Ticks({ done }: { done: readonly TourStep[] }) {
  return (
    <span className="tour-ticks">
      <span aria-hidden="true">{tourSteps.map((step) => (done.includes(step) ? '✓' : '·')).join('')}</span>
      <span className="unseen">
        {done.length} of {tourSteps.length} done
      </span>
    </span>
  );
}

function How({ words }: { words: string }) {
  const commands = useCommands((state) => state.commands);
  return piecesOf(words).map((piece) => {
    if ('text' in piece) return piece.text;
    const key = commands.find(({ id }) => id === piece.command)?.key ?? keysElsewhere[piece.command];
    return key ? <kbd key={piece.command}>{keyLabel(key)}</kbd> : null;
  });
}
