/** A change of a few words that turns a true statement into one that is false or cannot be proved. */
export interface Mutation {
  name: string;
  /** Offset of the change in the sentence and the number of characters that it takes away */
  at: number;
  removed: number;
  inserted: string;
}

/** A claim that holds, with its place in the sentence. */
export interface Holding {
  start: number;
  end: number;
  kind: string | null;
  quantity: string | null;
}

/** Words whose exchange reverses what a comparison, a limit or a side says. */
const opposites: readonly (readonly [string, string])[] = [
  ['brighter', 'dimmer'],
  ['dearer', 'cheaper'],
  ['heavier', 'lighter'],
  ['thicker', 'thinner'],
  ['higher', 'lower'],
  ['better', 'worse'],
  ['more', 'less'],
  ['above', 'below'],
  ['over', 'under'],
  ['upwards', 'downwards'],
  ['brightest', 'dimmest'],
  ['dearest', 'cheapest'],
  ['longer', 'shorter'],
  ['warmer', 'cooler'],
  ['oversaturated', 'undersaturated'],
  ['exceeds', 'stays under'],
];

/**
 * Changes that leave the truth open and are no mutations: "not the brightest" and "not the dimmest" can both be
 * true; where a tint is gone, a tint of every other hue is gone too.
 */
const eitherWay = /\b(?:not|nor|neither|never|n't|no|gone|free|vanish\w*|disappear\w*|without)\b/;

const reversible = new Set(['bound', 'onset', 'ratio', 'difference', 'order', 'direction']);
const numeric = new Set(['value', 'ratio', 'difference', 'score']);

/** Exchanges of one word within what a claim of these kinds says. */
const exchanges: readonly {
  name: string;
  kinds: ReadonlySet<string>;
  pairs: readonly (readonly [string, string])[];
}[] = [
  { name: 'opposite', kinds: reversible, pairs: opposites },
  {
    name: 'unit of measure',
    kinds: new Set(['value', 'fact', 'difference']),
    pairs: [
      ['nits', 'fL'],
      ['cd/m²', 'fL'],
      ['ms', 'seconds'],
      ['kg', 'g'],
      ['mm', 'cm'],
      ['months', 'years'],
      ['Hz', 'kHz'],
      ['dB(A)', 'W'],
    ],
  },
  {
    name: 'hue',
    kinds: new Set(['direction']),
    pairs: [
      ['red', 'cyan'],
      ['green', 'magenta'],
      ['blue', 'yellow'],
    ],
  },
];

function escaped(word: string): string {
  return word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

function matchesOf(text: string, word: string, { start, end }: Holding): number[] {
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}-])${escaped(word)}(?![\\p{L}\\p{N}-])`, 'gu');
  return [...text.matchAll(pattern)]
    .map(({ index }) => index)
    .filter((at) => at >= start && at + word.length <= end);
}

/** Far outside any interval that the first number can stand for. */
function farNumber(written: string): string {
  const plain = written.replaceAll(',', '');
  const digits = plain.split('.')[1]?.length ?? 0;
  return (Number(plain) * 3 + 7).toFixed(digits);
}

/** "Under our roof", "lighter greys": a word that has no opposite here, so that its exchange says nothing false. */
function isIdiom(text: string, at: number, word: string): boolean {
  return /^ (?:our|one|the same) roof\b| gre[ya]s?\b/.test(
    text.slice(at + word.length, at + word.length + 16),
  );
}

/** Every mutation of a holding claim whose result cannot be true. */
export function mutationsOf(text: string, holding: Holding): Mutation[] {
  const kind = holding.kind ?? '';
  const result: Mutation[] = [];
  const span = text.slice(holding.start, holding.end);
  for (const { name, kinds, pairs } of exchanges) {
    if (!kinds.has(kind)) continue;
    // The second brightest of three is their second dimmest, too.
    if (kind === 'order' && /\bsecond[- ]\w+est of (?:the|our) three\b/.test(span)) continue;
    if (eitherWay.test(span) && (name === 'hue' || kind === 'order')) continue;
    // "Neither over- nor undersaturated" says the same the other way round.
    if (kind === 'direction' && /\bneither\b.*\bnor\b/.test(span)) continue;
    for (const [one, other] of pairs) {
      // Of brighter and of dimmer greys the same tint may be true.
      if (kind === 'direction' && one === 'brighter') continue;
      for (const [from, to] of [
        [one, other],
        [other, one],
      ] as const) {
        // Units are exchanged one way only: the second of a pair is never what a review writes.
        if (name === 'unit of measure' && from === other) continue;
        const places = matchesOf(text, from, holding);
        if (places.length === 1 && !isIdiom(text, places[0]!, from))
          result.push({
            name: `${name}: ${from} → ${to}`,
            at: places[0]!,
            removed: from.length,
            inserted: to,
          });
      }
    }
  }
  if (numeric.has(kind)) {
    const numbers = [
      ...span.matchAll(/(?<![\p{L}\d.,:/′-])\d{1,3}(?:,\d{3})*(?:\.\d+)?(?![\p{L}\d]|[.,:]\d)/gu),
    ];
    for (const number of numbers) {
      // "4,279 ± 181:1": how uncertain it is called is no claim.
      if (/±\s*$/.test(span.slice(0, number.index))) continue;
      result.push({
        name: `number: ${number[0]} → ${farNumber(number[0])}`,
        at: holding.start + number.index,
        removed: number[0].length,
        inserted: farNumber(number[0]),
      });
    }
  }
  for (const verb of ['is', 'are', 'was', 'were']) {
    const places = matchesOf(text, verb, holding);
    if (places.length !== 1) continue;
    // "It is never 0.7" says so of the levels, which may well be true.
    for (const word of kind === 'value' ? ['not', 'no longer'] : ['not', 'never', 'no longer'])
      result.push({
        name: `negation: ${word}`,
        at: places[0]! + verb.length,
        removed: 0,
        inserted: ` ${word}`,
      });
  }
  return result;
}

export function mutated(text: string, { at, removed, inserted }: Mutation): string {
  return text.slice(0, at) + inserted + text.slice(at + removed);
}

/** Where a claim stands after the mutation. */
export function movedSpan(
  { start, end }: Holding,
  { at, removed, inserted }: Mutation,
): { start: number; end: number } {
  const grown = inserted.length - removed;
  return { start: start > at ? start + grown : start, end: end > at ? end + grown : end };
}
