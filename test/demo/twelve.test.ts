import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Article } from '../../shared/contract/article.ts';
import { createMarkdownReader, evidenceOf, type MarkdownReader } from '../corpus/judgeRows.ts';

/** The sentences that must come out right, in the demo's world; own unit is the Hearth 55. */
let read: MarkdownReader;
beforeAll(async () => {
  read = createMarkdownReader(await evidenceOf(join(import.meta.dirname, '../../main/demo/dossier')));
});

const base: Article = {
  title: 'A sentence',
  unit: 'orrinvale-hearth-55',
  state: 'draft',
  date: '2026-10-02',
  locale: 'en-GB',
  conditions: {
    SDR: { mode: 'Calm', stage: 'as-delivered', dimming: 'off' },
    HDR10: { mode: 'HDR Calm', stage: 'as-delivered' },
  },
};
const inMode = (mode: string): Article => ({
  ...base,
  conditions: { ...base.conditions, SDR: { mode, stage: 'as-delivered' } },
});

interface Sample {
  name: string;
  text: string;
  /** Fragment of a claim, and the verdict on it */
  verdicts: readonly (readonly [fragment: string, verdict: string])[];
  article?: Article;
}

const samples: Sample[] = [
  {
    name: 'a promise that was not kept breaks though the measured number is right',
    text: 'Orrinvale claims 1,000 nits, and we got there: 742 in a 10% window.',
    verdicts: [
      ['1,000 nits', 'holds'],
      ['got there', 'breaks'],
      ['742', 'holds'],
    ],
  },
  {
    name: 'a good average does not make the worst level invisible',
    text: 'In the Day mode we read the greyscale error first. The average is just under 3, so nothing here should be visible.',
    verdicts: [
      ['just under 3', 'holds'],
      ['nothing here should be visible', 'breaks'],
    ],
    article: inMode('Day'),
  },
  {
    name: 'a bare quantity after a sentence on a rival is unproven',
    text: 'The Veltrane manages 412 nits. Blacks are a deep 0.04 cd/m².',
    verdicts: [
      ['412', 'holds'],
      ['0.04', 'unproven'],
    ],
  },
  {
    name: '2.8 under a limit of 3 is too close to call with a colorimeter',
    text: 'In the Day mode no error rises above 3 until 60%.',
    verdicts: [['above 3 until 60%', 'close']],
    article: inMode('Day'),
  },
  {
    name: '2.1 under a limit of 3 holds',
    text: 'No error rises above 3 until 60%.',
    verdicts: [['above 3 until 60%', 'holds']],
  },
  {
    name: 'a peak that stays is unproven without an adjusted HDR run',
    text: 'In the Natural mode we went through the greyscale errors. After adjustment the average falls from 4.1 to 0.6, and peak luminance stays at 742 nits.',
    verdicts: [
      ['4.1', 'holds'],
      ['0.6', 'holds'],
      ['742', 'unproven'],
    ],
    article: inMode('Natural'),
  },
  {
    name: 'a coverage whose diagrams disagree is unproven',
    text: 'It covers 98% of P3.',
    verdicts: [['98% of P3', 'unproven']],
  },
  {
    name: '1.89 is not far off twice',
    text: "Its contrast is not far off twice the Kasulind's.",
    verdicts: [['twice', 'holds']],
  },
  {
    name: 'dearer by a third, brighter by 30 %',
    text: 'It is a third dearer than the Tamarick but 30% brighter.',
    verdicts: [
      ['a third dearer', 'holds'],
      ['30% brighter', 'holds'],
    ],
  },
  {
    name: 'ahead by less than the uncertainty is too close to call',
    text: 'At £1,039 it is the brightest set under £1,100 we have tested this year, bar the Nocthale.',
    verdicts: [
      ['£1,039', 'holds'],
      ['brightest set', 'close'],
    ],
  },
  {
    name: 'what is measured on one size proves nothing of another',
    text: 'The 65-inch Hearth has the same four HDMI 2.1 ports and looks just as punchy.',
    verdicts: [['four HDMI 2.1 ports', 'breaks']],
  },
  {
    name: 'blooming of severity 1 may be called visible to those who look for it',
    text: "You won't see blooming unless you go looking for it.",
    verdicts: [['blooming', 'holds']],
  },
  {
    name: 'at most means the worse side',
    text: 'Even 45 degrees off it loses 60% of its luminance at most.',
    verdicts: [['60%', 'breaks']],
  },
];

describe('the sample sentences in the demo library', () => {
  test.each(samples)('$name', ({ text, verdicts, article = base }) => {
    const found = read(article, `${text}\n`);
    for (const [fragment, verdict] of verdicts) {
      const claims = found.filter((claim) => claim.text.includes(fragment) || fragment.includes(claim.text));
      expect(
        claims.map((claim) => claim.verdict),
        `${fragment}: ${JSON.stringify(found, null, 1)}`,
      ).toContain(verdict);
    }
    const mayHold = verdicts.filter(([, verdict]) => verdict === 'holds');
    for (const claim of found.filter(({ verdict }) => verdict === 'holds'))
      expect(
        mayHold.some(([fragment]) => claim.text.includes(fragment) || fragment.includes(claim.text)),
        `wrongly holds: ${claim.text}`,
      ).toBe(true);
  });
});
