import { describe, expect, it, test } from 'vitest';
import { formatNumber, formatWithUncertainty } from '../../shared/article/formatNumber.ts';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { splitSentences } from '../../shared/article/sentences.ts';

describe('plain text of an article', () => {
  it('joins blocks by two line feeds, leaves out code and HTML, decodes entities', () => {
    const { text, blocks } = plainTextOfMarkdown(
      [
        '# Title &amp; more',
        'Hello **bold** [link](x)\nsoft  \nhard `code` <b>bold</b>.',
        '- one\n- two\n\n  more',
        '> quoted',
        '| A | B |\n|---|---|\n| 1 | 2 |',
        '![alt *text*](x.png "title")',
        '*A caption*',
        '```\ncode\n```',
        '<div>html</div>',
        'Before ![inside](y.png) after.',
      ].join('\n\n'),
    );
    expect(text.split('\n\n')).toEqual([
      'Title & more',
      'Hello bold link soft hard  bold.',
      'one',
      'two',
      'more',
      'quoted',
      'A',
      'B',
      '1',
      '2',
      'alt text',
      'A caption',
      'Before  after.',
      'inside',
    ]);
    expect(blocks.map((block) => block.kind)).toEqual([
      'heading',
      'paragraph',
      'item',
      'item',
      'item',
      'quote',
      'cell',
      'cell',
      'cell',
      'cell',
      'alt',
      'caption',
      'paragraph',
      'alt',
    ]);
    for (const block of blocks) expect(text.slice(block.start, block.end)).not.toMatch(/^\s|\s$|^$/);
    expect(blocks[8]?.table).toEqual({ number: 0, row: 1, column: 0 });
  });
  it('does not compose letters', () => {
    expect(plainTextOfMarkdown('Cafe\u0301').text).toBe('Cafe\u0301');
  });
});

const splits: [string, number][] = [
  ['It reads 3.4. That is visible.', 2],
  ['Contrast vs. 2.4 is approx. 9.8 in Fig. 3 here.', 1],
  ['See e.g. the chart, i.e. the plot. Next.', 2],
  ['It is 3,260:1. The rest is fine.', 2],
  ['“Is it bright?” she asked. It is.', 2],
  ['It depends … on the room. Yes.', 2],
  ['It ends... Then it goes on.', 2],
  ['J. K. Measure wrote this. We agree.', 2],
  ['No. 3 is best. No. It is not.', 3],
  ['Ports, menus, etc. are fine. Ports, menus, etc. The end.', 3],
  ['At 7 p.m. we began. It was late.', 2],
  ['It costs £1,039! Really?', 2],
  ['(It is bright.) It is dear.', 2],
  ['1. Contrast', 1],
  ['Rec. 709 is covered. BT.2020 is not.', 2],
];
test.each(splits)('%s has its sentences parted', (text, count) => {
  expect(splitSentences(plainTextOfMarkdown(text.replace(/^1\. /, '1\\. ')), 'en-GB')).toHaveLength(count);
});

test('sentences never cross blocks', () => {
  expect(
    splitSentences(plainTextOfMarkdown('One\n\nTwo. Three.'), 'en').map((s) => [s.text, s.block]),
  ).toEqual([
    ['One', 0],
    ['Two.', 1],
    ['Three.', 1],
  ]);
});

test('numbers carry a true minus, grouped thousands and the right space before their unit', () => {
  expect(formatNumber(-3.24, { unit: '%' })).toBe('−3.24\u202f%');
  expect(formatNumber(742, { unit: 'cd/m²' })).toBe('742\u00a0cd/m²');
  expect(formatNumber(1039, { unit: 'GBP', decimals: 0 })).toBe('£1,039');
  expect(formatNumber(3260, { unit: ':1', decimals: 0 })).toBe('3,260:1');
  expect(formatNumber(1099.5, { decimals: 1, locale: 'de-DE' })).toBe('1.099,5');
  expect(formatNumber(Number.NaN)).toBe('undefined');
  expect(formatNumber(-0.001, { decimals: 1 })).toBe('0.0');
  expect(formatWithUncertainty(742.3, 7.4, { unit: 'cd/m²' })).toBe('742\u202f±\u202f15\u00a0cd/m²');
});
