import { type Meaning, type NumberPhrase, numberPhrase } from './items.ts';
import type { Lexicon } from './lexiconTrie.ts';
import { bareNumber, isArticle } from './spelledNumber.ts';
import type { Token } from './tokens.ts';

export interface ReadNumber {
  number: NumberPhrase;
  /** Index of the token after the phrase */
  next: number;
  ordinal?: boolean;
}

interface UnitData {
  dimension: string;
  unit: string;
  factor?: number;
}

/** Units that are only letters in other words: they need their capital, or to touch the number. */
const shortUnits = new Set(['k', 'w', 's', 'm', 'h', 'v', 'in', 'points', 'point']);

function unitAt(
  tokens: readonly Token[],
  at: number,
  lexicon: Lexicon,
  x: number,
): { data: UnitData; length: number } | null {
  const first = tokens[at];
  if (!first) return null;
  for (const candidate of lexicon.match(tokens, at) ?? []) {
    const meaning = candidate.meanings.find((entry) => entry.kind === 'measure');
    if (!meaning) continue;
    const data = meaning.data as UnitData;
    // "A 65in version", but not "8 in the dark"
    if ((first.text === '"' || first.text === 'in') && !first.glued) continue;
    if (shortUnits.has(first.text) && candidate.length === 1) {
      if (first.text === 'k' && (x < 20 || !(first.capital || first.glued))) continue;
      if (
        first.text !== 'points' &&
        first.text !== 'point' &&
        !first.glued &&
        !first.capital &&
        first.text !== 's' &&
        first.text !== 'm' &&
        first.text !== 'h'
      )
        continue;
      // "1.4 m wide" is a length, "5 m people" is none.
      if (first.text === 'm' && !first.glued && !isSide(tokens[at + 1])) continue;
    }
    return { data, length: candidate.length };
  }
  return null;
}

const sides = /^(?:wide|deep|tall|high|thick|across|long|in)$/;

/** "wide" in "1.4 m wide", "deep" in "two inches deep": the word that makes a length a side of the set. */
function isSide(token: Token | undefined): boolean {
  return token !== undefined && sides.test(token.text);
}

/** "half a watt", "half a millisecond": one half of a unit of measure. */
function halfOfUnit(tokens: readonly Token[], from: number, lexicon: Lexicon): ReadNumber | null {
  if (!isArticle(tokens[from + 1])) return null;
  const unit = unitAt(tokens, from + 2, lexicon, 0.5);
  if (!unit || !['power', 'time', 'luminance', 'percent', 'de', 'points'].includes(unit.data.dimension))
    return null;
  const { dimension, unit: name, factor = 1 } = unit.data;
  const number = numberPhrase({ x: 0.5, place: 0.1, dimension, unit: name, factor, spelled: true });
  return { number, next: from + 2 + unit.length };
}

const comparing =
  /^(?:sooner|faster|quicker|slower|later|longer|more|less|lower|higher|heavier|lighter|quieter|louder|deeper|thicker|slimmer|thinner|wide|deep|tall|high|thick|across)$/;

/**
 * "a kilo and a half": one and a half of a unit of measure; "within a millisecond", "a millisecond sooner than": one,
 * where a distance stands.
 */
function oneOfUnit(tokens: readonly Token[], from: number, lexicon: Lexicon): ReadNumber | null {
  const unit = unitAt(tokens, from + 1, lexicon, 1);
  if (!unit) return null;
  const { dimension, unit: name, factor = 1 } = unit.data;
  if (andAHalf(tokens, from + 1 + unit.length)) {
    const number = numberPhrase({ x: 1.5, place: 0.5, dimension, unit: name, factor, spelled: true });
    return { number, next: from + 4 + unit.length };
  }
  // "Within a year" is a time, "a year less than" a distance.
  const isDistance =
    (tokens[from - 1]?.text === 'within' && dimension !== 'months') ||
    comparing.test(tokens[from + 1 + unit.length]?.text ?? '');
  if (!isDistance) return null;
  const number = numberPhrase({ x: 1, place: 1, dimension, unit: name, factor, spelled: true });
  return { number, next: from + 1 + unit.length };
}

function andAHalf(tokens: readonly Token[], at: number): boolean {
  return tokens[at]?.text === 'and' && isArticle(tokens[at + 1]) && tokens[at + 2]?.text === 'half';
}

/** How many tokens behind a number leave it open: "three and a bit", "£900 and change", "thirty odd". */
function vagueTail(tokens: readonly Token[], at: number): number {
  const [first, second, third] = [tokens[at]?.text, tokens[at + 1]?.text, tokens[at + 2]?.text];
  if (first === 'and' && second === 'a' && /^(?:bit|little|touch|fraction)$/.test(third ?? '')) return 3;
  if (first === 'and' && /^(?:change|something|counting)$/.test(second ?? '')) return 2;
  if (first === 'and' && second === 'then' && third === 'some') return 3;
  if (first === 'point' && second === 'something') return 2;
  if (first === '-' && tokens[at]!.glued && /^(?:odd|something|ish)$/.test(second ?? '')) return 2;
  return first === 'odd' ? 1 : 0;
}

const ofDecades: ReadonlySet<string> = new Set(['low', 'mid', 'middle', 'high', 'upper', 'lower']);
const decades = /^(?:teens|twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties|\d+s)$/;

/** "the mid-twenties", "low hundreds", "high 200s": a stretch of numbers with no border that could be checked. */
function vagueStretch(tokens: readonly Token[], from: number): ReadNumber | null {
  const at = /^[-–]$/.test(tokens[from + 1]?.text ?? '') ? from + 2 : from + 1;
  const word = tokens[at]?.text ?? '';
  const digits = tokens[at]?.kind === 'number' && tokens[at + 1]?.text === 's' && tokens[at + 1]!.glued;
  if (!digits && !decades.test(word) && !/^(?:hundreds|thousands)$/.test(word)) return null;
  const number = numberPhrase({
    x: tokens[at]!.value ?? 0,
    place: 1,
    dimension: 'vague',
    unit: '',
    factor: 1,
    spelled: true,
  });
  return { number, next: at + (digits ? 2 : 1) };
}

/** Words with which a number begins that {@link numberWithin} reads */
export const leadsWithin: readonly string[] = ['half', 'a', ...ofDecades];

/** Reads a number that no word for a number begins: "half a watt", "a kilo and a half", "the mid-twenties"; else null. */
export function numberWithin(tokens: readonly Token[], from: number, lexicon: Lexicon): ReadNumber | null {
  const token = tokens[from]!;
  if (token.text === 'half') return halfOfUnit(tokens, from, lexicon);
  return isArticle(token) ? oneOfUnit(tokens, from, lexicon) : vagueStretch(tokens, from);
}

/** Reads the number phrase that begins at token `from`; null when the words there are no number. */
export function readNumberPhrase(
  tokens: readonly Token[],
  from: number,
  lexicon: Lexicon,
): ReadNumber | null {
  let at = from;
  const currencyOf = (token: Token | undefined): string | undefined =>
    token?.kind === 'mark'
      ? lexicon.match([token], 0)?.[0]?.meanings.find((meaning: Meaning) => meaning.kind === 'currency')?.key
      : undefined;
  // "Within ±5 %", "±160"
  const eitherWay = tokens[at]?.text === '±';
  if (eitherWay) at += 1;
  const currency = currencyOf(tokens[at]);
  if (currency) at += 1;
  const first = bareNumber(tokens, at);
  if (!first) return null;
  at = first.next;
  const number = numberPhrase({
    x: first.x,
    place: first.place,
    dimension: currency ? 'money' : '',
    unit: currency ?? '',
    factor: 1,
    spelled: first.spelled,
  });
  if (eitherWay) number.comparator = '<=';
  const following = tokens[at];
  if (
    !first.spelled &&
    following?.glued &&
    following.kind === 'word' &&
    /^(st|nd|rd|th)$/.test(following.text)
  )
    return { number, next: at + 1, ordinal: true };
  if (following?.text === '/' && following.glued && tokens[at + 1]?.kind === 'number') {
    number.outOf = tokens[at + 1]!.value!;
    return { number, next: at + 2 };
  }
  if (following?.text === 'out' && tokens[at + 1]?.text === 'of' && tokens[at + 2]) {
    const base = bareNumber(tokens, at + 2);
    if (base) {
      number.outOf = base.x;
      return { number, next: base.next };
    }
  }
  if (
    following?.text === ':' &&
    tokens[at + 1]?.kind === 'number' &&
    ((following.glued && tokens[at + 1]!.glued) || tokens[at + 1]!.value === 1)
  ) {
    if (tokens[at + 1]!.value === 1 && tokens[at + 1]!.place === 1) {
      number.dimension = 'ratio';
      number.unit = ':1';
    } else number.role = number.x <= 24 && number.x !== 16 && number.x !== 4 ? 'time' : 'ignored';
    let end = at + 2;
    while (tokens[end]?.text === ':' && tokens[end]!.glued && tokens[end + 1]?.kind === 'number') end += 2;
    return { number, next: pastUncertainty(tokens, end, number, (unitFrom) => unitFrom) };
  }
  if (
    following?.text === 'to' &&
    (tokens[at + 1]?.text === '1' || tokens[at + 1]?.text === 'one') &&
    number.x > 20
  ) {
    number.dimension = 'ratio';
    number.unit = ':1';
    return { number, next: at + 2 };
  }
  const applyUnit = (): boolean => {
    const unit = unitAt(tokens, at, lexicon, number.x);
    if (!unit) return false;
    number.dimension = unit.data.dimension;
    number.unit = unit.data.unit;
    number.factor = unit.data.factor ?? 1;
    at += unit.length;
    // "Under two inches deep": a side of the set, not its diagonal.
    if (number.dimension === 'inch' && /^(?:wide|deep|tall|high|thick)$/.test(tokens[at]?.text ?? ''))
      Object.assign(number, { dimension: 'length', unit: 'mm', factor: 25.4 });
    return true;
  };
  if (!currency && applyUnit() && Number.isInteger(number.x) && andAHalf(tokens, at)) {
    number.x += 0.5;
    number.place = 0.5;
    at += 3;
  }
  // "300 more nits than the Plain"
  if (!currency && number.dimension === '' && /^(?:more|fewer|less|extra)$/.test(tokens[at]?.text ?? '')) {
    const behind = unitAt(tokens, at + 1, lexicon, number.x);
    if (behind && behind.data.dimension !== 'points' && tokens[at + 1]!.text.length > 1) {
      number.dimension = behind.data.dimension;
      number.unit = behind.data.unit;
      number.factor = behind.data.factor ?? 1;
    }
  }
  const open = vagueTail(tokens, at);
  if (open > 0) {
    number.dimension = 'vague';
    return { number, next: at + open };
  }
  // Dates such as 2026-09-14
  if (!number.dimension && tokens[at]?.text === '–' && tokens[at + 2]?.text === '–' && number.x > 1900) {
    number.role = 'date';
    return { number, next: at + 4 };
  }
  const before = tokens[from - 1]?.text;
  if (
    before === 'from' &&
    (tokens[at]?.text === 'down' || tokens[at]?.text === 'up') &&
    tokens[at + 1]?.text === 'to' &&
    bareNumber(tokens, at + 2)
  ) {
    number.moves = true;
    at += 1;
  }
  const link = tokens[at]?.text;
  const isRange =
    link === '–' ||
    link === 'to' ||
    (link === 'through' && before === 'from') ||
    (link === 'and' && before === 'between') ||
    (link === '—' && tokens[at]!.glued);
  if (isRange) {
    const secondCurrency = currencyOf(tokens[at + 1]);
    const second = bareNumber(tokens, secondCurrency ? at + 2 : at + 1);
    const own = second && unitAt(tokens, second.next, lexicon, second.x)?.data;
    // "1,405 cd/m² to 1,186 fL": two numbers, each in a unit of its own.
    const isOther =
      own && number.dimension !== '' && (own.unit !== number.unit || (own.factor ?? 1) !== number.factor);
    // "From 1.2 at 10 % to 5.1 at 100 %": the second is a value, not the end of a stretch.
    const isNext =
      link === 'to' &&
      !own &&
      second !== null &&
      ['percent', 'angle'].includes(number.dimension) &&
      tokens[second.next]?.text === 'at';
    if (second && !isOther && !isNext) {
      const [opens, closes] = [tokens[secondCurrency ? at + 2 : at + 1]!, tokens[second.next - 1]!];
      number.to = { x: second.x, place: second.place, start: opens.start, end: closes.end };
      number.firstEnd = tokens[at - 1]!.end;
      number.rangeWord =
        link === 'and' ? 'between' : before === 'from' ? 'from' : link === 'to' ? 'to' : 'dash';
      const hadUnit = number.dimension !== '';
      at = second.next;
      if (!hadUnit) applyUnit();
      else {
        const unit = unitAt(tokens, at, lexicon, number.x);
        if (unit && unit.data.dimension === number.dimension) at += unit.length;
      }
      if (tokens[at]?.text === ':' && tokens[at + 1]?.value === 1) {
        number.dimension = 'ratio';
        number.unit = ':1';
        at += 2;
      }
    }
  }
  const pastUnit = (unitFrom: number): number => {
    const here = at;
    at = unitFrom;
    if (number.dimension === '') applyUnit();
    else at += unitAt(tokens, at, lexicon, number.x)?.length ?? 0;
    const end = at;
    at = here;
    return end;
  };
  if (!number.dimension) {
    const word = tokens[at]?.text;
    if ((word === '×' || word === 'x') && tokens[at]!.glued && tokens[at + 1]?.kind !== 'number') {
      number.dimension = 'times';
      at += 1;
    } else if (word === 'times') {
      number.dimension = 'times';
      at += 1;
    }
  }
  return { number, next: pastUncertainty(tokens, at, number, pastUnit) };
}

/** "9.8 ± 0.3 ms", "5,240:1 (±160)": the uncertainty that is written behind a number, with the unit of both. */
function pastUncertainty(
  tokens: readonly Token[],
  from: number,
  number: NumberPhrase,
  applyUnit: (at: number) => number,
): number {
  const bracketed = tokens[from]?.text === '(';
  const at = bracketed ? from + 1 : from;
  if (tokens[at]?.text !== '±') return from;
  const second = bareNumber(tokens, at + 1);
  if (!second) return from;
  const plain = applyUnit(second.next);
  // "4,279 ± 181:1"
  const ratio = plain === second.next && tokens[plain]?.text === ':' && tokens[plain + 1]?.value === 1;
  if (ratio) number.dimension = 'ratio';
  const end = ratio ? plain + 2 : plain;
  if (!bracketed) return end;
  return tokens[end]?.text === ')' ? end + 1 : from;
}
