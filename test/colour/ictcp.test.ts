import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gamut } from '../../shared/colour/gamuts.ts';
import {
  deltaEItp,
  deltaEItpArray,
  type ICtCp,
  ictcpToXyz,
  type XyzColumns,
  xyzToICtCp,
} from '../../shared/colour/ictcp.ts';
import { apply3, rgbToXyzMatrix } from '../../shared/colour/rgb.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import type { Xyz } from '../../shared/colour/xyz.ts';
import { referenceJson } from '../reference/read.ts';
import { expectClose } from './closeness.ts';
import { seeded } from './seeded.ts';

type Triple = [number, number, number];
const reference = referenceJson<{
  colours: { rgb2020_cd_m2: Triple; ictcp: Triple }[];
  pairs: { name: string; rgb1: Triple; rgb2: Triple; dE_ITP: number }[];
  published_pairs: { ictcp1: Triple; ictcp2: Triple; dE_ITP: number }[];
  outside_rgb: { rgb2020_relative: Triple; rows: { peak: number; ictcp: Triple }[] };
}>('ictcp.json');

const toXyz = rgbToXyzMatrix(gamut('BT.2020').primaries, whiteXy('D65'));
const ofRgb = (rgb: Triple): ICtCp => xyzToICtCp(apply3(toXyz, rgb));

const columns = (colours: readonly Xyz[]): XyzColumns => ({
  X: Float64Array.from(colours, ([X]) => X),
  Y: Float64Array.from(colours, ([, Y]) => Y),
  Z: Float64Array.from(colours, ([, , Z]) => Z),
});

describe('ICtCp', () => {
  test('of the reference colours', () => {
    expect(reference.colours).toHaveLength(22);
    for (const { rgb2020_cd_m2: rgb, ictcp } of reference.colours) expectClose(ofRgb(rgb), ictcp, 2e-9);
    const { rgb2020_relative: rgb, rows } = reference.outside_rgb;
    expectClose(ofRgb(rgb), rows[0]!.ictcp, 1e-8);
  });

  test('neutral colours have no Ct and Cp', () => {
    for (const level of [0, 1e-5, 0.01, 1, 100, 10000])
      expectClose(ofRgb([level, level, level]).slice(1), [0, 0], 1e-12);
  });

  test('there and back', () => {
    const part = fc.double({ min: 0.01, max: 10000, noNaN: true });
    fc.assert(
      fc.property(part, part, part, (red, green, blue) => {
        const xyz = apply3(toXyz, [red, green, blue]);
        expectClose(ictcpToXyz(xyzToICtCp(xyz)), xyz, 1e-8 * Math.hypot(...xyz));
      }),
    );
  });

  test('a cone response below 0 counts as 0, so that noise in the dark gives a number', () => {
    const black = xyzToICtCp([0, 0, 0]);
    expectClose(xyzToICtCp([-10, -10, -10]), black, 0);
    expect(xyzToICtCp([-10, 5, -5]).every(Number.isFinite)).toBe(true);
    expect(xyzToICtCp([Number.NaN, 1, 1])[0]).toBeNaN();
  });
});

describe('ΔE_ITP', () => {
  test('of the reference pairs, one by one and as columns', () => {
    const { pairs } = reference;
    const expected = pairs.map((pair) => pair.dE_ITP);
    expectClose(
      pairs.map(({ rgb1, rgb2 }) => deltaEItp(ofRgb(rgb1), ofRgb(rgb2))),
      expected,
      2e-8,
    );
    const out = new Float64Array(pairs.length);
    const xyz = (key: 'rgb1' | 'rgb2') => columns(pairs.map((pair) => apply3(toXyz, pair[key])));
    expect(deltaEItpArray(xyz('rgb1'), xyz('rgb2'), out)).toBe(out);
    expectClose([...out], expected, 2e-8);
  });

  test('of the published pairs', () => {
    for (const { ictcp1, ictcp2, dE_ITP } of reference.published_pairs)
      expectClose([deltaEItp(ictcp1, ictcp2), deltaEItp(ictcp2, ictcp1)], [dE_ITP, dE_ITP], 1e-7);
  });

  test('each coordinate weighs as Rec. BT.2124 has it', () => {
    const zero = [0, 0, 0] as const;
    expectClose(
      [deltaEItp([0.1, 0, 0], zero), deltaEItp([0, 0.1, 0], zero), deltaEItp([0, 0, 0.1], zero)],
      [72, 36, 72],
      1e-10,
    );
  });

  test('columns longer than a block are equal to one by one', () => {
    const random = seeded(2124);
    const colour = (): Xyz => [300 * random(), 300 * random(), 300 * random()];
    const [one, other] = [Array.from({ length: 1000 }, colour), Array.from({ length: 1000 }, colour)];
    const out = new Float64Array(1000);
    deltaEItpArray(columns(one), columns(other), out);
    expectClose(
      [...out],
      one.map((xyz, i) => deltaEItp(xyzToICtCp(xyz), xyzToICtCp(other[i]!))),
      1e-9,
    );
  });

  test('short columns throw', () => {
    for (let place = 0; place < 6; place += 1) {
      const [X1, Y1, Z1, X2, Y2, Z2] = Array.from(
        { length: 6 },
        (_, k) => new Float64Array(k === place ? 1 : 2),
      );
      expect(() =>
        deltaEItpArray({ X: X1!, Y: Y1!, Z: Z1! }, { X: X2!, Y: Y2!, Z: Z2! }, new Float64Array(2)),
      ).toThrow('an input is shorter than the output');
    }
  });
});
