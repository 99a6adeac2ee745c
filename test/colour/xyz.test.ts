import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chromaticityFault, uvToXy, xyToUv, xyYToXyz, xyzToXy } from '../../shared/colour/xyz.ts';
import { referenceJson } from '../reference/read.ts';
import { expectClose } from './closeness.ts';

type White = { name: string; xy: [number, number]; upvp: [number, number] };
const { white_points: whitePoints, planckian } = referenceJson<{
  white_points: White[];
  planckian: Omit<White, 'name'>[];
}>('whitepoints.json');

const chromaticity = fc
  .tuple(fc.double({ min: 0.001, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([y, share]) => [share * (1 - y), y] as const);

describe('chromaticity', () => {
  test('u′, v′ of published whites and black bodies', () => {
    for (const { xy, upvp } of [...whitePoints, ...planckian]) {
      expectClose(xyToUv(...xy), upvp, 2e-6);
      expectClose(uvToXy(...xyToUv(...xy)), xy, 1e-15);
    }
  });

  test('X, Y, Z of D65 at 100', () => {
    // 0.3127/0.3290 and 0.3583/0.3290, by hand.
    expectClose(xyYToXyz(0.3127, 0.329, 100), [95.045592705167, 100, 108.905775075988], 1e-12);
    expect(xyzToXy([1, 2, 5])).toEqual([0.125, 0.25]);
  });

  test('x, y, Y and u′, v′ go there and back', () => {
    fc.assert(
      fc.property(chromaticity, fc.double({ min: 1e-4, max: 1e4, noNaN: true }), ([x, y], Y) => {
        expectClose(xyzToXy(xyYToXyz(x, y, Y)), [x, y], 1e-12);
        expectClose(uvToXy(...xyToUv(x, y)), [x, y], 1e-10);
      }),
    );
  });

  test('impossible chromaticities are named', () => {
    expect([
      chromaticityFault(0.3127, 0.329),
      chromaticityFault(0, 1),
      chromaticityFault(0.4, 0.6),
      chromaticityFault(0.4, 0.6 + 5e-10),
      chromaticityFault(0.4, 0.6 + 2e-9),
      chromaticityFault(-1e-6, 0.3),
      chromaticityFault(0.3, 0),
      chromaticityFault(0.3, -0.1),
      chromaticityFault(Number.NaN, 0.3),
      chromaticityFault(0.3, Number.POSITIVE_INFINITY),
    ]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      'x + y is above 1',
      'x is below 0',
      'y is not above 0',
      'y is not above 0',
      'x and y must be numbers',
      'x and y must be numbers',
    ]);
  });

  test('what has no answer throws and never gives NaN', () => {
    expect(() => xyYToXyz(0.3, 0, 1)).toThrow(RangeError);
    expect(() => xyYToXyz(Number.NaN, 0.3, 1)).toThrow('x must be a finite number, got NaN');
    expect(() => xyYToXyz(0.3, Number.NaN, 1)).toThrow('y must be a finite number');
    expect(() => xyYToXyz(0.3, 0.3, Number.POSITIVE_INFINITY)).toThrow('Y must be a finite number');
    expect(() => xyzToXy([0, 0, 0])).toThrow('X + Y + Z must be a finite number above 0, got 0');
    expect(() => xyzToXy([Number.NaN, 1, 1])).toThrow(RangeError);
    expect(() => xyToUv(1.5, 0)).toThrow(RangeError);
    expect(() => xyToUv(Number.NaN, 0.3)).toThrow(RangeError);
    expect(() => uvToXy(0, 0.75)).toThrow(RangeError);
    expect(() => xyzToXy([Number.POSITIVE_INFINITY, 1, 1])).toThrow(RangeError);
  });
});
