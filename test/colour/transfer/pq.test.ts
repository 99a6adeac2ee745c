import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pqEotf, pqInverseEotf, pqPeak, pqSignal } from '../../../shared/colour/transfer/pq.ts';
import { referenceJson } from '../../reference/read.ts';
import { expectClose, expectRelative } from '../closeness.ts';

const { pq } = referenceJson<{
  pq: {
    luminance_to_signal: { cd_m2: number; signal: number }[];
    signal_to_luminance: { signal: number; cd_m2: number }[];
    outside_values_agreed: { signal: number; cd_m2: number }[];
  };
}>('transfer.json');

describe('PQ', () => {
  test('luminance of reference signals', () => {
    for (const { signal, cd_m2 } of pq.signal_to_luminance) expectRelative(pqEotf(signal), cd_m2, 2e-9);
    for (const { signal, cd_m2 } of pq.outside_values_agreed) expectClose([pqEotf(signal)], [cd_m2], 1e-10);
  });

  test('signal of reference luminances, by the formula and by the table', () => {
    for (const { signal, cd_m2 } of pq.luminance_to_signal) {
      expectClose([pqInverseEotf(cd_m2)], [signal], 6e-10);
      expectClose([pqSignal(cd_m2 / pqPeak)], [signal], 6e-10);
    }
  });

  test('50 % is 92 cd/m², 100 % is 10 000', () => {
    expect(pqEotf(0.5)).toBeCloseTo(92.2457, 4);
    expect(pqEotf(1)).toBe(10000);
    expect(pqPeak).toBe(10000);
  });

  test('the fast form equals the formula from 1e-6 to 12 000 cd/m²', () => {
    for (let exponent = -6; exponent <= 4.08; exponent += 0.0047) {
      const luminance = 10 ** exponent;
      expectClose([pqSignal(luminance / 10000)], [pqInverseEotf(luminance)], 1e-13);
    }
    expect(pqSignal(0)).toBe(pqInverseEotf(0));
    expect(pqSignal(-0.1)).toBe(pqInverseEotf(-1));
    expect(pqSignal(Number.NaN)).toBeNaN();
  });

  test('grows everywhere and turns back', () => {
    const signal = fc.double({ min: 0.001, max: 1.1, noNaN: true });
    fc.assert(
      fc.property(signal, signal, (one, other) => {
        if (other - one > 1e-9) expect(pqEotf(other)).toBeGreaterThan(pqEotf(one));
        expectClose([pqInverseEotf(pqEotf(one))], [one], 1e-12);
      }),
    );
  });

  test('at and outside the ends', () => {
    expect([pqEotf(0), pqEotf(-0.05), pqEotf(1e-9)]).toEqual([0, 0, 0]);
    expect(pqInverseEotf(-3)).toBe(pqInverseEotf(0));
    // Super-white 12-bit code 4095 is 1.0956.
    expect(pqEotf(1.0956)).toBeGreaterThan(20000);
    expect(pqEotf(1.1)).toBeGreaterThan(pqEotf(1.0956));
    expect(() => pqEotf(1.11)).toThrow('a PQ signal of 1.11 is out of range');
    expect(() => pqEotf(Number.NaN)).toThrow(RangeError);
    expect(() => pqInverseEotf(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
