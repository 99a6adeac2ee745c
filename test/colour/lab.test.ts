import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adaptationMatrix } from '../../shared/colour/adaptation.ts';
import {
  chroma,
  degreesOfDirection,
  hueAngle,
  hueDifference,
  type Lab,
  labToXyz,
  xyzToLab,
} from '../../shared/colour/lab.ts';
import { apply3 } from '../../shared/colour/rgb.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import { xyYToXyz } from '../../shared/colour/xyz.ts';
import { referenceCsv } from '../reference/read.ts';
import { expectClose } from './closeness.ts';

const d50 = xyYToXyz(...whiteXy('D50'), 1);
const d65 = xyYToXyz(...whiteXy('D65'), 1);

describe('L*a*b*', () => {
  test('white is 100, 0, 0 and black 0, 0, 0 on any scale', () => {
    expectClose(xyzToLab(d50, d50), [100, 0, 0], 1e-12);
    expectClose(
      xyzToLab([250 * d65[0], 250 * d65[1], 250 * d65[2]], d65.map((v) => 250 * v) as never),
      [100, 0, 0],
      1e-12,
    );
    expectClose(xyzToLab([0, 0, 0], d50), [0, 0, 0], 1e-12);
  });

  test('a grey of 18.4187 % is L* 50, one of 0.5 % lies on the linear piece', () => {
    // ((50 + 16)/116)³ and 0.005·(29/3)³, by hand.
    expectClose(
      xyzToLab([d50[0] * 0.18418651851, 0.18418651851, d50[2] * 0.18418651851], d50),
      [50, 0, 0],
      1e-8,
    );
    expectClose(xyzToLab([0, 0.005, 0], d50), [4.516481481, -500 * 0.0389351852, 200 * 0.0389351852], 1e-6);
    expectClose(xyzToLab([0.005 * d50[0], 0, 0], d50), [0, 500 * 0.0389351852, 0], 1e-6);
    expectClose(xyzToLab([0, 0, 0.005 * d50[2]], d50), [0, 0, -200 * 0.0389351852], 1e-6);
  });

  test('the published chart from its D65 reflectances, adapted to D50, is near the table under D50', () => {
    // The two columns were integrated under two illuminants, so Bradford brings them near, not equal.
    const adapt = adaptationMatrix(d65, d50);
    for (const row of referenceCsv('chart24.csv')) {
      const xyz = [row.X_D65_spectral, row.Y_D65_spectral, row.Z_D65_spectral].map((v) => Number(v) / 100);
      const lab = xyzToLab(apply3(adapt, xyz as [number, number, number]), d50);
      const table = [row.Lab_D50_L_spectral, row.Lab_D50_a_spectral, row.Lab_D50_b_spectral].map(Number);
      expectClose(lab, table, 3);
      expect(Math.abs(lab[0] - table[0]!)).toBeLessThan(1.2);
    }
  });

  test('there and back over both pieces of the curve', () => {
    const coordinate = fc.double({ min: -120, max: 120, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), coordinate, coordinate, (L, a, b) => {
        expectClose(xyzToLab(labToXyz([L, a, b], d65), d65), [L, a, b], 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  test('the two pieces meet with the same slope', () => {
    const edge = (6 / 29) ** 3;
    const lightness = (Y: number) => xyzToLab([0, Y, 0], d50)[0];
    expectClose([lightness(edge - 1e-9), lightness(edge + 1e-9)], [8, 8], 2e-6);
    expect(
      (lightness(edge + 1e-5) - lightness(edge)) / (lightness(edge) - lightness(edge - 1e-5)),
    ).toBeCloseTo(1, 3);
    const luminance = (L: number) => labToXyz([L, 0, 0], d50)[1];
    expect((luminance(8.001) - luminance(8)) / (luminance(8) - luminance(7.999))).toBeCloseTo(1, 3);
  });

  test('numbers that are not finite throw', () => {
    const bad = [Number.NaN, 1, 1] as const;
    for (const turned of [bad, [1, Number.NaN, 1], [1, 1, Number.NaN]] as const) {
      expect(() => xyzToLab(turned, d50)).toThrow(RangeError);
      expect(() => xyzToLab([1, 1, 1], turned)).toThrow(RangeError);
      expect(() => labToXyz(turned, d50)).toThrow(RangeError);
      expect(() => labToXyz([1, 1, 1], turned)).toThrow(RangeError);
    }
    expect(() => xyzToLab([1, 1, 1], [1, 0, 1])).toThrow('white Y must be a finite number above 0');
  });
});

describe('chroma and hue', () => {
  test('of the four axes and a 3-4-5 triangle', () => {
    const axes: Lab[] = [
      [50, 1, 0],
      [50, 0, 2],
      [50, -3, 0],
      [50, 0, -4],
      [50, 3, 4],
      [50, 0, 0],
      [50, 1, -1e-20],
    ];
    expectClose(axes.map(chroma), [1, 2, 3, 4, 5, 0, 1], 1e-12);
    expectClose(axes.map(hueAngle), [0, 90, 180, 270, 53.13010235415598, 0, 0], 1e-12);
  });

  test('directions in all quadrants', () => {
    expectClose(
      [
        degreesOfDirection(1, 1),
        degreesOfDirection(-1, 1),
        degreesOfDirection(-1, -1),
        degreesOfDirection(1, -1),
      ],
      [45, 135, 225, 315],
      1e-12,
    );
  });

  test('hue difference takes the shorter way', () => {
    expect([
      hueDifference(10, 30),
      hueDifference(350, 10),
      hueDifference(10, 350),
      hueDifference(0, 180),
      hueDifference(180, 0),
      hueDifference(0, 181),
      hueDifference(359, 0),
      hueDifference(-20, 700),
    ]).toEqual([20, 20, -20, 180, 180, -179, 1, 0]);
  });
});
