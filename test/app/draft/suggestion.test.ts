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

  it('does not repeat a word that already follows', () => {
    expect(written('errors climb over the threshold from 50 % upwards', 'from 60 % upwards')).toBe(
      'errors climb over the threshold from 60 % upwards',
    );
    expect(written('is 0.3 times its peak', '0.472 times')).toBe('is 0.472 times its peak');
  });

  it('is spelled out where the writer spells numbers out', () => {
    expect(written('It has three HDMI ports', '4')).toBe('It has four HDMI ports');
    expect(written('needs twenty-five minutes', '45')).toBe('needs forty-five minutes');
    expect(written('over the threshold from ten per cent', 'from 60 per cent')).toBe(
      'over the threshold from sixty per cent',
    );
    expect(written('it draws ninety W', '132.5 W')).toBe('it draws 132.5 W');
  });

  it('is a part by name where the reader takes the number for it, else the number', () => {
    expect(written('keeps a third of its luminance', '25 %')).toBe('keeps a quarter of its luminance');
    expect(written('Half of the luminance is left', '25 %')).toBe('A quarter of the luminance is left');
    expect(written('half its peak', '25 %')).toBe('a quarter of its peak');
    expect(written('a third of its peak', '0.472 times')).toBe('half of its peak');
    expect(written('a third of its peak', '0.42 times')).toBe('two fifths of its peak');
    expect(written('a third of its peak', '0.93 times')).toBe('0.93 times its peak');
    expect(written('a third brighter', '92 %')).toBe('92 % brighter');
    expect(written('twice its peak', '2.9 times')).toBe('three times its peak');
  });

  it('takes the place of nothing of another unit, and of no number that is part of a name', () => {
    expect(written('at 60 degrees much of it remains', '25 %')).toBeNull();
    expect(written('the 65-inch set is bright', '742 cd/m²')).toBeNull();
  });

  it('keeps a shortfall without a sign', () => {
    expect(written('is 3% short of its target', '−4.8 %')).toBe('is 4.8 % short of its target');
  });

  it('writes nothing where two places would do', () => {
    expect(written('between 3 and 7', '5')).toBeNull();
    expect(written('falls from 80% to 60%', '55 %')).toBeNull();
  });
});
