import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { powerEotf, powerInverseEotf } from '../../../shared/colour/transfer/power.ts';
import { srgbEotf, srgbInverseEotf } from '../../../shared/colour/transfer/srgb.ts';
import { referenceJson } from '../../reference/read.ts';
import { expectClose, expectRelative } from '../closeness.ts';

const { srgb, power_law: powerLaw } = referenceJson<{
  srgb: { rows: { code8: number; linear: number }[]; inverse: { linear: number; signal: number }[] };
  power_law: { gamma: number; rows: { percent: number; relative: number }[] }[];
}>('transfer.json');

const signal = fc.double({ min: 0, max: 1, noNaN: true });

describe('sRGB', () => {
  test('both ways at reference values', () => {
    for (const { code8, linear } of srgb.rows) expectRelative(srgbEotf(code8 / 255), linear, 2e-9);
    for (const { linear, signal } of srgb.inverse) expectClose([srgbInverseEotf(linear)], [signal], 6e-10);
  });

  test('grows, turns back and is odd about 0', () => {
    fc.assert(
      fc.property(signal, signal, (one, other) => {
        // Near the joint the published rounded thresholds leave a step of 1e-8.
        if (other - one > 1e-6) expect(srgbEotf(other)).toBeGreaterThan(srgbEotf(one));
        expectClose([srgbInverseEotf(srgbEotf(one))], [one], 1e-7);
        expect(srgbEotf(-one)).toBe(-srgbEotf(one));
        expect(srgbInverseEotf(-one)).toBe(-srgbInverseEotf(one));
      }),
    );
  });

  test('the thresholds', () => {
    expect([srgbEotf(0.04045), srgbInverseEotf(0.0031308)]).toEqual([0.04045 / 12.92, 0.0031308 * 12.92]);
    expect(srgbEotf(0.0404501)).toBe(((0.0404501 + 0.055) / 1.055) ** 2.4);
    expect(srgbInverseEotf(0.00313081)).toBe(1.055 * 0.00313081 ** (1 / 2.4) - 0.055);
    expect(() => srgbEotf(Number.NaN)).toThrow(RangeError);
    expect(() => srgbInverseEotf(Number.NaN)).toThrow(RangeError);
  });
});

describe('power law', () => {
  test('at reference values, scaled to white', () => {
    for (const { gamma, rows } of powerLaw)
      for (const { percent, relative } of rows)
        expectRelative(powerEotf(percent / 100, gamma, 120), 120 * relative, 2e-9);
  });

  test('grows and turns back', () => {
    fc.assert(
      fc.property(signal, signal, fc.double({ min: 1, max: 3, noNaN: true }), (one, other, gamma) => {
        if (other - one > 1e-9 && one > 1e-9)
          expect(powerEotf(other, gamma, 80)).toBeGreaterThan(powerEotf(one, gamma, 80));
        expectClose([powerInverseEotf(powerEotf(one, gamma, 80), gamma, 80)], [one], 1e-9);
      }),
    );
  });

  test('outside the ends', () => {
    expect([powerEotf(-1, 2.2, 100), powerInverseEotf(-1, 2.2, 100)]).toEqual([0, 0]);
    for (const [V, gamma, Lw] of [
      [Number.NaN, 2.2, 100],
      [0.5, 0, 100],
      [0.5, 2.2, 0],
      [0.5, Number.NaN, 100],
      [0.5, 2.2, Number.POSITIVE_INFINITY],
    ] as const) {
      expect(() => powerEotf(V, gamma, Lw)).toThrow(RangeError);
      expect(() => powerInverseEotf(V, gamma, Lw)).toThrow(RangeError);
    }
  });
});
