import { expect, test } from 'vitest';
import { linesWithin } from '../../../app/plots/lineBreaks.ts';

const letters = (line: string) => line.length;

test('a text is broken at spaces, and no line is wider than the room', () =>
  expect(linesWithin('Bottom left corner is 31 % darker than the centre', 20, letters)).toEqual([
    'Bottom left corner',
    'is 31 % darker than',
    'the centre',
  ]));

test('a short text is one line', () => expect(linesWithin('Even', 20, letters)).toEqual(['Even']));

test('a no-break space keeps a number beside its unit', () =>
  expect(linesWithin('darker by 31\u202f%', 12, letters)).toEqual(['darker by', '31\u202f%']));

test('a word wider than the room stands alone and whole', () =>
  expect(linesWithin('an extraordinarily long word', 10, letters)).toEqual([
    'an',
    'extraordinarily',
    'long word',
  ]));
