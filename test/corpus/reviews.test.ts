import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { judgeReviews, reviewFolders } from './reviews.ts';
import { sumOf } from './scoring.ts';

/** Reached, and not to be lost again: the share of the expected claims whose verdict is right. */
const floors: Readonly<Record<string, number>> = {
  'cairn-65': 0.9,
  'copse-65': 0.9,
  'fennick-77': 0.83,
  'harrow-77': 0.89,
  'linnet-55': 0.95,
  'mallow-55': 0.86,
  'quill-65': 0.74,
  'rushlight-55': 0.95,
  'sedge-65': 0.84,
  'thorn-65': 0.9,
  'thrift-55': 0.94,
  'vesper-55': 0.95,
};

test.each(reviewFolders().map((folder) => [basename(folder), folder] as const))(
  'the review %s keeps its floor, and nothing in it holds wrongly',
  async (name, folder) => {
    const outcomes = await judgeReviews(folder);
    const wrong = outcomes.flatMap(({ row, found, wrongHolds }) =>
      wrongHolds.map((at) => `${row.text}: ${found[at]!.text}`),
    );
    expect(wrong).toEqual([]);
    const { expected, right } = sumOf(outcomes);
    expect(floors[name]).toBeDefined();
    expect(right / expected).toBeGreaterThanOrEqual(floors[name]!);
  },
);
