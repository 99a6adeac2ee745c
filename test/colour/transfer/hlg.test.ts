import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  hlgBlackLift,
  hlgDisplayScene,
  hlgEotf,
  hlgInverseEotf,
  hlgInverseOetf,
  hlgOetf,
  hlgOotf,
  hlgSystemGamma,
} from '../../../shared/colour/transfer/hlg.ts';
import { referenceJson } from '../../reference/read.ts';
import { expectClose, expectRelative } from '../closeness.ts';

type Triple = [number, number, number];
const { hlg } = referenceJson<{
  hlg: {
    inverse_oetf_and_display: {
      signal: number;
      scene_E: number;
      display_cd_m2_Lw1000_gamma1_2_Lb0: number;
      display_cd_m2_Lw1000_gamma1_2_Lb0_005: number;
    }[];
    system_gamma: { Lw: number; gamma: number }[];
    system_gamma_extended: { Lw: number; gamma: number }[];
    ootf_outside: { E?: number; signal?: number; Lw: number; Lb?: number; gamma: number; cd_m2: number }[];
    ootf_colour: { scene_rgb: Triple; display_rgb: Triple }[];
  };
}>('transfer.json');

describe('HLG', () => {
  test('scene light and displayed luminance of reference signals', () => {
    expect(hlg.inverse_oetf_and_display).toHaveLength(15);
    for (const row of hlg.inverse_oetf_and_display) {
      expectClose([hlgInverseOetf(row.signal)], [row.scene_E], 6e-10);
      expectRelative(hlgEotf(row.signal, 1000), row.display_cd_m2_Lw1000_gamma1_2_Lb0, 6e-9);
      expectRelative(hlgEotf(row.signal, 1000, 0.005), row.display_cd_m2_Lw1000_gamma1_2_Lb0_005, 6e-9);
      expectClose([hlgOetf(hlgInverseOetf(row.signal))], [row.signal], 1e-12);
    }
  });

  test('published OOTF and EOTF values', () => {
    for (const { E, signal, Lw, Lb, gamma, cd_m2 } of hlg.ootf_outside)
      expectRelative(
        signal === undefined ? hlgOotf([E!, E!, E!], Lw, gamma)[1] : hlgEotf(signal, Lw, Lb, gamma),
        cd_m2,
        1e-12,
      );
    for (const { scene_rgb: scene, display_rgb: display } of hlg.ootf_colour)
      expectClose(hlgOotf(scene, 1000, 1.2), display, 1e-9);
    expectClose(
      hlgOotf([0.3, 0.3, 0.3], 700),
      [1, 1, 1].map(() => 700 * 0.3 ** hlgSystemGamma(700)),
      1e-9,
    );
    expectClose(
      hlgOotf([0.2, 0, 0.1], 1000),
      [0, 2, 1].map((k) => (k === 0 ? 0.2 : k === 2 ? 0 : 0.1) * 1000 * (0.2 * 0.2627 + 0.1 * 0.0593) ** 0.2),
      1e-9,
    );
  });

  test('system gamma inside and outside 400 to 2000 cd/m²', () => {
    const inside = hlg.system_gamma.filter(({ Lw }) => Lw >= 400 && Lw <= 2000);
    const outside = hlg.system_gamma_extended.filter(({ Lw }) => Lw < 400 || Lw > 2000);
    expect([inside.length, outside.length]).toEqual([6, 3]);
    for (const { Lw, gamma } of [...inside, ...outside]) expectClose([hlgSystemGamma(Lw)], [gamma], 6e-10);
    expect(hlgSystemGamma(1000)).toBe(1.2);
    expect(hlgSystemGamma(399.99) - hlgSystemGamma(400)).toBeGreaterThan(0.01);
    expect(hlgSystemGamma(2000) - hlgSystemGamma(2000.01)).toBeLessThan(-0.006);
  });

  test('signal 0 shows the black of the set, 1 its white', () => {
    for (const [Lw, Lb] of [
      [1000, 0.005],
      [600, 0.05],
      [250, 0.3],
      [3000, 0],
    ] as const) {
      expectClose([hlgEotf(0, Lw, Lb), hlgEotf(1, Lw, Lb)], [Lb, Lw], 1e-7 * Lw);
      expectRelative(3 * (Lb / Lw) ** (1 / hlgSystemGamma(Lw)), hlgBlackLift(Lw, Lb) ** 2, 1e-12);
    }
    expect(hlgDisplayScene(-5, 0.05)).toBe(0);
  });

  test('grows everywhere and turns back', () => {
    const signal = fc.double({ min: 0, max: 1.09, noNaN: true });
    const Lw = fc.double({ min: 50, max: 4000, noNaN: true });
    fc.assert(
      fc.property(
        signal,
        signal,
        Lw,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (one, other, white, black) => {
          if (other - one > 1e-9) {
            expect(hlgEotf(other, white, black)).toBeGreaterThan(hlgEotf(one, white, black));
            expect(hlgInverseOetf(other)).toBeGreaterThan(hlgInverseOetf(one));
          }
          expectClose([hlgInverseEotf(hlgEotf(one, white, black), white, black)], [one], 1e-9);
        },
      ),
    );
    expectClose([hlgInverseEotf(hlgEotf(0.4, 800), 800)], [0.4], 1e-12);
  });

  test('outside the ends', () => {
    expect([hlgOetf(-0.1), hlgOetf(0), hlgInverseOetf(-0.1), hlgInverseOetf(0)]).toEqual([0, 0, 0, 0]);
    expectClose([hlgOetf(1), hlgOetf(1 / 12), hlgInverseOetf(0.5)], [1, 0.5, 1 / 12], 6e-9);
    expectClose([hlgOetf(1 / 12 + 1e-9), hlgInverseOetf(0.5 + 1e-9)], [0.5, 1 / 12], 1e-8);
    expect(hlgOotf([-0.1, 0, 0], 1000)).toEqual([0, 0, 0]);
    expect(hlgOotf([0, 0, 0], 300)).toEqual([0, 0, 0]);
    expect(hlgInverseEotf(0.001, 1000, 0.005)).toBe(0);
    expect(hlgInverseEotf(-1, 1000)).toBe(0);
    for (const call of [
      () => hlgOetf(Number.NaN),
      () => hlgInverseOetf(Number.NaN),
      () => hlgSystemGamma(0),
      () => hlgSystemGamma(Number.NaN),
      () => hlgOotf([Number.NaN, 0, 0], 1000),
      () => hlgBlackLift(100, 100),
      () => hlgBlackLift(100, -1),
      () => hlgBlackLift(100, Number.NaN),
      () => hlgDisplayScene(Number.NaN, 0),
      () => hlgEotf(Number.NaN, 1000),
      () => hlgInverseEotf(Number.NaN, 1000),
    ])
      expect(call).toThrow(RangeError);
    expect(() => hlgBlackLift(100, 100)).toThrow('black 100 must lie from 0 to below white 100');
  });
});
