import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { hashOf } from '../shell/route.ts';
import { unitName } from '../stores/library.ts';
import { supersededBy } from './runOrder.ts';
import { distinctRunTitle } from './runText.ts';

/** The page's contents in the navigation column. */
export function BenchContents({ unit, runs }: { unit: UnitEvidence; runs: readonly RunEvidence[] }) {
  const standing = runs.filter((run) => !supersededBy(run, runs));
  return (
    <div>
      <h2>{unitName(unit.unit)}</h2>
      <ul>
        {standing.map((run) => (
          <li key={run.id}>
            <a
              className="nav-link"
              href={hashOf('bench', [unit.id, run.id])}
              onClick={() => document.getElementById(`run-${run.id}`)?.scrollIntoView({ block: 'start' })}
            >
              {distinctRunTitle(run, standing)}
            </a>
          </li>
        ))}
        <li>
          <button
            type="button"
            className="nav-link"
            onClick={() => document.getElementById('observations')?.scrollIntoView({ block: 'start' })}
          >
            Observations <span>{unit.observations.length || ''}</span>
          </button>
        </li>
        <li>
          <a className="nav-link" href={hashOf('bench', ['new'])}>
            Log another unit
          </a>
        </li>
      </ul>
    </div>
  );
}
