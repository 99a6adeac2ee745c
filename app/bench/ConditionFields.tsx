import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { Run } from '../../shared/contract/run.ts';
import { Choice, Field, NumberField } from './forms/Field.tsx';
import { currentFirmware } from './protocol/protocolState.ts';
import { runTitle } from './runText.ts';
import { fieldTime, nowForField } from './takenTime.ts';

const signals = ['SDR', 'HDR10', 'HLG'];
const dimmings = ['as-set', 'off', 'low', 'medium', 'high', 'none'];

/** Under which conditions a run is taken: the set's mode and signal, the target, the room and the warm-up. */
export function ConditionFields({
  unit,
  edited,
  last,
  supersedes,
  signal,
  onSignal,
  onWarm,
}: {
  unit: UnitEvidence;
  /** The run whose conditions are changed; none for a run that is about to be taken */
  edited: RunEvidence | undefined;
  /** What stands ready: the run's own conditions, else those of the run before */
  last: Partial<Run> | undefined;
  /** Id of the run that this one replaces */
  supersedes: string | null | undefined;
  signal: string;
  onSignal: (signal: string) => void;
  onWarm: (minutes: string) => void;
}) {
  const hdr = signal !== 'SDR';
  // Another signal has another target; what stands ready goes only with its own.
  const asWas = last?.target && signal === last.signal ? last.target : null;
  const modes = [...new Set(unit.runs.map((run) => run.conditions.mode))];
  return (
    <>
      <Field
        name="mode"
        label="Picture mode"
        value={last?.mode}
        offers={modes}
        required
        mend="Say which picture mode the set is in."
      />
      <Choice
        name="stage"
        label="Stage"
        value={last?.stage ?? 'as-delivered'}
        options={[['as-delivered', 'as delivered'], 'adjusted']}
      />
      <Choice name="signal" label="Signal" value={signal} options={signals} onChange={onSignal} />
      <Field
        name="taken"
        label="Taken"
        type="datetime-local"
        value={edited ? fieldTime(edited.conditions.taken) : nowForField()}
        mend="Write day and time, or leave both empty."
      />
      <Field
        name="firmware"
        label="Firmware"
        value={edited ? edited.conditions.firmware : currentFirmware(unit)}
      />
      <Field name="sample" label="Sample" value={last?.sample} placeholder="A" />
      <Choice
        key={`gamut-${signal}`}
        name="gamut"
        label="Target gamut"
        value={asWas?.gamut ?? (hdr ? 'P3-D65' : 'BT.709')}
        options={['BT.709', 'P3-D65', 'BT.2020', 'BT.601-625', 'BT.601-525']}
      />
      <Field name="white" label="Target white" value={last?.target?.white ?? 'D65'} />
      <Field
        key={`eotf-${signal}`}
        name="eotf"
        label="Target EOTF"
        value={asWas?.eotf ?? (hdr ? (signal === 'HLG' ? 'HLG' : 'PQ') : 'BT.1886')}
        offers={['BT.1886', 'gamma 2.2', 'gamma 2.4', 'sRGB', 'PQ', 'HLG']}
        mend="Write BT.1886, PQ, HLG, sRGB, or a power such as gamma 2.2."
      />
      {hdr && (
        <NumberField
          name="peak"
          label="Target peak, cd/m²"
          value={asWas?.peak}
          mend="Write the luminance up to which the curve is followed, more than 0."
        />
      )}
      <Choice name="dimming" label="Dimming" value={last?.dimming ?? 'as-set'} options={dimmings} />
      <NumberField
        name="room_lux"
        label="Room, lux"
        value={last?.room_lux}
        mend="Write the light in the room in lux, 0 or more: 0.1."
      />
      <NumberField
        name="warm_up_min"
        label="Warmed up for, minutes"
        value={edited?.conditions.warm_up_min}
        mend="Write for how many minutes the set had been on, 0 or more."
        onChange={(event) => onWarm(event.target.value)}
      />
      <Choice
        name="supersedes"
        label="Takes the place of"
        value={supersedes ?? ''}
        options={[
          ['', 'no other run'],
          ...unit.runs
            .filter((run) => run.id !== edited?.id)
            .map((run) => {
              const firmware = run.conditions.firmware;
              return [run.id, `${runTitle(run)}${firmware ? `, firmware ${firmware}` : ''}`] as const;
            }),
        ]}
      />
    </>
  );
}
