import { describe, expect, test } from 'vitest';
import { proposalText, read } from './context.ts';
import { amongThree } from './sentences/amongThree.ts';
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

/** Statements that stand by themselves and can be the half of a sentence. */
const halves = sentences
  .map(([text]) => text)
  .filter(
    (text) =>
      /^(?:It|Its|The|This) [^.!?;:]*[a-z0-9%]\.$/.test(text) &&
      text.length < 90 &&
      !/ if | may | might | would /.test(text),
  );

/** Two sentences made one by each of these, and the share of pairs in which that may bring a claim that neither had. */
const joints: readonly (readonly [string, number])[] = [
  ['; ', 0.05],
  [', and ', 0.05],
  [', while ', 0.06],
  [' and ', 0.08],
];

test.each(joints)('two statements joined by “%s” say what each says alone', (joint, most) => {
  let pairs = 0;
  let strayed = 0;
  // Each with three others, so that a new sentence, which pairs all anew, moves the share but little.
  for (const shift of [11, 53, 101])
    for (const [at, one] of halves.entries()) {
      const other = halves[(at * 7 + shift) % halves.length]!;
      if (other === one) continue;
      pairs++;
      const apart = new Set(says(`${one} ${other}`));
      const joined = says(one.slice(0, -1) + joint + other[0]!.toLowerCase() + other.slice(1));
      if (joined.some((claim) => !apart.has(claim) && !claim.startsWith('unproven'))) strayed++;
    }
  expect(pairs).toBeGreaterThan(500);
  expect(strayed / pairs).toBeLessThan(most);
});

/** Their "is" or "are" belongs to what stands beside the claim, which its denial leaves as it was. */
const besideTheVerb: ReadonlySet<string> = new Set([
  'It is a sensible-looking television built around an IPS panel.',
  'The promised lag of 10 ms is met.',
  'Its IPS panel is split into 32 zones.',
  'All four HDMI inputs are version 2.1.',
  'The average greyscale error of 2.4 is unremarkable.',
  'Gamma averages 2.38 where 2.4 is asked for.',
  'Input lag of 14.2 ms is fine for gaming.',
  '742 cd/m² in a 10 % window is plenty.',
  "The peak luminance of 742 nits is 11 nits above the Kasulind's.",
  'At 731 nits the Kasulind is close behind.',
  "A year's warranty is all you get.",
]);

describe('with “not” behind its first verb', () => {
  test('no sentence of one clause still affirms what it affirmed', () => {
    const affirming: string[] = [];
    let changed = 0;
    const rows = [...sentences, ...amongThree].filter(
      ([text]) =>
        !/\b(?:not|no|never|none|neither|nor|nothing|nowhere|hardly|without|only)\b|n't/i.test(text) &&
        !/[;:!?,–(]|\.\s| (?:and|but|while|than|at|that) /.test(text) &&
        !besideTheVerb.has(text),
    );
    for (const [text] of rows) {
      const denied = text.replace(/ (is|are) /, ' $1 not ');
      if (denied === text) continue;
      changed++;
      const affirmed = new Set(says(text).filter((claim) => !/^(?:unproven|opinion|not )/.test(claim)));
      if (says(denied).some((claim) => affirmed.has(claim))) affirming.push(denied);
    }
    expect(changed).toBeGreaterThan(100);
    expect(affirming).toEqual([]);
  });
});
