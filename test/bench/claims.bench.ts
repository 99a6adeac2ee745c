/**
 * How long reading and judging takes: whole articles, then one keystroke after another, beside Intl.Segmenter over the
 * same text, beside ProseMirror's own share of a keystroke, and beside a rescan of nothing but the changed paragraph.
 * Budget: 10,000 words with 200 claims in 50 ms; a keystroke in 1 ms at the 99th percentile; no memory gained over
 * 100,000 keystrokes. Run: node --expose-gc test/bench/claims.bench.ts
 */

import type { Node } from 'prosemirror-model';
import { EditorState } from 'prosemirror-state';
import { documentOfMarkdown } from '../../app/draft/document/readMarkdown.ts';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createChecker, digestsOf, readingContextOf } from '../../shared/claims/index.ts';
import { readArticle } from '../../shared/claims/reading/index.ts';
import type { ArticleText } from '../../shared/contract/articleText.ts';
import { benchOf } from '../fixtures/hearth/index.ts';
import { reviewOf, seeded } from './claims/reviewText.ts';
import { accepted, burstsOf, type Marks, moved, pressed, storedOf } from './claims/typing.ts';

/** Wall time: the thread's own clock ticks too coarsely for work of a few milliseconds. */
function milliseconds(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function quantile(times: readonly number[], share: number): number {
  const sorted = [...times].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!;
}

const median = (times: readonly number[]) => quantile(times, 0.5);

const segmenter = new Intl.Segmenter('en', { granularity: 'word' });

/** Counts words with the runtime's own word breaker. */
function segment(text: string): void {
  let words = 0;
  for (const part of segmenter.segment(text)) if (part.isWordLike) words++;
  if (words === 0) throw new Error('no words');
}

const bench = benchOf();

/** Every second claim of an article as accepted by a person. */
function marksOf(text: ArticleText): Marks {
  const { claims } = createChecker(bench).check(text);
  return {
    kept: claims
      .filter(({ check }, i) => check !== null && i % 2 === 0)
      .map((claim) => ({ claim: accepted(claim, digestsOf(claim, bench)), span: claim })),
  };
}

const first = plainTextOfMarkdown(reviewOf(10_000, 1));
console.log(
  `first article after the start, 10,000 words: ${milliseconds(() => createChecker(bench).check(first)).toFixed(0)} ms`,
);

const rounds = 11;
for (const words of [2500, 5000, 10_000, 20_000]) {
  const articles = Array.from({ length: rounds }, (_, seed) => {
    const text = plainTextOfMarkdown(reviewOf(words, seed));
    return { text, stored: storedOf(marksOf(text), text.text) };
  });
  const found = articles.map(({ text, stored }) => createChecker(bench).check(text, stored).claims.length);
  const full: number[] = [];
  const segmented: number[] = [];
  for (const { text, stored } of articles) {
    full.push(milliseconds(() => createChecker(bench).check(text, stored)));
    segmented.push(milliseconds(() => segment(text.text)));
  }
  const ratios = full.map((time, i) => time / segmented[i]!);
  console.log(
    `${String(words).padStart(6)} words, ${median(found)} claims: read and judged in ${median(full).toFixed(1)} ms (median of ${rounds} articles, least ${Math.min(...full).toFixed(1)}), ${median(ratios).toFixed(1)} × Intl.Segmenter (least ${Math.min(...segmented).toFixed(1)} ms)`,
  );
}

const markdown = reviewOf(10_000, 1);
let text = plainTextOfMarkdown(markdown);
let marks = marksOf(text);
const checker = createChecker(bench);
const places = checker.check(text, storedOf(marks, text.text)).claims;
const random = seeded(7);
const keys = burstsOf(places, () => text.text.length, random);
const keystrokes: number[] = [];
const claimCounts: number[] = [];
for (let i = 0; i < 3300; i++) {
  const key = keys.next().value;
  text = pressed(text, key);
  marks = moved(marks, key);
  const stored = storedOf(marks, text.text);
  const time = milliseconds(() => {
    claimCounts.push(checker.check(text, stored).claims.length);
  });
  if (i >= 300) keystrokes.push(time);
}

/** What ProseMirror does for a letter: a new state, and 200 positions mapped. */
let state = EditorState.create({ doc: documentOfMarkdown(markdown) });
const editorTimes: number[] = [];
const rescanTimes: number[] = [];
const context = readingContextOf(bench.evidence, bench.article, bench.house);
const known = new WeakMap<Node, number>();
/** Claims of all paragraphs, those of unchanged nodes from before; nothing is carried over, placed or judged. */
function rescan(document: Node): number {
  let claims = 0;
  document.forEach((node) => {
    let count = known.get(node);
    if (count === undefined) {
      const only = node.textContent;
      const block = { index: 0, kind: 'paragraph' as const, start: 0, end: only.length };
      count = readArticle({ text: only, blocks: [block] }, context).proposals.length;
      known.set(node, count);
    }
    claims += count;
  });
  return claims;
}
rescan(state.doc);
const positions = Array.from({ length: 200 }, (_, i) =>
  Math.floor(((i + 0.5) / 200) * state.doc.content.size),
);
for (let i = 0; i < 2300; i++) {
  const paragraph = state.doc.resolve(Math.floor(random() * state.doc.content.size));
  if (!paragraph.parent.isTextblock) continue;
  const apply = milliseconds(() => {
    const transaction = state.tr.insertText('a', paragraph.pos);
    for (let at = 0; at < positions.length; at++) positions[at] = transaction.mapping.map(positions[at]!);
    state = state.apply(transaction);
  });
  const scan = milliseconds(() => rescan(state.doc));
  if (i >= 300) {
    editorTimes.push(apply);
    rescanTimes.push(scan);
  }
}
const segmented = Array.from({ length: rounds }, () => milliseconds(() => segment(text.text)));
const key = median(keystrokes);
console.log(
  `keystroke in 10,000 words with ${median(claimCounts)} claims, ${marks.kept.length} of them stored: least ${Math.min(...keystrokes).toFixed(2)} ms, median ${key.toFixed(2)} ms, 95th percentile ${quantile(keystrokes, 0.95).toFixed(2)} ms, 99th ${quantile(keystrokes, 0.99).toFixed(2)} ms`,
);
console.log(
  `  of an Intl.Segmenter pass (${median(segmented).toFixed(1)} ms): ${(key / median(segmented)).toFixed(2)}`,
);
console.log(
  `  of a ProseMirror keystroke with 200 mapped positions (median ${median(editorTimes).toFixed(3)} ms, 99th ${quantile(editorTimes, 0.99).toFixed(2)} ms): ${(key / median(editorTimes)).toFixed(1)} ×`,
);
console.log(
  `  of a rescan of the changed paragraph alone (median ${median(rescanTimes).toFixed(2)} ms, 99th ${quantile(rescanTimes, 0.99).toFixed(2)} ms): ${(key / median(rescanTimes)).toFixed(2)} ×`,
);

const gc = (globalThis as { gc?: () => void }).gc;
let small = plainTextOfMarkdown(reviewOf(150, 3));
let kept = marksOf(small);
const long = createChecker(bench);
const smallKeys = burstsOf(long.check(small).claims, () => small.text.length, seeded(9));
const start = { small, kept };
function heapAfter(count: number): number {
  for (let i = 0; i < count; i++) {
    // Begin again now and then: the text neither grows nor wears out.
    if (i % 500 === 0) ({ small, kept } = start);
    const press = smallKeys.next().value;
    small = pressed(small, press);
    kept = moved(kept, press);
    long.check(small, storedOf(kept, small.text));
  }
  gc?.();
  return process.memoryUsage().heapUsed / 2 ** 20;
}
const before = heapAfter(10_000);
const after = heapAfter(100_000);
console.log(
  `heap after 10,000 and after 110,000 keystrokes: ${before.toFixed(1)} and ${after.toFixed(1)} MiB${gc ? '' : ' (no --expose-gc: includes garbage)'}`,
);
