import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { ProtocolReply } from '../../../shared/contract/protocol.ts';
import { ProtocolStep } from './ProtocolStep.tsx';
import { coldRuns, protocolState, type StepStanding } from './protocolState.ts';
import { openSentence, warmUpSentence } from './protocolText.ts';
import './protocol.css';

/** The protocol as a checklist: what a fair verdict still needs, with its caution where work can hurt. */
export function ProtocolList({ unit, protocol }: { unit: UnitEvidence; protocol: ProtocolReply | null }) {
  if (!protocol) return <section className="protocol" aria-label="Protocol" />;
  const standings = protocolState(unit, protocol);
  const cold = coldRuns(unit, protocol.warmUpMinutes).length;
  return (
    <section className="protocol" aria-label="Protocol">
      <h2>Protocol</h2>
      <p className="bench-prose">
        {openSentence(standings)} {warmUpSentence(unit.runs.length, protocol.warmUpMinutes, cold)}
      </p>
      {protocol.cautions.length > 0 && (
        <details className="protocol-cautions">
          <summary>Before the set is lifted, hung or opened</summary>
          <div className="caution">
            {protocol.cautions.map((caution) => (
              <p key={caution}>{caution}</p>
            ))}
          </div>
        </details>
      )}
      <div className="protocol-groups">
        <StepGroup
          title="To measure"
          unit={unit}
          standings={standings.filter(({ step }) => step.topic === undefined)}
        />
        <StepGroup
          title="To look at"
          unit={unit}
          standings={standings.filter(({ step }) => step.topic !== undefined)}
        />
      </div>
    </section>
  );
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
          <ProtocolStep key={standing.step.id} unit={unit} standing={standing} />
        ))}
      </ul>
    </div>
  );
}
