import { expect, test } from 'vitest';
import { type RoundingFamily, statedMultiple, statedNumber } from '../../../shared/claims/reading/stated.ts';

/** `judging.md`, "Rounding": number as written, place of its last digit, family, hedge → interval. */
const rows: [string, number, number, RoundingFamily, string | undefined, string][] = [
  ['3.0 is ±0.05', 3, 0.1, 'plain', undefined, '[2.95, 3.05]'],
  ['742 nits is half a unit', 742, 1, 'luminance', undefined, '[741.5, 742.5]'],
  ['740 nits is half of ten', 740, 1, 'luminance', undefined, '[735, 745]'],
  ['1,000 nits is at most 2.5 %', 1000, 1, 'luminance', undefined, '[975, 1025]'],
  ['700 nits is at most 2.5 %', 700, 1, 'luminance', undefined, '[682.5, 717.5]'],
  ['3,260:1 is half of ten', 3260, 1, 'contrast', undefined, '[3255, 3265]'],
  ['6,500 K is half of a hundred', 6500, 1, 'cct', undefined, '[6450, 6550]'],
  ['7,000 K is at most 1 %', 7000, 1, 'cct', undefined, '[6930, 7070]'],
  ['about 742 nits is 5 %', 742, 1, 'luminance', 'about', '[704.9, 779.1]'],
  ['about 6,500 K is 2 %', 6500, 1, 'cct', 'about', '[6370, 6630]'],
  ['about 3 is half a unit, which is wider', 3, 1, 'plain', 'about', '[2.5, 3.5]'],
  ['almost 750 from 95 %', 750, 1, 'luminance', 'almost', '[712.5, 750)'],
  ['just over 3 up to 105 %', 3, 1, 'plain', 'over', '(3, 3.15]'],
  ['exactly is as plain', 2.4, 0.1, 'plain', 'exactly', '[2.35, 2.45]'],
  ['a price is exact', 1039, 1, 'price', undefined, '[1039, 1039]'],
  ['a hedged price is not', 1000, 1, 'price', 'about', '[950, 1050]'],
];
const text = (stated: { low: number; high: number; lowOpen?: boolean; highOpen?: boolean }) =>
  `${stated.lowOpen ? '(' : '['}${Number(stated.low.toPrecision(6))}, ${Number(stated.high.toPrecision(6))}${stated.highOpen ? ')' : ']'}`;

test.each(rows)('%s', (_name, x, place, family, hedge, interval) => {
  expect(text(statedNumber({ x, place, ...(hedge && { hedge }) }, family))).toBe(interval);
});

test('half is 0.45 to 0.55, almost half from 0.45 up to but not including 0.5', () => {
  const half = { x: 0.5, low: 0.45, high: 0.55 };
  expect(text(statedMultiple(half, undefined, undefined))).toBe('[0.45, 0.55]');
  expect(text(statedMultiple(half, 'almost', 'almost'))).toBe('[0.45, 0.5)');
  expect(text(statedMultiple(half, 'over', 'just over'))).toBe('(0.5, 0.525]');
});
