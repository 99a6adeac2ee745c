import { expect, test } from 'vitest';
import type { Row } from './rows.ts';
import { type Found, isClean, scoreRow, sumOf } from './scoring.ts';

const row: Row = {
  id: 'sample-001',
  half: 'develop',
  context: { unit: 'u' },
  text: 'White is 142 nits, black 0.1.',
  expect: [
    { text: 'White is 142 nits', kind: 'value', quantity: 'white', verdict: 'holds' },
    { text: 'black 0.1', kind: 'value', quantity: 'black', verdict: 'breaks' },
  ],
};

function found(text: string, verdict: string, kind: string | null = 'value'): Found {
  const start = row.text.indexOf(text);
  return { text, start, end: start + text.length, kind, quantity: 'white', verdict, reason: '' };
}

test('a row with every claim found and judged as expected is clean', () => {
  const outcome = scoreRow(row, [found('142 nits', 'holds'), found('0.1', 'breaks')]);
  expect(outcome.matches).toEqual([
    [0, 0],
    [1, 1],
  ]);
  expect(isClean(outcome)).toBe(true);
});

test('a hold where the corpus says breaks is a wrong hold', () => {
  const outcome = scoreRow(row, [found('142 nits', 'holds'), found('0.1', 'holds')]);
  expect(outcome.wrongHolds).toEqual([1]);
  expect(isClean(outcome)).toBe(false);
});

test('a hold in a sentence without claims is a wrong hold', () => {
  expect(scoreRow({ ...row, expect: [] }, [found('142 nits', 'holds')]).wrongHolds).toEqual([0]);
});

test('a claim of another kind is not the expected one and counts against precision', () => {
  const outcome = scoreRow(row, [found('142 nits', 'breaks', 'bound')]);
  const score = sumOf([outcome]);
  expect([score.expected, score.found, score.matched]).toEqual([2, 1, 0]);
  expect(score.kinds.get('bound')?.found).toBe(1);
});
