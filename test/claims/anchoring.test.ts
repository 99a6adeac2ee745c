import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createAnchoring } from '../../shared/claims/anchoring.ts';
import { anchorClaim, describeAnchor } from '../../shared/claims/anchors.ts';

const sentences = [
  'Its average error is 2.8, and the maximum is 6.8 at 100 %. ',
  'Peak luminance is 742 cd/m² in a 10 % window. ',
  'The Veltrane reaches 412 cd/m² in a 10 % window. ',
  'We lived with it for three weeks and liked the stand. ',
];

it('anchors are found after any edits as in a text that is seen for the first time', () => {
  const seen = new Set<string>();
  const edit = fc.record({
    at: fc.nat(250),
    removed: fc.nat(60),
    text: fc.constantFrom('', '7', 'a', ...sentences),
  });
  fc.assert(
    fc.property(fc.array(edit, { minLength: 2, maxLength: 12 }), (edits) => {
      const first = sentences.join('');
      const anchors = sentences.map((sentence) =>
        describeAnchor(first, {
          start: first.indexOf(sentence),
          end: first.indexOf(sentence) + sentence.length - 2,
        }),
      );
      const anchoring = createAnchoring();
      let text = first;
      for (const { at, removed, text: added } of edits) {
        text = text.slice(0, at) + added + text.slice(at + removed);
        anchoring.enter(text);
        for (const anchor of anchors) {
          const found = anchoring.find(anchor);
          seen.add(found.outcome);
          expect(found).toEqual(anchorClaim(text, anchor));
        }
      }
    }),
    { numRuns: 150 },
  );
  expect([...seen].sort()).toEqual(['changed', 'lost', 'moved', 'same']);
});
