import { type DragEvent, type FormEvent, useEffect, useId, useRef, useState } from 'react';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import { observationSchema } from '../../../shared/contract/observation.ts';
import { door, person } from '../../door/door.ts';
import { useEvidence } from '../../stores/evidence.ts';
import { FormTrouble } from '../forms/BenchForm.tsx';
import { Choice, Field } from '../forms/Field.tsx';
import { fieldOfIssue, readFields, withoutBlanks } from '../forms/readFields.ts';
import { flashingCaution, needsFlashing } from '../protocol/cautions.ts';
import { readAgain, tellFaults } from '../saveUnit.ts';
import { freeObservationId, houseTopic } from './observationText.ts';
import { addPhoto, picturesIn, usePhoto } from './photos.ts';
import { severityWords } from './severity.ts';
import { useObservationDraft } from './startObservation.ts';
import '../forms/forms.css';

const notNoted = ['', 'not noted'] as const;
const mends: Readonly<Record<string, string>> = {
  angle: 'Write the degrees off the perpendicular: 30, or −30 to the left.',
  room_lux: 'Write the light in the room in lux, 0 or more, with a point for decimals: 0.1.',
};

/** A quick form for the dark: topic, a digit for the severity, Enter. A picture can be dropped or pasted onto it. */
export function ObservationForm({ unit, topic }: { unit: UnitEvidence; topic: string }) {
  const topics = useEvidence((state) => state.house?.topics);
  const last = unit.observations.at(-1);
  const [severity, setSeverity] = useState<number | null>(null);
  const [photo, setPhoto] = useState<string | undefined>();
  const [over, setOver] = useState(false);
  const [written, setWritten] = useState(topic);
  const [trouble, setTrouble] = useState<{ field: string; sentence: string; id: string } | null>(null);
  const why = useId();
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
  const refuse = (field: string, sentence: string) => {
    setTrouble({ field, sentence, id: why });
    form.current?.querySelector<HTMLElement>(`[name="${field}"]`)?.focus();
  };
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (written.trim() === '') return refuse('topic', 'Say what was looked for: banding, blooming, flicker.');
    if (severity === null) return refuse('severity', 'How bad was it? Press a digit from 0 to 4.');
    const fields = readFields(new FormData(event.currentTarget));
    const kept = houseTopic(written, topics ?? {});
    const parsed = observationSchema.safeParse(
      withoutBlanks({
        id: freeObservationId(kept, new Set(unit.observations.map((each) => each.id))),
        topic: kept,
        severity,
        pattern: fields.text('pattern'),
        mode: fields.text('mode'),
        stage: fields.text('stage'),
        signal: fields.text('signal'),
        dimming: fields.text('dimming'),
        angle: fields.number('angle'),
        room_lux: fields.number('room_lux'),
        content: fields.text('content'),
        timecode: fields.text('timecode'),
        by: person.name(),
        note: fields.text('note'),
        photo,
      }),
    );
    const unread = fields.unread[0];
    if (unread) return refuse(unread, mends[unread] ?? 'Write a number.');
    if (!parsed.success) {
      const field = fieldOfIssue(parsed.error, {});
      return refuse(
        field,
        mends[field] ?? `${field}: ${parsed.error.issues[0]?.message ?? 'cannot be read'}.`,
      );
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
      noValidate
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
      <FormTrouble value={trouble}>
        <div className="wide">
          <Field
            name="topic"
            label="What"
            value={topic}
            offers={Object.keys(topics ?? {})}
            onChange={(event) => setWritten(event.target.value)}
          />
        </div>
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
        {trouble?.field === 'severity' && (
          <p role="alert" className="breaks tone wide">
            {trouble.sentence}
          </p>
        )}
        <Field name="pattern" label="Pattern" />
        <Field name="content" label="Content" />
        <Field name="timecode" label="Time code" placeholder="00:12:31" />
        <Choice name="mode" label="Mode" options={[notNoted, ...modes]} value={last?.mode ?? modes[0]} />
        <Choice
          name="signal"
          label="Signal"
          options={[notNoted, 'SDR', 'HDR10', 'HLG']}
          value={last?.signal ?? 'SDR'}
        />
        <Choice
          name="stage"
          label="Stage"
          options={[notNoted, ['as-delivered', 'as delivered'], 'adjusted']}
          value={last?.stage ?? 'as-delivered'}
        />
        <Choice
          name="dimming"
          label="Dimming"
          options={[notNoted, 'as-set', 'off', 'low', 'medium', 'high', 'none']}
          value={last?.dimming ?? 'as-set'}
        />
        <Field name="angle" label="Angle, °" value="0" inputMode="decimal" />
        <Field name="room_lux" label="Room, lux" value={last?.room_lux} inputMode="decimal" />
      </FormTrouble>
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
