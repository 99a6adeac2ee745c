import { useState } from 'react';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { type Run, runSchema } from '../../shared/contract/run.ts';
import { door } from '../door/door.ts';
import { go } from '../shell/route.ts';
import { ConditionFields } from './ConditionFields.tsx';
import { BenchForm } from './forms/BenchForm.tsx';
import { type Fields, numberOf } from './forms/readFields.ts';
import { InstrumentFields } from './InstrumentFields.tsx';
import { freeId, idFrom } from './idText.ts';
import { instrumentName, isSameInstrument, runOf } from './runOf.ts';
import { runTitle, settingsText } from './runText.ts';
import { readAgain, tellFaults } from './saveUnit.ts';
import type { RunDraft } from './startRun.ts';

const fieldNames = { 'instrument.name': 'instrument', 'source.name': 'source' };

/**
 * A run that is about to be taken; the last run's conditions stand ready, since most of them stay. With `run`, what
 * is known of one that is there already: its readings and what the form does not show stay.
 */
export function RunForm({
  unit,
  run: edited,
  draft = {},
  warmUpMinutes,
  part = 'conditions',
  onDone,
}: {
  unit: UnitEvidence;
  run?: RunEvidence;
  /** What a step of the protocol asks of a new run */
  draft?: RunDraft;
  /** Minutes that the protocol asks for before the first reading; 0: it does not ask */
  warmUpMinutes: number;
  /** Where the form opens */
  part?: 'conditions' | 'instrument';
  onDone: () => void;
}) {
  const newest = runBefore(unit, draft)?.conditions;
  const last: Partial<Run> | undefined = edited?.conditions ?? { ...newest, ...draft.conditions };
  const [signal, setSignal] = useState(last?.signal ?? 'SDR');
  const [warm, setWarm] = useState<number | null>(edited?.conditions.warm_up_min ?? null);
  const others = edited
    ? unit.runs.filter(
        (each) =>
          each.id !== edited.id && isSameInstrument(each.conditions.instrument, edited.conditions.instrument),
      )
    : [];
  const [alsoOthers, setAlsoOthers] = useState(false);

  const save = async (run: Run) => {
    const id =
      edited?.id ??
      freeId(
        idFrom(run.signal, run.mode, run.stage === 'as-delivered' ? 'delivered' : 'adjusted'),
        new Set(unit.runs.map((each) => each.id)),
      );
    const saves: [string, Run][] = [[id, run]];
    if (alsoOthers)
      for (const each of others) saves.push([each.id, { ...each.conditions, instrument: run.instrument }]);
    for (const [name, conditions] of saves) {
      const reply = await door.ask('run.save', { unit: unit.id, run: name, conditions });
      if (!reply.ok) {
        tellFaults(reply.faults);
        return false;
      }
    }
    await readAgain(unit.id);
    onDone();
    if (!edited) go('bench', [unit.id, id]);
    return true;
  };

  return (
    <BenchForm
      label={edited ? `Conditions of ${runTitle(edited)}` : 'Begin a run'}
      heading={edited ? 'Conditions and instrument' : 'Begin a run'}
      lead={
        edited
          ? 'Claims are judged again; proofs accepted on this run turn stale. The history keeps what stood here.'
          : draft.title
      }
      keep={edited ? 'Keep the conditions' : 'Begin the run'}
      schema={runSchema}
      fieldNames={fieldNames}
      read={(fields) => runOf(fields, edited?.conditions ?? handedOn(newest, fields))}
      save={save}
      onCancel={onDone}
      focus={part === 'instrument' ? 'u_luminance_percent' : 'mode'}
    >
      {draft.cautions && draft.cautions.length > 0 && (
        <div className="caution wide" role="note">
          {draft.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
        </div>
      )}
      <ConditionFields
        unit={unit}
        edited={edited}
        last={last}
        supersedes={edited ? edited.conditions.supersedes : draft.conditions?.supersedes}
        signal={signal}
        onSignal={setSignal}
        onWarm={(typed) => setWarm(numberOf(typed))}
      />
      {!edited && newest?.settings && (
        <p className="quiet wide">
          Settings in {newest.mode}, {newest.stage.replace('-', ' ')}, as before:{' '}
          {settingsText(newest.settings)}. Another mode or stage begins without them.
        </p>
      )}
      {warmUpMinutes > 0 && warm !== null && warm < warmUpMinutes && (
        <p className="close tone wide" role="status">
          A cold set drifts: the protocol asks for {warmUpMinutes} minutes before the first reading.
        </p>
      )}
      <details className="wide bench-more" open={part === 'instrument'}>
        <summary>
          Instrument and source{last?.instrument ? `: ${instrumentName(last.instrument)}` : ''}
        </summary>
        <div className="bench-fields">
          <InstrumentFields instrument={last?.instrument} source={last?.source} />
          {others.length > 0 && (
            <label className="wide bench-tick">
              <input
                type="checkbox"
                checked={alsoOthers}
                onChange={(event) => setAlsoOthers(event.target.checked)}
              />
              Say the same of the instrument in the {others.length} other{' '}
              {others.length === 1 ? 'run' : 'runs'} of this set taken with it
            </label>
          )}
        </div>
      </details>
    </BenchForm>
  );
}

/**
 * What a new run takes over from the one before although the form does not show all of it. Settings belong to a mode
 * at one stage: another mode, or the set once adjusted, has its own.
 */
function handedOn(before: Run | undefined, fields: Fields): Partial<Run> {
  const isSameMode = before?.mode === fields.text('mode') && before?.stage === fields.text('stage');
  return {
    instrument: before?.instrument,
    source: before?.source,
    settings: isSameMode ? before?.settings : undefined,
  };
}

/** The run whose conditions a new one begins from: the one it replaces, else the newest under the same signal. */
function runBefore(unit: UnitEvidence, { conditions = {} }: RunDraft): RunEvidence | undefined {
  const newestFirst = [...unit.runs].sort((a, b) =>
    (b.conditions.taken ?? '').localeCompare(a.conditions.taken ?? ''),
  );
  return (
    unit.runs.find((run) => run.id === conditions.supersedes) ??
    newestFirst.find((run) => run.conditions.signal === conditions.signal) ??
    newestFirst[0]
  );
}
