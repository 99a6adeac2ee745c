import { type FormEvent, useState } from 'react';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { factStatements } from '../../shared/contract/factStatements.ts';
import type { FactStatement } from '../../shared/contract/unit.ts';
import {
  factLabel,
  factSourceText,
  factUnits,
  factValueText,
  parseFactValue,
  shippedFactKeys,
} from './factText.ts';
import { saveUnit } from './saveUnit.ts';
import './facts.css';

/** Facts as sidenotes, each with who says so; pressing a value turns its line into fields. */
export function FactNotes({ unit }: { unit: UnitEvidence }) {
  const [editing, setEditing] = useState<string | null>(null);
  const facts = unit.unit.facts ?? {};
  const keys = Object.keys(facts);
  const write = async (key: string, at: number, statement: FactStatement | null) => {
    const statements = factStatements(facts, key);
    const next = [...statements];
    if (statement === null) next.splice(at, 1);
    else next[at] = { ...next[at], ...statement };
    const { [key]: _, ...others } = facts;
    const kept = next.length === 0 ? others : { ...facts, [key]: next.length === 1 ? next[0]! : next };
    if (await saveUnit(unit.id, { ...unit.unit, facts: kept })) setEditing(null);
  };
  return (
    <aside className="bench-side bench-facts" aria-label="Facts">
      <h2>Facts</h2>
      <dl>
        {keys.flatMap((key) =>
          factStatements(facts, key).map((fact, index) => {
            const id = `${key}#${index}`;
            return editing === id ? (
              <div key={id}>
                <FactFields
                  factKey={key}
                  fact={fact}
                  onSave={(statement) => write(key, index, statement)}
                  onCancel={() => setEditing(null)}
                />
              </div>
            ) : (
              <div key={id}>
                <dt>{factLabel(key)}</dt>
                <dd>
                  <button
                    type="button"
                    className="fact-value"
                    aria-label={`${factLabel(key)}: ${factValueText(fact)}. Edit`}
                    onClick={() => setEditing(id)}
                  >
                    {factValueText(fact)}
                  </button>
                  <span className="fact-source">{factSourceText(fact)}</span>
                </dd>
              </div>
            );
          }),
        )}
      </dl>
      {keys.length === 0 && editing === null && (
        <p className="quiet">
          Nothing noted yet: what the box, the menus and the ports say, and who says so.
        </p>
      )}
      {editing === 'new' ? (
        <FactFields
          factKey={null}
          fact={{ value: '' }}
          onSave={(statement, key) => {
            const at = key ? factStatements(facts, key).length : 0;
            return key && statement ? write(key, at, statement) : undefined;
          }}
          onCancel={() => setEditing(null)}
        />
      ) : (
        <button type="button" className="act" onClick={() => setEditing('new')}>
          Note a fact
        </button>
      )}
    </aside>
  );
}

function FactFields({
  factKey,
  fact,
  onSave,
  onCancel,
}: {
  factKey: string | null;
  fact: FactStatement;
  onSave: (statement: FactStatement | null, key: string | null) => unknown;
  onCancel: () => void;
}) {
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget);
    const text = (name: string) => String(fields.get(name) ?? '').trim();
    const key = factKey ?? text('key');
    const value = parseFactValue(key, text('value'));
    if (value === null) return;
    const unit = text('unit') || (typeof value === 'number' ? factUnits[key] : undefined);
    onSave(
      {
        value,
        unit: unit || undefined,
        by: text('by') || undefined,
        on: text('on') || undefined,
      },
      key,
    );
  };
  return (
    <form
      className="fact-fields"
      onSubmit={submit}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onCancel();
      }}
    >
      {factKey === null ? (
        <label>
          <span>What</span>
          <input
            name="key"
            list="fact-keys"
            required
            pattern="[a-z0-9.\-]+"
            title="lower-case words joined by dots"
          />
          <datalist id="fact-keys">
            {shippedFactKeys.map((key) => (
              <option key={key} value={key}>
                {factLabel(key)}
              </option>
            ))}
          </datalist>
        </label>
      ) : (
        <b>{factLabel(factKey)}</b>
      )}
      <label>
        <span>Value</span>
        {/* biome-ignore lint/a11y/noAutofocus: the person has just asked to edit this */}
        <input name="value" autoFocus={factKey !== null} defaultValue={plainValue(fact)} required />
      </label>
      <label>
        <span>Unit</span>
        <input name="unit" defaultValue={fact.unit ?? ''} placeholder={factKey ? factUnits[factKey] : ''} />
      </label>
      <label>
        <span>Who says so</span>
        <input name="by" list="fact-sources" defaultValue={fact.by ?? ''} />
        <datalist id="fact-sources">
          <option value="box" />
          <option value="menu" />
          <option value="measured" />
          <option value="maker" />
        </datalist>
      </label>
      <label>
        <span>On</span>
        <input name="on" type="date" defaultValue={fact.on ?? ''} />
      </label>
      <p className="bench-do">
        <button type="submit" className="act">
          Keep
        </button>
        <button type="button" className="act" onClick={onCancel}>
          Leave as it was
        </button>
        {factKey !== null && (
          <button type="button" className="act" onClick={() => onSave(null, factKey)}>
            Strike out
          </button>
        )}
      </p>
    </form>
  );
}

function plainValue(fact: FactStatement): string {
  if (typeof fact.value === 'boolean') return fact.value ? 'yes' : 'no';
  return Array.isArray(fact.value) ? fact.value.join(', ') : String(fact.value);
}
