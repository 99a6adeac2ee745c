import { beforeAll, expect, test } from 'vitest';
import { judgeRows } from './judgeRows.ts';
import { type Half, type Row, readRows } from './rows.ts';
import { type Outcome, sumOf } from './scoring.ts';

/** Reached, and not to be lost again; raised as reading gets better. Shares of the expected claims. */
const floors: Record<Half, { recall: number; precision: number; verdicts: number }> = {
  develop: { recall: 0.99, precision: 0.99, verdicts: 0.99 },
  'held-back': { recall: 0.955, precision: 0.96, verdicts: 0.945 },
};

let outcomes: Outcome<Row>[];
const outcomesOf = (half: Half) => outcomes.filter(({ row }) => row.half === half);
beforeAll(async () => {
  outcomes = await judgeRows(readRows());
});

test.each(['develop', 'held-back'] satisfies Half[])(
  'the %s half keeps its floors of recall, precision and verdicts',
  (half) => {
    const { expected, found, matched, right } = sumOf(outcomesOf(half));
    expect(matched / expected).toBeGreaterThanOrEqual(floors[half].recall);
    expect(matched / found).toBeGreaterThanOrEqual(floors[half].precision);
    expect(right / expected).toBeGreaterThanOrEqual(floors[half].verdicts);
  },
);

test.each(['develop', 'held-back'] satisfies Half[])('nothing in the %s half holds wrongly', (half) => {
  const own = outcomesOf(half);
  // Held-back sentences stay unseen: only how many, not which.
  if (half === 'develop')
    expect(own.flatMap(({ row, wrongHolds }) => wrongHolds.map(() => row.id))).toEqual([]);
  expect(sumOf(own).wrongHolds).toBe(0);
});
