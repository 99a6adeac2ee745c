import { multipleWords, numberWords } from '../../../shared/claims/reading/lexicon/grammar.ts';

/** Spelled-out numbers up to ninety-nine, as a pattern. */
const single = Object.keys(numberWords).join('|');
export const spelledNumber = String.raw`\b(?:${single})(?:[-\s](?:${single}))?\b`;

/** `4` → "four", `45` → "forty-five"; null for what is written in digits: decimals, negatives, a hundred and more. */
export function spelled(value: number): string | null {
  const wordFor = (number: number) =>
    Object.keys(numberWords).find((word) => numberWords[word] === number) ?? null;
  const units = value % 10;
  const whole = wordFor(value);
  if (whole !== null || units === 0) return whole;
  const [ten, unit] = [wordFor(value - units), wordFor(units)];
  return value > 20 && ten && unit ? `${ten}-${unit}` : null;
}

/** The name of a part or multiple that stands by itself: "a third", "two thirds", "half", "twice", "three times". */
const ratios = Object.values(multipleWords).map(({ phrases, ...range }) => {
  const [name = '', ...others] = phrases.split(';').map((phrase) => phrase.trim());
  const alone = others.filter(
    (phrase) => /^(an?|one|two|three|four) \w+$/.test(phrase) && !/ (as|times)$/.test(phrase),
  );
  return { ...range, name, names: [name, ...alone] };
});
const ratioPattern = new RegExp(
  String.raw`\b(?:${ratios
    .flatMap(({ names }) => names)
    .sort((a, b) => b.length - a.length)
    .join('|')})\b`,
  'giu',
);

/** What may follow a part of something: "half its peak", "a third of it". */
const ofSomething = /^\s+(of|its|the|that|what|as)\b/iu;

/**
 * Where words speak of one part or multiple, and what to write in its place for a share or a ratio that was found:
 * its name where the reader takes it for that, else the number. Null where there is not one such place.
 */
export function ratioFor(
  words: string,
  suggestion: string,
): { start: number; end: number; text: string } | null {
  const found = /^([\d.]+)\s*(%|per cent|times)$/u.exec(suggestion.replace(/[\u2009\u202f\u00a0]/g, ' '));
  const places = [...words.matchAll(ratioPattern)];
  const place = places[0];
  if (!found || !place || places.length > 1) return null;
  const isShare = found[2] !== 'times';
  const value = Number(found[1]) / (isShare ? 100 : 1);
  const start = place.index;
  const end = start + place[0].length;
  const follows = ofSomething.exec(words.slice(end));
  const nearest = ratios
    .filter(({ low, high }) => value >= low && value <= high)
    .sort((a, b) => Math.abs(a.x - value) - Math.abs(b.x - value))[0];
  if (nearest && (follows || nearest.x !== 0.5)) {
    const wasPart = ratios.some(({ x, names }) => x < 1 && names.includes(place[0].toLowerCase()));
    // "Twice its peak" and "a third of its peak" differ in their "of".
    if (nearest.x < 1 === wasPart) {
      const needsOf =
        nearest.x < 1 && nearest.x !== 0.5 && follows && follows[1] !== 'of' && follows[1] !== 'as';
      return { start, end, text: asBegun(place[0], needsOf ? `${nearest.name} of` : nearest.name) };
    }
  }
  if (isShare) {
    const needsOf = follows && follows[1] !== 'of';
    return follows?.[1] === 'as' ? null : { start, end, text: needsOf ? `${suggestion} of` : suggestion };
  }
  if (!follows) return null;
  return { start, end: follows[1] === 'of' ? end + follows[0].length : end, text: suggestion };
}

/** A word in the place of one that began a sentence begins it too. */
function asBegun(before: string, text: string): string {
  return /^\p{Lu}/u.test(before) ? text[0]!.toUpperCase() + text.slice(1) : text;
}
