import { expect, test } from 'vitest';
import { contendersOf, deviationOf, extremeColumn, meanColumn } from '../../shared/certainty/spread.ts';
import { addTerms } from '../../shared/certainty/terms.ts';

const columns = Array.from({ length: 11 }, (_, k) =>
  Float64Array.from({ length: 7 }, (_, d) => Math.sin(3 * k + d) + k / 10),
);

test('a sum of any number of terms is that of the terms one by one', () => {
  for (let n = 0; n <= columns.length; n += 1) {
    const errors = columns.slice(0, n);
    const factors = errors.map((_, k) => 1.5 - k * k * 0.3);
    const from = Float64Array.from({ length: 7 }, (_, d) => 10 * d);
    const expected = from.map((value, d) => errors.reduce((sum, e, k) => sum + factors[k]! * e[d]!, value));
    const found = addTerms(from.slice(), errors, factors);
    found.forEach((value, d) => {
      expect(value, `${n} terms`).toBeCloseTo(expected[d]!, 10);
    });
  }
});

test('the mean of columns is taken draw by draw', () => {
  for (const n of [1, 2, 3, 5, 11]) {
    const found = meanColumn(columns.slice(0, n), new Float64Array(7).fill(99));
    found.forEach((value, d) => {
      expect(value).toBeCloseTo(columns.slice(0, n).reduce((sum, c) => sum + c[d]!, 0) / n, 12);
    });
  }
});

test('the extreme of columns is taken draw by draw', () => {
  for (let n = 1; n <= columns.length; n += 1) {
    const some = columns.slice(0, n);
    const max = extremeColumn(some, 'max', new Float64Array(7));
    const min = extremeColumn(some, 'min', new Float64Array(7));
    for (let d = 0; d < 7; d += 1) {
      expect(max[d], `${n} columns`).toBeCloseTo(Math.max(...some.map((column) => column[d]!)), 12);
      expect(min[d], `${n} columns`).toBeCloseTo(Math.min(...some.map((column) => column[d]!)), 12);
    }
  }
});

test('an infinite draw is an extreme, a draw without a value is none unless it stands first', () => {
  const of = (...rows: number[][]) => rows.map((row) => Float64Array.from(row));
  const [none, all] = [Number.NaN, Number.POSITIVE_INFINITY];
  const some = of([1, 2, none, 4], [3, none, 5, all], [2, 1, 6, 7]);
  expect([...extremeColumn(some, 'max', new Float64Array(4))]).toEqual([3, 2, none, all]);
  expect([...extremeColumn(some, 'min', new Float64Array(4))]).toEqual([1, 1, none, 4]);
});

test('the deviation is the sample standard deviation of JCGM 100, also of a small spread on a large value', () => {
  // JCGM 100:2008 4.4.3, table 1: 20 readings in °C, s = 1.489 °C, mean 100.145 °C.
  const readings = [
    96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95,
    101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
  ];
  expect(deviationOf(Float64Array.from(readings))).toBeCloseTo(1.489, 3);
  expect(deviationOf(Float64Array.from(readings, (value) => value + 1e9))).toBeCloseTo(1.489, 3);
  expect(deviationOf(Float64Array.from(readings, (value) => -value))).toBeCloseTo(1.489, 3);
  expect(deviationOf(Float64Array.of(2, 4))).toBeCloseTo(Math.SQRT2, 12);
  expect(deviationOf(Float64Array.of(3, 3, 3))).toBe(0);
});

test('a deviation needs two draws with a value, and half of them', () => {
  const none = Number.NaN;
  expect(deviationOf(Float64Array.of(1))).toBeNull();
  expect(deviationOf(Float64Array.of(1, none))).toBeNull();
  expect(deviationOf(Float64Array.of(1, 3, none, Number.POSITIVE_INFINITY))).toBeCloseTo(Math.SQRT2, 12);
  expect(deviationOf(Float64Array.of(Number.NEGATIVE_INFINITY, none, 1, 3))).toBeCloseTo(Math.SQRT2, 12);
  expect(deviationOf(Float64Array.of(1, 3, none, none, none))).toBeNull();
});

test('a tail past eight deviations gives half the central 68.27 % instead, to either side', () => {
  // 1,000 even steps from −500 to 499 and one far out: its quantiles are its places.
  const steps = Array.from({ length: 1000 }, (_, i) => i - 500);
  const central = (0.84134 - 0.15866) * 500;
  const evenDeviation = Math.sqrt((1000 ** 2 - 1) / 12);
  for (const sign of [1, -1]) {
    const far = deviationOf(Float64Array.of(...steps, sign * 1e6))!;
    expect(Math.abs(far - central)).toBeLessThan(1);
    // The far one widens the deviation by 1 + k²/2,000: 8.2 makes 7.93 deviations, 8.35 makes 8.06.
    const near = deviationOf(Float64Array.of(...steps, sign * 8.2 * evenDeviation))!;
    expect(near / evenDeviation).toBeCloseTo(Math.sqrt(1 + 8.2 ** 2 / 1001), 2);
    expect(
      Math.abs(deviationOf(Float64Array.of(...steps, sign * 8.35 * evenDeviation))! - central),
    ).toBeLessThan(1);
  }
});

test('values too large to be squared have a deviation and no endless search for one', () => {
  const huge = Float64Array.from({ length: 100 }, (_, i) => (i - 50) * 1e200);
  expect(deviationOf(huge)! / 1e200).toBeCloseTo((0.84134 - 0.15866) * 50, -1);
});

test('who may be the extreme: the found one, and all within five u of the difference', () => {
  const found = Float64Array.of(1, 9, 10, 4, 10);
  const u = (one: number, other: number) => (one === other ? 0 : other === 3 ? 1.2 : 0.25);
  expect(contendersOf(found, [0, 1, 2, 3], 'max', u)).toEqual([1, 2, 3]);
  expect(contendersOf(found, [0, 1, 2], 'max', u)).toEqual([1, 2]);
  expect(contendersOf(found, [0, 1], 'max', u)).toEqual([1]);
  expect(contendersOf(found, [0, 1, 2, 3, 4], 'max', () => 0)).toEqual([2, 4]);
  expect(contendersOf(found, [0, 1, 2, 3], 'min', u)).toEqual([0, 3]);
  // Exactly five u behind is within reach.
  expect(contendersOf(Float64Array.of(0, 5), [0, 1], 'max', () => 1)).toEqual([0, 1]);
  expect(contendersOf(Float64Array.of(0, 5), [0, 1], 'max', () => 0.99)).toEqual([1]);
});
