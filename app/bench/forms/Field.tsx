import { type InputHTMLAttributes, useContext, useId } from 'react';
import { FormTrouble } from './BenchForm.tsx';

type FieldProps = Omit<InputHTMLAttributes<HTMLInputElement>, 'list' | 'defaultValue' | 'value'> & {
  name: string;
  label: string;
  value?: string | number | null;
  /** Words that are offered; others can be typed */
  offers?: readonly string[];
  /** What to do when its content cannot be taken: "Write a number of minutes, 0 or more." */
  mend?: string;
};

/** One line to write into. */
export function Field({ name, label, value, offers, mend, ...input }: FieldProps) {
  const list = useId();
  const { trouble, why } = useTrouble(name);
  return (
    <div>
      <label>
        <span>{label}</span>
        <input
          {...input}
          {...trouble}
          name={name}
          defaultValue={value ?? ''}
          autoComplete="off"
          data-mend={mend}
          list={offers ? list : undefined}
        />
        {offers && (
          <datalist id={list}>
            {offers.map((offer) => (
              <option key={offer} value={offer} />
            ))}
          </datalist>
        )}
      </label>
      {why}
    </div>
  );
}

/** A line for a number, with the mend that numbers need. */
export function NumberField({ mend, ...field }: FieldProps) {
  return (
    <Field
      inputMode="decimal"
      mend={mend ?? 'Write a number, 0 or more, with a point for decimals: 0.5.'}
      {...field}
    />
  );
}

/** One of a few words. A pair gives the word that is kept and the one that is shown. */
export function Choice({
  name,
  label,
  options,
  value,
  onChange,
}: {
  name: string;
  label: string;
  options: readonly (string | readonly [value: string, shown: string])[];
  value?: string | null;
  onChange?: (value: string) => void;
}) {
  const { trouble, why } = useTrouble(name);
  const pairs = options.map((option) => (typeof option === 'string' ? ([option, option] as const) : option));
  // What the library holds stays a choice, whatever a later version of this list says.
  if (value && !pairs.some(([each]) => each === value)) pairs.push([value, value]);
  return (
    <div>
      <label>
        <span>{label}</span>
        <select
          {...trouble}
          name={name}
          defaultValue={value ?? ''}
          onChange={onChange && ((event) => onChange(event.target.value))}
        >
          {pairs.map(([each, shown]) => (
            <option key={each} value={each}>
              {shown}
            </option>
          ))}
        </select>
      </label>
      {why}
    </div>
  );
}

/** What a field in trouble carries, and the sentence below it that says what to mend. */
function useTrouble(name: string) {
  const trouble = useContext(FormTrouble);
  if (trouble?.field !== name) return { trouble: {}, why: null };
  return {
    trouble: { 'aria-invalid': true, 'aria-describedby': trouble.id },
    why: (
      <p role="alert" id={trouble.id} className="breaks tone">
        {trouble.sentence}
      </p>
    ),
  };
}
