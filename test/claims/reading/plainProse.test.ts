import { describe, expect, it } from 'vitest';
import { type Carry, startOfArticle } from '../../../shared/claims/reading/carry.ts';
import { forgetSentence } from '../../../shared/claims/reading/handOn.ts';
import { lexiconOf } from '../../../shared/claims/reading/lexiconTrie.ts';
import { signsOfItems } from '../../../shared/claims/reading/needs.ts';
import { isIdle } from '../../../shared/claims/reading/plainProse.ts';
import { readClauses, readSentence } from '../../../shared/claims/reading/sentence.ts';
import { tagTokens } from '../../../shared/claims/reading/tag.ts';
import { tokenise } from '../../../shared/claims/reading/tokens.ts';
import type { Check } from '../../../shared/contract/check.ts';
import { plainSentences } from '../../corpus/plainSentences.ts';
import { context } from './context.ts';
import { sentences } from './sentences.ts';

const itemsOf = (sentence: string) =>
  tagTokens(tokenise(sentence, context.locale), lexiconOf(context), false);

function idle(sentence: string, carry = startOfArticle()): boolean {
  const items = itemsOf(sentence);
  return isIdle(items, signsOfItems(items), carry, context.own);
}

/** Under the article's title, which names its own set. */
function inOwnSection(): Carry {
  return { ...startOfArticle(), headings: [{ level: 1, conditions: {}, unit: context.own }] };
}

const ports: Check = { kind: 'fact', key: 'hdmi.count', op: '=', x: 4, conditions: { origin: {} } };

describe('prose about something else', () => {
  it('is told from what names a number, a set, a condition or a quantity', () => {
    expect(idle('The gardener asked for tea, and the dog waited.')).toBe(true);
    expect(idle('It peaks at 742 nits.')).toBe(false);
    expect(idle('The Kasulind stood beside the piano.')).toBe(false);
    expect(idle('We watched in HDR.')).toBe(false);
    expect(idle('We went on to the greyscale.')).toBe(false);
    expect(idle('Calibration brought it down to what we hoped.')).toBe(false);
    expect(idle('It looks brighter.')).toBe(false);
    expect(idle('It took two hours and the Kasulind three.')).toBe(false);
  });

  it('may compare, hedge and praise, where no set and no quantity is meant', () => {
    expect(idle('Once more, a good friend talked about the garden.')).toBe(true);
    expect(idle('The dog left the stand behind.')).toBe(true);
    expect(idle('It stood there for three weeks.')).toBe(true);
  });

  it('may follow a statement, and stand under the title of the article', () => {
    const statement = { check: ports, no: false };
    expect(idle('The gardener asked for tea.', { ...inOwnSection(), statement })).toBe(true);
    expect(idle('None on the Kasulind.', { ...inOwnSection(), statement })).toBe(false);
    expect(idle('Nor does it.', { ...inOwnSection(), statement })).toBe(false);
  });

  it('read clause by clause makes no claim and leaves no more', () => {
    let passedOver = 0;
    for (const [text] of [...sentences, ...plainSentences.map((sentence) => [sentence] as const)])
      for (const carry of [
        startOfArticle(),
        { ...startOfArticle(), topic: 'banding', concept: 'peak' },
        inOwnSection(),
        { ...inOwnSection(), statement: { check: ports, no: false } },
      ]) {
        if (!idle(text, carry)) continue;
        passedOver++;
        const after = structuredClone(carry);
        expect(readClauses(itemsOf(text), context, after, false, false), text).toEqual([]);
        forgetSentence(carry);
        forgetSentence(after);
        expect(after, text).toEqual(carry);
      }
    expect(passedOver).toBeGreaterThan(40);
  });

  it('is not what “it” makes of a statistic, nor what follows a sentence on another set', () => {
    expect(idle('It was seen.', { ...startOfArticle(), stat: 'average' })).toBe(false);
    expect(idle('The dog waited.', { ...startOfArticle(), unit: 'oboe' })).toBe(false);
  });

  it('ends what the sentence before said', () => {
    const carry = { ...startOfArticle(), stat: 'max', topic: 'banding', window: 10, said: { id: 'peak' } };
    expect(readSentence('The dog waited.', context, carry, false)).toEqual([]);
    expect(carry).toEqual(startOfArticle());
  });
});
