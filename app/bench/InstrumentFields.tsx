import { useState } from 'react';
import { defaultInstrument, defaultSource, type Instrument, type Source } from '../../shared/contract/run.ts';
import { useEvidence } from '../stores/evidence.ts';
import { Choice, Field, NumberField } from './forms/Field.tsx';
import { instrumentName, knownInstruments } from './runOf.ts';

const expanded = 'Write the expanded uncertainty, 0 or more, with a point for decimals.';

/** What the instrument's uncertainty is made of, each with a house default. */
const uncertainties: readonly { name: keyof typeof defaultInstrument; label: string; mend: string }[] = [
  {
    name: 'coverage_k',
    label: 'Coverage factor k',
    mend: 'Write the factor that the uncertainties below carry, more than 0: 2.',
  },
  { name: 'u_luminance_percent', label: 'U of luminance, %', mend: expanded },
  { name: 'u_x', label: 'U of x', mend: expanded },
  { name: 'u_y', label: 'U of y', mend: expanded },
  {
    name: 'floor_cdm2',
    label: 'Floor u, cd/m²',
    mend: 'Write the standard uncertainty in the dark, 0 or more.',
  },
  {
    name: 'xy_from_cdm2',
    label: 'x, y usable from, cd/m²',
    mend: 'Write the luminance from which chromaticity counts, 0 or more.',
  },
];

/** What a run was measured with and what fed the set; a field left empty takes the house default. */
export function InstrumentFields({
  instrument: first,
  source,
}: {
  instrument: Instrument | undefined;
  source: Source | undefined;
}) {
  const units = useEvidence((state) => state.evidence!.units);
  const known = knownInstruments(
    [...units.values()].flatMap((unit) => unit.runs.map((run) => run.conditions)),
  );
  const [instrument, setInstrument] = useState<Instrument | undefined>(first);
  const [taken, setTaken] = useState(0);
  const take = (name: string) => {
    setInstrument(known.find((each) => instrumentName(each) === name) ?? {});
    setTaken(taken + 1);
  };
  return (
    <>
      <h3 className="wide">Instrument</h3>
      {known.length > 0 && (
        <Choice
          name="known"
          label="One used before"
          value=""
          options={[['', 'as written below'], ...known.map(instrumentName), ['another', 'another one']]}
          onChange={(name) => name !== '' && take(name)}
        />
      )}
      <div className="bench-fields wide" key={taken}>
        <Field
          name="instrument"
          label="Instrument"
          value={instrument?.name}
          placeholder="bench colorimeter"
        />
        <Field name="serial" label="Number" value={instrument?.serial} placeholder="0001" />
        <Field
          name="calibrated"
          label="Calibrated on"
          type="date"
          value={instrument?.calibrated}
          mend="Write the day as 2026-03-02."
        />
        <Field
          name="matched_to"
          label="Matched to"
          value={instrument?.matched_to}
          placeholder="reference spectroradiometer"
        />
        <Field
          name="drift_check"
          label="Drift check"
          value={instrument?.drift_check}
          placeholder="0.3 % over the sitting"
        />
        {uncertainties.map(({ name, label, mend }) => (
          <NumberField
            key={name}
            name={name}
            label={label}
            value={instrument?.[name]}
            placeholder={String(defaultInstrument[name])}
            mend={mend}
          />
        ))}
      </div>
      <h3 className="wide">Source of the patterns</h3>
      <Field name="source" label="Made by" value={source?.name} placeholder="pattern generator" />
      <Choice
        name="bits"
        label="Bits"
        value={source?.bits === undefined ? '' : String(source.bits)}
        options={[['', `not noted (${defaultSource.bits})`], '8', '10', '12']}
      />
      <Choice
        name="range"
        label="Range"
        value={source?.range ?? ''}
        options={[['', `not noted (${defaultSource.range})`], 'narrow', 'full']}
      />
      <NumberField
        name="max_cll"
        label="Stated MaxCLL, cd/m²"
        value={source?.max_cll}
        mend="Write the brightest pixel that the signal states, 0 or more."
      />
    </>
  );
}
