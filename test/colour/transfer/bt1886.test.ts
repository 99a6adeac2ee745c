import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bt1886Eotf, bt1886InverseEotf, bt1886Parameters } from '../../../shared/colour/transfer/bt1886.ts';
import { referenceJson } from '../../reference/read.ts';
import { expectClose, expectRelative } from '../closeness.ts';

const { bt1886, local_gamma: localGamma } = referenceJson<{
  bt1886: {
    cases: { Lw: number; Lb: number; a: number; b: number; rows: { percent: number; cd_m2: number }[] }[];
    outside: { Lw: number; Lb: number; signal: number; L: number }[];
  };
  local_gamma: { rows: { Lw: number; Lb: number; percent: number; gamma_not_subtracted: number }[] };
}>('transfer.json');

describe('BT.1886', () => {
  test('gain, lift and luminance of sets with and without black', () => {
    expect(bt1886.cases).toHaveLength(8);
    for (const { Lw, Lb, a, b, rows } of bt1886.cases) {
      const found = bt1886Parameters(Lw, Lb);
      expectRelative(found.a, a, 1e-9);
      expectRelative(found.b, b, 1e-9);
      for (const { percent, cd_m2 } of rows) expectRelative(bt1886Eotf(percent / 100, Lw, Lb), cd_m2, 6e-9);
    }
    for (const { Lw, Lb, signal, L } of bt1886.outside) expectRelative(bt1886Eotf(signal, Lw, Lb), L, 1e-13);
  });

  test('with a real black it is no 2.4 power law', () => {
    for (const { Lw, Lb, percent, gamma_not_subtracted: gamma } of localGamma.rows)
      expectClose(
        [Math.log(bt1886Eotf(percent / 100, Lw, Lb) / Lw) / Math.log(percent / 100)],
        [gamma],
        1e-6,
      );
  });

  test('0 shows black, 1 white; it grows and turns back', () => {
    const part = fc.double({ min: 0, max: 1.09, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.double({ min: 0, max: 5, noNaN: true }), (one, other, Lb) => {
        expectClose([bt1886Eotf(0, 100, Lb), bt1886Eotf(1, 100, Lb)], [Lb, 100], 1e-10);
        if (other - one > 1e-9) expect(bt1886Eotf(other, 100, Lb)).toBeGreaterThan(bt1886Eotf(one, 100, Lb));
        expectClose([bt1886InverseEotf(bt1886Eotf(one, 100, Lb), 100, Lb)], [one], 1e-9);
      }),
    );
  });

  test('outside the ends', () => {
    expect(bt1886Eotf(-0.5, 100, 0.1)).toBe(0);
    expect(bt1886InverseEotf(-1, 100, 0)).toBe(bt1886InverseEotf(0, 100, 0));
    expect(bt1886InverseEotf(0, 100, 0.1)).toBeLessThan(0);
    for (const [Lw, Lb] of [
      [100, 100],
      [100, 101],
      [100, -0.1],
      [0, 0],
      [Number.NaN, 0],
      [100, Number.NaN],
      [Number.POSITIVE_INFINITY, 0],
    ] as const)
      expect(() => bt1886Parameters(Lw, Lb)).toThrow(RangeError);
    expect(() => bt1886Parameters(100, 100)).toThrow('black 100 must lie from 0 to below white 100');
    expect(() => bt1886Eotf(Number.NaN, 100, 0)).toThrow(RangeError);
    expect(() => bt1886InverseEotf(Number.NaN, 100, 0)).toThrow(RangeError);
  });
});
