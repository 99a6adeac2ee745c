import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { useEvidence } from '../stores/evidence.ts';
import { runTitle } from './runText.ts';

/** Any run of any unit laid over this one's plots. */
export function OverlayChoice({
  unit,
  run,
  value,
  onChange,
}: {
  unit: UnitEvidence;
  run: RunEvidence;
  /** `<unit>/<run>`, or nothing */
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
          const like = (candidate: RunEvidence) => candidate.conditions.signal === run.conditions.signal;
          const runs = each.runs
            .filter((candidate) => candidate !== run && candidate.readings.length > 0)
            .sort((a, b) => Number(like(b)) - Number(like(a)));
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

/** The run that a choice names. */
export function chosenRun(key: string): readonly [UnitEvidence | null, RunEvidence | null] {
  const [unitId = '', runId = ''] = key.split('/');
  const unit = useEvidence.getState().evidence?.units.get(unitId) ?? null;
  return [unit, unit?.runs.find((run) => run.id === runId) ?? null];
}
