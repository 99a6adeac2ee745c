import { ignoreMethod } from './aboutMeasuring.ts';
import { forgetHomographs } from './homographs.ts';
import { type Item, isWord, keyOf, type Meaning, type NumberPhrase } from './items.ts';
import { numberWords } from './lexicon/grammar.ts';
import type { Lexicon } from './lexiconTrie.ts';
import { halfOfUnit, oneAndAHalf, oneOfUnit, readNumberPhrase, vagueStretch } from './numberPhrases.ts';
import { settleObviousRoles } from './obviousRoles.ts';
import type { Token } from './tokens.ts';

const measureAfterName = /^(?:%|percent|per|nits?|cd|ms|w|watts?|°|degrees?|kg|kilos?|k|hz|db)$/;
const proper = new Set(['unit', 'maker', 'mode']);

/** "The Hearth 55 %": the number that could be the size in a set's name has a unit of its own. */
function sharesItsNumber(tokens: readonly Token[], last: number): boolean {
  const next = tokens[last + 1];
  return tokens[last]!.kind === 'number' && next !== undefined && measureAfterName.test(next.text);
}

/** Meanings that hold for a phrase as it is written here: names need their capital, units of measure a number. */
function usable(
  meanings: readonly Meaning[],
  tokens: readonly Token[],
  at: number,
  length: number,
  spoken: boolean,
): readonly Meaning[] {
  const capital = spoken || tokens[at]!.capital || tokens[at]!.kind === 'number';
  const fits = (meaning: Meaning): boolean => {
    // "It is to be recommended" names no award.
    if (meaning.kind === 'concept' && meaning.data === 'name' && !capital) return false;
    // "Its pale cyan": which cyan, and not that it is pale.
    if (meaning.kind === 'direction' && length === 1 && describesHue(tokens, at)) return false;
    if (meaning.kind === 'measure') return unitsOfLabel(tokens, at, length);
    if (meaning.kind === 'currency') return false;
    if (
      proper.has(meaning.kind) &&
      !capital &&
      !(meaning.kind === 'mode' && /^(?:mode|preset)$/.test(tokens[at + length]?.text ?? ''))
    )
      return false;
    if (meaning.kind === 'unit' && length > 1 && sharesItsNumber(tokens, at + length - 1)) return false;
    // Said aloud, "plain" and "crest" are words unless "the" makes them a set's name.
    if (
      spoken &&
      meaning.kind === 'unit' &&
      length === 1 &&
      !tokens[at]!.capital &&
      tokens[at - 1]?.text !== 'the'
    )
      return false;
    if (
      meaning.kind === 'comparator' &&
      tokens[at + length - 1]!.text === 'than' &&
      !leadsToNumber(tokens, at + length)
    )
      return false;
    if (
      meaning.kind === 'comparative' &&
      tokens[at + length]?.text === 'than' &&
      leadsToNumber(tokens, at + length + 1)
    )
      return false;
    // "187 W, the most of the three" ranks sets.
    if (
      meaning.kind === 'stat' &&
      length === 3 &&
      tokens[at]!.text === 'most' &&
      tokens[at - 1]?.text === 'the'
    )
      return false;
    // "Not below 3 at every level": some are, and none of them is said to be over it.
    if (meaning.kind === 'comparator' && tokens[at]!.text === 'not') {
      const ahead = tokens.slice(at + length, at + length + 6);
      if (
        ahead.some(
          ({ text }, place) => text === 'every' || (text === 'all' && ahead[place - 1]?.text === 'at'),
        )
      )
        return false;
    }
    // "And more than half is gone": no end of a number phrase.
    if (meaning.kind === 'trailing' && tokens[at + length]?.text === 'than') return false;
    if (meaning.kind === 'gotThere' || meaning.kind === 'fellShort') {
      const next = tokens[at + length];
      if (
        length <= 3 &&
        next !== undefined &&
        next.kind !== 'mark' &&
        !/^(?:and|but|too|indeed|with)$/.test(next.text)
      )
        return false;
    }
    // "It wins on black level": what is measured, and no picture.
    if (meaning.kind === 'level' && /^(?:levels?|points?)$/.test(tokens[at + length]?.text ?? ''))
      return false;
    if (tokens[at]!.kind === 'number') {
      if (length === 1) return false;
      // "At 50 % grey" is a step of the scale, "a 50 % grey field" a picture.
      if (meaning.kind === 'level') return isField(tokens[at + length - 1]!);
      if (meaning.kind === 'resolution') return tokens[at + 1]!.glued || length > 2;
    }
    return true;
  };
  return meanings.every(fits) ? meanings : meanings.filter(fits);
}

const fields = /^(?:fields?|screens?|pictures?|rasters?|images?)$/;

function isField({ text }: Token): boolean {
  return fields.test(text);
}

function describesHue(tokens: readonly Token[], at: number): boolean {
  return (
    /^(?:pale|rich|vivid|dark|bright)$/.test(tokens[at]!.text) &&
    /^(?:reds?|greens?|blues?|cyans?|magentas?|yellows?)$/.test(tokens[at + 1]?.text ?? '')
  );
}

/** "Peak in nits: …", "Weight (kg): …": the unit of the numbers that follow stands in their label. */
function unitsOfLabel(tokens: readonly Token[], at: number, length: number): boolean {
  const before = tokens[at - 1];
  let after = tokens[at + length];
  const bracketed = before?.text === '(' && after?.text === ')';
  if (bracketed) after = tokens[at + length + 1];
  return after?.text === ':' && before?.kind !== 'number' && (bracketed || tokens[at]!.text.length > 1);
}

function endsClause(token: Token | undefined): boolean {
  return (
    token === undefined ||
    (token.kind === 'mark' && token.text !== '%' && token.text !== '°') ||
    /^(?:and|but|in|which|though)$/.test(token.text)
  );
}

/** "more than 120 W" limits; "20 W less than the rival" compares. */
function leadsToNumber(tokens: readonly Token[], at: number): boolean {
  for (let ahead = at; ahead < Math.min(tokens.length, at + 3); ahead += 1) {
    const token = tokens[ahead]!;
    // "Dearer than the 55": a set, by its size.
    if (
      ahead > at &&
      /^[2-9]\d$/.test(token.text) &&
      tokens[ahead - 1]!.text === 'the' &&
      endsClause(tokens[ahead + 1])
    )
      return false;
    if (token.kind === 'number' || (token.kind === 'mark' && '£€$'.includes(token.text))) return true;
    if (
      Object.hasOwn(numberWords, token.text) ||
      /^(?:half|twice|third|quarter|fifth|sixth|seventh|eighth|ninth|tenth|double|threshold|hundred|thousand)$/.test(
        token.text,
      )
    )
      return true;
    if (!/^(?:a|an|the|about|around|roughly|just|visible|some|its|our)$/.test(token.text)) return false;
  }
  return false;
}

/** Words before a number that change nothing: "a mere 742", "just 742", "a deep 0.04". */
const emphasis = new Set([
  'just',
  'only',
  'mere',
  'a',
  'an',
  'the',
  'full',
  'whole',
  'deep',
  'mere',
  'measly',
  'healthy',
  'whopping',
  'respectable',
  'low',
  'high',
  'good',
  'decent',
  'solid',
  'impressive',
  'modest',
  'mark',
  'of',
  'even',
  'very',
  'measured',
  'fine',
  'staggering',
  'paltry',
  'remarkable',
  'reasonable',
  'wide',
  'excellent',
  'tiny',
  'huge',
  'heady',
  'still',
]);

/** "creeps over", "goes below": the verb carries the comparator. */
function motionComparator(item: Item | undefined): string | undefined {
  const verb = keyOf(item, 'verb');
  if (verb === 'rise' && /(?:over|above|past|beyond)$/.test(item!.text)) return '>';
  if ((verb === 'fall' || verb === 'stay') && /(?:below|under)$/.test(item!.text)) return '<';
  return undefined;
}

/** "Stays below ΔE2000 3", "exceeds a ΔE of 3", "above a contrast of 1,000:1": the limit stands before what is limited. */
function limitedBy(items: readonly Item[], index: number): string | undefined {
  const last = items[index - 1];
  const of = isWord(last, 'of') || / of$/.test(last?.text ?? '');
  const noun = isWord(last, 'of') ? items[index - 2] : last;
  const stat =
    ['average', 'max', 'min'].includes(keyOf(noun, 'stat') ?? '') ||
    isWord(noun, 'ratio', 'level', 'value', 'figure');
  const concept = keyOf(noun, 'concept') ?? (stat ? '' : undefined);
  if (!noun || concept === undefined || !(of || ['error', 'deItp', 'greyError'].includes(concept)))
    return undefined;
  const article = items[noun!.index - 1];
  const before = isWord(article, 'a', 'an') ? items[noun!.index - 2] : article;
  if (of && !isWord(article, 'a', 'an')) return undefined;
  // "A black of 0.051 cd/m² under a white of 212"
  if (/^(?:black|whitePoint|sdrWhite)$/.test(concept)) return undefined;
  // "5,370:1, over a black of 0.044": at that black.
  if (before && items[before.index - 1]?.type === 'mark') return undefined;
  if (keyOf(before, 'verb') === 'exceed') return '>';
  const comparator = keyOf(before, 'comparator') ?? motionComparator(before);
  return comparator === 'upTo' ? undefined : comparator;
}

const motion =
  /(?:^|[ ])(?:crept|creeps|gone|went|goes|come|came|comes|moved|moves|crawled|drifted|nudged|inched|edged)$/;

/** "over-saturated", "under-exposed": the hyphen ties the first word to the second. */
function isHyphened(last: Token | undefined, next: Token | undefined): boolean {
  return (
    (last?.text === 'over' || last?.text === 'under') &&
    next?.glued === true &&
    /^(?:saturat|expos|driv|bright|light)/.test(next.text)
  );
}

function attachNeighbours(items: Item[]): void {
  for (const item of items) {
    const number = item.number;
    if (!number) continue;
    let at = item.index - 1;
    while (at >= 0 && items[at]!.type === 'word' && emphasis.has(items[at]!.text)) at -= 1;
    let before = items[at];
    const hedge = keyOf(before, 'hedge');
    if (hedge && !(keyOf(before, 'comparator') && hedge !== 'almost')) {
      number.hedge = hedge;
      number.hedgeText = before!.text;
      at -= 1;
      while (at >= 0 && items[at]!.type === 'word' && emphasis.has(items[at]!.text)) at -= 1;
      before = items[at];
    }
    // "Does not quite reach 3,300:1"
    const quite = keyOf(before, 'verb') === 'reach' ? items[at - 1] : undefined;
    if (isWord(quite, 'not quite') && !number.hedge) {
      number.hedge = 'almost';
      number.hedgeText = quite!.text;
    }
    const limited = limitedBy(items, item.index);
    const comparator = keyOf(before, 'comparator') ?? motionComparator(before) ?? limited;
    // "The average has crept up to 0.7": that is where it is.
    const spreads = /^(?:sprawl|stretch|extend|spread|reach)(?:s|es)?$/.test(items[at - 1]?.text ?? '');
    const arrives =
      (comparator === 'upTo' && motion.test(items[at - 1]?.text ?? '')) ||
      // "The foot sprawls over 880 mm"
      (spreads && isWord(before, 'over') && number.dimension === 'length');
    if (comparator && !arrives) number.comparator = comparator;
    // "Higher by a factor of 2.6"
    if (
      number.dimension === '' &&
      isWord(items[item.index - 1], 'of') &&
      isWord(items[item.index - 2], 'factor')
    )
      number.dimension = 'times';
    let after = items[item.index + 1];
    // "60% of its luminance at most"
    if (isWord(after, 'of', 'for'))
      for (let ahead = item.index + 2; ahead < Math.min(items.length, item.index + 6); ahead += 1) {
        if (items[ahead]!.type === 'mark' || items[ahead]!.number) break;
        if (
          keyOf(items[ahead], 'trailing') &&
          /^(?:at (?:most|least|best|worst)|or (?:more|less|better))/.test(items[ahead]!.text)
        )
          after = items[ahead];
      }
    const trailing = keyOf(after, 'trailing');
    if (
      trailing &&
      !(after!.text === '+' && !after!.glued) &&
      after!.text !== 'upwards' &&
      !number.comparator
    )
      number.comparator = trailing;
    if (
      isWord(after, 'or so', 'or thereabouts', 'give or take', 'more or less') ||
      keyOf(after, 'hedge') === 'about'
    )
      number.hedge ??= 'about';
  }
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
  if (text === 'no' && /^(?:favours?|slouch|prizes|pretence)$/.test(next)) return true;
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
  ) => {
    const first = tokens[from]!;
    const last = tokens[to - 1]!;
    let text = first.text;
    for (let at = from + 1; at < to; at += 1) text += ` ${tokens[at]!.text}`;
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
    const part =
      halfOfUnit(tokens, at, lexicon) ??
      oneAndAHalf(tokens, at, lexicon) ??
      oneOfUnit(tokens, at, lexicon) ??
      vagueStretch(tokens, at);
    if (part) {
      push('number', at, part.next, [], part.number);
      at = part.next;
      continue;
    }
    if (deniesNothing(tokens, at)) {
      push('word', at, at + 2, []);
      at += 2;
      continue;
    }
    const candidates = lexicon.match(tokens, at);
    let taken = false;
    for (const candidate of candidates ?? []) {
      const meanings = usable(candidate.meanings, tokens, at, candidate.length, spoken);
      if (meanings.length === 0) continue;
      // "Not over-saturated": "over" is a part of the word behind it.
      if (isHyphened(tokens[at + candidate.length - 1], tokens[at + candidate.length])) continue;
      // "one of the 11 levels" must not hide a number, nor "some 742 nits".
      push(
        token.kind === 'mark' && candidate.length === 1 ? 'mark' : 'phrase',
        at,
        at + candidate.length,
        meanings,
      );
      at += candidate.length;
      taken = true;
      break;
    }
    if (taken) continue;
    if (
      token.kind === 'number' ||
      (token.kind === 'mark' && '£€$±'.includes(token.text)) ||
      Object.hasOwn(numberWords, token.text) ||
      ((token.text === 'hundred' || token.text === 'thousand') && tokens[at - 1]?.text === 'a') ||
      token.text === 'point'
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
