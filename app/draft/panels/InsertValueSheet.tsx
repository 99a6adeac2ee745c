import { useMemo, useState } from 'react';
import { catalogueEntry } from '../../../shared/measure/index.ts';
import { SheetFrame } from '../../shell/SheetFrame.tsx';
import { closeSheet } from '../../shell/sheets.ts';
import { currentSession } from '../currentSession.ts';
import { articleSchema } from '../document/schema.ts';
import { type MeasuredAddress, measuredHref, measuredText } from '../values/measuredValues.ts';

interface Choice {
  name: string;
  where: string;
  text: string;
  address: MeasuredAddress;
}

const most = 60;

/** A number from the bench, put into the text as a link that follows the quantity when its run changes. */
export function InsertValueSheet() {
  const [sought, setSought] = useState('');
  const session = currentSession();
  const choices = useMemo(() => (session ? allChoices() : []), [session]);
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const matching = choices.filter((choice) => {
    const text = `${choice.name} ${choice.where} ${choice.text}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });

  function insert({ text, address }: Choice) {
    closeSheet();
    const view = currentSession()?.view;
    if (!view) return;
    const node = articleSchema.text(text, [articleSchema.mark('link', { href: measuredHref(address) })]);
    view.dispatch(view.state.tr.replaceSelectionWith(node, false).scrollIntoView());
    setTimeout(() => view.focus(), 0);
  }

  return (
    <SheetFrame label="Insert a measured value">
      <div className="sheet-body">
        <h2>Insert a measured value</h2>
        <input
          data-first
          value={sought}
          aria-label="Which value"
          placeholder="peak, contrast, grey 60 …"
          style={{ width: '100%' }}
          onChange={(event) => setSought(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && matching[0]) {
              event.preventDefault();
              insert(matching[0]);
            }
          }}
        />
        <ul className="read-as">
          {matching.slice(0, most).map((choice) => (
            <li key={measuredHref(choice.address)}>
              <button type="button" onClick={() => insert(choice)}>
                <b>{choice.text}</b>
                <span>
                  {choice.name} <span className="q">{choice.where}</span>
                </span>
              </button>
            </li>
          ))}
        </ul>
        {matching.length > most ? (
          <p className="quiet">{matching.length - most} more; type to narrow down.</p>
        ) : null}
        {choices.length === 0 ? <p className="quiet">Nothing is measured on this set yet.</p> : null}
      </div>
    </SheetFrame>
  );
}

/** Averages and maxima first, then every level, for each run of the article's own unit. */
function allChoices(): Choice[] {
  const session = currentSession();
  const bench = session?.bench();
  const unit = bench?.evidence.units.get(session!.meta().unit);
  if (!bench || !unit) return [];
  const locale = session!.meta().locale ?? 'en-GB';
  const found: Choice[] = [];
  for (const run of unit.runs) {
    const { signal, stage, mode } = run.conditions;
    const where = `${signal} ${stage.replace('-', ' ')}, ${mode}`;
    for (const [quantity, measurement] of bench.measure(unit, run)) {
      if (measurement.state !== 'measured') continue;
      const entry = catalogueEntry(quantity);
      const label = entry?.label ?? quantity;
      const add = (axis: string | undefined, name: string) => {
        const address = { unit: unit.id, run: run.id, quantity, ...(axis === undefined ? {} : { axis }) };
        const text = measuredText(bench, address, locale);
        if (text !== null) found.push({ name, where, text, address });
      };
      if (measurement.values.length === 1 && measurement.values[0]!.axis === undefined) {
        add(undefined, label);
        continue;
      }
      if (measurement.average) add('average', `${label}, average`);
      if (measurement.max) add('max', `${label}, maximum`);
      for (const value of measurement.values) {
        if (value.axis === undefined) continue;
        const unitOfAxis = entry?.axisUnit ? ` ${entry.axisUnit}` : '';
        add(String(value.axis), `${label} at ${value.axis}${unitOfAxis}`);
      }
    }
  }
  return found;
}
