import {
  findNext,
  findPrev,
  getMatchHighlights,
  replaceAll,
  replaceNext,
  SearchQuery,
  setSearchState,
} from 'prosemirror-search';
import type { Command } from 'prosemirror-state';
import { useEffect, useRef, useState } from 'react';
import { useArticle } from '../../stores/article.ts';
import { currentSession } from '../currentSession.ts';
import { revealPosition } from '../margin/proofPlaces.ts';
import { closeFind, useFind } from './findStore.ts';

/** Find and replace in one line over the text. Replacing all is one step of the history. */
export function FindLine() {
  const turn = useFind((state) => state.turn);
  const following = useArticle((state) => state.following);
  const [search, setSearch] = useState('');
  const [replace, setReplace] = useState('');
  const [caseSensitive, setCaseSensitive] = useState(false);
  const [count, setCount] = useState(0);
  const field = useRef<HTMLInputElement>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: asked for again, the field takes the focus again
  useEffect(() => {
    field.current?.focus();
    field.current?.select();
  }, [turn]);

  useEffect(() => {
    const view = currentSession()?.view;
    if (!view) return;
    view.dispatch(
      setSearchState(view.state.tr, new SearchQuery({ search, replace, caseSensitive, literal: true })),
    );
    setCount(search ? getMatchHighlights(view.state).find().length : 0);
  }, [search, replace, caseSensitive]);

  useEffect(
    () => () => {
      const view = currentSession()?.view;
      if (view) view.dispatch(setSearchState(view.state.tr, new SearchQuery({ search: '' })));
    },
    [],
  );

  const run = (command: Command) => () => {
    const view = currentSession()?.view;
    if (!view) return;
    command(view.state, view.dispatch);
    setCount(search ? getMatchHighlights(view.state).find().length : 0);
    revealPosition(view.state.selection.from);
  };

  return (
    <search className="find-line" aria-label="Find and replace">
      <input
        ref={field}
        value={search}
        aria-label="Find"
        placeholder="Find"
        onChange={(event) => setSearch(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') run(event.shiftKey ? findPrev : findNext)();
          if (event.key === 'Escape') {
            closeFind();
            currentSession()?.view.focus();
          }
        }}
      />
      <span className="quiet" aria-live="polite">
        {search ? (count === 1 ? '1 place' : `${count} places`) : ''}
      </span>
      <button type="button" className="act" onClick={run(findPrev)}>
        Previous
      </button>
      <button type="button" className="act" onClick={run(findNext)}>
        Next
      </button>
      {following ? null : (
        <>
          <input
            value={replace}
            aria-label="Replace with"
            placeholder="Replace with"
            onChange={(event) => setReplace(event.target.value)}
          />
          <button type="button" className="act" onClick={run(replaceNext)}>
            Replace
          </button>
          <button type="button" className="act" onClick={run(replaceAll)}>
            Replace all
          </button>
        </>
      )}
      <label>
        <input
          type="checkbox"
          checked={caseSensitive}
          onChange={(event) => setCaseSensitive(event.target.checked)}
        />{' '}
        Match case
      </label>
      <button type="button" className="act" onClick={closeFind}>
        Close
      </button>
    </search>
  );
}
