import { type FormEvent, useState } from 'react';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { unitSchema } from '../../shared/contract/unit.ts';
import { saveUnit } from './saveUnit.ts';

/** What changes while a set is here: its price, its firmware, when it came and when it goes back. */
export function UnitForm({ unit: { id, unit }, onDone }: { unit: UnitEvidence; onDone: () => void }) {
  const [trouble, setTrouble] = useState<string | null>(null);

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget);
    const text = (name: string) => String(fields.get(name) ?? '').trim() || undefined;
    const amount = text('amount');
    const changed = {
      ...unit,
      firmware: text('firmware'),
      price:
        amount === undefined
          ? undefined
          : { ...unit.price, amount: Number(amount), currency: text('currency'), on: text('on') },
      received: text('received'),
      due_back: text('due_back'),
      // The file says null where a set is still here.
      returned: text('returned') ?? (unit.returned === undefined ? undefined : null),
    };
    const parsed = unitSchema.safeParse(JSON.parse(JSON.stringify(changed)));
    if (!parsed.success) {
      const issue = parsed.error.issues[0];
      setTrouble(`${issue?.path.join(' ') ?? 'The form'}: ${issue?.message ?? 'cannot be read'}.`);
      return;
    }
    if (await saveUnit(id, parsed.data)) onDone();
  };

  return (
    <form className="bench-form" aria-label="Change the set’s particulars" onSubmit={submit}>
      <label>
        <span>Price</span>
        <input name="amount" inputMode="decimal" defaultValue={unit.price?.amount ?? ''} />
      </label>
      <label>
        <span>Currency</span>
        <input name="currency" defaultValue={unit.price?.currency ?? 'GBP'} pattern="[A-Z]{3}" />
      </label>
      <label>
        <span>Price seen on</span>
        <input name="on" type="date" defaultValue={unit.price?.on ?? ''} />
      </label>
      <label>
        <span>Firmware</span>
        <input name="firmware" defaultValue={unit.firmware ?? ''} />
      </label>
      <label>
        <span>Here since</span>
        <input name="received" type="date" defaultValue={unit.received ?? ''} />
      </label>
      <label>
        <span>Due back on</span>
        <input name="due_back" type="date" defaultValue={unit.due_back ?? ''} />
      </label>
      <label>
        <span>Went back on</span>
        <input name="returned" type="date" defaultValue={unit.returned ?? ''} />
      </label>
      {trouble && (
        <p role="alert" className="breaks tone wide">
          {trouble}
        </p>
      )}
      <p className="bench-do wide">
        <button type="submit" className="act">
          Keep
        </button>
        <button type="button" className="act" onClick={onDone}>
          Not now
        </button>
      </p>
    </form>
  );
}
