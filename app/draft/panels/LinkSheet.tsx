import { useState } from 'react';
import { FormSheet } from '../../shell/FormSheet.tsx';
import { closeSheet } from '../../shell/sheets.ts';
import { currentSession } from '../currentSession.ts';
import { linkAround, setLink } from '../editor/insertions.ts';

/** Where the selected words lead; an empty address takes the link away. */
export function LinkSheet() {
  const [href, setHref] = useState(() => {
    const view = currentSession()?.view;
    return (view && linkAround(view.state)?.href) ?? '';
  });
  const [refused, setRefused] = useState(false);
  return (
    <FormSheet
      title="Link"
      done="Keep"
      trouble={
        refused ? 'An article may link to https, http and mail addresses and to places in itself.' : ''
      }
      submit={() => {
        const view = currentSession()?.view;
        if (!view) return closeSheet();
        const done = setLink(href.trim())(view.state, view.dispatch);
        if (!done && href.trim() !== '') return setRefused(true);
        closeSheet();
        setTimeout(() => view.focus(), 0);
      }}
    >
      <label>
        <span>Address; empty takes the link away</span>
        <input
          value={href}
          data-first
          placeholder="https://"
          onChange={(event) => {
            setHref(event.target.value);
            setRefused(false);
          }}
        />
      </label>
    </FormSheet>
  );
}
