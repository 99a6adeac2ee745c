import { describe, expect, test } from 'vitest';
import { proposalText, read } from './context.ts';

const says = (markdown: string) => read(markdown).map(proposalText);

describe('what was seen, in words', () => {
  test.each([
    'Smearing is mild.',
    'Glare is quite awful.',
    'Judder is tolerable.',
    'Banding was rather bad.',
    'Flicker remains ugly.',
  ])('a degree that the house does not define is no observation: %s', (sentence) =>
    expect(says(sentence)[0]).toBe('unproven'),
  );
  test.each([
    ['Reflections are unusably bad.', 'observed reflections 4–4'],
    ['Smearing: hard to see.', 'observed smear 0–1'],
    ['Blooming is so slight that only someone who looks for it will notice.', 'observed blooming 0–1'],
    ['Banding is present.', 'observed banding 1–4'],
    ['Judder is still there.', 'observed judder 1–4'],
  ])('%s', (sentence, expected) => expect(says(sentence)).toEqual([expected]));
});

describe('a maker’s number', () => {
  test('the hedge before it is the writer’s and says something of the measured value', () =>
    expect(
      says('The Hearth tops out at 742 nits, a little less than the 1,000 that Orrinvale advertises.'),
    ).toEqual(expect.arrayContaining(['value peak max = 1000 [950, 1000)', 'fact peak = 1000 by maker'])));
  test('it may stand between the maker’s name and the word claim', () =>
    expect(says('Orrinvale’s 1,000 cd/m² claim: missed by a mile.')).toEqual([
      'fact peak = 1000 by maker',
      'bound peak max < 1000',
    ]));
  test('“what the maker claims” is the number just quoted', () =>
    expect(says('Orrinvale claims 1,000 nits. The Hearth delivers what Orrinvale claims.')).toEqual([
      'fact peak = 1000 by maker',
      'bound peak max >= 1000',
    ]));
  test('without one, nobody knows which number is meant', () =>
    expect(says('The Hearth does not deliver what Orrinvale promises.')).toEqual(['unproven']));
  test.each(['Nobody knows what Orrinvale claims.', 'That is what Orrinvale says.'])(
    'plain talk: %s',
    (sentence) => expect(says(sentence)).toEqual([]),
  );
});

describe('limits and marks', () => {
  test.each([
    'Until you reach 60% there isn’t an error past 3.',
    'There isn’t an error past 3 until you get to 60%.',
    'There isn’t an error past 3 before we reach 60%.',
  ])('until you reach s is until s: %s', (sentence) =>
    expect(says(sentence)).toEqual(['bound grey.de2000 max <60 <= 3']),
  );
  test('what follows “and” is no criterion of the score before it', () =>
    expect(says('We award it 7 out of 10, and a stamp for the return of our letter.')).toEqual([
      'score total = 7 of 10',
    ]));
});
