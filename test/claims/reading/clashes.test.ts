import { expect, test } from 'vitest';
import { proposalText, read } from './context.ts';

const says = (markdown: string) => read(markdown).map(proposalText);

test('a second number for the same thing is unproven where nothing tells them apart', () =>
  expect(says('Input lag is 11.4 ms, 15.2 ms on a Tuesday.')).toEqual([
    'value lag = 11.4 [11.35, 11.45]',
    'unproven',
  ]));

test.each(['Input lag is 11.4 ms and the lag is 15.2 ms.', 'The lag of 11.4 ms is a lag of 15.2 ms.'])(
  'a sentence that names the thing twice contradicts itself: %s',
  (sentence) => expect(says(sentence).map((text) => text.split(' =')[0])).toEqual(['value lag', 'value lag']),
);

test('the same number twice is no clash', () =>
  expect(says('Input lag is 11.4 ms, yes, 11.4 ms.').filter((text) => text === 'unproven')).toEqual([]));
