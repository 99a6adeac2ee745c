import { describe, expect, it } from 'vitest';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import {
  createChecker,
  describeAnchor,
  digestsOf,
  exitStatusOf,
  type JudgingBench,
  reportOf,
} from '../../shared/claims/index.ts';
import type { JudgedClaim } from '../../shared/contract/claim.ts';
import type { StoredClaim } from '../../shared/contract/storedClaim.ts';
import { benchOf, hdrRun, hearthWith, run, windows } from '../fixtures/hearth/index.ts';

const paragraphs = [
  'Peak luminance is 742 nits in a 10% window.',
  'The average error stays under 3.',
  'Its price of £1,039 is fair. It has four HDMI ports.',
  "You won't see blooming unless you go looking for it.",
  'The Kasulind reaches 731 nits. It is a third dearer than the Tamarick.',
  '## In SDR\n\nNothing here should be visible.',
  'It covers 98% of P3 and looks punchy.',
];

const later = hearthWith([
  run('hdr-window', hdrRun, windows({ 2: 700, 10: 690, 25: 610, 50: 480, 100: 350 })),
]);

/** An article's claim as accepted by a person under a bench. */
function accept(claim: JudgedClaim, text: string, bench: JudgingBench): StoredClaim {
  return {
    id: 'kept',
    anchor: describeAnchor(text, claim),
    origin: 'accepted',
    check: claim.check,
    proof: {
      verdict: claim.judgement.verdict as 'holds',
      reason: claim.judgement.reason,
      digests: digestsOf(claim, bench),
      by: 'reviewer',
      at: '2026-10-02T10:00:00Z',
    },
  };
}

describe('the incremental checker', () => {
  it('judges only what a keystroke or a changed run touches', () => {
    const checker = createChecker(benchOf());
    const text = (last: string) => plainTextOfMarkdown([...paragraphs, last].join('\n\n'));
    checker.check(text('Fine.'));
    const first = checker.computed();
    checker.check(text('Fine. It has three HDMI 2.1 ports.'));
    expect(checker.computed()).toBe(first + 1);
    const peaks = checker
      .check(text('Fine.'))
      .claims.filter(({ judgement }) => judgement.quantity === 'peak');
    checker.rebase(benchOf([later]));
    const own = peaks.filter(({ judgement }) => judgement.conditions.unit === 'orrinvale-hearth-55');
    checker.check(text('Fine.'));
    expect(checker.computed()).toBe(first + 1 + own.length);
  });
});

describe('a spoken take', () => {
  const take = plainTextOfMarkdown('peak luminance is seven forty two nits in a ten per cent window');
  const verdictsOf = (checker: ReturnType<typeof createChecker>) =>
    checker.check(take).claims.map(({ judgement }) => `${judgement.quantity} ${judgement.verdict}`);

  it('is read through its words for numbers when the checker or the article says so', () => {
    expect(verdictsOf(createChecker(benchOf(), { spoken: true }))).toEqual(['peak holds']);
    const { article } = benchOf();
    const script = { ...article, meta: { ...article.meta, spoken: true } };
    const checker = createChecker(benchOf());
    const written = verdictsOf(checker);
    expect(written).not.toEqual(['peak holds']);
    checker.rebase(benchOf([], { article: script }));
    expect(verdictsOf(checker)).toEqual(['peak holds']);
    expect(verdictsOf(createChecker(benchOf([], { article: script }), { spoken: false }))).toEqual(written);
  });
});

it('a checker that is not asked for the unsaid says the same of all else', () => {
  const text = plainTextOfMarkdown(paragraphs.join('\n\n'));
  const { unsaid, ...rest } = createChecker(benchOf()).check(text);
  expect(unsaid).not.toEqual([]);
  expect(createChecker(benchOf(), { unsaid: false }).check(text)).toEqual({ ...rest, unsaid: [] });
});

describe('accepted proofs', () => {
  const markdown = 'Peak luminance is 742 nits in a 10% window. It has four HDMI ports.';
  const plain = plainTextOfMarkdown(markdown);
  const bench = benchOf();
  const [claim] = createChecker(bench).check(plain).claims;
  const stored = accept(claim!, plain.text, bench);

  it('stay as accepted while sentence, check, house words and evidence are the same', () => {
    const [kept] = createChecker(bench).check(plain, [stored]).claims;
    expect(kept).toMatchObject({ id: 'kept', origin: 'accepted', anchor: 'same' });
    expect(kept!.judgement.verdict).toBe('holds');
  });

  it('turn stale with the new verdict beside them when the run was measured again', () => {
    const verdicts = createChecker(benchOf([later])).check(plain, [stored]);
    expect(verdicts.claims[0]!.judgement).toMatchObject({ verdict: 'stale', now: 'breaks' });
    expect(exitStatusOf(reportOf([{ article: 'hearth-55', verdicts }]))).toBe(1);
  });

  it('turn stale when a run supersedes the one they rest on', () => {
    const newer = run('hdr-window-2', { ...hdrRun, supersedes: 'hdr-window' }, windows({ 10: 742 }));
    const [kept] = createChecker(benchOf([hearthWith([newer])])).check(plain, [stored]).claims;
    expect(kept!.judgement).toMatchObject({ verdict: 'stale', now: 'holds' });
  });

  it('do not turn stale when an unrelated run arrives', () => {
    const other = run('hlg-window', { ...hdrRun, signal: 'HLG', mode: 'Vivid' }, []);
    const [kept] = createChecker(benchOf([hearthWith([other])])).check(plain, [stored]).claims;
    expect(kept!.judgement.verdict).toBe('holds');
  });

  it('turn stale when the house words change', () => {
    const house = { ...bench.house, version: bench.house.version + 1 };
    const [kept] = createChecker(benchOf([], { house })).check(plain, [stored]).claims;
    expect(kept!.judgement).toMatchObject({ verdict: 'stale', now: 'holds' });
  });

  it('turn stale when a word of their sentence changes, inside the claim or beside it', () => {
    for (const edited of [markdown.replace('742', '724'), markdown.replace('Peak', 'Hardly: peak')]) {
      const verdicts = createChecker(bench).check(plainTextOfMarkdown(edited), [stored]);
      expect(verdicts.claims.find(({ id }) => id === 'kept')!.judgement.verdict).toBe('stale');
    }
  });

  it('are listed as lost, and unproven, when their sentence is gone', () => {
    const verdicts = createChecker(bench).check(plainTextOfMarkdown('It has four HDMI ports.'), [stored]);
    expect(verdicts.lost).toMatchObject([{ id: 'kept', anchor: 'lost', judgement: { verdict: 'unproven' } }]);
    expect(verdicts.totals).toMatchObject({ holds: 1, unproven: 1 });
  });

  it('let a person say that words are opinion', () => {
    const opinion: StoredClaim = {
      id: 'said',
      anchor: stored.anchor,
      origin: 'manual',
      check: null,
      opinion: true,
    };
    const [kept] = createChecker(bench).check(plain, [opinion]).claims;
    expect(kept!.judgement.verdict).toBe('opinion');
  });
});

describe('the report', () => {
  it('is the same text for the same input, with rounded numbers and every sentence', () => {
    const text = plainTextOfMarkdown(paragraphs.join('\n\n'));
    const write = () =>
      JSON.stringify(reportOf([{ article: 'hearth-55', verdicts: createChecker(benchOf()).check(text) }]));
    const report = JSON.parse(write());
    expect(write()).toBe(write());
    const [article] = report.articles;
    expect(article.sentences.map(({ index }: { index: number }) => index)).toEqual(
      article.sentences.map((_: unknown, i: number) => i),
    );
    for (const sentence of article.sentences) {
      expect(text.text.slice(sentence.start, sentence.end)).toBe(sentence.text);
      for (const claim of sentence.claims) {
        expect(text.text.slice(claim.start, claim.end)).toBe(claim.text);
        expect(Object.keys(claim)).toEqual([
          'text',
          'start',
          'end',
          'kind',
          'quantity',
          'origin',
          'conditions',
          'stated',
          'found',
          'probability',
          'verdict',
          'reason',
          'evidence',
        ]);
      }
    }
    const numbers = write()
      .match(/-?\d+\.\d+(?:e-?\d+)?/g)!
      .map(Number);
    expect(numbers.filter((value) => value !== Number(value.toPrecision(6)))).toEqual([]);
    const counted = article.sentences.flatMap(({ claims }: { claims: { verdict: string }[] }) =>
      claims.map(({ verdict }) => verdict),
    );
    for (const [verdict, total] of Object.entries(report.totals))
      expect(counted.filter((one: string) => one === verdict).length).toBe(total);
  });

  it('exits 1 on breaks, and with strict also on close, unproven and stale, but not on opinion', () => {
    const status = (markdown: string, strict: boolean) =>
      exitStatusOf(
        reportOf([{ article: 'a', verdicts: createChecker(benchOf()).check(plainTextOfMarkdown(markdown)) }]),
        strict,
      );
    expect(status('It has four HDMI ports.', true)).toBe(0);
    expect(status('It has five HDMI ports.', false)).toBe(1);
    expect(status('It covers 98% of P3.', false)).toBe(0);
    expect(status('It covers 98% of P3.', true)).toBe(1);
    expect(status('It looks punchy.', true)).toBe(0);
  });
});

describe('agreement and unsaid', () => {
  const check = (markdown: string) => createChecker(benchOf()).check(plainTextOfMarkdown(markdown));

  it('finds two sentences that cannot both be true, whatever was measured', () => {
    const { agreement } = check(
      'Peak luminance is 742 nits in a 10% window.\n\nIn a 10% window the peak is 700 nits.',
    );
    expect(agreement).toMatchObject([
      {
        claims: [
          [0, 0],
          [1, 0],
        ],
        verdict: 'breaks',
      },
    ]);
    expect(agreement[0]!.reason).toContain('741.5');
  });

  it('lets a rounded number and an exact one agree', () => {
    expect(check('Peak luminance is 742 nits.\n\nThe peak is about 750 nits.').agreement).toEqual([]);
  });

  it('sets a maximum against a single level', () => {
    const { agreement } = check('No greyscale error rises above 3.\n\nAt 80% the greyscale error is 3.6.');
    expect(agreement).toHaveLength(1);
  });

  it('does not set two sets, or two stages, against each other', () => {
    expect(check('The Veltrane reaches 412 nits.\n\nThe Tamarick reaches 571 nits.').agreement).toEqual([]);
    expect(
      check('As delivered the average error is 2.9.\n\nAfter adjustment the average error is 0.6.').agreement,
    ).toEqual([]);
  });

  it('lists what lies past a limit and is not mentioned, worst first', () => {
    const all = check('It has four HDMI ports.').unsaid;
    expect(all.map(({ quantity }) => quantity)).toContain('grey.de2000');
    expect(all.map(({ importance }) => importance)).toEqual(
      [...all.map(({ importance }) => importance)].sort((one, other) => other - one),
    );
    const less = check('The maximum greyscale error is 6.8.').unsaid;
    expect(less.map(({ quantity }) => quantity)).not.toContain('grey.de2000');
  });
});
