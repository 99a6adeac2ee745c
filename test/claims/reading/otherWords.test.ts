import { describe, expect, test } from 'vitest';
import { proposalText, read } from './context.ts';
import { sentences } from './sentences.ts';

const says = (markdown: string) => read(markdown).map(proposalText);

/** The statement behind a phrase that says nothing. */
function behind(phrase: string): (readonly [RegExp, string])[] {
  return ['It', 'Its', 'The'].map((word) => [new RegExp(`^${word} `), `${phrase}, ${word.toLowerCase()} `]);
}

/** Another way to write the same: what is replaced, and by what. */
const ways: Readonly<Record<string, readonly (readonly [RegExp, string])[]>> = {
  'rivals by their makers’ names': [
    [/\b([Tt])he Plain(?! 50)/g, '$1he Veltrane'],
    [/\b([Tt])he Umbra(?! 55)/g, '$1he Nocthale'],
    [/\b([Tt])he Vane(?! 50)/g, '$1he Kasulind'],
    [/\b([Tt])he Crest(?! 55)/g, '$1he Tamarick'],
  ],
  'American spelling': [
    [/\bgrey/g, 'gray'],
    [/\bGrey/g, 'Gray'],
    [/colour/g, 'color'],
    [/Colour/g, 'Color'],
  ],
  'cd/m² for nits': [[/\bnits\b/g, 'cd/m²']],
  'per cent in words': [[/(\d) ?%/g, '$1 per cent']],
  'a percent sign without a space': [[/(\d) ?%/g, '$1%']],
  'the degree sign': [[/(\d) degrees/g, '$1°']],
  'typographic apostrophes': [[/'/g, '’']],
  'a lead-in': behind('As it happens'),
  'a lead-in with a verb of its own': behind('When all is said and done'),
  'a word that joins it to what came before': [
    [/^It /, 'And it '],
    [/^Its /, 'And its '],
    [/^The /, 'And the '],
  ],
  'spaces that do not break': [[/(\d) (nits|%|ms|W|mm|kg|Hz|degrees|cd)/g, '$1\u00a0$2']],
};

describe.each(Object.entries(ways))('with %s', (_, pairs) => {
  test('every sentence says what it said', () => {
    let changed = 0;
    for (const [sentence] of sentences) {
      const other = pairs.reduce((text, [from, to]) => text.replace(from, to), sentence);
      if (other === sentence) continue;
      changed++;
      expect(says(other), other).toEqual(says(sentence));
    }
    expect(changed).toBeGreaterThan(50);
  });
});
