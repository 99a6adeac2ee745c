import { beforeAll, expect, test } from 'vitest';
import { judgeRows } from './judgeRows.ts';
import { type Half, readRows } from './rows.ts';
import { type RowOutcome, scoreHalf } from './scoring.ts';

/** Reached, and not to be lost again; raised as reading gets better. Shares of the expected claims. */
const floors: Record<Half, { recall: number; precision: number; verdicts: number }> = {
  develop: { recall: 0.99, precision: 0.99, verdicts: 0.99 },
  'held-back': { recall: 0.955, precision: 0.96, verdicts: 0.945 },
};

let outcomes: RowOutcome[];
beforeAll(async () => {
  outcomes = await judgeRows(readRows());
});

test.each(['develop', 'held-back'] satisfies Half[])(
  'the %s half keeps its floors of recall, precision and verdicts',
  (half) => {
    const { expected, found, matched, right } = scoreHalf(outcomes, half);
    expect(matched / expected).toBeGreaterThanOrEqual(floors[half].recall);
    expect(matched / found).toBeGreaterThanOrEqual(floors[half].precision);
    expect(right / expected).toBeGreaterThanOrEqual(floors[half].verdicts);
  },
);

test.each(['develop', 'held-back'] satisfies Half[])('nothing in the %s half holds wrongly', (half) => {
  const own = outcomes.filter(({ row }) => row.half === half);
  // Held-back sentences stay unseen: only how many, not which.
  if (half === 'develop')
    expect(own.flatMap(({ row, wrongHolds }) => wrongHolds.map(() => row.id))).toEqual([]);
  expect(scoreHalf(outcomes, half).wrongHolds).toBe(0);
});
