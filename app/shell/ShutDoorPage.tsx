import { type Fault, faultLine } from '../../shared/contract/fault.ts';

/** Shown when the host no longer knows this window. */
export function ShutDoorPage() {
  return (
    <main className="page">
      <h1>This window is signed out</h1>
      <p className="by">
        The library opens through a link that works once. Press Enter in the terminal that serves Nitproof and
        open the fresh link it prints. Text that was not saved yet is kept in this browser and comes back with
        the article.
      </p>
    </main>
  );
}

/** Shown when the library cannot be read: what is wrong, and the mend. */
export function UnreadableLibraryPage({ faults }: { faults: readonly Fault[] }) {
  return (
    <main className="page">
      <h1>The library cannot be read</h1>
      <div className="prose" role="alert">
        {faults.map((fault) => (
          <p key={faultLine(fault)}>{faultLine(fault)}</p>
        ))}
      </div>
      <button type="button" className="act" onClick={() => window.location.reload()}>
        Try again
      </button>
    </main>
  );
}
