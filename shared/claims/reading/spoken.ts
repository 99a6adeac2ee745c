import { numberWords } from './lexicon/grammar.ts';
import type { Token } from './tokens.ts';

/** Letters and numbers as they are said → the word that the lexicons know. Longest first. */
const spelledOut: readonly (readonly [words: string, word: string])[] = [
  ['d e two thousand', 'de2000'],
  ['d e i t p', 'deitp'],
  ['delta e two thousand', 'de2000'],
  ['delta e i t p', 'deitp'],
  ['rec seven oh nine', 'rec.709'],
  ['rec seven zero nine', 'rec.709'],
  ['b t seven oh nine', 'bt.709'],
  ['rec twenty twenty', 'rec.2020'],
  ['b t twenty twenty', 'bt.2020'],
  ['rec two thousand and twenty', 'rec.2020'],
  ['b t eighteen eighty six', 'bt.1886'],
  ['d c i p three', 'p3'],
  ['p three', 'p3'],
  ['h d r ten', 'hdr10'],
  ['hdr ten', 'hdr10'],
  ['h d r', 'hdr'],
  ['s d r', 'sdr'],
  ['h l g', 'hlg'],
  ['h d m i', 'hdmi'],
  ['u s b', 'usb'],
  ['p q', 'pq'],
  ['e o t f', 'eotf'],
  ['c c t', 'cct'],
  ['d e', 'de'],
  ['u v', 'uv'],
  ['x y', 'xy'],
];
const sequences = spelledOut.map(([words, word]) => ({ words: words.split(' '), word }));

function numeralOf(token: Token | undefined): number | undefined {
  if (!token) return undefined;
  if (token.text === 'oh') return 0;
  return Object.hasOwn(numberWords, token.text) ? numberWords[token.text] : undefined;
}

/** "seven forty two", "ten thirty nine", "three thousand two hundred and sixty", "two point four". */
function spokenNumber(
  tokens: readonly Token[],
  from: number,
): { value: number; place: number; next: number } | null {
  let total = 0;
  let group: number | undefined;
  let last = 'none';
  let at = from;
  for (; at < tokens.length; at += 1) {
    const word = tokens[at]!.text;
    const value = numeralOf(tokens[at]);
    if (value !== undefined && word !== 'oh') {
      if (group === undefined || last === 'scale' || last === 'and') group = (group ?? 0) + value;
      else if (last === 'tens' && value > 0 && value < 10) group += value;
      else if ((last === 'unit' || last === 'tens') && value >= 10 && group < 100)
        group = group * 100 + value;
      else break;
      last = value >= 20 ? 'tens' : 'unit';
    } else if (word === 'hundred' && (group !== undefined || tokens[at - 1]?.text === 'a')) {
      group = (group ?? 1) * 100;
      last = 'scale';
    } else if (word === 'thousand' && (group !== undefined || tokens[at - 1]?.text === 'a')) {
      total += (group ?? 1) * 1000;
      group = 0;
      last = 'scale';
    } else if (word === 'and' && last === 'scale' && numeralOf(tokens[at + 1]) !== undefined) last = 'and';
    else break;
  }
  if (group === undefined) return null;
  let value = total + group;
  let place = 1;
  if (tokens[at]?.text === 'point' && numeralOf(tokens[at + 1]) !== undefined) {
    let digits = '';
    let end = at + 1;
    while (numeralOf(tokens[end]) !== undefined && numeralOf(tokens[end])! < 10) {
      digits += numeralOf(tokens[end]);
      end += 1;
    }
    if (digits) {
      value = Number(`${value}.${digits}`);
      place = 10 ** -digits.length;
      at = end;
    }
  }
  return { value, place, next: at };
}

const openers = new Set(['it', 'its', 'we', 'there', 'this', 'but']);

/**
 * A take as it is said, brought to the written register: letters and numbers joined, a pause put where a new
 * statement begins. Offsets stay those of the transcript.
 */
export function spokenTokens(tokens: readonly Token[]): Token[] {
  const result: Token[] = [];
  let hasNumber = false;
  const join = (from: number, to: number, more: Partial<Token>): Token => ({
    ...tokens[from]!,
    end: tokens[to - 1]!.end,
    glued: false,
    ...more,
  });
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at]!;
    const sequence = sequences.find(({ words }) =>
      words.every((word, offset) => tokens[at + offset]?.text === word),
    );
    if (sequence) {
      result.push(join(at, at + sequence.words.length, { kind: 'word', text: sequence.word }));
      at += sequence.words.length;
      continue;
    }
    const isScale = token.text === 'hundred' || token.text === 'thousand';
    // "Point four" stays as it is: the grammar reads it.
    const afterPoint = tokens[at - 1]?.text === 'point';
    const number =
      (numeralOf(token) !== undefined || isScale) && !afterPoint ? spokenNumber(tokens, at) : null;
    if (number && (number.next - at > 1 || number.value >= 10)) {
      if (isScale && result.at(-1)?.text === 'a') result.pop();
      result.push(
        join(at, number.next, {
          kind: 'number',
          text: String(number.value),
          value: number.value,
          place: number.place,
        }),
      );
      hasNumber = true;
      at = number.next;
      continue;
    }
    if (token.kind === 'number' || number) hasNumber = true;
    if (openers.has(token.text) && hasNumber && result.at(-1)?.kind !== 'mark') {
      result.push({ ...token, kind: 'mark', text: ';', end: token.start, glued: true });
      hasNumber = false;
    }
    result.push(token);
    at += 1;
  }
  return result;
}
