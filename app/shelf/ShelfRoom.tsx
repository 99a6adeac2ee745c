import { useEffect, useMemo, useState } from 'react';
import { afterPaint } from '../shell/afterPaint.ts';
import { Fetched, fetchedPart } from '../shell/Fetched.tsx';
import { go, hashOf, useRoute } from '../shell/route.ts';
import { InNav, InStatusLine } from '../shell/Slots.tsx';
import { useCitations } from '../stores/citations.ts';
import { useEvidence } from '../stores/evidence.ts';
import { unitName, useLibrary } from '../stores/library.ts';
import { besideIds } from './besideIds.ts';
import { EmptyShelf } from './EmptyShelf.tsx';
import { ShelfFilterLine } from './ShelfFilterLine.tsx';
import { ShelfTable } from './ShelfTable.tsx';
import { fits, type ShelfFilter, type SortKey, shelfEntries, sorted } from './shelfEntries.ts';
import { useMeasuredEvidence } from './useMeasuredEvidence.ts';
import './shelf.css';

/** Comparing asks for the program that measures, which the lines alone do not wait for. */
const besidePart = fetchedPart(async () => (await import('./Beside.tsx')).Beside);

/** The Shelf: every set, past and new, one line each; `#/shelf?beside=a,b` places sets side by side. */
export function ShelfRoom() {
  const { units, articles, state, description } = useLibrary();
  const evidence = useEvidence((store) => store.evidence);
  const house = useEvidence((store) => store.house);
  const route = useRoute();
  const [filter, setFilter] = useState<ShelfFilter>({ words: '', maker: '', panel: '', priceUnder: null });
  const [sort, setSort] = useState<SortKey>('latest');
  const [chosen, setChosen] = useState<readonly string[]>([]);
  useEffect(() => {
    // Judging every article starts a worker; the lines are there to be read before it does.
    if (evidence && house && articles.length > 0)
      return afterPaint(() => void useCitations.getState().gather());
  }, [evidence, house, articles]);
  const beside = besideIds(route);
  const measured = useMeasuredEvidence(evidence);
  const entries = useMemo(() => shelfEntries(units, articles, measured), [units, articles, measured]);
  const shown = useMemo(
    () =>
      sorted(
        entries.filter((entry) => fits(entry, filter)),
        sort,
      ),
    [entries, filter, sort],
  );

  if (state === 'loading' || !house) return <p className="shelf-page quiet">Looking along the shelf …</p>;
  if (units.length === 0) return <EmptyShelf />;
  if (beside.length >= 2 && evidence) return <Fetched from={besidePart} />;

  const here = shown.filter((entry) => entry.summary.provenance === 'loan' && !entry.summary.returned);
  const past = shown.filter((entry) => !here.includes(entry));
  const runs = units.reduce((sum, unit) => sum + unit.runs, 0);
  const toggle = (id: string) =>
    setChosen((before) => (before.includes(id) ? before.filter((each) => each !== id) : [...before, id]));
  const shared = { limits: house.limits, chosen, onToggle: toggle, sort, onSort: setSort };
  return (
    <div className="shelf-page">
      <InNav>
        <div>
          <h2>On the shelf</h2>
          <ul>
            {here.length > 0 && (
              <li>
                <button type="button" className="nav-link" onClick={() => scrollTo('shelf-here')}>
                  Here on loan <span>{here.length}</span>
                </button>
              </li>
            )}
            <li>
              <button type="button" className="nav-link" onClick={() => scrollTo('shelf-past')}>
                Bought or gone back <span>{past.length}</span>
              </button>
            </li>
            <li>
              <a className="nav-link" href={hashOf('bench', ['new'])}>
                Log a unit
              </a>
            </li>
          </ul>
        </div>
      </InNav>
      <InStatusLine>
        <span>
          {shown.length === units.length ? `${units.length} sets` : `${shown.length} of ${units.length} sets`}
        </span>
        <span>
          {runs} runs, {articles.length} articles
        </span>
        {description?.demo && <span className="right">The demo library: makers and sets are invented</span>}
      </InStatusLine>
      <h1>Shelf</h1>
      <ShelfFilterLine entries={entries} filter={filter} onFilter={setFilter} sort={sort} onSort={setSort} />
      {here.length > 0 && <ShelfTable id="shelf-here" caption="Here on loan" entries={here} {...shared} />}
      {past.length > 0 && (
        <ShelfTable id="shelf-past" caption="Bought or gone back" entries={past} {...shared} />
      )}
      {shown.length === 0 && <p className="shelf-none">No set fits all of that.</p>}
      {chosen.length > 0 && (
        <section className="shelf-chosen" aria-label="Side by side">
          <span>
            {chosen
              .map((id) => units.find((unit) => unit.id === id))
              .filter((unit) => unit !== undefined)
              .map((unit) => unitName(unit))
              .join(', ')}
          </span>
          <button
            type="button"
            className="act"
            disabled={chosen.length < 2}
            onClick={() => go('shelf', [], { beside: chosen.join(',') })}
          >
            {chosen.length < 2 ? 'Choose another to place beside it' : 'Place side by side'}
          </button>
          <button type="button" className="act" onClick={() => setChosen([])}>
            None
          </button>
        </section>
      )}
    </div>
  );
}

function scrollTo(id: string): void {
  document.getElementById(id)?.scrollIntoView({ block: 'start' });
}
