import { expect, test } from 'vitest';
import { seededUniform } from '../../shared/certainty/random.ts';
import { fillStrata, normalQuantile } from '../../shared/certainty/strata.ts';
import { drawCount, streamsOf } from '../../shared/certainty/streams.ts';

/**
 * Percentage points of the standard normal distribution: Abramowitz and Stegun 1964, table 26.5 and the text of 26.2
 * (from memory, the digits that every table of them agrees on).
 */
const points: readonly (readonly [p: number, z: number])[] = [
  [0.5, 0],
  [0.75, 0.67448975],
  [0.9, 1.28155157],
  [0.95, 1.64485363],
  [0.975, 1.95996398],
  [0.99, 2.32634787],
  [0.995, 2.5758293],
  [0.999, 3.09023231],
  [0.9999, 3.71901649],
];

test.each(points)('the normal quantile of %d is that of the tables, on both sides', (p, z) => {
  expect(normalQuantile(p)).toBeCloseTo(z, 8);
  expect(normalQuantile(1 - p)).toBeCloseTo(-z, 8);
});

test('strata are the same numbers in an order that the seed decides', () => {
  const [one, again, other] = ['a', 'a', 'b'].map((seed) =>
    fillStrata(seededUniform(seed), new Float64Array(500)),
  );
  expect(one).toEqual(again);
  expect(one).not.toEqual(other);
  expect(one!.slice().sort()).toEqual(other!.slice().sort());
});

const seeds = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];
const share = (column: Float64Array, z: number) => column.filter((value) => value < z).length / drawCount;

test('the share of the common error of luminance beyond a limit is that of the normal distribution, whatever the seed', () => {
  for (const seed of seeds)
    for (const [p, z] of points)
      expect(Math.abs(share(streamsOf(seed, `s|${seed}`).s, z) - p)).toBeLessThanOrEqual(1.5 / drawCount);
});

test('the common errors of chromaticity scatter by less than half of what free draws do', () => {
  // Free draws of a share p scatter by √(p(1 − p)/n), the binomial law.
  const scatters = seeds.flatMap((seed) => {
    const { ax, ay } = streamsOf(seed, `s|${seed}`);
    return [...ax, ...ay].flatMap((column) =>
      points.map(([p, z]) => (share(column, z) - p) / Math.sqrt((p * (1 - p)) / drawCount)),
    );
  });
  const square = scatters.reduce((sum, value) => sum + value * value, 0) / scatters.length;
  expect(Math.sqrt(square)).toBeLessThan(0.5);
});
