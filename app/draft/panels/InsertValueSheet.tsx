import { useMemo } from 'react';
import { catalogueEntry } from '../../../shared/measure/index.ts';
import { SearchSheet } from '../../shell/SearchSheet.tsx';
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

/** A number from the bench, put into the text as a link that follows the quantity when its run changes. */
export function InsertValueSheet() {
  const session = currentSession();
  const choices = useMemo(() => (session ? allChoices() : []), [session]);

  function insert({ text, address }: Choice) {
    closeSheet();
    const view = currentSession()?.view;
    if (!view) return;
    const node = articleSchema.text(text, [articleSchema.mark('link', { href: measuredHref(address) })]);
    view.dispatch(view.state.tr.replaceSelectionWith(node, false).scrollIntoView());
    setTimeout(() => view.focus(), 0);
  }

  return (
    <SearchSheet
      title="Insert a measured value"
      asks="Which value"
      placeholder="peak, contrast, grey 60 …"
      choices={choices}
      textOf={({ name, where, text }) => `${name} ${where} ${text}`}
      keyOf={({ address }) => measuredHref(address)}
      choose={insert}
      none={choices.length === 0 ? 'Nothing is measured on this set yet.' : 'No value by those words.'}
      show={({ text, name, where }) => (
        <>
          <b>{text}</b>
          <span>
            {name} <span className="q">{where}</span>
          </span>
        </>
      )}
    />
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
