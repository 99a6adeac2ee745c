import { useState } from 'react';
import { person } from '../door/door.ts';
import { SheetFrame } from './SheetFrame.tsx';
import { closeSheet } from './sheets.ts';

/** Whose name stands under accepted proofs and in the history, from now on and on this machine. */
export function NameSheet() {
  const [name, setName] = useState(person.name());
  return (
    <SheetFrame label="Your name">
      <form
        className="sheet-body form"
        onSubmit={(event) => {
          event.preventDefault();
          person.rename(name);
          closeSheet();
        }}
      >
        <h2>Your name</h2>
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
        <div className="go">
          <button type="submit" className="act">
            Keep
          </button>
          <button type="button" className="act" onClick={closeSheet}>
            Cancel
          </button>
        </div>
      </form>
    </SheetFrame>
  );
}
