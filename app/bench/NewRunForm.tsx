import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { type Run, runSchema } from '../../shared/contract/run.ts';
import { door } from '../door/door.ts';
import { go } from '../shell/route.ts';
import { freeId, idFrom } from './idText.ts';
import { currentFirmware } from './protocol/protocolState.ts';
import { runTitle } from './runText.ts';
import { readAgain, tellFaults } from './saveUnit.ts';

/**
 * The conditions of a run that is about to be taken; the last run's stand ready, since most of them stay. With
 * `run`, the conditions of one that is there already: its readings and what the form does not show stay.
 */
export function NewRunForm({
  unit,
  run: edited,
  onDone,
}: {
  unit: UnitEvidence;
  run?: RunEvidence;
  onDone: () => void;
}) {
  const newest = [...unit.runs].sort((a, b) =>
    (b.conditions.taken ?? '').localeCompare(a.conditions.taken ?? ''),
  )[0]?.conditions;
  const last = edited?.conditions ?? newest;
  const [signal, setSignal] = useState(last?.signal ?? 'SDR');
  const [trouble, setTrouble] = useState<string | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const hdr = signal !== 'SDR';
  // Another signal has another target; the run's own stands only with its own signal.
  const asWas = edited && signal === edited.conditions.signal ? edited.conditions.target : null;

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget);
    const text = (name: string) => String(fields.get(name) ?? '').trim() || undefined;
    const number = (name: string) => (text(name) === undefined ? undefined : Number(text(name)));
    const conditions: Record<string, unknown> = {
      taken: text('taken'),
      firmware: text('firmware'),
      sample: text('sample'),
      mode: text('mode') ?? '',
      stage: text('stage'),
      signal,
      target: {
        ...edited?.conditions.target,
        gamut: text('gamut'),
        white: text('white') ?? 'D65',
        eotf: text('eotf'),
        peak: number('peak'),
      },
      dimming: text('dimming'),
      room_lux: number('room_lux'),
      warm_up_min: number('warm_up_min'),
      source: last?.source,
      instrument: last?.instrument,
      supersedes: text('supersedes'),
    };
    const parsed = runSchema.safeParse(
      withoutBlanks({
        ...edited?.conditions,
        ...conditions,
        target: withoutBlanks(conditions.target as object),
      }),
    );
    if (!parsed.success) {
      const issue = parsed.error.issues[0];
      setTrouble(`${issue?.path.join(' ') ?? 'The form'}: ${issue?.message ?? 'cannot be read'}.`);
      return;
    }
    const run: Run = parsed.data;
    const id =
      edited?.id ??
      freeId(
        idFrom(run.signal, run.mode, run.stage === 'as-delivered' ? 'delivered' : 'adjusted'),
        new Set(unit.runs.map((each) => each.id)),
      );
    const reply = await door.ask('run.save', { unit: unit.id, run: id, conditions: run });
    if (!reply.ok) return tellFaults(reply.faults);
    await readAgain(unit.id);
    onDone();
    if (!edited) go('bench', [unit.id, id]);
  };

  useEffect(() => {
    form.current?.scrollIntoView({ block: 'center' });
    form.current?.querySelector<HTMLElement>('[name=mode]')?.focus();
  }, []);

  return (
    <form
      ref={form}
      className="bench-form"
      aria-label={edited ? `Conditions of ${runTitle(edited)}` : 'Begin a run'}
      onSubmit={submit}
    >
      <h2>{edited ? 'Conditions' : 'Begin a run'}</h2>
      {edited && (
        <p className="quiet wide">Proofs that were accepted on this run turn stale where it matters.</p>
      )}
      <label>
        <span>Picture mode</span>
        <input name="mode" defaultValue={last?.mode ?? ''} required />
      </label>
      <label>
        <span>Stage</span>
        <select name="stage" defaultValue={last?.stage ?? 'as-delivered'}>
          <option value="as-delivered">as delivered</option>
          <option value="adjusted">adjusted</option>
        </select>
      </label>
      <label>
        <span>Signal</span>
        <select value={signal} onChange={(event) => setSignal(event.target.value)}>
          <option>SDR</option>
          <option>HDR10</option>
          <option>HLG</option>
          {['SDR', 'HDR10', 'HLG'].includes(signal) ? null : <option>{signal}</option>}
        </select>
      </label>
      <label>
        <span>Taken</span>
        <input
          name="taken"
          defaultValue={edited?.conditions.taken ?? ''}
          placeholder="2026-09-15T10:20:00+01:00"
        />
      </label>
      <label>
        <span>Firmware</span>
        <input
          name="firmware"
          defaultValue={(edited ? edited.conditions.firmware : currentFirmware(unit)) ?? ''}
        />
      </label>
      <label>
        <span>Sample</span>
        <input name="sample" defaultValue={last?.sample ?? ''} />
      </label>
      <label key={`gamut-${signal}`}>
        <span>Target gamut</span>
        <select name="gamut" defaultValue={asWas?.gamut ?? (hdr ? 'P3-D65' : 'BT.709')}>
          <option>BT.709</option>
          <option>P3-D65</option>
          <option>BT.2020</option>
          <option>BT.601-625</option>
          <option>BT.601-525</option>
        </select>
      </label>
      <label>
        <span>Target white</span>
        <input name="white" defaultValue={last?.target.white ?? 'D65'} />
      </label>
      <label key={`eotf-${signal}`}>
        <span>Target EOTF</span>
        <input
          name="eotf"
          list="eotfs"
          defaultValue={asWas?.eotf ?? (hdr ? (signal === 'HLG' ? 'HLG' : 'PQ') : 'BT.1886')}
        />
        <datalist id="eotfs">
          <option value="BT.1886" />
          <option value="gamma 2.2" />
          <option value="gamma 2.4" />
          <option value="sRGB" />
          <option value="PQ" />
          <option value="HLG" />
        </datalist>
      </label>
      {hdr && (
        <label>
          <span>Target peak, cd/m²</span>
          <input name="peak" inputMode="decimal" defaultValue={asWas?.peak ?? ''} />
        </label>
      )}
      <label>
        <span>Dimming</span>
        <select name="dimming" defaultValue={last?.dimming ?? 'as-set'}>
          {['as-set', 'off', 'low', 'medium', 'high', 'none'].map((word) => (
            <option key={word}>{word}</option>
          ))}
        </select>
      </label>
      <label>
        <span>Room, lux</span>
        <input name="room_lux" inputMode="decimal" defaultValue={last?.room_lux ?? ''} />
      </label>
      <label>
        <span>Warmed up for, minutes</span>
        <input name="warm_up_min" inputMode="numeric" defaultValue={edited?.conditions.warm_up_min ?? ''} />
      </label>
      <label>
        <span>Takes the place of</span>
        <select name="supersedes" defaultValue={edited?.conditions.supersedes ?? ''}>
          <option value="">no other run</option>
          {unit.runs
            .filter((run) => run.id !== edited?.id)
            .map((run) => (
              <option key={run.id} value={run.id}>
                {runTitle(run)}
                {run.conditions.firmware ? `, firmware ${run.conditions.firmware}` : ''}
              </option>
            ))}
        </select>
      </label>
      {trouble && (
        <p role="alert" className="breaks tone wide">
          {trouble}
        </p>
      )}
      <p className="bench-do wide">
        <button type="submit" className="act">
          {edited ? 'Keep the conditions' : 'Begin the run'}
        </button>
        <button type="button" className="act" onClick={onDone}>
          Not now
        </button>
      </p>
    </form>
  );
}

/** What a field that was left empty does not say, the file does not say either. */
function withoutBlanks(fields: object): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
