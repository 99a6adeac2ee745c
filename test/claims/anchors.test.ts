import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anchorClaim, describeAnchor } from '../../shared/claims/anchors.ts';

const text =
  'The greyscale is good as delivered. Its average error is 2.8, and the maximum is 6.8 at 100 %. ' +
  'Peak luminance is 742 cd/m² in a 10 % window. The Veltrane reaches 412 cd/m² in a 10 % window.';

function spanOf(quote: string, from = text): { start: number; end: number } {
  const start = from.indexOf(quote);
  return { start, end: start + quote.length };
}

const anchor = describeAnchor(text, spanOf('Peak luminance is 742 cd/m²'));

describe('anchors of claims after edits from outside', () => {
  it('describes a quote with 32 characters on each side and its position', () => {
    expect(anchor).toEqual({
      exact: 'Peak luminance is 742 cd/m²',
      prefix: '8, and the maximum is 6.8 at 100 %. '.slice(-32),
      suffix: ' in a 10 % window. The Veltrane ',
      ...spanOf('Peak luminance is 742 cd/m²'),
    });
  });

  it('finds unchanged words where they were', () => {
    expect(anchorClaim(text, anchor)).toEqual({
      outcome: 'same',
      span: spanOf('Peak luminance is 742 cd/m²'),
    });
  });

  it('follows words that moved', () => {
    const longer = `A new first sentence. ${text}`;
    expect(anchorClaim(longer, anchor)).toEqual({
      outcome: 'moved',
      span: spanOf('Peak luminance is 742 cd/m²', longer),
    });
  });

  it.each([
    ['a digit', '742', '724'],
    ['a unit', 'cd/m² in a 10 % window. The V', 'fL in a 10 % window. The V'],
    ['a negation', 'luminance is 742', 'luminance is not 742'],
    ['a sign', '742', '−742'],
    ['a comparative', 'is 742', 'is over 742'],
    ['a digit typed against it', 'Peak luminance is 742 cd/m²', 'Peak luminance is 742 cd/m²K'],
  ])('calls a claim changed when %s changed', (_, from, to) => {
    expect(anchorClaim(text.replace(from, to), anchor).outcome).toBe('changed');
  });

  it('loses a claim whose sentence was cut, rather than taking a like one', () => {
    const cut = text.replace('Peak luminance is 742 cd/m² in a 10 % window. ', '');
    expect(anchorClaim(cut, anchor).outcome).toBe('lost');
  });

  it('takes curly quotation marks and no-break spaces for the same words', () => {
    const spaced = text.replace('742 cd/m²', '742\u00a0cd/m²');
    expect(anchorClaim(spaced, anchor).outcome).toBe('same');
  });

  it('never moves a claim to another span when text elsewhere is edited', () => {
    const quotes = [
      'average error is 2.8',
      'maximum is 6.8 at 100 %',
      'Peak luminance is 742 cd/m²',
      'reaches 412 cd/m²',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...quotes),
        fc.nat({ max: text.length }),
        fc.nat({ max: 20 }),
        fc.string({ maxLength: 30 }),
        (quote, at, cut, typed) => {
          const { start, end } = spanOf(quote);
          const to = Math.min(text.length, at + cut);
          // One character of distance, so that nothing is typed against the claim itself.
          fc.pre(to < start - 1 || at > end + 1);
          const edited = text.slice(0, at) + typed + text.slice(to);
          const shift = at < start ? typed.length - (to - at) : 0;
          const found = anchorClaim(edited, describeAnchor(text, { start, end }));
          if (found.outcome === 'lost') return false;
          return found.span.start === start + shift && found.span.end === end + shift;
        },
      ),
      { numRuns: 500 },
    );
  });

  it('never calls words the same after an edit inside them', () => {
    const { start, end } = spanOf('Peak luminance is 742 cd/m²');
    fc.assert(
      fc.property(
        fc.integer({ min: start, max: end - 1 }),
        fc.integer({ min: 1, max: 6 }),
        fc.string({ maxLength: 6 }),
        (at, cut, typed) => {
          const to = Math.min(end, at + cut);
          const edited = text.slice(0, at) + typed + text.slice(to);
          const words = edited.slice(start, end + typed.length - (to - at));
          fc.pre(words.replace(/\s+/g, ' ').trim() !== anchor.exact);
          fc.pre(!edited.includes(anchor.exact));
          return !['same', 'moved'].includes(anchorClaim(edited, anchor).outcome);
        },
      ),
      { numRuns: 500 },
    );
  });
});
