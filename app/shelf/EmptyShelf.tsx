import { hashOf } from '../shell/route.ts';

/** A library without sets: what belongs here, and how to see one that is full. */
export function EmptyShelf() {
  return (
    <div className="shelf-page shelf-empty">
      <h1>An empty shelf</h1>
      <p className="prose">
        Every set you test gets a line here: what it is and costs, how far its greys are off, how bright it
        gets, what was written about it and whether those sentences still hold.
      </p>
      <ol className="prose">
        <li>
          <a href={hashOf('bench', ['new'])}>Log a unit</a>: maker, model, size, price, and who lent it.
        </li>
        <li>On its Bench, begin a run and drop in the readings file: CSV with a header row, or CGATS.17.</li>
        <li>
          Write in the <a href={hashOf('draft')}>Draft</a>. Each sentence that makes a claim is set against
          the readings.
        </li>
      </ol>
      <p className="prose">
        To look around first, start Nitproof with its demo library: seven invented sets, their readings and
        articles, some of whose sentences break.
      </p>
    </div>
  );
}
