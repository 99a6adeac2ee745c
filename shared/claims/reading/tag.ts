import { ignoreMethod } from './aboutMeasuring.ts';
import { attachNeighbours } from './attachNeighbours.ts';
import { forgetHomographs } from './homographs.ts';
import type { Item, Meaning, NumberPhrase } from './items.ts';
import { numberWords } from './lexicon/grammar.ts';
import type { Lexicon } from './lexiconTrie.ts';
import { leadsWithin, numberWithin, readNumberPhrase } from './numberPhrases.ts';
import { settleObviousRoles } from './obviousRoles.ts';
import type { Token } from './tokens.ts';
import { usableMeanings } from './usableMeanings.ts';

/** "over-saturated", "under-exposed": the hyphen ties the first word to the second. */
function isHyphened(last: Token | undefined, next: Token | undefined): boolean {
  return (
    (last?.text === 'over' || last?.text === 'under') &&
    next?.glued === true &&
    /^(?:saturat|expos|driv|bright|light)/.test(next.text)
  );
}

const leavingOut: ReadonlySet<string> = new Set(['without', 'excluding', 'ignoring']);
const denying: ReadonlySet<string> = new Set([
  ...['not', "isn't", "aren't", "wasn't", "weren't", "doesn't", "don't", "didn't"],
]);
const harmless: ReadonlySet<string> = new Set([
  ...['only', 'just', 'merely', 'simply', 'surprised', 'surprising', 'surprisingly', 'surprise'],
  ...['astonished', 'astonishing', 'lightly', 'unexpected', 'unexpectedly', 'coincidentally'],
  ...['ashamed', 'sorry'],
]);

/** What may begin with a word, besides the phrases of the lexicon. */
const leads = new Map<string, 'within' | 'denial' | 'scale' | 'number'>([
  ...leadsWithin.map((word) => [word, 'within'] as const),
  ...['no', ...leavingOut, ...denying].map((word) => [word, 'denial'] as const),
  ...['hundred', 'thousand'].map((word) => [word, 'scale'] as const),
  ...['point', ...Object.keys(numberWords)].map((word) => [word, 'number'] as const),
]);

/**
 * "Not only brighter but cheaper", "it isn't just visible": more is to come, and nothing is denied. "I was not surprised
 * to find it the lightest", "not lightly given": what is denied is how somebody took it.
 */
function deniesNothing(tokens: readonly Token[], at: number): boolean {
  const { text } = tokens[at]!;
  const next = tokens[at + 1]?.text;
  if (next === undefined) return false;
  // "Without luminance the average is 2.4" names the definition.
  if (next === 'luminance' && leavingOut.has(text)) return true;
  // "Colour shift does the Hearth no favours", "it is no slouch"
  if (
    text === 'no' &&
    /^(?:favours?|slouch|prizes|pretence|angel|saint|bargain|beauty|stranger|exception|fool|novice|picnic)$/.test(
      next,
    )
  )
    return true;
  // "The cause isn't hard to find"
  if (denying.has(text) && /^(?:hard|difficult)$/.test(next) && tokens[at + 2]?.text === 'to') return true;
  // "Not just over a metre wide" denies the measure, "not just bright but quick" nothing.
  if (next === 'just' && /^(?:over|under|above|below)$/.test(tokens[at + 2]?.text ?? '')) return false;
  return denying.has(text) && harmless.has(next);
}

/** Turns tokens into items: longest known phrase first, numbers with their units and hedges. */
export function tagTokens(tokens: readonly Token[], lexicon: Lexicon, spoken: boolean): Item[] {
  const items: Item[] = [];
  const push = (
    type: Item['type'],
    from: number,
    to: number,
    meanings: readonly Meaning[],
    number?: NumberPhrase,
    phrase?: string,
  ) => {
    const first = tokens[from]!;
    const last = tokens[to - 1]!;
    let text = phrase ?? first.text;
    if (phrase === undefined) for (let at = from + 1; at < to; at += 1) text += ` ${tokens[at]!.text}`;
    const item: Item = {
      type,
      text,
      meanings,
      start: first.start,
      end: last.end,
      capital: first.capital,
      glued: first.glued,
      index: items.length,
      // There or not, so that all items are of one shape to the engine.
      number,
    };
    items.push(item);
  };
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at]!;
    const lead = leads.get(token.text);
    const part = lead === 'within' ? numberWithin(tokens, at, lexicon) : null;
    if (part) {
      push('number', at, part.next, [], part.number);
      at = part.next;
      continue;
    }
    if (lead === 'denial' && deniesNothing(tokens, at)) {
      push('word', at, at + 2, []);
      at += 2;
      continue;
    }
    const candidates = lexicon.match(tokens, at);
    let taken = false;
    for (const candidate of candidates ?? []) {
      const meanings = usableMeanings(candidate.meanings, tokens, at, candidate.length, spoken);
      if (meanings.length === 0) continue;
      // "Not over-saturated": "over" is a part of the word behind it.
      if (isHyphened(tokens[at + candidate.length - 1], tokens[at + candidate.length])) continue;
      // "one of the 11 levels" must not hide a number, nor "some 742 nits".
      push(
        token.kind === 'mark' && candidate.length === 1 ? 'mark' : 'phrase',
        at,
        at + candidate.length,
        meanings,
        undefined,
        candidate.text,
      );
      at += candidate.length;
      taken = true;
      break;
    }
    if (taken) continue;
    if (
      token.kind === 'number' ||
      (token.kind === 'mark' && '£€$±'.includes(token.text)) ||
      lead === 'number' ||
      (lead === 'scale' && tokens[at - 1]?.text === 'a')
    ) {
      const read = readNumberPhrase(tokens, at, lexicon);
      if (read) {
        if (read.ordinal) push('phrase', at, read.next, [{ kind: 'ordinal', key: String(read.number.x) }]);
        else push('number', at, read.next, [], read.number);
        at = read.next;
        continue;
      }
    }
    push(token.kind === 'mark' ? 'mark' : 'word', at, at + 1, []);
    at += 1;
  }
  forgetHomographs(items);
  ignoreMethod(items);
  settleObviousRoles(items);
  attachNeighbours(items);
  return items;
}
