import { useEffect, useMemo, useRef, useState } from 'react';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { House } from '../../shared/contract/house.ts';
import type { ReadingRef } from '../plots/figure.ts';
import { figuresOf } from '../plots/figures/index.ts';
import { nameSubjects } from '../plots/figures/subjectText.ts';
import { PlotFigure } from '../plots/PlotFigure.tsx';
import { measurementsOf } from '../stores/measurements.ts';
import { BringReadings } from './BringReadings.tsx';
import { instrumentSentence, sourceSentence } from './instrumentText.ts';
import { KeyFigures } from './KeyFigures.tsx';
import { chosenRun, OverlayChoice } from './OverlayChoice.tsx';
import { PickedNote } from './PickedNote.tsx';
import { usePicked } from './picked.ts';
import { ReadingTable } from './ReadingTable.tsx';
import { RunForm } from './RunForm.tsx';
import { RunHistory } from './RunHistory.tsx';
import { counterpart, supersededBy } from './runOrder.ts';
import {
  distinctRunTitle,
  readingCount,
  runSentence,
  runTitle,
  seriesSentence,
  settingsText,
} from './runText.ts';
import { SideBySide } from './SideBySide.tsx';
import { useWideWindow } from './useWideWindow.ts';
import './runs.css';

const lead = { width: 640, height: 200 };
const small = { width: 308, height: 156 };
const square = { width: 308, height: 236 };

/** One run as a paragraph of the notebook: how it was taken, what it shows, its readings. */
export function RunEntry({
  unit,
  run,
  limits,
  open,
  warmUpMinutes,
}: {
  unit: UnitEvidence;
  run: RunEvidence;
  limits: House['limits'];
  open: boolean;
  /** What the protocol asks for; 0 while it is not known */
  warmUpMinutes: number;
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
  const [editing, setEditing] = useState<'conditions' | 'instrument' | null>(null);
  const wide = useWideWindow();
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
    const [overUnit, overRun] = chosenRun(over);
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
  // A wide window has room for the second plot beside the first.
  const inSight = shown ? rest.length : wide ? 1 : 0;

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
            {rest.slice(0, inSight).map((figure) => (
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
        {editing && (
          <RunForm
            key={editing}
            unit={unit}
            run={run}
            part={editing}
            warmUpMinutes={warmUpMinutes}
            onDone={() => setEditing(null)}
          />
        )}
        {table && <ReadingTable unit={unit} run={run} />}
        <p className="bench-do">
          {rest.length > (wide ? 1 : 0) && (
            <button type="button" className="act" aria-expanded={shown} onClick={() => setShown(!shown)}>
              {shown ? 'Fewer plots' : morePlots(rest.length - inSight)}
            </button>
          )}
          {run.readings.length > 0 && (
            <button type="button" className="act" aria-expanded={table} onClick={() => setTable(!table)}>
              {table ? 'Close the readings' : readingCount(run.readings.length)}
            </button>
          )}
          {!bring && (
            <button type="button" className="act" onClick={() => setBring(true)}>
              Bring in readings
            </button>
          )}
          {!editing && (
            <button type="button" className="act" onClick={() => setEditing('conditions')}>
              Change the conditions
            </button>
          )}
        </p>
      </div>
      <aside className="bench-side" aria-label={`Notes on ${title}`}>
        {noted && <PickedNote own={unit.id} />}
        <p>
          {instrumentSentence(run.conditions.instrument)} {sourceSentence(run.conditions.source)}{' '}
          {editing !== 'instrument' && (
            <button
              type="button"
              className="act"
              aria-label={`Change the instrument of ${title}`}
              onClick={() => setEditing('instrument')}
            >
              Change
            </button>
          )}
        </p>
        {run.readings.length > 0 && <p>{seriesSentence(run)}.</p>}
        {run.conditions.settings && <p>Settings: {settingsText(run.conditions.settings)}.</p>}
        {successor && (
          <p className="stale tone">
            Superseded by {runTitle(successor)} of firmware {successor.conditions.firmware ?? 'unknown'}:
            proofs on this run are stale.
          </p>
        )}
        {run.readings.length > 0 && <OverlayChoice unit={unit} run={run} value={over} onChange={setOver} />}
        <RunHistory unit={unit.id} run={run.id} digest={run.digest} />
      </aside>
    </section>
  );
}

function morePlots(count: number): string {
  return count === 1 ? 'One more plot' : `${count} more plots`;
}
