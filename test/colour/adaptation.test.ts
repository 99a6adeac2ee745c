import { expect, test } from 'vitest';
import { adaptationMatrix } from '../../shared/colour/adaptation.ts';
import { apply3, multiply3 } from '../../shared/colour/rgb.ts';
import { type WhiteName, whiteXy } from '../../shared/colour/whites.ts';
import { type Xyz, xyYToXyz } from '../../shared/colour/xyz.ts';
import { expectClose } from './closeness.ts';

const white = (name: WhiteName): Xyz => xyYToXyz(...whiteXy(name), 1);

test('Bradford from D65 to D50 as printed in CSS Color 4 and used with ICC profiles', () => {
  expectClose(
    adaptationMatrix(white('D65'), white('D50')).flat(),
    [
      1.0479297925449969, 0.022946870601609652, -0.05019226628920524, 0.02962780877005599, 0.9904344267538799,
      -0.017073799063418826, -0.009243040646204504, 0.015055191490298152, 0.7518742814281371,
    ],
    1e-12,
  );
});

test('CAT16 from D65 to D50', () => {
  // Nine entries from a second computation in another language, matrix of Li et al. 2017.
  const matrix = adaptationMatrix(white('D65'), white('D50'), 'cat16');
  expectClose(apply3(matrix, white('D65')), white('D50'), 1e-12);
  expectClose(
    matrix.flat(),
    [
      1.0108543289379337, 0.040708610323500954, -0.034144582500686194, 0.005428142012307907,
      0.9935819261930646, 0.0011559203885934, 0.0002507224681170424, -0.011491875891322778,
      0.7679649469115444,
    ],
    1e-9,
  );
});

test('white goes to white, there and back is nothing, scale does not matter', () => {
  for (const method of ['bradford', 'cat16'] as const)
    for (const [from, to] of [
      ['D65', 'D50'],
      ['A', 'D93'],
      ['C', 'DCI'],
    ] as const) {
      const there = adaptationMatrix(white(from), white(to), method);
      expectClose(apply3(there, white(from)), white(to), 1e-12);
      const back = adaptationMatrix(white(to), white(from), method);
      expectClose(multiply3(back, there).flat(), [1, 0, 0, 0, 1, 0, 0, 0, 1], 1e-12);
    }
});

test('a white without positive response throws', () => {
  expect(() => adaptationMatrix([0, 0, 0], white('D50'))).toThrow('outside the range of the adaptation');
  expect(() => adaptationMatrix(white('D50'), [0, 0, 0])).toThrow(RangeError);
  expect(() => adaptationMatrix(white('D50'), [0, 0, 1])).toThrow(RangeError);
  expect(() => adaptationMatrix(white('D50'), [Number.NaN, 1, 1])).toThrow(RangeError);
});
