import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { Observation } from '../../../shared/contract/observation.ts';
import { door } from '../../door/door.ts';
import { dateText } from '../dateText.ts';
import { readAgain, tellFaults } from '../saveUnit.ts';
import { ObservationForm } from './ObservationForm.tsx';
import { observationConditions, topicText } from './observationText.ts';
import { usePhoto } from './photos.ts';
import { severityWord } from './severity.ts';
import { startObservation, useObservationDraft } from './startObservation.ts';
import './observations.css';

/** What was and was not seen, one entry each, with photos. */
export function Observations({ unit }: { unit: UnitEvidence }) {
  const topic = useObservationDraft((draft) => draft.topic);
  return (
    <section id="observations" className="bench-row" aria-label="Observations">
      <div>
        <h2>Observations</h2>
        {unit.observations.length === 0 && (
          <p className="bench-prose">Nothing noted yet. What was not seen is worth a line too: severity 0.</p>
        )}
        <ul className="observations">
          {unit.observations.map((observation) => (
            <Entry key={observation.id} unit={unit.id} observation={observation} />
          ))}
        </ul>
        {topic !== null ? (
          <ObservationForm key={topic} unit={unit} topic={topic} />
        ) : (
          <p className="bench-do">
            <button type="button" className="act" onClick={() => startObservation('')}>
              Note an observation
            </button>{' '}
            <kbd>Alt+O</kbd>
          </p>
        )}
      </div>
    </section>
  );
}

function Entry({ unit, observation }: { unit: string; observation: Observation }) {
  const photo = usePhoto(unit, observation.photo);
  const remove = async () => {
    const reply = await door.ask('observation.remove', { unit, id: observation.id });
    if (reply.ok) await readAgain(unit);
    else tellFaults(reply.faults);
  };
  const who = [observation.by, observation.seen && dateText(observation.seen)].filter(Boolean).join(', ');
  return (
    <li className="observation">
      <SeverityScale severity={observation.severity} />
      <div>
        <p>
          <b>{topicText(observation.topic)}</b>, {severityWord(observation.severity)}
          {observation.note ? `: ${observation.note}` : ''}{' '}
          <button
            type="button"
            className="act observation-do"
            aria-label={`Strike out: ${topicText(observation.topic)}, ${observationConditions(observation)}`}
            onClick={remove}
          >
            Strike out
          </button>
        </p>
        <p className="quiet">{[observationConditions(observation), who].filter(Boolean).join('; ')}</p>
      </div>
      {photo && (
        <a className="observation-photo" href={photo} target="_blank" rel="noreferrer">
          <img src={photo} alt={`${topicText(observation.topic)}, ${observationConditions(observation)}`} />
        </a>
      )}
    </li>
  );
}

/** Four strokes, as many inked as the severity; the word stands beside it. */
function SeverityScale({ severity }: { severity: number }) {
  return (
    <svg className="severity" viewBox="0 0 34 14" aria-hidden="true">
      {[1, 2, 3, 4].map((step) => (
        <line
          key={step}
          x1={step * 8 - 5}
          x2={step * 8 - 5}
          y1={2}
          y2={12}
          className={step <= severity ? 'on' : 'off'}
        />
      ))}
    </svg>
  );
}
