import { describe, expect, it } from 'vitest';
import { measuredHref, measuredNumber, parseMeasured } from '../../../../app/draft/values/measuredValues.ts';
import type { Measurement } from '../../../../shared/contract/measurement.ts';

const peak: Measurement = {
  state: 'measured',
  id: 'peak',
  unit: 'cd/m²',
  values: [
    { axis: 10, value: 742, u: 7.4, counts: true, rows: [1] },
    { axis: 100, value: 372, u: 3.7, counts: true, rows: [2] },
  ],
  average: { value: 557, u: 5.6 },
  max: { axis: 10, value: 742, u: 7.4 },
  notes: [],
};

describe('a number that follows its quantity', () => {
  it('has an address that reads back as it was written', () => {
    const address = { unit: 'orrinvale-hearth-55', run: 'hdr-calm', quantity: 'peak', axis: '10' };
    expect(measuredHref(address)).toBe('measured:orrinvale-hearth-55/hdr-calm/peak?axis=10');
    expect(parseMeasured(measuredHref(address))).toEqual(address);
    expect(parseMeasured('https://example.org/a/b/c')).toBeNull();
  });

  it('is the value at its axis, the average, or the greatest when the address names neither', () => {
    expect(['100', 'average', 'max', undefined].map((axis) => measuredNumber(peak, axis))).toEqual([
      372, 557, 742, 742,
    ]);
  });

  it('is nothing where nothing was measured, never zero', () => {
    expect(measuredNumber(peak, '50')).toBeNull();
    expect(measuredNumber({ state: 'undefined', id: 'peak', undefined: 'no 100 % level' }, '10')).toBeNull();
    expect(measuredNumber(undefined, undefined)).toBeNull();
  });
});
