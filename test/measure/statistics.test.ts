import { expect, test } from 'vitest';
import { extremesOf, meanOfCounting } from '../../shared/measure/statistics.ts';

const values = Float64Array.of(9, 2, 5, 2, 7, -1);

test('the mean is that of the values that count', () => {
  expect(meanOfCounting(values, [false, true, true, false, true, false])).toBeCloseTo(14 / 3, 12);
  expect(meanOfCounting(values, [true, false, false, false, false, false])).toBe(9);
  expect(meanOfCounting(values, Array<boolean>(6).fill(false))).toBeUndefined();
});

test('greatest and smallest are sought among the values that count, the first of equals', () => {
  expect(extremesOf(values, Array<boolean>(6).fill(true))).toEqual({ max: 0, min: 5 });
  expect(extremesOf(values, [false, true, true, true, true, false])).toEqual({ max: 4, min: 1 });
  expect(extremesOf(Float64Array.of(1, 5, 5, 3), Array<boolean>(4).fill(true))).toEqual({ max: 1, min: 0 });
  expect(extremesOf(values, [false, false, true, false, false, false])).toEqual({ max: 2, min: 2 });
});
