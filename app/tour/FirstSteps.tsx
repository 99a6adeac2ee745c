import { useLibrary } from '../stores/library.ts';
import { tourArticle, tourSteps } from './tourState.ts';
import { isTourPossible, tellTour, useTour } from './tourStore.ts';
import { stepWords, withTitle } from './tourWords.ts';

/** Every first step with its tick, for the help sheet; and the way to begin them again. */
export function FirstSteps({ close }: { close: () => void }) {
  const tour = useTour();
  const possible = useLibrary(isTourPossible);
  const title = useLibrary((state) => state.articles.find(({ id }) => id === tourArticle)?.title ?? '');
  if (!possible) return null;
  const isRunning = tour.state === 'running';
  return (
    <>
      <h2>First steps</h2>
      <ol className="first-steps">
        {tourSteps.map((step) => (
          <li key={step}>
            <span className="tour-ticks" aria-hidden="true">
              {tour.done.includes(step) ? '✓' : '·'}
            </span>
            <span>
              {withTitle(stepWords[step].ask, title)}
              {tour.done.includes(step) ? <span className="unseen"> Done.</span> : null}
            </span>
          </li>
        ))}
      </ol>
      <button
        type="button"
        className="act"
        onClick={() => {
          tellTour({ type: isRunning ? 'end' : 'begin' });
          close();
        }}
      >
        {isRunning ? 'End them' : 'Begin them again'}
      </button>
    </>
  );
}
