import { createContext, type FormEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { ZodType } from 'zod';
import { type Fields, fieldOfIssue, readFields, withoutBlanks } from './readFields.ts';
import './forms.css';

/** The field in trouble and what to mend, for the fields inside a form; `id` is for the element that says it. */
export const FormTrouble = createContext<{ field: string; sentence: string; id: string } | null>(null);

/**
 * A form of the Bench: reads its fields, parses them by the contract, says by the field what to mend, and keeps. Esc
 * leaves it.
 */
export function BenchForm<T>({
  label,
  heading,
  lead,
  keep,
  schema,
  fieldNames = {},
  read,
  save,
  onCancel,
  focus,
  children,
}: {
  label: string;
  heading?: string;
  /** One quiet line under the heading */
  lead?: ReactNode;
  /** Word of the button that keeps it */
  keep: string;
  schema: ZodType<T>;
  /** Path in the value → name of its field, where they differ */
  fieldNames?: Readonly<Record<string, string>>;
  read: (fields: Fields) => object;
  /** False: the library refused, and the reason is already told. */
  save: (value: T) => Promise<boolean>;
  onCancel: () => void;
  /** Name of the field that takes the keys first */
  focus?: string;
  children: ReactNode;
}) {
  const form = useRef<HTMLFormElement>(null);
  const id = useId();
  const [trouble, setTrouble] = useState<{ field: string; sentence: string; shown: boolean } | null>(null);
  const [keeping, setKeeping] = useState(false);

  useEffect(() => {
    if (!focus) return;
    form.current?.scrollIntoView({ block: 'center' });
    form.current?.querySelector<HTMLElement>(`[name="${focus}"]`)?.focus();
  }, [focus]);

  const refuse = (field: string, message?: string) => {
    const element = form.current?.querySelector<HTMLInputElement>(`[name="${field}"]`);
    const folded = element?.closest('details');
    if (folded) folded.open = true;
    element?.focus();
    const sentence = element?.dataset.mend ?? message ?? 'This cannot be read.';
    setTrouble({ field, sentence: element ? sentence : `${field}: ${sentence}`, shown: Boolean(element) });
  };
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const element = event.currentTarget;
    const empty = [...element.querySelectorAll<HTMLInputElement>('[required]')].find(
      (each) => each.value.trim() === '',
    );
    if (empty) return refuse(empty.name);
    const fields = readFields(new FormData(element));
    const value = withoutBlanks(read(fields));
    if (fields.unread[0]) return refuse(fields.unread[0]);
    const parsed = schema.safeParse(value);
    if (!parsed.success)
      return refuse(fieldOfIssue(parsed.error, fieldNames), parsed.error.issues[0]?.message);
    setTrouble(null);
    setKeeping(true);
    await save(parsed.data);
    setKeeping(false);
  };

  return (
    <form
      ref={form}
      noValidate
      className="bench-form"
      aria-label={label}
      onSubmit={submit}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || event.defaultPrevented) return;
        event.preventDefault();
        onCancel();
      }}
    >
      {heading && <h2>{heading}</h2>}
      {lead && <p className="quiet wide">{lead}</p>}
      <FormTrouble value={trouble && { ...trouble, id }}>{children}</FormTrouble>
      {trouble && !trouble.shown && (
        <p role="alert" className="breaks tone wide">
          {trouble.sentence}
        </p>
      )}
      <p className="bench-do wide">
        <button type="submit" className="act" disabled={keeping}>
          {keep}
        </button>
        <button type="button" className="act" onClick={onCancel}>
          Not now
        </button>{' '}
        <kbd>Esc</kbd>
      </p>
    </form>
  );
}
