/** Where a suggested wording goes, in offsets of the claim's words. */
export interface Replacement {
  start: number;
  end: number;
  text: string;
}

const preposition = `(?:from|above|below|over|past|until|till|up to|down to|at|beyond|under|short of)`;
const amount = String.raw`(?:[£€$]\s?)?[\u2212-]?\d[\d.,\u202f\u2009\u00a0]*\d|\d`;
const unit = String.raw`(?:[\s\u2009\u00a0\u202f]?(?:%|per cent|percent|degrees?|°|nits?|cd\/m²|K|ms|mm|W|points?|:1))`;

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
 * only number, else its only number in the same unit. Null when there is no one such place; nothing is guessed.
 */
export function replacementFor(words: string, suggestion: string): Replacement | null {
  const led = new RegExp(`^${preposition}\\b`, 'i').exec(suggestion);
  const pattern = led
    ? new RegExp(`\\b${preposition}\\s+(?:${amount})${unit}?(?!\\d)`, 'giu')
    : new RegExp(`(?:${amount})${unit}?(?![\\d\\w])`, 'giu');
  const places = [...words.matchAll(pattern)];
  const same = led
    ? places.filter((place) => place[0].toLowerCase().startsWith(led[0].toLowerCase()))
    : places;
  const alike = places.filter((place) => unitOf(place[0]) === unitOf(suggestion));
  const place = [same, places, alike].find(({ length }) => length === 1)?.[0];
  if (!place) return null;
  // "3 % short" is written without a sign; a suggestion for it is too.
  const isSigned = /^[\u2212-]/.test(place[0]);
  const text = isSigned ? suggestion : suggestion.replace(/^\u2212/, '');
  return { start: place.index, end: place.index + place[0].length, text };
}
