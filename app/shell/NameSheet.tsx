import { useState } from 'react';
import { person } from '../door/door.ts';
import { FormSheet } from './FormSheet.tsx';
import { closeSheet } from './sheets.ts';

/** Whose name stands under accepted proofs and in the history, from now on and on this machine. */
export function NameSheet() {
  const [name, setName] = useState(person.name());
  return (
    <FormSheet
      title="Your name"
      done="Keep"
      submit={() => {
        person.rename(name);
        closeSheet();
      }}
    >
      <label>
        <span>Stands under the proofs you accept and in the history of what you save</span>
        <input
          value={name}
          data-first
          required
          autoComplete="name"
          onChange={(event) => setName(event.target.value)}
        />
      </label>
      <p className="quiet">What was accepted and saved before keeps the name it had.</p>
    </FormSheet>
  );
}
