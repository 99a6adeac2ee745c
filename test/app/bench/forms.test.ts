import { describe, expect, it } from 'vitest';
import { numberOf, readFields, withoutBlanks } from '../../../app/bench/forms/readFields.ts';
import { isSameInstrument, knownInstruments, runOf } from '../../../app/bench/runOf.ts';
import { fieldTime, takenText } from '../../../app/bench/takenTime.ts';
import { unitOf } from '../../../app/bench/unitOf.ts';
import { type Run, runSchema } from '../../../shared/contract/run.ts';

const filled = (entries: Record<string, string>) =>
  readFields({ get: (name: string) => entries[name] ?? null });
const run: Run = {
  taken: '2026-09-15T10:20:00+01:00',
  mode: 'Calm',
  stage: 'as-delivered',
  signal: 'SDR',
  settings: { brightness: 50 },
  target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886', saturation_law: 'uv' },
  instrument: {
    name: 'bench colorimeter',
    serial: '0001',
    u_luminance_percent: 2,
    u_x: 0.001,
    filter: 'wide',
  },
  source: { name: 'pattern generator', bits: 10, range: 'narrow' },
};

describe('a number typed into a form', () => {
  it('has a point for decimals and may have groups of thousands and either minus', () => {
    expect(['71', '1,039.5', '−3.2', '0.0004', '1 231', '2e-3'].map(numberOf)).toEqual([
      71, 1039.5, -3.2, 0.0004, 1231, 0.002,
    ]);
  });

  it('is refused, not guessed at, where a comma could be a decimal', () => {
    expect(['12,5', '0,1', 'bright', '1,03', '', '.'].map(numberOf)).toEqual(Array(6).fill(null));
  });

  it('names the field that holds none', () => {
    const fields = filled({ room_lux: '0,1', warm_up_min: '45' });
    expect([fields.number('room_lux'), fields.number('warm_up_min'), fields.number('peak')]).toEqual([
      undefined,
      45,
      undefined,
    ]);
    expect(fields.unread).toEqual(['room_lux']);
  });
});

describe('a run’s form', () => {
  it('changes what it shows and leaves what it does not', () => {
    const fields = filled({
      taken: '2026-09-15T10:20',
      mode: 'Calm',
      stage: 'as-delivered',
      signal: 'SDR',
      gamut: 'BT.709',
      eotf: 'gamma 2.2',
      instrument: 'bench colorimeter',
      serial: '0001',
      u_luminance_percent: '4',
      source: 'pattern generator',
      bits: '10',
      range: 'narrow',
    });
    expect(runSchema.parse(withoutBlanks(runOf(fields, run)))).toEqual({
      ...run,
      target: { ...run.target, eotf: 'gamma 2.2' },
      instrument: { name: 'bench colorimeter', serial: '0001', u_luminance_percent: 4, filter: 'wide' },
    });
  });

  it('leaves instrument and source out where nothing is known of them', () => {
    const fields = filled({ mode: 'Calm', stage: 'adjusted', signal: 'SDR', gamut: 'BT.709', eotf: 'sRGB' });
    const kept = withoutBlanks(runOf(fields, undefined));
    expect([kept.instrument, kept.source]).toEqual([undefined, undefined]);
  });

  it('keeps the time as the file has it while the clock time stays', () => {
    expect(fieldTime(run.taken)).toBe('2026-09-15T10:20');
    expect(takenText('2026-09-15T10:20', run.taken)).toBe(run.taken);
    expect(takenText('2026-09-15T11:00', run.taken)).toMatch(/^2026-09-15T11:00:00[+-]\d{2}:\d{2}$/);
    expect(takenText(undefined, run.taken)).toBeUndefined();
    // A day without a time does not fit the field, so an empty field is no change.
    expect(takenText(undefined, '2026-09-15')).toBe('2026-09-15');
  });
});

describe('instruments', () => {
  it('used before are offered once each, the latest use first', () => {
    const used = (taken: string, name: string, u: number): Run => ({
      ...run,
      taken,
      instrument: { name, u_luminance_percent: u },
    });
    const runs = [used('2026-01-01', 'a', 3), used('2026-05-01', 'b', 1), used('2026-04-01', 'a', 2)];
    expect(knownInstruments(runs)).toEqual([
      { name: 'b', u_luminance_percent: 1 },
      { name: 'a', u_luminance_percent: 2 },
    ]);
  });

  it('are the same by name and number, never by the lack of both', () => {
    expect(isSameInstrument({ name: 'a', serial: '1' }, { name: 'a', serial: '1', u_x: 1 })).toBe(true);
    expect(isSameInstrument({ name: 'a', serial: '1' }, { name: 'a', serial: '2' })).toBe(false);
    expect(isSameInstrument({}, {})).toBe(false);
  });
});

describe('a unit’s form', () => {
  it('keeps facts and nulls, and takes a currency in small letters', () => {
    const before = { maker: 'Orrinvale', model: 'Hearth 55', returned: null, zones: null, facts: {} };
    const fields = filled({ maker: 'Orrinvale', model: 'Hearth 55', amount: '1,039', currency: 'eur' });
    expect(withoutBlanks(unitOf(fields, before))).toEqual({
      ...before,
      price: { amount: 1039, currency: 'EUR' },
    });
  });
});
