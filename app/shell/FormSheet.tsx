import type { ReactNode } from 'react';
import { SheetFrame } from './SheetFrame.tsx';
import { closeSheet } from './sheets.ts';

/** A sheet that asks for something: its title, its fields, what went wrong, and the two ways out. */
export function FormSheet({
  title,
  done,
  submit,
  disabled = false,
  trouble = '',
  children,
}: {
  title: string;
  /** The verb of the button that submits: "Keep", "Insert" */
  done: string;
  submit: () => void;
  disabled?: boolean;
  trouble?: string;
  children: ReactNode;
}) {
  return (
    <SheetFrame label={title}>
      <form
        className="sheet-body form"
        onSubmit={(event) => {
          event.preventDefault();
          if (!disabled) submit();
        }}
      >
        <h2>{title}</h2>
        {children}
        {trouble ? <p role="alert">{trouble}</p> : null}
        <div className="go">
          <button type="submit" className="act" disabled={disabled}>
            {done}
          </button>
          <button type="button" className="act" onClick={closeSheet}>
            Cancel
          </button>
        </div>
      </form>
    </SheetFrame>
  );
}
