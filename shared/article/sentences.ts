import type { ArticleText } from '../contract/articleText.ts';
import type { Sentence } from '../contract/claim.ts';
import { abbreviationSet, abbreviations } from './abbreviations.ts';

const inside = abbreviationSet(abbreviations.inside);
const maybe = abbreviationSet(abbreviations.maybe);

/** Abbreviations that are also words, numbers or units: only with a digit after them do they keep a sentence open. */
const onlyBeforeDigit = new Set([
  'no',
  'nos',
  'max',
  'min',
  'sec',
  'ms',
  'st',
  'ref',
  'rec',
  'ch',
  'vol',
  'pp',
  'ca',
  'fig',
  'figs',
]);
const months =
  /^(?:jan|feb|mar|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez|januar|märz|april|august|september|oktober|november|dezember)/iu;

const closers = '"\'”’»)]}›';
const openers = '"\'“‘«([{‹';

function isSpace(char: string): boolean {
  return (
    char === ' ' ||
    char === '\t' ||
    char === '\n' ||
    char === '\u00a0' ||
    char === '\u202f' ||
    char === '\u2009'
  );
}
function isDigit(char: string | undefined): boolean {
  return char !== undefined && char >= '0' && char <= '9';
}
function isLower(char: string | undefined): boolean {
  return char !== undefined && char !== char.toUpperCase();
}
function isUpper(char: string | undefined): boolean {
  return char !== undefined && char !== char.toLowerCase();
}

/** The run of letters, digits and inner stops that ends just before `stop`. */
function wordBefore(text: string, from: number, stop: number): string {
  let start = stop;
  while (start > from && !isSpace(text[start - 1]!) && !openers.includes(text[start - 1]!)) start -= 1;
  return text.slice(start, stop);
}

/** Does the full stop at `stop` end a sentence, given the first character of what follows? */
function fullStopEnds(text: string, from: number, stop: number, next: number, german: boolean): boolean {
  const following = text[next];
  let firstLetter = next;
  while (firstLetter < text.length && openers.includes(text[firstLetter]!)) firstLetter += 1;
  if (isLower(text[firstLetter])) return false;
  const word = wordBefore(text, from, stop);
  const folded = word.toLowerCase();
  // Initials: "J. K. Measure"; a lone capital at the end of a clause is rarer than a name.
  if (
    word.length === 1 &&
    isUpper(word) &&
    isUpper(following) &&
    word !== 'I' &&
    !isDigit(text[stop - 3]) &&
    !isDigit(text[stop - 2])
  )
    return false;
  if (inside.has(folded)) return onlyBeforeDigit.has(folded) ? !isDigit(following) : false;
  if (maybe.has(folded)) return isUpper(text[firstLetter]);
  // A list number that opens the block: "1. Contrast".
  if (/^\d{1,3}$/.test(word) && wordBefore(text, from, stop).length === stop - from) return false;
  if (german && /^\d{1,2}$/.test(word) && months.test(text.slice(next, next + 10))) return false;
  return true;
}

/** Ends of the sentences in one block, as offsets just past the last closing mark. */
function sentenceEnds(text: string, from: number, to: number, german: boolean): number[] {
  const ends: number[] = [];
  let sentenceStart = from;
  for (let at = from; at < to; at += 1) {
    const char = text[at]!;
    if (char !== '.' && char !== '!' && char !== '?' && char !== '…') continue;
    let end = at + 1;
    while (end < to && '.!?…'.includes(text[end]!)) end += 1;
    const dots = end - at;
    while (end < to && closers.includes(text[end]!)) end += 1;
    if (end >= to || !isSpace(text[end]!)) continue;
    let next = end;
    while (next < to && isSpace(text[next]!)) next += 1;
    if (next >= to) continue;
    const isSingleStop = char === '.' && dots === 1;
    let firstLetter = next;
    while (firstLetter < to && openers.includes(text[firstLetter]!)) firstLetter += 1;
    // "Why?" she asked; "It depends … on the room": a small letter goes on with the sentence.
    const endsHere = isSingleStop
      ? fullStopEnds(text, sentenceStart, at, next, german)
      : !isLower(text[firstLetter]);
    if (endsHere) {
      ends.push(end);
      sentenceStart = next;
      at = next - 1;
    } else at = end - 1;
  }
  return ends;
}

/** The sentences within one block's text, as offsets from its start. */
export function splitBlock(text: string, locale: string): { start: number; end: number }[] {
  const german = locale.toLowerCase().startsWith('de');
  const spans: { start: number; end: number }[] = [];
  let start = 0;
  for (const end of [...sentenceEnds(text, 0, text.length, german), text.length]) {
    while (start < end && isSpace(text[start]!)) start += 1;
    let last = end;
    while (last > start && isSpace(text[last - 1]!)) last -= 1;
    if (last > start) spans.push({ start, end: last });
    start = end;
  }
  return spans;
}

/**
 * The sentences of an article in order, by our own rules (never the runtime's word breaker, whose data differ).
 * Sentences never cross blocks; blank space between them belongs to none.
 */
export function splitSentences(text: ArticleText, locale: string): Sentence[] {
  const sentences: Sentence[] = [];
  for (const block of text.blocks) {
    const blockText = text.text.slice(block.start, block.end);
    for (const span of splitBlock(blockText, locale))
      sentences.push({
        index: sentences.length,
        text: blockText.slice(span.start, span.end),
        start: block.start + span.start,
        end: block.start + span.end,
        block: block.index,
      });
  }
  return sentences;
}
