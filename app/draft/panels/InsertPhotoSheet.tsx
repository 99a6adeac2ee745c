import { useEffect, useState } from 'react';
import type { RequestReply } from '../../../shared/contract/door.ts';
import { faultLine } from '../../../shared/contract/fault.ts';
import { usePhoto } from '../../bench/observations/photos.ts';
import { base64Of } from '../../door/base64Of.ts';
import { door } from '../../door/door.ts';
import { FormSheet } from '../../shell/FormSheet.tsx';
import { closeSheet } from '../../shell/sheets.ts';
import { useEvidence } from '../../stores/evidence.ts';
import { currentSession } from '../currentSession.ts';
import { insertPhoto, photoSource } from '../editor/insertions.ts';

/** One of the unit's photos, or a new one, into the article: with what it shows in words, and a caption. */
export function InsertPhotoSheet() {
  const unit = currentSession()?.meta().unit ?? '';
  const observations = useEvidence((state) => state.evidence?.units.get(unit)?.observations);
  const [photos, setPhotos] = useState<RequestReply<'photo.list'>>([]);
  const [chosen, setChosen] = useState<string | null>(null);
  const [alt, setAlt] = useState('');
  const [caption, setCaption] = useState('');
  const [trouble, setTrouble] = useState('');

  useEffect(() => {
    void door.ask('photo.list', { unit }).then((reply) => {
      if (reply.ok) setPhotos(reply.value);
      else setTrouble(reply.faults.map(faultLine).join(' '));
    });
  }, [unit]);

  function choose(name: string) {
    setChosen(name);
    const seen = observations?.find(({ photo }) => photo?.replace(/^photos\//, '') === name);
    // What was noted when the picture was taken says what it shows; the reviewer may say it better.
    if (alt === '' && seen) setAlt([seen.note ?? seen.topic, seen.pattern].filter(Boolean).join(', '));
  }

  async function bring(files: FileList | null) {
    const file = files?.[0];
    if (!file) return;
    const bytes = await base64Of(file);
    const reply = bytes.ok
      ? await door.ask('photo.add', { unit, name: file.name, base64: bytes.value })
      : bytes;
    if (!reply.ok) return setTrouble(reply.faults.map(faultLine).join(' '));
    setTrouble('');
    setPhotos((now) => [...now, { name: reply.value.name, mime: file.type, bytes: file.size }]);
    choose(reply.value.name);
  }

  return (
    <FormSheet
      title="Insert a photo"
      done="Insert"
      disabled={!chosen || !alt.trim()}
      trouble={trouble}
      submit={() => {
        const view = currentSession()?.view;
        closeSheet();
        if (!view || !chosen) return;
        insertPhoto(photoSource(unit, chosen), alt.trim(), caption.trim())(view.state, view.dispatch);
        setTimeout(() => view.focus(), 0);
      }}
    >
      {photos.length > 0 ? (
        <ul className="photo-choice">
          {photos.map(({ name }) => (
            <li key={name}>
              <Thumb unit={unit} name={name} chosen={name === chosen} choose={() => choose(name)} />
            </li>
          ))}
        </ul>
      ) : (
        <p className="quiet">This set has no photo yet. Bring one in; it is kept with the set.</p>
      )}
      <label>
        <span>A new photo, kept with the set; where it was taken is removed from every copy that leaves</span>
        <input type="file" accept="image/*" onChange={(event) => void bring(event.target.files)} />
      </label>
      <label>
        <span>What it shows, for readers who cannot see it</span>
        <input value={alt} required data-first onChange={(event) => setAlt(event.target.value)} />
      </label>
      <label>
        <span>Caption, if any; it is checked like any sentence</span>
        <input value={caption} onChange={(event) => setCaption(event.target.value)} />
      </label>
    </FormSheet>
  );
}

function Thumb({
  unit,
  name,
  chosen,
  choose,
}: {
  unit: string;
  name: string;
  chosen: boolean;
  choose: () => void;
}) {
  const address = usePhoto(unit, name);
  return (
    <button type="button" aria-pressed={chosen} onClick={choose}>
      {address ? <img src={address} alt="" /> : null}
      <span>{name}</span>
    </button>
  );
}
