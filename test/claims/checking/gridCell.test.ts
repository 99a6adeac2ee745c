import { expect, test } from 'vitest';
import { cellAt, cellsOf } from '../../../shared/claims/checking/gridCell.ts';

const grid = (size: number) =>
  Array.from({ length: size * size }, (_, i) => `r${Math.floor(i / size) + 1}c${(i % size) + 1}`);

test.each([
  ['top left', 3, 'r1c1'],
  ['bottom right', 3, 'r3c3'],
  ['bottom left', 5, 'r5c1'],
  ['top right', 9, 'r1c9'],
  ['left', 5, 'r3c1'],
  ['bottom', 9, 'r9c5'],
  ['centre', 5, 'r3c3'],
  ['r2c4', 5, 'r2c4'],
] as const)('%s of a grid of %d rows is %s', (words, size, cell) => {
  expect(cellAt(words, grid(size))).toBe(cell);
});

test('words that name no place, or two opposite ones, name no cell', () => {
  expect(cellAt('somewhere', grid(3))).toBeUndefined();
  expect(cellAt('left right', grid(3))).toBeUndefined();
});

test('a grid without a middle row has no cell for an edge', () => {
  expect(cellAt('left', grid(4))).toBeUndefined();
});

test('a corner is any of four, and an edge has its corners', () => {
  expect(cellsOf('corner', grid(3))).toEqual(['r1c1', 'r1c3', 'r3c1', 'r3c3']);
  expect(cellsOf('edge', grid(3))).toEqual(grid(3).filter((cell) => cell !== 'r2c2'));
});
