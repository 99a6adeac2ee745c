import Color from 'colorjs.io';
import {
  differenceCie94,
  differenceCiede2000,
  differenceItp,
  type Lab65,
  type Luv,
  modeLab65,
  modeLuv,
  modeXyz50,
  modeXyz65,
  useMode as registerMode,
  type Xyz50,
  type Xyz65,
} from 'culori';
import { describe, expect, test } from 'vitest';
import { adaptationMatrix } from '../../shared/colour/adaptation.ts';
import { cie94 } from '../../shared/colour/cie94.ts';
import { deltaE76 } from '../../shared/colour/deltaE76.ts';
import { deltaE2000 } from '../../shared/colour/deltaE2000.ts';
import { deltaEItp, xyzToICtCp } from '../../shared/colour/ictcp.ts';
import { type Lab, xyzToLab } from '../../shared/colour/lab.ts';
import { xyzToLuv } from '../../shared/colour/luv.ts';
import { apply3 } from '../../shared/colour/rgb.ts';
import { srgbEotf } from '../../shared/colour/transfer/srgb.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import { type Xyz, xyYToXyz } from '../../shared/colour/xyz.ts';
import { seeded } from './seeded.ts';

/*
 * 10 000 seeded random colours against two independent open libraries. Both are right where they agree with each
 * other and with us to rounding; where one of them rounds a constant, the tolerance says so.
 */

const count = 10_000;
const random = seeded(65);
const labs = Array.from(
  { length: 2 * count },
  (): Lab => [100 * random(), 200 * random() - 100, 200 * random() - 100],
);
const rgbs = Array.from({ length: 2 * count }, () => [random(), random(), random()] as const);
const d65 = xyYToXyz(...whiteXy('D65'), 1);
const d50 = xyYToXyz(...whiteXy('D50'), 1);

/** Largest difference over all pairs of colours, printed and returned. */
function agreement(name: string, difference: (pair: number) => number): number {
  let worst = 0;
  for (let i = 0; i < count; i += 1) worst = Math.max(worst, difference(i));
  console.log(`${name}: largest difference over ${count} pairs ${worst.toExponential(1)}`);
  return worst;
}

const largest = (found: readonly number[], expected: readonly number[]) =>
  Math.max(...expected.map((value, k) => Math.abs(found[k]! - value)));

const [first, second] = [(i: number) => labs[2 * i]!, (i: number) => labs[2 * i + 1]!];
const toCulori = ([l, a, b]: Lab): Lab65 => ({ mode: 'lab65', l, a, b });

describe('agreement with colorjs.io', () => {
  const space = (id: string, coords: readonly number[]) =>
    new Color(id, [...coords] as [number, number, number]);
  const xyzOf = (rgb: readonly number[]) => space('srgb', rgb).to('xyz-d65').coords as unknown as Xyz;

  test('CIEDE2000 and ΔE*ab', () => {
    const color = labs.map((lab) => space('lab', lab));
    expect(
      agreement('CIEDE2000, colorjs.io', (i) =>
        Math.abs(deltaE2000(first(i), second(i)) - color[2 * i]!.deltaE(color[2 * i + 1]!, '2000')),
      ),
    ).toBeLessThan(1e-10);
    expect(
      agreement('ΔE*ab, colorjs.io', (i) =>
        Math.abs(deltaE76(first(i), second(i)) - color[2 * i]!.deltaE(color[2 * i + 1]!, '76')),
      ),
    ).toBeLessThan(1e-10);
  });

  test('L*a*b* under D50 through Bradford, L*u*v* under D65', () => {
    const adapt = adaptationMatrix(d65, d50);
    expect(
      agreement('L*a*b* D50 from sRGB, colorjs.io', (i) =>
        largest(
          xyzToLab(apply3(adapt, xyzOf(rgbs[i]!)), d50),
          space('srgb', rgbs[i]!).to('lab').coords as number[],
        ),
      ),
    ).toBeLessThan(1e-9);
    expect(
      agreement('L*u*v* D65 from sRGB, colorjs.io', (i) =>
        largest(xyzToLuv(xyzOf(rgbs[i]!), d65), space('srgb', rgbs[i]!).to('luv').coords as number[]),
      ),
    ).toBeLessThan(1e-9);
  });

  test('ICtCp and ΔE_ITP, white at 203 cd/m²', () => {
    const absolute = (rgb: readonly number[]) => xyzOf(rgb).map((value) => 203 * value) as unknown as Xyz;
    expect(
      agreement('ICtCp from sRGB, colorjs.io', (i) =>
        largest(xyzToICtCp(absolute(rgbs[i]!)), space('srgb', rgbs[i]!).to('ictcp').coords as number[]),
      ),
    ).toBeLessThan(1e-9);
    expect(
      agreement('ΔE_ITP, colorjs.io', (i) => {
        const [one, other] = [rgbs[2 * i]!, rgbs[2 * i + 1]!];
        const own = deltaEItp(xyzToICtCp(absolute(one)), xyzToICtCp(absolute(other)));
        return Math.abs(own - space('srgb', one).deltaE(space('srgb', other), 'ITP'));
      }),
    ).toBeLessThan(1e-7);
  });

  test('sRGB transfer function', () => {
    expect(
      agreement('sRGB, colorjs.io', (i) =>
        largest(rgbs[i]!.map(srgbEotf), space('srgb', rgbs[i]!).to('srgb-linear').coords as number[]),
      ),
    ).toBeLessThan(1e-15);
  });
});

describe('agreement with culori', () => {
  test('CIEDE2000 and CIE94', () => {
    const ciede2000 = differenceCiede2000();
    const graphicArts = differenceCie94();
    expect(
      agreement('CIEDE2000, culori', (i) =>
        Math.abs(deltaE2000(first(i), second(i)) - ciede2000(toCulori(first(i)), toCulori(second(i)))),
      ),
    ).toBeLessThan(1e-10);
    expect(
      agreement('CIE94, culori', (i) =>
        Math.abs(cie94(first(i), second(i)) - graphicArts(toCulori(first(i)), toCulori(second(i)))),
      ),
    ).toBeLessThan(1e-10);
  });

  test('L*a*b* under D65 and L*u*v* under D50', () => {
    const toLab65 = registerMode(modeLab65);
    const toLuv = registerMode(modeLuv);
    registerMode(modeXyz65);
    registerMode(modeXyz50);
    const xyz = (i: number): Xyz => [rgbs[i]![0] * d65[0], rgbs[i]![1], rgbs[i]![2] * d65[2]];
    expect(
      agreement('L*a*b* D65, culori', (i) => {
        const [x, y, z] = xyz(i);
        const { l, a, b } = toLab65({ mode: 'xyz65', x, y, z } as Xyz65) as Lab65;
        return largest(xyzToLab(xyz(i), d65), [l, a, b]);
      }),
    ).toBeLessThan(1e-9);
    expect(
      agreement('L*u*v* D50, culori', (i) => {
        const [x, y, z] = xyz(i);
        const { l, u, v } = toLuv({ mode: 'xyz50', x, y, z } as Xyz50) as Luv;
        return largest(xyzToLuv(xyz(i), d50), [l, u, v]);
      }),
    ).toBeLessThan(1e-9);
  });

  test('ΔE_ITP; its matrix takes another rounding of D65', () => {
    const itp = differenceItp();
    const absolute = (i: number) =>
      rgbs[i]!.map((value, k) => 203 * (0.05 + value) * d65[k]!) as unknown as Xyz;
    expect(
      agreement('ΔE_ITP, culori', (i) => {
        const [one, other] = [absolute(2 * i), absolute(2 * i + 1)];
        const of = ([X, Y, Z]: Xyz): Xyz65 => ({ mode: 'xyz65', x: X / 203, y: Y / 203, z: Z / 203 });
        const expected = itp(of(one), of(other));
        return Math.abs(deltaEItp(xyzToICtCp(one), xyzToICtCp(other)) - expected) / (1 + expected);
      }),
    ).toBeLessThan(1e-4);
  });
});
