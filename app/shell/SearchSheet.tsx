import { type ReactNode, useState } from 'react';
import { SheetFrame } from './SheetFrame.tsx';

/** More than these are not drawn at once. */
const most = 60;

/** A sheet with one field that narrows a list down; Enter takes the first that is left. */
export function SearchSheet<T>({
  title,
  asks,
  placeholder,
  choices,
  textOf,
  keyOf,
  show,
  choose,
  none,
}: {
  title: string;
  /** Name of the field, for those who do not see it */
  asks: string;
  placeholder: string;
  choices: readonly T[];
  /** What is searched in */
  textOf: (choice: T) => string;
  keyOf: (choice: T) => string;
  show: (choice: T) => ReactNode;
  choose: (choice: T) => void;
  /** Said where nothing is left, or nothing is there */
  none: string;
}) {
  const [sought, setSought] = useState('');
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const left = choices.filter((choice) => {
    const text = textOf(choice).toLowerCase();
    return words.every((word) => text.includes(word));
  });
  return (
    <SheetFrame label={title}>
      <div className="sheet-body">
        <h2>{title}</h2>
        <input
          data-first
          className="wide"
          value={sought}
          aria-label={asks}
          placeholder={placeholder}
          onChange={(event) => setSought(event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || !left[0]) return;
            event.preventDefault();
            choose(left[0]);
          }}
        />
        <ul className="read-as">
          {left.slice(0, most).map((choice) => (
            <li key={keyOf(choice)}>
              <button type="button" onClick={() => choose(choice)}>
                {show(choice)}
              </button>
            </li>
          ))}
        </ul>
        {left.length > most ? <p className="quiet">{left.length - most} more; type to narrow down.</p> : null}
        {left.length === 0 ? <p className="quiet">{none}</p> : null}
      </div>
    </SheetFrame>
  );
}
