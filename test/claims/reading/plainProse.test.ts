import { describe, expect, it } from 'vitest';
import { startOfArticle } from '../../../shared/claims/reading/carry.ts';
import { lexiconOf } from '../../../shared/claims/reading/lexiconTrie.ts';
import { isIdle } from '../../../shared/claims/reading/plainProse.ts';
import { readSentence } from '../../../shared/claims/reading/sentence.ts';
import { tagTokens } from '../../../shared/claims/reading/tag.ts';
import { tokenise } from '../../../shared/claims/reading/tokens.ts';
import { context } from './context.ts';

function idle(sentence: string, carry = startOfArticle()): boolean {
  return isIdle(tagTokens(tokenise(sentence, context.locale), lexiconOf(context), false), carry);
}

describe('prose about something else', () => {
  it('is told from what names a number, a set, a condition or a quantity', () => {
    expect(idle('The gardener asked for tea, and the dog waited.')).toBe(true);
    expect(idle('It peaks at 742 nits.')).toBe(false);
    expect(idle('The Kasulind stood beside the piano.')).toBe(false);
    expect(idle('We watched in HDR.')).toBe(false);
    expect(idle('We went on to the greyscale.')).toBe(false);
    expect(idle('Calibration brought it down to what we hoped.')).toBe(false);
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
