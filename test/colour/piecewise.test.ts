import { expect, test } from 'vitest';
import { tabulate, valueAt } from '../../shared/colour/piecewise.ts';
import { expectClose, expectRelative } from './closeness.ts';

test('polynomials up to the fifth degree come out exact in every cell', () => {
  const f = (x: number) => ((((7 * x - 5) * x + 3) * x - 2) * x + 4) * x - 1;
  const table = tabulate(f, 4);
  expect(table).toHaveLength(24);
  for (let place = 0; place < 4; place += 0.03) expectClose([valueAt(table, place)], [f(place / 4)], 1e-12);
});

test('a sixth power misses by the least that is possible: 2 · 4⁻⁶ of the cell, evenly', () => {
  const table = tabulate((x) => x ** 6, 1);
  const errors = Array.from({ length: 10_000 }, (_, i) => valueAt(table, i / 10_000) - (i / 10_000) ** 6);
  expectRelative(Math.max(...errors), 2 / 4 ** 6, 1e-5);
  expectRelative(-Math.min(...errors), 2 / 4 ** 6, 1e-5);
});

test('outside the table there is no number', () => {
  const table = tabulate((x) => x, 2);
  for (const place of [2, -1, Number.NaN]) expect(valueAt(table, place)).toBeNaN();
});
