import { describe, expect, it } from 'vitest';
import { inWritersUnit, replacementFor } from '../../../app/draft/proofs/suggestion.ts';

const written = (words: string, suggestion: string) => {
  const found = replacementFor(words, suggestion);
  return found && words.slice(0, found.start) + found.text + words.slice(found.end);
};

describe('a suggested wording', () => {
  it('takes the place of the phrase of the same form and leaves other numbers alone', () => {
    expect(written('errors climb over the visible threshold of 3 from 50 % upwards', 'from 60 %')).toBe(
      'errors climb over the visible threshold of 3 from 60 % upwards',
    );
  });

  it('takes the place of the only number with its unit', () => {
    expect(written('peaks at 850 nits', '742 cd/m²')).toBe('peaks at 742 cd/m²');
    expect(written('Contrast: 3,260:1', '2,980:1')).toBe('Contrast: 2,980:1');
    expect(written('costs £1,099', '£1,039')).toBe('costs £1,039');
  });

  it('takes the place of the only number in its unit, however that is spelled', () => {
    expect(written('A 10% window reaches 900 nits', '742 nits')).toBe('A 10% window reaches 742 nits');
    expect(written('A 10% window reaches 900 nits', '742 cd/m²')).toBe('A 10% window reaches 742 cd/m²');
    expect(written('at 30 degrees 80 per cent remains', '71 %')).toBe('at 30 degrees 71 % remains');
    expect(written('the 65-inch set costs £1,099', '£1,039')).toBe('the 65-inch set costs £1,039');
  });

  it('is put in the unit that the writer uses', () => {
    expect(inWritersUnit('peaks at 850 nits', '742\u202fcd/m²')).toBe('742\u00a0nits');
    expect(inWritersUnit('at 30 degrees 80 per cent remains', '71 %')).toBe('71\u00a0per cent');
    expect(inWritersUnit('peaks at 850 cd/m²', '742 cd/m²')).toBe('742 cd/m²');
    expect(inWritersUnit('850 nits, 850 cd/m²', '742 cd/m²')).toBe('742 cd/m²');
    expect(inWritersUnit('costs £1,099', '£1,039')).toBe('£1,039');
  });

  it('keeps a shortfall without a sign', () => {
    expect(written('is 3% short of its target', '−4.8 %')).toBe('is 4.8 % short of its target');
  });

  it('writes nothing where two places would do', () => {
    expect(written('between 3 and 7', '5')).toBeNull();
    expect(written('falls from 80% to 60%', '55 %')).toBeNull();
  });
});
