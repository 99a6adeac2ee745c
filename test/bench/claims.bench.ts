/**
 * How long reading and judging takes: a whole article, then one keystroke after another, as ratios to splitting the
 * same words with Intl.Segmenter. Budget: 10,000 words with 200 claims in 50 ms; a keystroke in 1 ms at the 99th
 * percentile; no memory gained over 100,000 keystrokes. Run: node --expose-gc test/bench/claims.bench.ts
 */
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createChecker } from '../../shared/claims/index.ts';
import type { ArticleText } from '../../shared/contract/articleText.ts';
import { benchOf } from '../fixtures/hearth/index.ts';

const claims = [
  'Peak luminance is 742 nits in a 10% window.',
  'The average error of the greyscale stays under 3.',
  'It has four HDMI ports and costs £1,039.',
  'After adjustment the average error is 0.6.',
  'At 45 degrees it keeps 38% of its luminance.',
  'The Kasulind reaches 731 nits.',
  'Its contrast is 1,890:1.',
  'Blooming is only visible to a trained eye.',
  'It covers 98.3% of P3 in xy.',
  'From 60% upwards the greyscale error is over 3.',
];
const filler =
  'We lived with the set for three weeks in a room with two windows and a lamp, and the longer we watched the more it felt like furniture.';

/** About `words` words with `claimCount` sentences that make claims, in paragraphs of five sentences. */
function articleOf(words: number, claimCount: number): ArticleText {
  const sentences: string[] = [];
  let count = 0;
  const fillerWords = filler.split(' ').length;
  const total = Math.round(words / fillerWords);
  const step = Math.max(1, Math.floor(total / claimCount));
  for (let i = 0; count < words; i++) {
    const isClaim = i % (step + 1) === 0 && i / (step + 1) < claimCount;
    const sentence = isClaim ? claims[(i / (step + 1)) % claims.length]! : filler;
    sentences.push(sentence);
    count += sentence.split(' ').length;
  }
  const paragraphs: string[] = [];
  for (let i = 0; i < sentences.length; i += 5) paragraphs.push(sentences.slice(i, i + 5).join(' '));
  return plainTextOfMarkdown(paragraphs.join('\n\n'));
}

/** Wall time: the thread's own clock ticks too coarsely for work of a few milliseconds. */
function milliseconds(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function least(work: () => void, rounds: number): number {
  return Math.min(...Array.from({ length: rounds }, () => milliseconds(work)));
}

function segmenterTime(text: string, rounds: number): number {
  const segmenter = new Intl.Segmenter('en', { granularity: 'word' });
  return least(() => {
    let words = 0;
    for (const part of segmenter.segment(text)) if (part.isWordLike) words++;
    if (words === 0) throw new Error('no words');
  }, rounds);
}

const bench = benchOf();
// Measurements and draws of the evidence are made once for a library, not once for an article.
createChecker(bench).check(articleOf(500, 50));

for (const words of [2500, 5000, 10_000, 20_000]) {
  const text = articleOf(words, words / 125);
  const found = createChecker(bench).check(text).claims.length;
  const full = least(() => createChecker(bench).check(text), 7);
  const segmenter = segmenterTime(text.text, 7);
  console.log(
    `${String(words).padStart(6)} words, ${found} claims: read and judged in ${full.toFixed(1)} ms, ${(full / segmenter).toFixed(2)} × Intl.Segmenter (${segmenter.toFixed(1)} ms)`,
  );
}

/** The article with one letter more or less in the block nearest to the middle. */
function typed(text: ArticleText, letters: string): ArticleText {
  const at = text.blocks[Math.floor(text.blocks.length / 2)]!;
  const shift = letters.length;
  return {
    text: text.text.slice(0, at.start + 3) + letters + text.text.slice(at.start + 3),
    blocks: text.blocks.map((block) =>
      block.start > at.start
        ? { ...block, start: block.start + shift, end: block.end + shift }
        : block === at
          ? { ...block, end: block.end + shift }
          : block,
    ),
  };
}

const text = articleOf(10_000, 80);
const keys = Array.from({ length: 24 }, (_, i) => typed(text, 'abcdefghijklmnopqrstuvwxyz'.slice(0, i)));
const checker = createChecker(bench);
const segmenter = segmenterTime(text.text, 7);
for (let i = 0; i < 300; i++) checker.check(keys[i % keys.length]!);
const times: number[] = [];
for (let i = 0; i < 3000; i++) {
  const start = performance.now();
  checker.check(keys[i % keys.length]!);
  times.push(performance.now() - start);
}
times.sort((one, other) => one - other);
const at = (share: number) => times[Math.floor(times.length * share)]!;
console.log(
  `keystroke in 10,000 words: median ${at(0.5).toFixed(2)} ms, 99th percentile ${at(0.99).toFixed(2)} ms, ${(segmenter / at(0.5)).toFixed(1)} keystrokes in one Intl.Segmenter pass`,
);

const gc = (globalThis as { gc?: () => void }).gc;
const small = articleOf(600, 60);
const presses = Array.from({ length: 40 }, (_, i) => typed(small, 'nitproof '.repeat(5).slice(0, i)));
const long = createChecker(bench);
const heapAfter = (count: number) => {
  for (let i = 0; i < count; i++) long.check(presses[i % presses.length]!);
  gc?.();
  return process.memoryUsage().heapUsed / 2 ** 20;
};
const before = heapAfter(5000);
const after = heapAfter(100_000);
console.log(
  `heap after 5,000 and after 105,000 keystrokes: ${before.toFixed(1)} and ${after.toFixed(1)} MiB${gc ? '' : ' (no --expose-gc: includes garbage)'}`,
);
