import { numberMarks } from '../../article/formatNumber.ts';
import { normaliseText } from './normalise.ts';

/** A word, a number or a mark of one sentence. Offsets are UTF-16 code units of the sentence as written. */
export interface Token {
  kind: 'word' | 'number' | 'mark';
  /** Lower case, spelled the British way, marks folded; for numbers as written */
  text: string;
  start: number;
  end: number;
  /** Begins with a capital letter in the original */
  capital: boolean;
  /** No space between this and the token before */
  glued: boolean;
  /** Numbers: the value, and the value of one unit of the last written digit */
  value?: number;
  place?: number;
}

/** American and older spellings → the spelling that the lexicons use. */
const spellings: ReadonlyMap<string, string> = new Map(
  Object.entries({
    gray: 'grey',
    grays: 'greys',
    grayscale: 'greyscale',
    grayish: 'greyish',
    color: 'colour',
    colors: 'colours',
    colored: 'coloured',
    colorimeter: 'colourimeter',
    center: 'centre',
    centers: 'centres',
    meter: 'metre',
    meters: 'metres',
    millimeters: 'millimetres',
    millimeter: 'millimetre',
    centimeters: 'centimetres',
    centimeter: 'centimetre',
    caliber: 'calibre',
    checkerboard: 'chequerboard',
    checker: 'chequer',
    checkered: 'chequered',
    percentage: 'percentage',
    percent: 'percent',
    halos: 'haloes',
    behavior: 'behaviour',
    favors: 'favours',
    colorfulness: 'colourfulness',
    hues: 'hues',
    neutral: 'neutral',
    mil: 'mil',
    cannot: 'cannot',
  }),
);

/** Words met before, each with its folded form: prose repeats itself, and one string for one word compares at once. */
const folded = new Map<string, string>();

/** Forms kept; no article has as many, so that only years of typing begin anew. */
const keptForms = 20_000;

function foldedForm(raw: string, kind: Token['kind']): string {
  let form = folded.get(raw);
  if (form === undefined) {
    const lower = kind === 'mark' ? raw : raw.toLowerCase();
    form = interned(kind === 'word' ? (spellings.get(lower) ?? lower) : lower);
    if (folded.size >= keptForms) folded.clear();
    folded.set(interned(raw), form);
  }
  return form;
}

/** A word as tokens have it: lower case, spelled the British way. */
export function foldedWord(word: string): string {
  return foldedForm(word, 'word');
}

/** The same text as the engine keeps names of members: compared by identity, and no slice of an article kept alive. */
export function interned(text: string): string {
  // Without a prototype it is a dictionary: a literal would leave a hidden class behind for every word.
  const holder: Record<string, true> = Object.create(null);
  holder[text] = true;
  return Object.keys(holder)[0]!;
}

function isLetter(code: number): boolean {
  return (
    (code >= 97 && code <= 122) ||
    (code >= 65 && code <= 90) ||
    code === 95 ||
    (code >= 0xc0 && code !== 0xd7 && code !== 0xf7 && code < 0x2000)
  );
}
function isCapital(code: number): boolean {
  if (code < 0x80) return code >= 65 && code <= 90;
  const char = String.fromCharCode(code);
  return isLetter(code) && char !== char.toLowerCase();
}
function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** Reads "3,260", "1 039", "0.04", "1.099,50" at `from`; null when what stands there is a version such as "3.1.7". */
function readNumber(
  text: string,
  from: number,
  decimal: string,
  thousands: string,
): { end: number; value: number; place: number } | null {
  let at = from;
  while (isDigit(text.charCodeAt(at))) at += 1;
  let whole = text.slice(from, at);
  const isGroupMark = (char: string | undefined) =>
    char !== undefined &&
    (char === thousands ||
      (thousands === '’' && char === "'") ||
      char === '\u00a0' ||
      (char === ' ' && thousands === ' '));
  // A group is exactly three digits and the first has at most three.
  while (
    whole.length > 0 &&
    isGroupMark(text[at]) &&
    /^\d{3}(?!\d)/.test(text.slice(at + 1, at + 5)) &&
    at - from <= (from === at ? 0 : 15)
  ) {
    if (whole.length <= 3 || /[^\d]/.test(text.slice(from, at))) {
      whole += text.slice(at + 1, at + 4);
      at += 4;
    } else break;
  }
  let fraction = '';
  if (text[at] === decimal && isDigit(text.charCodeAt(at + 1))) {
    let end = at + 1;
    while (isDigit(text.charCodeAt(end))) end += 1;
    fraction = text.slice(at + 1, end);
    at = end;
  }
  // A second stop makes it a version or a date: "3.1.7", "14.09.2026".
  if (
    (text[at] === '.' || text[at] === ',') &&
    isDigit(text.charCodeAt(at + 1)) &&
    (text[at] === '.' || text[at] === decimal)
  )
    return null;
  const value = Number(fraction ? `${whole}.${fraction}` : whole);
  return { end: at, value, place: fraction ? 10 ** -fraction.length : 1 };
}

/** Splits a sentence into tokens; hyphens inside words part them, "u′v′", "cd/m²", "BT.709" stay whole. */
export function tokenise(sentence: string, locale: string): Token[] {
  const { text, original } = normaliseText(sentence);
  const { decimal, thousands } = numberMarks(locale);
  const tokens: Token[] = [];
  let previousEnd = -1;
  const push = (kind: Token['kind'], from: number, to: number, more?: { value: number; place: number }) => {
    const raw = text.slice(from, to);
    const first = raw.charCodeAt(0);
    const token: Token = {
      kind,
      text: foldedForm(raw, kind),
      start: original(from),
      end: original(to),
      capital: kind === 'word' && isCapital(first),
      glued: from === previousEnd,
      value: more?.value,
      place: more?.place,
    };
    tokens.push(token);
    previousEnd = to;
  };
  let at = 0;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 32 || code === 0xa0) {
      at += 1;
      continue;
    }
    if (isDigit(code) || (code === 46 && isDigit(text.charCodeAt(at + 1)) && previousEnd !== at)) {
      const read = code === 46 ? { end: at, value: 0, place: 1 } : readNumber(text, at, decimal, thousands);
      if (code === 46) {
        let end = at + 1;
        while (isDigit(text.charCodeAt(end))) end += 1;
        push('number', at, end, { value: Number(`0${text.slice(at, end)}`), place: 10 ** -(end - at - 1) });
        at = end;
        continue;
      }
      if (!read) {
        let end = at;
        while (
          end < text.length &&
          (isDigit(text.charCodeAt(end)) ||
            ((text[end] === '.' || text[end] === ',') && isDigit(text.charCodeAt(end + 1))))
        )
          end += 1;
        push('word', at, end);
        at = end;
        continue;
      }
      push('number', at, read.end, { value: read.value, place: read.place });
      at = read.end;
      continue;
    }
    if (isLetter(code)) {
      let end = at + 1;
      while (end < text.length) {
        const next = text.charCodeAt(end);
        if (isLetter(next) || isDigit(next)) end += 1;
        else if (
          next === 39 &&
          isLetter(text.charCodeAt(end + 1)) &&
          text.slice(end, end + 2).toLowerCase() !== "'s"
        )
          end += 1;
        else if (
          next === 39 &&
          (/^[δ]?u$/i.test(text.slice(at, end)) || /^[δ]?u'v$/i.test(text.slice(at, end)))
        )
          end += 1;
        else if (
          next === 46 &&
          end - at <= 3 &&
          text.charCodeAt(end + 1) >= 48 &&
          isDigit(text.charCodeAt(end + 1)) &&
          /^(bt|rec|itu|hdr|p)$/i.test(text.slice(at, end))
        ) {
          end += 1;
          while (isDigit(text.charCodeAt(end))) end += 1;
        } else if (next === 47 && /^cd\/m2?/i.test(text.slice(at, end + 3))) {
          end += text.slice(end, end + 3) === '/m2' ? 3 : 2;
        } else if (next === 46 && /^(e\.g|i\.e|a\.m|p\.m)\b/i.test(text.slice(at, end + 2))) end += 2;
        else break;
      }
      push('word', at, end);
      at = end;
      if (
        text[at] === '-' &&
        at + 1 < text.length &&
        (isLetter(text.charCodeAt(at + 1)) || isDigit(text.charCodeAt(at + 1)))
      ) {
        previousEnd = at + 1;
        at += 1;
      }
      continue;
    }
    // A hyphen that ties a number to its unit ("65-inch") vanishes; between two numbers it is a range.
    if (code === 45) {
      const last = tokens[tokens.length - 1];
      const nextCode = text.charCodeAt(at + 1);
      if (last?.kind === 'number' && at === previousEnd && isLetter(nextCode)) {
        previousEnd = at + 1;
        at += 1;
        continue;
      }
      if (isDigit(nextCode) && (at !== previousEnd || last?.text === '(')) {
        const read = readNumber(text, at + 1, decimal, thousands);
        if (read) {
          push('number', at, read.end, { value: -read.value, place: read.place });
          at = read.end;
          continue;
        }
      }
      push('mark', at, at + 1);
      if (isDigit(nextCode)) tokens[tokens.length - 1]!.text = '–';
      at += 1;
      continue;
    }
    if (text.startsWith("'s", at) && !isLetter(text.charCodeAt(at + 2))) {
      push('word', at, at + 2);
      at += 2;
      continue;
    }
    if (text.startsWith('...', at)) {
      push('mark', at, at + 3);
      tokens[tokens.length - 1]!.text = '…';
      at += 3;
      continue;
    }
    const length = text.codePointAt(at)! > 0xffff ? 2 : 1;
    push('mark', at, at + length);
    at += length;
  }
  return tokens;
}
