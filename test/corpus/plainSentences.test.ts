import { join } from 'node:path';
import { expect, test } from 'vitest';
import { createMarkdownReader, evidenceOf } from './judgeRows.ts';
import { plainSentences } from './plainSentences.ts';

const read = createMarkdownReader(await evidenceOf(join(import.meta.dirname, 'library')));
const judge = (sentence: string) =>
  ['Standard dynamic range', 'HDR', 'In use'].flatMap((heading) =>
    read(
      {
        title: 'Prose',
        unit: 'tamarick-alder-55',
        state: 'draft',
        date: '2026-11-06',
        locale: 'en-GB',
        conditions: {
          SDR: { mode: 'Evening', stage: 'as-delivered', dimming: 'off' },
          HDR10: { mode: 'HDR Evening', stage: 'as-delivered', dimming: 'off' },
        },
        score: 8,
        score_max: 10,
      },
      `## ${heading}\n\n${sentence.replace(/^(\d+)\./, '$1\\.')}\n`,
    ),
  );
const found = plainSentences.map((sentence) => ({ sentence, claims: judge(sentence) }));

test('plain prose is never judged', () => {
  const judged = found.flatMap(({ sentence, claims }) =>
    claims
      .filter(({ verdict }) => ['holds', 'breaks', 'close'].includes(verdict))
      .map(({ text, verdict, reason }) => `${sentence} — ${verdict}: ${text} (${reason})`),
  );
  expect(judged).toEqual([]);
});

test('at most three in a hundred plain sentences are called unproven', () => {
  const unproven = found.filter(({ claims }) => claims.length > 0).map(({ sentence }) => sentence);
  expect(plainSentences.length).toBeGreaterThanOrEqual(150);
  expect(unproven.length, unproven.join('\n')).toBeLessThanOrEqual(0.03 * plainSentences.length);
});
