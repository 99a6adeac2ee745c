import { type DragEvent, type FormEvent, useEffect, useRef, useState } from 'react';
import { toast } from 'sonner';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import { observationSchema } from '../../../shared/contract/observation.ts';
import { door, person } from '../../door/door.ts';
import { useEvidence } from '../../stores/evidence.ts';
import { flashingCaution, needsFlashing } from '../protocol/cautions.ts';
import { readAgain, tellFaults } from '../saveUnit.ts';
import { freeObservationId } from './observationText.ts';
import { addPhoto, picturesIn, usePhoto } from './photos.ts';
import { severityWords } from './severity.ts';
import { useObservationDraft } from './startObservation.ts';
import '../forms/forms.css';

/** A quick form for the dark: topic, a digit for the severity, Enter. A picture can be dropped or pasted onto it. */
export function ObservationForm({ unit, topic }: { unit: UnitEvidence; topic: string }) {
  const topics = useEvidence((state) => state.house?.topics);
  const last = unit.observations.at(-1);
  const [severity, setSeverity] = useState<number | null>(null);
  const [photo, setPhoto] = useState<string | undefined>();
  const [over, setOver] = useState(false);
  const [written, setWritten] = useState(topic);
  const form = useRef<HTMLFormElement>(null);
  const thumbnail = usePhoto(unit.id, photo);
  const modes = [...new Set(unit.runs.map((run) => run.conditions.mode))];

  useEffect(() => {
    form.current?.scrollIntoView({ block: 'center' });
    form.current?.querySelector<HTMLElement>(topic ? '[name=severity]' : '[name=topic]')?.focus();
  }, [topic]);

  const close = () => useObservationDraft.setState({ topic: null });
  const take = async (files: readonly File[]) => {
    for (const file of files) {
      const name = await addPhoto(unit.id, file);
      if (name) setPhoto(name);
    }
  };
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget);
    const text = (name: string) => String(fields.get(name) ?? '').trim() || undefined;
    const number = (name: string) => {
      const typed = text(name)?.replace('−', '-');
      return typed === undefined ? undefined : Number(typed);
    };
    const parsed = observationSchema.safeParse(
      Object.fromEntries(
        Object.entries({
          id: freeObservationId(written.trim(), new Set(unit.observations.map((each) => each.id))),
          topic: written.trim(),
          severity: severity ?? -1,
          pattern: text('pattern'),
          mode: text('mode'),
          stage: text('stage'),
          signal: text('signal'),
          dimming: text('dimming'),
          angle: number('angle'),
          room_lux: number('room_lux'),
          content: text('content'),
          timecode: text('timecode'),
          by: person.name(),
          note: text('note'),
          photo,
        }).filter(([, value]) => value !== undefined),
      ),
    );
    if (!parsed.success) {
      const first = parsed.error.issues[0];
      toast.error(
        severity === null
          ? 'How bad was it? Press a digit from 0 to 4.'
          : `${String(first?.path[0] ?? 'The form')} cannot be read as it stands.`,
      );
      return;
    }
    const reply = await door.ask('observation.save', { unit: unit.id, observation: parsed.data });
    if (!reply.ok) return tellFaults(reply.faults);
    await readAgain(unit.id);
    close();
  };
  const drop = (event: DragEvent) => {
    const pictures = picturesIn(event.dataTransfer);
    if (pictures.length === 0) return;
    event.preventDefault();
    setOver(false);
    void take(pictures);
  };

  return (
    <form
      ref={form}
      className={`observation-form${over ? ' over' : ''}`}
      aria-label="Note an observation"
      onSubmit={submit}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
      onPaste={(event) => {
        const pictures = picturesIn(event.clipboardData);
        if (pictures.length > 0) {
          event.preventDefault();
          void take(pictures);
        }
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
        if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) event.currentTarget.requestSubmit();
      }}
    >
      <label className="wide">
        <span>What</span>
        <input
          name="topic"
          list="observation-topics"
          value={written}
          onChange={(event) => setWritten(event.target.value)}
          required
        />
        <datalist id="observation-topics">
          {Object.keys(topics ?? {}).map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      </label>
      {needsFlashing(written) && (
        <p className="caution wide" role="note">
          {flashingCaution}
        </p>
      )}
      <fieldset className="wide">
        <legend>How bad</legend>
        {severityWords.map((word, step) => (
          <label key={word} className="severity-choice">
            <input
              type="radio"
              name="severity"
              value={step}
              checked={severity === step}
              onChange={() => setSeverity(step)}
              onKeyDown={(event) => {
                if (!/^[0-4]$/.test(event.key)) return;
                event.preventDefault();
                setSeverity(Number(event.key));
                form.current?.querySelector<HTMLElement>(`[name=severity][value="${event.key}"]`)?.focus();
              }}
            />
            <kbd>{step}</kbd> {word}
          </label>
        ))}
      </fieldset>
      <Field name="pattern" label="Pattern" />
      <Field name="content" label="Content" />
      <Field name="timecode" label="Time code" placeholder="00:12:31" />
      <Choice name="mode" label="Mode" options={modes} value={last?.mode ?? modes[0] ?? ''} />
      <Choice name="signal" label="Signal" options={['SDR', 'HDR10', 'HLG']} value={last?.signal ?? 'SDR'} />
      <Choice
        name="stage"
        label="Stage"
        options={['as-delivered', 'adjusted']}
        value={last?.stage ?? 'as-delivered'}
      />
      <Choice
        name="dimming"
        label="Dimming"
        options={['as-set', 'off', 'low', 'medium', 'high', 'none']}
        value={last?.dimming ?? 'as-set'}
      />
      <Field name="angle" label="Angle, °" value="0" />
      <Field
        name="room_lux"
        label="Room, lux"
        value={last?.room_lux === undefined ? '' : String(last.room_lux)}
      />
      <label className="wide">
        <span>Note</span>
        <textarea name="note" rows={2} />
      </label>
      <div className="wide photo-place">
        {thumbnail ? <img src={thumbnail} alt="What was seen" /> : null}
        <label className="act">
          {photo ? 'Another picture' : 'Add a picture'}
          <input
            type="file"
            accept="image/*"
            className="unseen"
            onChange={(event) => void take([...(event.target.files ?? [])])}
          />
        </label>
        <span className="quiet">or drop or paste it here</span>
      </div>
      <p className="bench-do wide">
        <button type="submit" className="act">
          Keep
        </button>{' '}
        <kbd>Ctrl+Enter</kbd>
        <button type="button" className="act" onClick={close}>
          Leave it
        </button>{' '}
        <kbd>Esc</kbd>
      </p>
    </form>
  );
}

function Field({
  name,
  label,
  value,
  placeholder,
}: {
  name: string;
  label: string;
  value?: string;
  placeholder?: string;
}) {
  return (
    <label>
      <span>{label}</span>
      <input name={name} defaultValue={value} placeholder={placeholder} />
    </label>
  );
}

function Choice({
  name,
  label,
  options,
  value,
}: {
  name: string;
  label: string;
  options: readonly string[];
  value: string;
}) {
  return (
    <label>
      <span>{label}</span>
      <select name={name} defaultValue={value}>
        <option value="">not noted</option>
        {[...new Set([...options, ...(value ? [value] : [])])].map((option) => (
          <option key={option}>{option}</option>
        ))}
      </select>
    </label>
  );
}
