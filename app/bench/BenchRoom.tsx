import { useEffect } from 'react';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { registerCommands } from '../commands/registry.ts';
import { go, hashOf, useRoute } from '../shell/route.ts';
import { InNav, InStatusLine } from '../shell/Slots.tsx';
import { useEvidence } from '../stores/evidence.ts';
import { unitName, useLibrary } from '../stores/library.ts';
import { BenchContents } from './BenchContents.tsx';
import { benchCommands } from './benchCommands.ts';
import { FactNotes } from './FactNotes.tsx';
import { Observations } from './observations/Observations.tsx';
import { usePicked } from './picked.ts';
import { ProtocolList } from './protocol/ProtocolList.tsx';
import { useProtocol } from './protocol/useProtocol.ts';
import { RunEntry } from './RunEntry.tsx';
import { RunForm } from './RunForm.tsx';
import { entryOrder } from './runOrder.ts';
import { readingCount } from './runText.ts';
import { startRun, useRunDraft } from './startRun.ts';
import { NewUnitPage } from './UnitForm.tsx';
import { UnitHead } from './UnitHead.tsx';
import './bench.css';

/** The Bench: the notebook page of one unit. `#/bench/<unit>/<run>/<row>`; `#/bench` opens the set tested last. */
export function BenchRoom() {
  const route = useRoute();
  const evidence = useEvidence((state) => state.evidence);
  const house = useEvidence((state) => state.house);
  const units = useLibrary((state) => state.units);
  const [unitId, runId, rowText] = route.path;
  const row = Number(rowText ?? route.query.row);

  useEffect(() => {
    if (unitId && runId && Number.isInteger(row) && row > 0) {
      const { ref } = usePicked.getState();
      const already = ref?.unit === unitId && ref.run === runId && ref.rows.includes(row);
      if (!already) usePicked.setState({ ref: { unit: unitId, run: runId, rows: [row] }, shownIn: runId });
    } else usePicked.setState({ ref: null, shownIn: null });
  }, [unitId, runId, row]);

  if (!evidence || !house) return <p className="bench-page quiet">Reading the notebook …</p>;
  if (unitId === 'new') return <NewUnitPage />;
  const latest = [...units].sort((a, b) => (b.latestRun ?? '').localeCompare(a.latestRun ?? ''))[0];
  const unit = evidence.units.get(unitId ?? latest?.id ?? '');
  if (!unit)
    return (
      <div className="bench-page">
        <h1>{unitId ? 'No such unit' : 'Nothing on the bench yet'}</h1>
        <p className="prose bench-lead">
          {unitId
            ? `The library holds no unit with the id “${unitId}”.`
            : 'A notebook page begins with a set: who made it, how large it is, and who lent it.'}
        </p>
        <p className="bench-do">
          <a className="act" href={hashOf('bench', ['new'])}>
            Log a unit
          </a>
          <a className="act" href={hashOf('shelf')}>
            Go to the Shelf
          </a>
        </p>
      </div>
    );
  return <Notebook key={unit.id} unit={unit} openRun={runId ?? null} />;
}

function Notebook({ unit, openRun }: { unit: UnitEvidence; openRun: string | null }) {
  const limits = useEvidence((state) => state.house!.limits);
  const units = useLibrary((state) => state.units);
  const draft = useRunDraft((state) => state.draft);
  const protocol = useProtocol(unit);
  const warmUpMinutes = protocol?.warmUpMinutes ?? 0;
  const endRun = () => useRunDraft.setState({ draft: null });
  const runs = entryOrder(unit.runs);
  useEffect(() => registerCommands(benchCommands(startRun)), []);
  // A form that was left open is not the next unit's.
  useEffect(() => () => useRunDraft.setState({ draft: null }), []);
  return (
    <div className="bench-page">
      <InNav>
        <BenchContents unit={unit} runs={runs} />
      </InNav>
      <InStatusLine>
        <span>{unitName(unit.unit)}</span>
        <span>
          {unit.runs.length} {unit.runs.length === 1 ? 'run' : 'runs'},{' '}
          {readingCount(unit.runs.reduce((sum, run) => sum + run.readings.length, 0))}
        </span>
        <label className="right">
          Another unit
          <select value={unit.id} onChange={(event) => go('bench', [event.target.value])}>
            {units.map((each) => (
              <option key={each.id} value={each.id}>
                {unitName(each)}
              </option>
            ))}
          </select>
        </label>
      </InStatusLine>
      <div className="bench-row">
        <div>
          <UnitHead unit={unit} />
          <ProtocolList unit={unit} protocol={protocol} />
        </div>
        <FactNotes unit={unit} />
      </div>
      {runs.map((run) => (
        <RunEntry
          key={run.id}
          unit={unit}
          run={run}
          limits={limits}
          open={openRun === run.id}
          warmUpMinutes={warmUpMinutes}
        />
      ))}
      <div className="bench-row">
        <div>
          {draft ? (
            <RunForm
              key={draft.title ?? ''}
              unit={unit}
              draft={draft}
              warmUpMinutes={warmUpMinutes}
              onDone={endRun}
            />
          ) : (
            <>
              {runs.length === 0 && <FirstRun />}
              <p className="bench-do">
                <button type="button" className="act" onClick={() => startRun()}>
                  {runs.length === 0 ? 'Begin the first run' : 'Begin another run'}
                </button>{' '}
                <kbd>Alt+B</kbd>
              </p>
            </>
          )}
        </div>
      </div>
      <Observations unit={unit} />
    </div>
  );
}

/** What a run is, where there is none yet. */
function FirstRun() {
  return (
    <>
      <h2>Runs</h2>
      <p className="bench-prose">
        A run is what was measured in one sitting: one picture mode, one signal, the set as delivered or
        adjusted. Say the conditions first, since they decide which sentences it can prove; then drop in the
        readings file, CSV with a header row or CGATS.17. Its plots and ± follow from the instrument.
      </p>
    </>
  );
}
