import fc from 'fast-check';
import { expect, test } from 'vitest';
import { luvToXyz, xyzToLuv } from '../../shared/colour/luv.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import { xyYToXyz } from '../../shared/colour/xyz.ts';
import { expectClose } from './closeness.ts';

const d65 = xyYToXyz(...whiteXy('D65'), 1);

test('white, black and a colour worked by hand', () => {
  expectClose(xyzToLuv(d65, d65), [100, 0, 0], 1e-12);
  expect(xyzToLuv([0, 0, 0], d65)).toEqual([0, 0, 0]);
  expect(luvToXyz([0, 0, 0], d65)).toEqual([0, 0, 0]);
  // BT.709 red: u′v′ (0.450704, 0.522887), D65 (0.197830, 0.468320), Y = 0.212639, L* = 53.2371.
  const red = xyYToXyz(0.64, 0.33, 0.212639);
  expectClose(xyzToLuv(red, d65), [53.2371, 13 * 53.2371 * 0.252874, 13 * 53.2371 * 0.054567], 2e-3);
  // Linear piece: L* = 903.2963·Y.
  expectClose([xyzToLuv(xyYToXyz(0.3127, 0.329, 0.004), d65)[0]], [3.6131852], 1e-6);
});

test('there and back over both pieces of the curve, on any scale', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      fc.double({ min: 0.05, max: 0.6, noNaN: true }),
      fc.double({ min: 0.1, max: 0.4, noNaN: true }),
      (Y, x, y) => {
        const white = d65.map((value) => value * 100) as unknown as typeof d65;
        const xyz = xyYToXyz(x, y, Y);
        const back = luvToXyz(xyzToLuv(xyz, white), white);
        expectClose(back, xyz, 1e-9 * (1 + Math.hypot(...xyz)));
      },
    ),
    { numRuns: 500 },
  );
});

test('impossible input throws', () => {
  expect(() => xyzToLuv([1, -1, 1], d65)).toThrow('Y must not be below 0');
  expect(() => xyzToLuv([1, Number.NaN, 1], d65)).toThrow(RangeError);
  expect(() => xyzToLuv([1, 1, 1], [0, 0, 0])).toThrow(RangeError);
  expect(() => luvToXyz([-1, 0, 0], d65)).toThrow('L* must not be below 0');
  expect(() => luvToXyz([Number.NaN, 0, 0], d65)).toThrow(RangeError);
  expect(() => luvToXyz([50, Number.NaN, 0], d65)).toThrow(RangeError);
});
