import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createChecker, describeAnchor, digestsOf, type JudgingBench } from '../../shared/claims/index.ts';
import type { StoredClaim } from '../../shared/contract/storedClaim.ts';
import { benchOf, hdrRun, hearthWith, run, windows } from '../fixtures/hearth/index.ts';

/** Blocks of a review: headings that carry conditions, a list, a table, quotations, paragraphs that lean on others. */
const blocks = [
  '# Orrinvale Hearth 55',
  'Peak luminance is 742 nits in a 10% window. In a 2% window it is 700 nits.',
  '## In SDR',
  'The average error stays under 3. Nothing here should be visible.',
  '- It has four HDMI ports.\n- Its price of £1,039 is fair.\n- It covers 98% of P3 and looks punchy.',
  '### After adjustment',
  'The average is 0.6. No level exceeds 1, and the maximum is 0.7.',
  '| Window | Peak luminance (cd/m²) | Kasulind |\n| --- | --- | --- |\n| 10% window | 742 | 731 |\n| 25% window | 610 | |',
  "## In HDR\n\nYou won't see blooming unless you go looking for it.",
  'The Kasulind reaches 731 nits. It is a third dearer than the Tamarick.',
  '> “It reaches 1,000 nits,” says one reader.',
  'Orrinvale claims 1,000 nits, and we got there: 742 in a 10% window.',
  'We lived with it for three weeks. The sofa was moved, and nobody complained.',
] as const;

const later = hearthWith([
  run('hdr-window', hdrRun, windows({ 2: 700, 10: 690, 25: 610, 50: 480, 100: 350 })),
]);

/** Benches are made anew, so that no checker finds anything that another one left behind. */
const benches: readonly (() => JudgingBench)[] = [
  () => structuredBench(benchOf()),
  () => structuredBench(benchOf([later])),
];

function structuredBench(bench: JudgingBench): JudgingBench {
  return { ...bench, evidence: structuredClone(bench.evidence), house: structuredClone(bench.house) };
}

/** Every second claim as accepted by a person, with the anchor where it stood. */
function acceptSome(text: ReturnType<typeof plainTextOfMarkdown>, bench: JudgingBench): StoredClaim[] {
  return createChecker(bench)
    .check(text)
    .claims.filter((_, i) => i % 2 === 0)
    .map((claim, i) => ({
      id: `kept-${i}`,
      anchor: describeAnchor(text.text, claim),
      origin: 'accepted',
      check: structuredClone(claim.check),
      ...(claim.check === null ? { opinion: true } : {}),
      proof: {
        verdict: claim.judgement.verdict as 'holds',
        reason: claim.judgement.reason,
        digests: digestsOf(claim, bench),
        by: 'reviewer',
        at: '2026-10-02T10:00:00Z',
      },
    }));
}

const place = fc.nat(2000);
const step = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      type: fc.constant('type' as const),
      at: place,
      text: fc.constantFrom('a', ' ', '7', '.', 'not ', '|', '#', '\n\n', '- '),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      type: fc.constant('delete' as const),
      at: place,
      length: fc.integer({ min: 1, max: 30 }),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      type: fc.constant('set' as const),
      at: fc.nat(blocks.length - 1),
      text: fc.constantFrom(...blocks, ''),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ type: fc.constant('move' as const), from: fc.nat(20), to: fc.nat(20) }),
  },
  { weight: 2, arbitrary: fc.record({ type: fc.constant('undo' as const) }) },
  { weight: 1, arbitrary: fc.record({ type: fc.constant('accept' as const) }) },
  {
    weight: 1,
    arbitrary: fc.record({ type: fc.constant('bench' as const), bench: fc.nat(benches.length - 1) }),
  },
);
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

function edited(markdown: string, each: Step): string {
  const paragraphs = markdown.split('\n\n');
  switch (each.type) {
    case 'type': {
      const at = each.at % (markdown.length + 1);
      return markdown.slice(0, at) + each.text + markdown.slice(at);
    }
    case 'delete': {
      const at = each.at % (markdown.length + 1);
      return markdown.slice(0, at) + markdown.slice(at + each.length);
    }
    case 'set':
      paragraphs[each.at % paragraphs.length] = each.text;
      return paragraphs.join('\n\n');
    case 'move': {
      const [taken = ''] = paragraphs.splice(each.from % paragraphs.length, 1);
      paragraphs.splice(each.to % (paragraphs.length + 1), 0, taken);
      return paragraphs.join('\n\n');
    }
    default:
      return markdown;
  }
}

describe('the incremental checker', () => {
  it('says after any edits, undone edits, acceptances and changes of evidence what a new one says', () => {
    const seen = { standing: 0, lost: 0, stale: 0, cells: 0 };
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 14 }), (steps) => {
        const history = [blocks.join('\n\n')];
        let which = 0;
        let stored: StoredClaim[] = acceptSome(plainTextOfMarkdown(history[0]!), benches[0]!());
        const checker = createChecker(benches[0]!());
        checker.check(plainTextOfMarkdown(history[0]!), stored);
        for (const each of steps) {
          const markdown = history.at(-1)!;
          const text = () => plainTextOfMarkdown(history.at(-1)!);
          if (each.type === 'undo') {
            if (history.length > 1) history.pop();
          } else if (each.type === 'bench') {
            which = each.bench;
            checker.rebase(benches[which]!());
          } else if (each.type === 'accept') stored = acceptSome(text(), benches[which]!());
          else history.push(edited(markdown, each));
          const incremental = checker.check(text(), stored);
          const fresh = createChecker(benches[which]!()).check(text(), structuredClone(stored));
          expect(incremental).toEqual(fresh);
          seen.standing += fresh.claims.filter(({ origin }) => origin === 'accepted').length;
          seen.lost += fresh.lost.length;
          seen.stale += fresh.totals.stale;
          seen.cells += text().blocks.filter(({ kind }) => kind === 'cell').length;
        }
      }),
      { numRuns: 20 },
    );
    // The edits did reach what the property is about.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0);
  });

  it('gives an untouched sentence out as the same object, and a moved one with its new place', () => {
    const bench = benchOf();
    const checker = createChecker(bench);
    const first = checker.check(plainTextOfMarkdown(blocks.join('\n\n')));
    const typed = blocks.map((block, i) => (i === 6 ? block.replace('0.7', '0.75') : block));
    const second = checker.check(plainTextOfMarkdown(typed.join('\n\n')));
    expect(second.claims[0]).toBe(first.claims[0]);
    expect(second.sentences[0]).toBe(first.sentences[0]);
    expect(second.claims.at(-1)!.start).toBe(first.claims.at(-1)!.start + 1);
    expect(second.claims.at(-1)!.judgement).toBe(first.claims.at(-1)!.judgement);
  });

  it('reads only the sentence that a keystroke changes, however the sentences around it lean on it', () => {
    const checker = createChecker(benchOf());
    const markdown = blocks.join('\n\n');
    checker.check(plainTextOfMarkdown(markdown));
    const before = checker.computed();
    checker.check(plainTextOfMarkdown(markdown.replace('nobody complained', 'nobody ever complained')));
    expect(checker.computed()).toBe(before);
    checker.check(plainTextOfMarkdown(markdown.replace('is 700 nits', 'is 701 nits')));
    expect(checker.computed()).toBe(before + 1);
  });
});
