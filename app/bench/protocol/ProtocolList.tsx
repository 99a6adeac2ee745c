import { useState } from 'react';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import { hashOf } from '../../shell/route.ts';
import { startObservation } from '../observations/startObservation.ts';
import { type Caution, cautions } from './cautions.ts';
import { protocolState, type StepStanding } from './protocolState.ts';
import { protocolSteps } from './steps.ts';

const marks = { done: '✓', part: '◐', missing: '○', 'out of date': '↻' } as const;

/** The protocol as a checklist: what a fair verdict still needs, with its caution where work can hurt. */
export function ProtocolList({ unit }: { unit: UnitEvidence }) {
  const standings = protocolState(unit, protocolSteps);
  const open = standings.filter((standing) => standing.state !== 'done').length;
  const groups = [...new Set(standings.map((standing) => standing.step.group))];
  return (
    <section className="protocol" aria-label="Protocol">
      <h2>Protocol</h2>
      <p className="bench-prose">
        {open === 0
          ? 'Everything that a fair verdict needs is here.'
          : `${open} of ${standings.length} steps are still open before a verdict is fair.`}
      </p>
      <div className="protocol-groups">
        {groups.map((group) => (
          <div key={group}>
            <h3>{group}</h3>
            <ul>
              {standings
                .filter((standing) => standing.step.group === group)
                .map((standing) => (
                  <Step key={standing.step.id} unit={unit} standing={standing} />
                ))}
            </ul>
          </div>
        ))}
      </div>
    </section>
  );
}

function Step({ unit, standing }: { unit: UnitEvidence; standing: StepStanding }) {
  const { step, state, sentence, run } = standing;
  const [read, setRead] = useState(false);
  const caution: Caution | null = step.caution ? cautions[step.caution] : null;
  const topic = step.needs.kind === 'observation' ? step.needs.topic : null;
  const [asking, setAsking] = useState(false);
  const note = () => topic && startObservation(topic);
  return (
    <li className={`step step-${state.replaceAll(' ', '-')}`}>
      <span className="step-mark" aria-hidden="true">
        {marks[state]}
      </span>
      <div>
        <p>
          {run ? <a href={hashOf('bench', [unit.id, run])}>{step.title}</a> : <b>{step.title}</b>}
          <span className="unseen">, {state}.</span>{' '}
          <span className="step-sentence">
            {state === 'out of date' ? `Out of date: ${sentence}` : sentence}
            {caution && (
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
            {topic && state === 'missing' && (
              <>
                {' '}
                <button
                  type="button"
                  className="act"
                  onClick={() => (caution && !read ? setAsking(true) : note())}
                >
                  Note it
                </button>
              </>
            )}
          </span>
        </p>
        {caution && asking && (
          <div className="caution" role="note">
            <b>{caution.title}.</b> {caution.text}
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
                {topic ? 'Read; note what was seen' : 'Read'}
              </button>
            </p>
          </div>
        )}
      </div>
    </li>
  );
}
