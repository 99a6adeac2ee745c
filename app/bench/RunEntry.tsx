import { useEffect, useMemo, useRef, useState } from 'react';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { House } from '../../shared/contract/house.ts';
import type { ReadingRef } from '../plots/figure.ts';
import { figuresOf } from '../plots/figures/index.ts';
import { nameSubjects } from '../plots/figures/subjectText.ts';
import { PlotFigure } from '../plots/PlotFigure.tsx';
import { useEvidence } from '../stores/evidence.ts';
import { measurementsOf } from '../stores/measurements.ts';
import { BringReadings } from './BringReadings.tsx';
import { KeyFigures } from './KeyFigures.tsx';
import { NewRunForm } from './NewRunForm.tsx';
import { PickedNote } from './PickedNote.tsx';
import { usePicked } from './picked.ts';
import { ReadingTable } from './ReadingTable.tsx';
import { counterpart, supersededBy } from './runOrder.ts';
import { distinctRunTitle, instrumentSentence, runSentence, runTitle, seriesSentence } from './runText.ts';
import { SideBySide } from './SideBySide.tsx';

const lead = { width: 640, height: 200 };
const small = { width: 308, height: 156 };
const square = { width: 308, height: 236 };

/** One run as a paragraph of the notebook: how it was taken, what it shows, its readings. */
export function RunEntry({
  unit,
  run,
  limits,
  open,
}: {
  unit: UnitEvidence;
  run: RunEvidence;
  limits: House['limits'];
  open: boolean;
}) {
  const section = useRef<HTMLElement>(null);
  const { ref: picked, shownIn, pick: pickFor } = usePicked();
  const pick = (ref: ReadingRef) => pickFor(ref, run.id);
  const noted = shownIn === run.id;
  const pickedHere = noted && picked?.unit === unit.id && picked.run === run.id ? picked : null;
  const successor = supersededBy(run, unit.runs);
  const other = counterpart(run, unit.runs);
  const [over, setOver] = useState<string>('');
  const [shown, setShown] = useState(open);
  const [table, setTable] = useState(false);
  const [editing, setEditing] = useState(false);
  const [bring, setBring] = useState(run.readings.length === 0);

  useEffect(() => {
    // A mark picked on this page changes the address too; the page must not jump under the hand.
    if (!open || usePicked.getState().shownIn === run.id) return;
    setShown(true);
    section.current?.scrollIntoView({ block: 'start' });
  }, [open, run.id]);
  useEffect(() => {
    if (pickedHere) setTable(true);
  }, [pickedHere]);

  const figures = useMemo(() => {
    const [overUnit, overRun] = findRun(over);
    const pair = [
      { unit, run, measured: measurementsOf(unit, run) },
      ...(overUnit && overRun
        ? [{ unit: overUnit, run: overRun, measured: measurementsOf(overUnit, overRun) }]
        : []),
    ];
    return figuresOf(nameSubjects(pair), limits);
  }, [unit, run, limits, over]);
  const title = distinctRunTitle(
    run,
    unit.runs.filter((each) => !supersededBy(each, unit.runs)),
  );
  const stem = `${unit.id}-${run.id}`;
  const [first, ...rest] = figures;

  return (
    <section
      ref={section}
      id={`run-${run.id}`}
      className={`bench-row run${successor ? ' run-old' : ''}`}
      aria-label={title}
    >
      <div>
        <h2>{title}</h2>
        <p className="bench-prose">{runSentence(run)}</p>
        <KeyFigures unit={unit} run={run} onPick={pick} />
        {first && (
          <div className="run-plots">
            <PlotFigure figure={first} {...lead} picked={picked} onPick={pick} fileStem={stem} />
            {shown &&
              rest.map((figure) => (
                <PlotFigure
                  key={figure.id}
                  figure={figure}
                  {...(figure.form === 'plane' ? square : small)}
                  picked={picked}
                  onPick={pick}
                  fileStem={stem}
                />
              ))}
          </div>
        )}
        {shown && other && run.conditions.stage === 'as-delivered' && (
          <SideBySide unit={unit} delivered={run} adjusted={other} />
        )}
        {bring && <BringReadings unit={unit} run={run} onDone={() => setBring(false)} />}
        {editing && <NewRunForm unit={unit} run={run} onDone={() => setEditing(false)} />}
        {table && <ReadingTable unit={unit} run={run} />}
        <p className="bench-do">
          {rest.length > 0 && (
            <button type="button" className="act" aria-expanded={shown} onClick={() => setShown(!shown)}>
              {shown ? 'Fewer plots' : `${rest.length} more plots`}
            </button>
          )}
          {run.readings.length > 0 && (
            <button type="button" className="act" aria-expanded={table} onClick={() => setTable(!table)}>
              {table ? 'Close the readings' : `${run.readings.length} readings`}
            </button>
          )}
          {!bring && (
            <button type="button" className="act" onClick={() => setBring(true)}>
              Bring in readings
            </button>
          )}
          {!editing && (
            <button type="button" className="act" onClick={() => setEditing(true)}>
              Change the conditions
            </button>
          )}
        </p>
      </div>
      <aside className="bench-side" aria-label={`Notes on ${title}`}>
        {noted && <PickedNote own={unit.id} />}
        <p>{instrumentSentence(run)}</p>
        {run.readings.length > 0 && <p>{seriesSentence(run)}.</p>}
        {run.conditions.settings && <p>{settingsSentence(run.conditions.settings)}</p>}
        {successor && (
          <p className="stale tone">
            Superseded by {runTitle(successor)} of firmware {successor.conditions.firmware ?? 'unknown'}:
            proofs on this run are stale.
          </p>
        )}
        <OverlayChoice unit={unit} run={run} value={over} onChange={setOver} />
      </aside>
    </section>
  );
}

function findRun(key: string): readonly [UnitEvidence | null, RunEvidence | null] {
  const [unitId = '', runId = ''] = key.split('/');
  const unit = useEvidence.getState().evidence?.units.get(unitId) ?? null;
  return [unit, unit?.runs.find((run) => run.id === runId) ?? null];
}

function settingsSentence(settings: Readonly<Record<string, unknown>>): string {
  const parts = Object.entries(settings).map(([name, value]) => `${name} ${String(value)}`);
  return parts.length > 0 ? `Settings: ${parts.join(', ')}.` : '';
}

/** Any run of any unit laid over this one's plots. */
function OverlayChoice({
  unit,
  run,
  value,
  onChange,
}: {
  unit: UnitEvidence;
  run: RunEvidence;
  value: string;
  onChange: (key: string) => void;
}) {
  const units = useEvidence((state) => state.evidence!.units);
  const own = [unit, ...[...units.values()].filter((each) => each.id !== unit.id)];
  return (
    <label className="bench-over-choice">
      <span>Lay over</span>
      <select value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">nothing</option>
        {own.map((each) => {
          const runs = each.runs.filter(
            (candidate) => candidate !== run && candidate.conditions.signal === run.conditions.signal,
          );
          return runs.length === 0 ? null : (
            <optgroup
              key={each.id}
              label={each === unit ? 'This unit' : `${each.unit.maker} ${each.unit.model}`}
            >
              {runs.map((candidate) => (
                <option key={candidate.id} value={`${each.id}/${candidate.id}`}>
                  {runTitle(candidate)}
                  {candidate.conditions.firmware ? `, firmware ${candidate.conditions.firmware}` : ''}
                </option>
              ))}
            </optgroup>
          );
        })}
      </select>
    </label>
  );
}
