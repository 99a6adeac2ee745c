import { useEffect, useState } from 'react';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { ProtocolReply } from '../../../shared/contract/protocol.ts';
import { door } from '../../door/door.ts';
import { hashOf } from '../../shell/route.ts';
import { startObservation } from '../observations/startObservation.ts';
import { tellFaults } from '../saveUnit.ts';
import { mustBeReadFirst } from './cautions.ts';
import { coldRuns, protocolState, type StepStanding } from './protocolState.ts';

const marks = { done: '✓', missing: '○', 'out of date': '↻' } as const;

/** The protocol as a checklist: what a fair verdict still needs, with its caution where work can hurt. */
export function ProtocolList({ unit }: { unit: UnitEvidence }) {
  const [protocol, setProtocol] = useState<ProtocolReply | null>(null);
  useEffect(() => {
    let gone = false;
    void door.ask('protocol.read', { unit: unit.id }).then((reply) => {
      if (gone) return;
      if (!reply.ok) return tellFaults(reply.faults);
      setProtocol(reply.value);
    });
    return () => {
      gone = true;
    };
  }, [unit]);
  if (!protocol) return <section className="protocol" aria-label="Protocol" />;

  const standings = protocolState(unit, protocol);
  const open = standings.filter((standing) => standing.state !== 'done');
  const measured = standings.filter((standing) => standing.step.topic === undefined);
  const seen = standings.filter((standing) => standing.step.topic !== undefined);
  const cold = coldRuns(unit, protocol.warmUpMinutes);
  return (
    <section className="protocol" aria-label="Protocol">
      <h2>Protocol</h2>
      <p className="bench-prose">
        {open.length === 0
          ? 'Everything that a fair verdict needs is here.'
          : `${open.length} of ${standings.length} steps are open before a verdict is fair.`}{' '}
        {warmUpSentence(unit, protocol.warmUpMinutes, cold.length)}
      </p>
      <Cautions label="Before the set is moved or opened" cautions={protocol.cautions} />
      <div className="protocol-groups">
        <StepGroup title="To measure" unit={unit} standings={measured} />
        <StepGroup title="To look at" unit={unit} standings={seen} />
      </div>
    </section>
  );
}

function warmUpSentence(unit: UnitEvidence, minutes: number, cold: number): string {
  if (minutes === 0) return '';
  if (unit.runs.length === 0) return `Let the set run for ${minutes} minutes before the first reading.`;
  if (cold === 0) return `The set was warm, ${minutes} minutes or more, before every run.`;
  return `Before ${cold} of ${unit.runs.length} runs the set was on for less than ${minutes} minutes, or nobody noted it.`;
}

function StepGroup({
  title,
  unit,
  standings,
}: {
  title: string;
  unit: UnitEvidence;
  standings: readonly StepStanding[];
}) {
  if (standings.length === 0) return null;
  return (
    <div>
      <h3>{title}</h3>
      <ul>
        {standings.map((standing) => (
          <Step key={standing.step.id} unit={unit} standing={standing} />
        ))}
      </ul>
    </div>
  );
}

function Step({ unit, standing }: { unit: UnitEvidence; standing: StepStanding }) {
  const { step, state, sentence, run } = standing;
  const [asking, setAsking] = useState(false);
  const [read, setRead] = useState(false);
  const topic = step.topic;
  const note = () => topic !== undefined && startObservation(topic);
  return (
    <li className={`step step-${state.replaceAll(' ', '-')}`}>
      <span className="step-mark" aria-hidden="true">
        {marks[state]}
      </span>
      <div>
        {run ? <a href={hashOf('bench', [unit.id, run])}>{step.title}</a> : <b>{step.title}</b>}
        <span className="unseen"> ({state})</span>
        <span className="step-sentence">
          {' '}
          {state === 'out of date' ? `Out of date: ${sentence}.` : sentence}
          {step.cautions.length > 0 && (state !== 'done' || mustBeReadFirst(step.cautions)) && (
            <>
              {' '}
              <button
                type="button"
                className="step-caution"
                aria-expanded={asking}
                onClick={() => setAsking(!asking)}
              >
                Caution
              </button>
            </>
          )}
          {topic !== undefined && state === 'missing' && (
            <>
              {' '}
              <button
                type="button"
                className="act"
                aria-label={`Note what was seen: ${step.title}`}
                onClick={() => (mustBeReadFirst(step.cautions) && !read ? setAsking(true) : note())}
              >
                Note it
              </button>
            </>
          )}
        </span>
        {asking && (
          <div className="caution" role="note">
            {step.cautions.map((caution) => (
              <p key={caution}>{caution}</p>
            ))}
            <p className="bench-do">
              <button
                type="button"
                className="act"
                onClick={() => {
                  setRead(true);
                  setAsking(false);
                  note();
                }}
              >
                {topic === undefined ? 'Read' : 'Read; note what was seen'}
              </button>
            </p>
          </div>
        )}
      </div>
    </li>
  );
}

function Cautions({ label, cautions }: { label: string; cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <details className="protocol-cautions">
      <summary>{label}</summary>
      <div className="caution">
        {cautions.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
      </div>
    </details>
  );
}
