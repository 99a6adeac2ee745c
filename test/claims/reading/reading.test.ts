import { describe, expect, it, test } from 'vitest';
import { plainTextOfMarkdown } from '../../../shared/article/plainText.ts';
import { createReadingMemo, readArticle } from '../../../shared/claims/reading/index.ts';
import { context, proposalText, read } from './context.ts';
import { amongThree } from './sentences/amongThree.ts';
import { sentences } from './sentences.ts';

const says = (markdown: string) => read(markdown).map(proposalText);

describe('the twelve sentences of the design', () => {
  const rows: [string, ...string[]][] = [
    [
      'Orrinvale claims 1,000 nits, and we got there: 742 in a 10% window.',
      'fact peak = 1000 by maker',
      'bound peak max >= 1000',
      'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    ],
    [
      'The average is just under 3, so nothing here should be visible.',
      'value grey.de2000 average = 3 [2.85, 3)',
      'bound grey.de2000 max <= 3',
    ],
    [
      'The Veltrane manages 412 nits. Blacks are a deep 0.04 cd/m².',
      'value peak max {veltrane} = 412 [411.5, 412.5]',
      'unproven',
    ],
    ['No error rises above 3 until 60%.', 'bound grey.de2000 max <60 <= 3'],
    [
      'After adjustment the average falls from 4.1 to 0.6, and peak luminance stays at 742 nits.',
      'value grey.de2000 average {stage as-delivered} = 4.1 [4.05, 4.15]',
      'value grey.de2000 average {stage adjusted} = 0.6 [0.55, 0.65]',
      'value peak max {stage adjusted} = 742 [741.5, 742.5]',
    ],
    ['It covers 98% of P3.', 'value coverage.p3.xy = 98 [97.5, 98.5]'],
    [
      "Its contrast is not far off twice the Kasulind's.",
      'ratio contrast.native : contrast.native {kasulind} = 2 [1.8, 2)',
    ],
    [
      'It is a third dearer than the Tamarick but 30% brighter.',
      'ratio fact.price : fact.price {tamarick} = 1.33333 [1.3, 1.36667]',
      'ratio peak max : peak max {tamarick} = 1.3 [1.295, 1.305]',
    ],
    [
      'At £1,039 it is the brightest set under £1,100 we have tested this year, bar the Nocthale.',
      'fact price = 1039',
      'order peak max higher best under 1100 GBP in 2026 bar nocthale-umbra-55',
    ],
    [
      'The 65-inch Hearth has the same four HDMI 2.1 ports and looks just as punchy.',
      'fact hdmi.count.2.1 = 4 {variantInches 65}',
      'fact hdmi.count.2.1 = 4',
      'opinion',
    ],
    ["You won't see blooming unless you go looking for it.", 'observed blooming 0–1'],
    [
      'Even 45 degrees off it loses 60% of its luminance at most.',
      'bound angle.luminance at 45 {angle 45} >= 40',
    ],
  ];
  test.each(rows)('%s', (sentence, ...expected) => {
    const read_ = says(sentence);
    for (const line of expected) expect(read_).toContain(line);
    expect(read_.filter((line) => line !== 'opinion')).toHaveLength(
      expected.filter((line) => line !== 'opinion').length,
    );
  });

  it('offers the other diagram of a coverage that names none', () => {
    const [claim] = read('It covers 98% of P3.');
    expect(claim?.check).toMatchObject({ kind: 'value', operand: { others: ['coverage.p3.uv'] } });
  });
});

describe('a review that compares three sets', () => {
  const against = ['veltrane-plain-50', 'nocthale-umbra-55'];
  test.each(amongThree.map((row) => [...row] as [string, ...string[]]))('%s', (sentence, ...expected) => {
    expect(read(sentence, { against }).map(proposalText)).toEqual(expected);
  });
});

describe('many phrasings', () => {
  test.each(sentences.map((row) => [...row] as [string, ...string[]]))('%s', (sentence, ...expected) => {
    expect(says(sentence)).toEqual(expected);
  });
});

describe('what is not a claim', () => {
  const prose = [
    'Sit straight in front.',
    'We spent three evenings with the set and watched two films.',
    'The remote has a pleasant weight, and the menus are quick to learn.',
    'It arrived on 14 September 2026 with firmware 3.1.7.',
    'Figure 3 shows the greyscale.',
    'Who would pay £1,039 for this?',
    'One reader says his shows banding.',
    '“It reaches 1,000 nits,” says the press release.',
    'At first glance it is second to none.',
    'A week later we repeated the runs.',
    'We let it warm up for 45 minutes.',
    'The Hearth 55 stands on two feet.'.replace('two feet', 'its feet'),
    'Every set in this price range has its quirks.',
    'Black is black here.',
    'In the Calm mode, skin looks right more often than not.',
    'It is the kind of set that disappears into the room.',
    'Read on to see why.',
    'The set was on loan until 20 October.',
    'It comes in 55 and 65 inches.',
    'At 10:20 we began, and at 7 pm we were done.',
    'All in all a good television.',
  ];
  test.each(prose)('%s', (sentence) => expect(says(sentence)).toEqual([]));

  it('leaves a condition unproven', () => {
    expect(says('If the room is dark, blooming would be visible.')).toEqual(['unproven']);
  });

  it('never passes over a number that it cannot read', () => {
    expect(says('The wobble factor is 17.')).toEqual(['unproven']);
    expect(says('It whistles at 12 kHz.')).toEqual(['unproven']);
  });
});

describe('carry-over', () => {
  it('lets a heading set conditions until the next heading of its level', () => {
    expect(
      says('## Adjusted\n\nThe average error is 0.6.\n\n## Verdict\n\nThe average error is 2.4.'),
    ).toEqual([
      'value grey.de2000 average {stage adjusted} = 0.6 [0.55, 0.65]',
      'value grey.de2000 average = 2.4 [2.35, 2.45]',
    ]);
  });
  it('keeps an outer heading’s condition under an inner heading', () => {
    expect(says('## Adjusted\n\n### Greyscale\n\nThe average is 0.6.')).toEqual([
      'value grey.de2000 average {stage adjusted} = 0.6 [0.55, 0.65]',
    ]);
  });
  it('lets stage, mode, signal and dimming last to the paragraph’s end', () => {
    expect(says('In HDR the average error is 2.9. The maximum is 5.1.\n\nThe average error is 2.4.')).toEqual(
      [
        'value grey.de2000 average {signal HDR} = 2.9 [2.85, 2.95]',
        'value grey.de2000 max {signal HDR} = 5.1 [5.05, 5.15]',
        'value grey.de2000 average = 2.4 [2.35, 2.45]',
      ],
    );
  });
  it('lets an angle last to the sentence’s end only', () => {
    expect(
      says('At 45 degrees it keeps 60 % of its luminance and contrast is 800:1. Contrast is 3,260:1.'),
    ).toEqual([
      'value angle.luminance at 45 {angle 45} = 60 [59.5, 60.5]',
      'value angle.contrast at 45 {angle 45} = 800 [780, 820]',
      'value contrast.native = 3260 [3255, 3265]',
    ]);
  });
  it('carries another unit by pronoun but not to a bare quantity', () => {
    expect(says('The Veltrane manages 412 nits. Its contrast is 900:1.')).toEqual([
      'value peak max {veltrane} = 412 [411.5, 412.5]',
      'value contrast.native {veltrane} = 900 [877.5, 922.5]',
    ]);
    expect(says('The Veltrane manages 412 nits. Contrast is 900:1.')).toEqual([
      'value peak max {veltrane} = 412 [411.5, 412.5]',
      'unproven',
    ]);
  });
  it('lets “out of the box” and “before” set only their own statement', () => {
    expect(says('Out of the box the average is 4.1. The maximum is 5.')).toEqual([
      'value grey.de2000 average {stage as-delivered} = 4.1 [4.05, 4.15]',
      'value grey.de2000 max = 5 [4.5, 5.5]',
    ]);
  });
  it('never falls back to another mode when the named one is unknown', () => {
    expect(says('In Vivid the average error is 5.')).toEqual([
      'value grey.de2000 average {unmatched} = 5 [4.5, 5.5]',
    ]);
  });
});

describe('tables, lists, captions and alternative texts', () => {
  it('reads a cell with its header and its row', () => {
    const table = [
      '| Quantity | Calm | HDR Calm |',
      '|---|---|---|',
      '| Average ΔE2000 | 2.4 | 2.9 |',
      '| Peak luminance (cd/m²) | | 742 |',
      '| Input lag | 14.2 ms | |',
    ].join('\n');
    const proposals = read(table);
    expect(proposals.map((proposal) => [proposal.text, proposalText(proposal)])).toEqual([
      ['2.4', 'value grey.de2000 average {mode Calm} = 2.4 [2.35, 2.45]'],
      ['2.9', 'value grey.de2000 average {mode HDR Calm} = 2.9 [2.85, 2.95]'],
      ['742', 'value peak max {mode HDR Calm} = 742 [741.5, 742.5]'],
      ['14.2 ms', 'value lag {mode Calm} = 14.2 [14.15, 14.25]'],
    ]);
  });
  it('reads fragments, alt texts and captions', () => {
    expect(
      says('- Contrast: 3,260:1\n\n![Errors exceed 3 from 60 % upwards](a.png)\n\n*White sits at 6,680 K.*'),
    ).toEqual([
      'value contrast.native = 3260 [3255, 3265]',
      'onset grey.de2000 over 3 from 60 included',
      'value white.cct = 6680 [6675, 6685]',
    ]);
  });
});

describe('spans', () => {
  it('mark the words that make the claim, in offsets of the plain text', () => {
    const markdown = '# Title\n\nIn the end, **peak luminance is 742 nits**, which pleased us.';
    const text = plainTextOfMarkdown(markdown);
    const { proposals, sentences: found } = readArticle(text, context);
    expect(proposals.map(({ start, end }) => text.text.slice(start, end))).toEqual([
      'peak luminance is 742 nits',
    ]);
    expect(found.map((sentence) => text.text.slice(sentence.start, sentence.end))).toEqual(
      found.map((s) => s.text),
    );
  });
  it('count decomposed letters and thin spaces as they are written', () => {
    const text = plainTextOfMarkdown('Cafe\u0301 light: peak luminance is 1\u2009039\u202fcd/m².');
    const { proposals } = readArticle(text, context);
    expect(proposals.map(({ start, end }) => text.text.slice(start, end))).toEqual([
      'peak luminance is 1\u2009039\u202fcd/m²',
    ]);
  });
});

describe('the memo', () => {
  it('changes nothing in the result, whatever is edited in whatever order', () => {
    const memo = createReadingMemo();
    const paragraphs = ['## Adjusted', ...sentences.slice(0, 40).map(([sentence]) => sentence)];
    for (let step = 0; step < 40; step += 1) {
      const edited = paragraphs.map((paragraph, at) =>
        at === step ? `${paragraph} The average is 2.${step}.` : paragraph,
      );
      if (step % 3 === 0) edited.splice(0, 1);
      const text = plainTextOfMarkdown(edited.join('\n\n'));
      expect(readArticle(text, context, memo)).toEqual(readArticle(text, context));
    }
  });
});
