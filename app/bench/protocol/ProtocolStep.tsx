import { useState } from 'react';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { Run } from '../../../shared/contract/run.ts';
import { hashOf } from '../../shell/route.ts';
import { startObservation } from '../observations/startObservation.ts';
import { startRun } from '../startRun.ts';
import { cautionTitle, mustBeReadFirst } from './cautions.ts';
import type { StepStanding } from './protocolState.ts';

const marks = { done: '✓', missing: '○', 'out of date': '↻' } as const;

/** One step: how it stands, what it asks for, and its caution before it can be begun. */
export function ProtocolStep({ unit, standing }: { unit: UnitEvidence; standing: StepStanding }) {
  const { step, state, sentence, run } = standing;
  const [asking, setAsking] = useState(false);
  const gated = mustBeReadFirst(step.cautions);
  const isOpen = state !== 'done';
  const begin = () => {
    setAsking(false);
    if (step.topic !== undefined) startObservation(step.topic);
    else startRun({ title: step.title, conditions: conditionsOf(standing, unit), cautions: step.cautions });
  };
  const word = step.topic === undefined ? 'Begin a run' : 'Note it';
  const caution = step.cautions.length > 0 && (
    <button type="button" className="step-caution" aria-expanded={asking} onClick={() => setAsking(!asking)}>
      {cautionTitle(step.cautions)}
    </button>
  );
  return (
    <li className={`step step-${state.replaceAll(' ', '-')}`}>
      <span className="step-mark" aria-hidden="true">
        {marks[state]}
      </span>
      <span className="step-title">
        {run ? <a href={hashOf('bench', [unit.id, run])}>{step.title}</a> : step.title}
        <span className="unseen"> ({state})</span>
        {!isOpen && gated && caution}
      </span>
      <span className="step-found">{isOpen ? state : sentence}</span>
      {isOpen && (
        <div className="step-more">
          {sentence && <span>{state === 'missing' ? sentence : `${capital(sentence)}.`}</span>}
          {caution}
          <button
            type="button"
            className="act"
            aria-label={`${step.topic === undefined ? word : 'Note what was seen'}: ${step.title}`}
            onClick={() => (gated ? setAsking(true) : begin())}
          >
            {word}
          </button>
        </div>
      )}
      {asking && (
        <div className="caution" role="note">
          {step.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
          <p className="bench-do">
            {isOpen && (
              <button type="button" className="act" onClick={begin}>
                {step.topic === undefined ? 'Read; begin a run' : 'Read; note what was seen'}
              </button>
            )}
            <button type="button" className="act" onClick={() => setAsking(false)}>
              Close
            </button>
          </p>
        </div>
      )}
    </li>
  );
}

/** What the step asks of a run; where an older firmware's run is out of date, its conditions and its place. */
function conditionsOf(
  { step: { signal, stage }, state, run }: StepStanding,
  unit: UnitEvidence,
): Partial<Run> {
  const outdated = state === 'out of date' ? unit.runs.find((each) => each.id === run) : undefined;
  if (outdated) return { ...outdated.conditions, supersedes: outdated.id };
  return {
    ...(signal === undefined ? {} : { signal: signal === 'HDR' ? 'HDR10' : signal }),
    ...(stage === 'as-delivered' || stage === 'adjusted' ? { stage } : {}),
  };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
