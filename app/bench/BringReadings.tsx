import { useEffect, useRef, useState } from 'react';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { Fault } from '../../shared/contract/fault.ts';
import type { Run } from '../../shared/contract/run.ts';
import { base64Of } from '../door/base64Of.ts';
import { door } from '../door/door.ts';
import { readingCount } from './runText.ts';
import { faultSentence, readAgain } from './saveUnit.ts';
import './bring.css';

type Standing =
  | { state: 'waiting' }
  | { state: 'running'; job: string; file: string; sentence: string; done: number; total: number }
  | { state: 'done'; file: string; rows: number; notes: readonly string[] }
  | { state: 'refused'; file: string; faults: readonly Fault[] };

/** Takes a readings file by drop or picker, shows how far it is, and says what came of it: rows, notes or faults. */
export function BringReadings({
  unit,
  run,
  conditions,
  onDone,
}: {
  unit: UnitEvidence;
  run: Pick<RunEvidence, 'id'>;
  /** For a run that does not exist yet */
  conditions?: Run;
  onDone: () => void;
}) {
  const [standing, setStanding] = useState<Standing>({ state: 'waiting' });
  const [over, setOver] = useState(false);
  const job = useRef<string | null>(null);

  useEffect(
    () =>
      door.subscribe((event) => {
        if (event.type !== 'job' || event.job !== job.current || event.state !== 'running') return;
        setStanding((now) =>
          now.state === 'running'
            ? { ...now, sentence: event.sentence, done: event.done, total: event.total }
            : now,
        );
      }),
    [],
  );

  const bring = async (file: File | undefined) => {
    if (!file) return;
    const id = crypto.randomUUID();
    job.current = id;
    setStanding({
      state: 'running',
      job: id,
      file: file.name,
      sentence: `Reading ${file.name}`,
      done: 0,
      total: 0,
    });
    const bytes = await base64Of(file);
    const reply = bytes.ok
      ? await door.ask('readings.bring', {
          unit: unit.id,
          run: run.id,
          ...(conditions ? { conditions } : {}),
          fileName: file.name,
          base64: bytes.value,
          job: id,
        })
      : bytes;
    if (job.current !== id) return;
    if (!reply.ok) return setStanding({ state: 'refused', file: file.name, faults: reply.faults });
    setStanding({ state: 'done', file: file.name, rows: reply.value.rows, notes: reply.value.notes });
    await readAgain(unit.id);
  };

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping has its twin in the file picker inside
    <div
      className={`bring${over ? ' over' : ''}`}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void bring(event.dataTransfer.files[0]);
      }}
    >
      {standing.state === 'running' ? (
        <div role="status">
          <p>{standing.sentence}</p>
          <progress
            {...(standing.total > 0 ? { value: standing.done, max: standing.total } : {})}
            aria-label={`Bringing in ${standing.file}`}
          />
          <p className="bench-do">
            <button
              type="button"
              className="act"
              onClick={() => void door.ask('job.cancel', { job: standing.job })}
            >
              Stop; keep nothing of it
            </button>
          </p>
        </div>
      ) : (
        <p>
          <label className="act">
            Choose a readings file
            <input
              type="file"
              className="unseen"
              accept=".csv,.txt,.tsv,.ti3,.cgats,text/csv,text/plain"
              onChange={(event) => {
                void bring(event.target.files?.[0]);
                event.target.value = '';
              }}
            />
          </label>{' '}
          <span className="quiet">or drop it here: CSV with a header row, or CGATS.17.</span>
        </p>
      )}
      {standing.state === 'done' && (
        <div role="status">
          <p>
            <b>{readingCount(standing.rows)}</b> from {standing.file} {standing.rows === 1 ? 'is' : 'are'} in.
          </p>
          {standing.notes.map((note) => (
            <p key={note} className="quiet">
              {note}
            </p>
          ))}
        </div>
      )}
      {standing.state === 'refused' && (
        <div role="alert" className="breaks">
          <p className="tone">
            <b>
              {standing.faults.some((fault) => fault.code === 'cancelled')
                ? 'Stopped.'
                : 'Nothing was brought in.'}
            </b>
          </p>
          <ul>
            {standing.faults.map((fault) => (
              <li key={`${fault.place?.line}:${fault.place?.column}:${fault.sentence}`}>
                {faultSentence(fault)}
              </li>
            ))}
          </ul>
        </div>
      )}
      {standing.state !== 'running' && (
        <p className="bench-do">
          <button type="button" className="act" onClick={onDone}>
            {standing.state === 'done' ? 'Good' : 'Not now'}
          </button>
        </p>
      )}
    </div>
  );
}
