import { type FormEvent, useState } from 'react';
import { unitSchema } from '../../shared/contract/unit.ts';
import { go } from '../shell/route.ts';
import { useLibrary } from '../stores/library.ts';
import { freeId, idFrom } from './idText.ts';
import { liftCaution } from './protocol/cautions.ts';
import { saveUnit } from './saveUnit.ts';

/** Logs a set: what stands on the box, and where it came from. */
export function NewUnitForm() {
  const units = useLibrary((state) => state.units);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [provenance, setProvenance] = useState('loan');

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget);
    const text = (name: string) => String(fields.get(name) ?? '').trim() || undefined;
    const number = (name: string) => (text(name) === undefined ? undefined : Number(text(name)));
    const amount = number('amount');
    const diagonal = number('diagonal');
    const parsed = unitSchema.safeParse(
      Object.fromEntries(
        Object.entries({
          maker: text('maker') ?? '',
          model: text('model') ?? '',
          size: diagonal === undefined ? undefined : { diagonal_in: diagonal },
          panel: text('panel'),
          backlight: text('backlight'),
          zones: number('zones'),
          price:
            amount === undefined
              ? undefined
              : { amount, currency: text('currency') ?? 'GBP', ...(text('on') ? { on: text('on') } : {}) },
          provenance,
          due_back: text('due_back'),
          firmware: text('firmware'),
          received: text('received'),
        }).filter(([, value]) => value !== undefined),
      ),
    );
    if (!parsed.success) {
      const issue = parsed.error.issues[0];
      setTrouble(`${issue?.path.join(' ') ?? 'The form'}: ${issue?.message ?? 'cannot be read'}.`);
      return;
    }
    const id = freeId(idFrom(parsed.data.maker, parsed.data.model), new Set(units.map((unit) => unit.id)));
    if (await saveUnit(id, parsed.data)) go('bench', [id]);
  };

  return (
    <div className="bench-page">
      <h1 className="bench-name">Log a unit</h1>
      <p className="bench-by">What stands on the box and in the menus; everything can be put right later.</p>
      <p className="caution" role="note">
        <b>{liftCaution.title}.</b> {liftCaution.text}
      </p>
      <form className="bench-form" aria-label="Log a unit" onSubmit={submit}>
        <label>
          <span>Maker</span>
          <input name="maker" list="makers" required />
          <datalist id="makers">
            {[...new Set(units.map((unit) => unit.maker))].map((maker) => (
              <option key={maker} value={maker} />
            ))}
          </datalist>
        </label>
        <label>
          <span>Model</span>
          <input name="model" required />
        </label>
        <label>
          <span>Diagonal, inches</span>
          <input name="diagonal" inputMode="decimal" />
        </label>
        <label>
          <span>Panel</span>
          <input name="panel" list="panels" placeholder="LCD IPS" />
          <datalist id="panels">
            <option value="LCD IPS" />
            <option value="LCD VA" />
            <option value="OLED" />
          </datalist>
        </label>
        <label>
          <span>Backlight</span>
          <input name="backlight" placeholder="direct LED" />
        </label>
        <label>
          <span>Dimming zones</span>
          <input name="zones" inputMode="numeric" />
        </label>
        <label>
          <span>Price</span>
          <input name="amount" inputMode="decimal" />
        </label>
        <label>
          <span>Currency</span>
          <input name="currency" defaultValue="GBP" maxLength={3} />
        </label>
        <label>
          <span>Priced on</span>
          <input name="on" type="date" />
        </label>
        <label>
          <span>Firmware</span>
          <input name="firmware" />
        </label>
        <label>
          <span>Where it came from</span>
          <select value={provenance} onChange={(event) => setProvenance(event.target.value)}>
            <option value="loan">on loan</option>
            <option value="purchase">bought</option>
          </select>
        </label>
        <label>
          <span>Received</span>
          <input name="received" type="date" />
        </label>
        {provenance === 'loan' && (
          <label>
            <span>Due back</span>
            <input name="due_back" type="date" />
          </label>
        )}
        {trouble && (
          <p role="alert" className="breaks tone wide">
            {trouble}
          </p>
        )}
        <p className="bench-do wide">
          <button type="submit" className="act">
            Log it
          </button>
          <button type="button" className="act" onClick={() => go('shelf')}>
            Not now
          </button>
        </p>
      </form>
    </div>
  );
}
