import { numberWords } from './lexicon/grammar.ts';
import type { Token } from './tokens.ts';

/** Spelled numbers: "twenty-five", "one thousand and thirty-nine", "three point two", "two and a half". */
export function readSpelled(
  tokens: readonly Token[],
  from: number,
): { x: number; place: number; next: number } | null {
  const decimals = leadingPoint(tokens, from);
  if (decimals) return decimals;
  const dozen = dozenAt(tokens, from);
  if (dozen) return dozen;
  let at = from;
  let total = 0;
  let group = 0;
  let seen = false;
  let lastWas = '';
  let isPaired = false;
  for (; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const word = token.text;
    const value = Object.hasOwn(numberWords, word) ? numberWords[word]! : undefined;
    if (value !== undefined) {
      const canFollow =
        !seen ||
        lastWas === 'scale' ||
        lastWas === 'and' ||
        (lastWas === 'tens' && value < 10 && value > 0 && tokens[at - 1]!.end + 1 >= token.start);
      // "eighteen ninety-nine": two pairs of digits
      const isPair: boolean =
        !canFollow && group >= 10 && group < 100 && total === 0 && value >= 20 && !token.glued && !isPaired;
      if (!canFollow && !isPair) break;
      isPaired ||= isPair;
      group = isPair ? group * 100 + value : group + value;
      seen = true;
      lastWas = value >= 20 ? 'tens' : 'unit';
    } else if (word === 'hundred' && (seen || isArticle(tokens[at - 1]))) {
      group = (group || 1) * 100;
      seen = true;
      lastWas = 'scale';
    } else if ((word === 'thousand' || word === 'million') && (seen || isArticle(tokens[at - 1]))) {
      total += (group || 1) * (word === 'thousand' ? 1000 : 1e6);
      group = 0;
      seen = true;
      lastWas = 'scale';
    } else if (word === 'and' && lastWas === 'scale' && isSpelledUnit(tokens[at + 1])) {
      lastWas = 'and';
    } else break;
  }
  if (!seen) return null;
  let x = total + group;
  let place = 1;
  if (tokens[at]?.text === 'point' && isSpelledUnit(tokens[at + 1])) {
    let digits = '';
    let end = at + 1;
    while (isSpelledUnit(tokens[end]) && numberWords[tokens[end]!.text]! < 10) {
      digits += String(numberWords[tokens[end]!.text]);
      end += 1;
    }
    if (digits) {
      x = Number(`${x}.${digits}`);
      place = 10 ** -digits.length;
      at = end;
    }
  } else if (tokens[at]?.text === 'and' && tokens[at + 1]?.text === 'a' && tokens[at + 2]?.text === 'half') {
    x += 0.5;
    place = 0.5;
    at += 3;
  }
  return { x, place, next: at };
}

/** "a dozen", "half a dozen"; "dozens of" is no number. */
function dozenAt(tokens: readonly Token[], from: number): { x: number; place: number; next: number } | null {
  const isHalf = tokens[from]?.text === 'half';
  const at = isHalf ? from + 1 : from;
  if (!isArticle(tokens[at]) || tokens[at + 1]?.text !== 'dozen') return null;
  return { x: isHalf ? 6 : 12, place: 1, next: at + 2 };
}

const naught: readonly string[] = ['oh', 'nought', 'naught', 'zero'];

/** "point four", "point oh three": a decimal whose whole part is left out. "At this point one …" is none. */
function leadingPoint(
  tokens: readonly Token[],
  from: number,
): { x: number; place: number; next: number } | null {
  const before = tokens[from - 1]?.text ?? '';
  if (
    tokens[from]?.text !== 'point' ||
    /^(?:this|that|the|a|no|any|one|some|each|every|which|more)$/.test(before)
  )
    return null;
  let digits = '';
  let at = from + 1;
  for (; at < tokens.length; at += 1) {
    const word = tokens[at]!.text;
    const digit = naught.includes(word) ? 0 : Object.hasOwn(numberWords, word) ? numberWords[word]! : 10;
    if (digit > 9) break;
    digits += String(digit);
  }
  // "Point two: colour" heads a list.
  if (digits === '' || tokens[at]?.text === ':') return null;
  return { x: Number(`0.${digits}`), place: 10 ** -digits.length, next: at };
}

export function isArticle(token: Token | undefined): boolean {
  return token?.text === 'a';
}
function isSpelledUnit(token: Token | undefined): boolean {
  return token !== undefined && Object.hasOwn(numberWords, token.text);
}

export function bareNumber(
  tokens: readonly Token[],
  at: number,
): { x: number; place: number; next: number; spelled: boolean } | null {
  const token = tokens[at];
  if (!token) return null;
  if (token.kind === 'number') {
    const scale = { hundred: 100, thousand: 1000, million: 1e6 }[tokens[at + 1]?.text ?? ''];
    if (scale) return { x: token.value! * scale, place: token.place! * scale, next: at + 2, spelled: false };
    return { x: token.value!, place: token.place!, next: at + 1, spelled: false };
  }
  const spelled = readSpelled(tokens, at);
  return spelled && { ...spelled, spelled: true };
}
