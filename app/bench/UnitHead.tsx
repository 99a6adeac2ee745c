import { useState } from 'react';
import { formatNumber } from '../../shared/article/formatNumber.ts';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { numberText } from '../plots/numberText.ts';
import { unitName } from '../stores/library.ts';
import { dateText } from './dateText.ts';
import { UnitForm } from './UnitForm.tsx';

const provenances: Record<string, string> = {
  loan: 'On loan',
  purchase: 'Bought',
  purchased: 'Bought',
  gift: 'Given',
};

/** Who made it, how large, where from; one sentence as a notebook begins. */
export function UnitHead({ unit: evidence }: { unit: UnitEvidence }) {
  const { unit } = evidence;
  const [editing, setEditing] = useState(false);
  const size = unit.size
    ? `${numberText(unit.size.diagonal_in, unit.size.diagonal_in % 1 ? 1 : 0)}\u00a0inches`
    : null;
  const light = [unit.panel, unit.backlight, unit.zones ? `${unit.zones} zones` : null]
    .filter(Boolean)
    .join(', ');
  const price = unit.price
    ? `${formatNumber(unit.price.amount, { decimals: unit.price.amount % 1 ? 2 : 0, unit: unit.price.currency })}${
        unit.price.on ? ` on ${dateText(unit.price.on)}` : ''
      }`
    : null;
  const where = unit.provenance ? (provenances[unit.provenance] ?? unit.provenance) : null;
  const came = unit.received ? `here since ${dateText(unit.received)}` : null;
  const back = unit.returned
    ? `went back on ${dateText(unit.returned)}`
    : unit.due_back
      ? `due back on ${dateText(unit.due_back)}`
      : null;
  const firmware = unit.firmware ? `Firmware ${unit.firmware}. ` : '';
  const story = [where, came, back].filter(Boolean).join(', ');
  return (
    <header>
      <h1 className="bench-name">{unitName(unit)}</h1>
      <p className="bench-by">
        {[size, light].filter(Boolean).join(', ')}
        {price ? `. ${price}` : ''}
        {story ? `. ${story}.` : '.'} {firmware}
        {editing ? null : (
          <button type="button" className="act" onClick={() => setEditing(true)}>
            Change
          </button>
        )}
      </p>
      {editing ? (
        <UnitForm unit={evidence} onDone={() => setEditing(false)} onCancel={() => setEditing(false)} />
      ) : null}
    </header>
  );
}
