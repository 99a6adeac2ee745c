import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cctAndDuv, coldest, hottest, xyOfCctAndDuv } from '../../shared/colour/cct.ts';
import { planckianXy } from '../../shared/colour/planckian.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import { referenceJson } from '../reference/read.ts';
import { expectClose, expectRelative } from './closeness.ts';

type Pair = [number, number];
const reference = referenceJson<{
  checks: { published_ohno_uv: Pair; published_cct_duv: Pair; own_cct_duv: Pair };
  white_points: { name: string; xy: Pair; cct_exact: number; duv_exact: number }[];
  planckian: { T: number; xy: Pair }[];
  off_locus_cases: { T: number; duv: number; xy: Pair }[];
}>('whitepoints.json');

function found(x: number, y: number) {
  const result = cctAndDuv(x, y);
  if ('undefined' in result) throw new Error(result.undefined);
  return result;
}

const xyOfUv1960 = (u: number, v: number): Pair => [
  (3 * u) / (2 * u - 8 * v + 4),
  (2 * v) / (2 * u - 8 * v + 4),
];

describe('correlated colour temperature and Duv', () => {
  test('of the published whites, within the digits of the exact values', () => {
    for (const { xy, cct_exact: cct, duv_exact: duv } of reference.white_points) {
      const result = found(...xy);
      expectClose([result.cct], [cct], 0.011);
      expectClose([result.duv], [duv], 6e-7);
    }
  });

  test('of the worked example of Ohno 2014', () => {
    const { published_ohno_uv: uv, published_cct_duv: published, own_cct_duv: exact } = reference.checks;
    const { cct, duv } = found(...xyOfUv1960(...uv));
    expectClose([cct], [published[0]], 0.05);
    expectClose([duv], [published[1]], 1e-6);
    expectClose([cct], [exact[0]], 0.001);
    expectClose([duv], [exact[1]], 1e-8);
  });

  test('of black bodies', () => {
    for (const { T, xy } of reference.planckian) {
      expectClose(planckianXy(T), xy, 6e-7);
      // The rounding of xy to six digits alone moves hot bodies by up to 0.02 %.
      const { cct, duv } = found(...xy);
      expectRelative(cct, T, 2.5e-4);
      expectClose([duv], [0], 1e-6);
    }
  });

  test('off the locus on both sides', () => {
    for (const { T, duv, xy } of reference.off_locus_cases) {
      const result = found(...xy);
      expectRelative(result.cct, T, 1e-5);
      expectClose([result.duv], [duv], 1e-6);
    }
  });

  test('there and back between 1100 and 90 000 K', () => {
    const log = fc.double({ min: Math.log(1100), max: Math.log(90_000), noNaN: true });
    fc.assert(
      fc.property(log, fc.double({ min: -0.02, max: 0.02, noNaN: true }), (logarithm, duv) => {
        const T = Math.exp(logarithm);
        const [x, y] = xyOfCctAndDuv(T, duv);
        // Above the coldest bodies there is no room: x + y = 1 is that near.
        fc.pre(x + y <= 1);
        const result = found(x, y);
        expectRelative(result.cct, T, 1e-5);
        expectClose([result.duv], [duv], 2e-8);
      }),
      { numRuns: 300 },
    );
  });

  test('just off an entry of the table on either side it stays continuous', () => {
    const step = 1.005;
    for (const exponent of [100, 300, 500.5]) {
      const T = coldest * step ** exponent;
      const cold = found(...xyOfCctAndDuv(T * (1 - 1e-7), 0.003)).cct;
      const hot = found(...xyOfCctAndDuv(T * (1 + 1e-7), 0.003)).cct;
      expectRelative((hot - cold) / T, 2e-7, 0.05);
    }
  });

  test('outside the domain a reason, never a number', () => {
    const reason = (x: number, y: number) => cctAndDuv(x, y);
    expect([
      reason(Number.NaN, 0.3),
      reason(0.3, 0),
      reason(0.7, 0.4),
      reason(...whiteXy('D65')).toString(),
      reason(0.735, 0.265),
      reason(...planckianXy(990)),
      reason(...planckianXy(101_000)),
      reason(0.2, 0.15),
      reason(0.3, 0.6),
      reason(0.4, 0.2),
    ]).toEqual([
      { undefined: 'x and y must be numbers' },
      { undefined: 'y is not above 0' },
      { undefined: 'x + y is above 1' },
      '[object Object]',
      { undefined: 'colder than 1000 K' },
      { undefined: 'colder than 1000 K' },
      { undefined: 'hotter than 100 000 K' },
      { undefined: 'hotter than 100 000 K' },
      { undefined: 'more than 0.05 from the Planckian locus' },
      { undefined: 'more than 0.05 from the Planckian locus' },
    ]);
  });

  test('the ends of the domain', () => {
    expect([coldest, hottest]).toEqual([1000, 100_000]);
    expectRelative(found(...planckianXy(1001)).cct, 1001, 1e-6);
    expectRelative(found(...planckianXy(99_900)).cct, 99_900, 1e-4);
    expectClose([found(...xyOfCctAndDuv(6500, 0.0499)).duv], [0.0499], 1e-7);
    expect(cctAndDuv(...xyOfCctAndDuv(6500, 0.0501))).toHaveProperty('undefined');
    expectClose([found(...xyOfCctAndDuv(6500, -0.0499)).duv], [-0.0499], 1e-7);
    expect(cctAndDuv(...xyOfCctAndDuv(6500, -0.0501))).toHaveProperty('undefined');
  });
});
