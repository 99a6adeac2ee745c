import { ratioFor, spelled, spelledNumber } from './writtenNumbers.ts';

/** Where a suggested wording goes, in offsets of the claim's words. */
export interface Replacement {
  start: number;
  end: number;
  text: string;
}

const preposition = `(?:from|above|below|over|past|until|till|up to|down to|at|beyond|under|short of)`;
const amount = String.raw`(?:[£€$]\s?)?[\u2212-]?\d[\d.,\u202f\u2009\u00a0]*\d|\d`;
const unit = String.raw`(?:[\s\u2009\u00a0\u202f]?(?:%|per cent|percent|degrees?|°|nits?|cd\/m²|K|ms|mm|W|points?|times|:1))`;

const spellings: Readonly<Record<string, string>> = {
  nit: 'cd/m²',
  nits: 'cd/m²',
  'per cent': '%',
  percent: '%',
  degree: '°',
  degrees: '°',
  point: 'points',
};

/** What a number counts, in one spelling: "" for a bare number. */
function unitOf(words: string): string {
  const [found = ''] = new RegExp(`${unit}$`, 'iu').exec(words) ?? [];
  const written = found.replace(/^[\s\u2009\u00a0\u202f]+/, '').toLowerCase();
  return spellings[written] ?? (written || (/[£€$]/.exec(words)?.[0] ?? ''));
}

/** A unit as the catalogue writes it, and what writers write for it. */
const writtenFor: readonly (readonly [unit: string, written: RegExp])[] = [
  ['cd/m²', /\bnits?\b/iu],
  ['%', /\bper ?cent\b/iu],
  ['°', /\bdegrees?\b/iu],
];

/** A suggestion in the writer's own unit: "742 nits" for words that count in nits and never in cd/m². */
export function inWritersUnit(words: string, suggestion: string): string {
  return writtenFor.reduce((text, [unit, written]) => {
    const own = words.includes(unit) ? undefined : written.exec(words)?.[0];
    return own === undefined
      ? text
      : text.replace(new RegExp(`[\\s\u2009\u00a0\u202f]*${unit}`, 'gu'), `\u00a0${own}`);
  }, suggestion);
}

/**
 * Finds what a suggestion ("from 60 %", "742 cd/m²") stands in for: the phrase of the same form, else the claim's
 * only number, else its only number in the same unit; a number that is spelled out gets its successor in words. Null when there is no one such place; nothing is guessed.
 */
export function replacementFor(words: string, suggestion: string): Replacement | null {
  const ratio = ratioFor(words, suggestion);
  if (ratio) return ratio;
  const led = new RegExp(`^${preposition}\\b`, 'i').exec(suggestion);
  const placesOf = (number: string) => {
    const pattern = led
      ? new RegExp(`\\b${preposition}\\s+(?:${number})${unit}?(?!\\d)`, 'giu')
      : // A number that makes one word with its noun, as in "65-inch", is a name and no finding.
        new RegExp(`(?:${number})${unit}?(?![\\d\\w]|-\\p{L})`, 'giu');
    return [...words.matchAll(pattern)].filter((place) => isOfOneKind(place[0], suggestion));
  };
  const inDigits = placesOf(amount);
  const places = inDigits.length > 0 ? inDigits : placesOf(spelledNumber);
  const same = led
    ? places.filter((place) => place[0].toLowerCase().startsWith(led[0].toLowerCase()))
    : places;
  const alike = places.filter((place) => unitOf(place[0]) === unitOf(suggestion));
  const place = [same, places, alike].find(({ length }) => length === 1)?.[0];
  if (!place) return null;
  // "3 % short" is written without a sign; a suggestion for it is too.
  const isSigned = /^[\u2212-]/.test(place[0]);
  const unsigned = isSigned ? suggestion : suggestion.replace(/^\u2212/, '');
  const text = inDigits.length > 0 ? unsigned : inWords(unsigned);
  const end = place.index + place[0].length;
  return { start: place.index, end: end + repeated(text, words.slice(end)), text };
}

/** Is the number in these words of the unit that is suggested, as far as both name one? */
function isOfOneKind(words: string, suggestion: string): boolean {
  const [own, other] = [unitOf(words), unitOf(suggestion)];
  return own === '' || other === '' || own === other;
}

/** A suggestion for a writer who spells numbers out: "from sixty per cent". */
function inWords(suggestion: string): string {
  return suggestion.replace(/(?<![\d.,])\d+(?![\d.,])/u, (digits) => spelled(Number(digits)) ?? digits);
}

/** How much of what follows a place the suggestion says too: "upwards", for "from 60 % upwards". */
function repeated(text: string, following: string): number {
  const [tail = ''] = /\s+[a-z]+$/u.exec(text) ?? [];
  const word = tail.trimStart();
  const next = /^\s+([a-z]+)/u.exec(following);
  return word !== '' && next?.[1] === word ? next[0].length : 0;
}
