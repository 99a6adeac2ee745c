import { useState } from 'react';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { type Unit, unitSchema } from '../../shared/contract/unit.ts';
import { go } from '../shell/route.ts';
import { useLibrary } from '../stores/library.ts';
import { BenchForm } from './forms/BenchForm.tsx';
import { Choice, Field, NumberField } from './forms/Field.tsx';
import { freeId, idFrom } from './idText.ts';
import { liftCaution } from './protocol/cautions.ts';
import { saveUnit } from './saveUnit.ts';
import { unitOf } from './unitOf.ts';

/** Names of fields whose name differs from their place in the file. */
const fieldNames = {
  'size.diagonal_in': 'diagonal',
  'price.amount': 'amount',
  'price.currency': 'currency',
  'price.on': 'on',
};
const day = 'Write the day as 2026-09-14.';

/** The page on which a set is logged: what stands on the box, and where it came from. */
export function NewUnitPage() {
  return (
    <div className="bench-page">
      <h1 className="bench-name">Log a unit</h1>
      <p className="bench-by">What stands on the box and in the menus; everything can be put right later.</p>
      <p className="caution" role="note">
        <b>{liftCaution.title}.</b> {liftCaution.text}
      </p>
      <UnitForm unit={null} onDone={(id) => go('bench', [id])} onCancel={() => go('shelf')} />
    </div>
  );
}

/** Who made a set, how large it is, what it costs, where it came from and when it goes back. */
export function UnitForm({
  unit: evidence,
  onDone,
  onCancel,
}: {
  /** Null: a set that the library does not know yet */
  unit: UnitEvidence | null;
  onDone: (id: string) => void;
  onCancel: () => void;
}) {
  const units = useLibrary((state) => state.units);
  const unit = evidence?.unit;
  const [provenance, setProvenance] = useState(unit?.provenance ?? 'loan');
  const save = async (changed: Unit) => {
    const taken = new Set(units.map((each) => each.id));
    const id = evidence?.id ?? freeId(idFrom(changed.maker, changed.model), taken);
    const isKept = await saveUnit(id, changed);
    if (isKept) onDone(id);
    return isKept;
  };
  return (
    <BenchForm
      label={unit ? 'Change the set’s particulars' : 'Log a unit'}
      keep={unit ? 'Keep' : 'Log it'}
      schema={unitSchema}
      fieldNames={fieldNames}
      read={(fields) => unitOf(fields, unit)}
      save={save}
      onCancel={onCancel}
      focus={unit ? 'amount' : 'maker'}
    >
      <Field
        name="maker"
        label="Maker"
        value={unit?.maker}
        offers={[...new Set(units.map((each) => each.maker))]}
        required
        mend="Say who made the set."
      />
      <Field
        name="model"
        label="Model"
        value={unit?.model}
        required
        mend="Write the name on the box, with its size."
      />
      <NumberField
        name="diagonal"
        label="Diagonal, inches"
        value={unit?.size?.diagonal_in}
        mend="Write the diagonal in inches: 55."
      />
      <Field
        name="panel"
        label="Panel"
        value={unit?.panel}
        offers={['LCD IPS', 'LCD VA', 'OLED']}
        placeholder="LCD IPS"
      />
      <Field name="backlight" label="Backlight" value={unit?.backlight} placeholder="direct LED" />
      <NumberField
        name="zones"
        label="Dimming zones"
        value={unit?.zones}
        mend="Write how many zones as a whole number, 0 for none."
      />
      <NumberField
        name="amount"
        label="Price"
        value={unit?.price?.amount}
        mend="Write the amount alone: 1,039 or 1039.90."
      />
      <Field
        name="currency"
        label="Currency"
        value={unit?.price?.currency ?? 'GBP'}
        maxLength={3}
        mend="Write three capitals: GBP, EUR, USD."
      />
      <Field name="on" label="Price seen on" type="date" value={unit?.price?.on} mend={day} />
      <Field name="firmware" label="Firmware" value={unit?.firmware} />
      <Choice
        name="provenance"
        label="Where it came from"
        value={provenance}
        options={[
          ['loan', 'on loan'],
          ['purchase', 'bought'],
        ]}
        onChange={setProvenance}
      />
      <Field name="received" label="Here since" type="date" value={unit?.received} mend={day} />
      {(provenance === 'loan' || unit?.due_back) && (
        <Field name="due_back" label="Due back on" type="date" value={unit?.due_back} mend={day} />
      )}
      {unit && <Field name="returned" label="Went back on" type="date" value={unit.returned} mend={day} />}
    </BenchForm>
  );
}
