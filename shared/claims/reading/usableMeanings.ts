import type { Meaning } from './items.ts';
import { numberWords } from './lexicon/grammar.ts';
import type { Token } from './tokens.ts';

const measureAfterName = /^(?:%|percent|per|nits?|cd|ms|w|watts?|°|degrees?|kg|kilos?|k|hz|db)$/;
const proper = new Set(['unit', 'maker', 'mode']);

/** "The Hearth 55 %": the number that could be the size in a set's name has a unit of its own. */
function sharesItsNumber(tokens: readonly Token[], last: number): boolean {
  const next = tokens[last + 1];
  return tokens[last]!.kind === 'number' && next !== undefined && measureAfterName.test(next.text);
}

/** Meanings that hold for a phrase as it is written here: names need their capital, units of measure a number. */
export function usableMeanings(
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
    // "Neither rival is as even" compares; "even so" does not.
    if (meaning.kind === 'equative' && tokens[at]!.text === 'even' && tokens[at - 1]?.text !== 'as')
      return false;
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
      (meaning.kind === 'comparator' || meaning.kind === 'hedge') &&
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
    // "No error in the red sweep": of a hue.
    if (
      meaning.kind === 'idiom' &&
      /^(?:sweep|primary|channel|ramp|series)$/.test(tokens[at + length]?.text ?? '')
    )
      return false;
    // "The roll-off comes at 80 %": no price.
    if (
      meaning.kind === 'verb' &&
      meaning.key === 'cost' &&
      tokens[at + length - 1]!.text === 'at' &&
      tokens[at + length]?.kind === 'number' &&
      /^(?:%|per|percent)$/.test(tokens[at + length + 1]?.text ?? '')
    )
      return false;
    // "It holds at least 90 %": the verb ends before "at".
    if (
      meaning.kind === 'verb' &&
      length > 1 &&
      tokens[at + length - 1]!.text === 'at' &&
      /^(?:least|most)$/.test(tokens[at + length]?.text ?? '')
    )
      return false;
    // "Its worst greyscale error is 4.4": of its levels, not of the sets.
    if (meaning.kind === 'superlative' && isOfItsOwn(tokens, at, length)) return false;
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
        !(next.text === 'in' && tokens[at + length + 2]?.kind === 'number') &&
        !/^(?:and|but|too|indeed|even|with|without|easily|comfortably|handsomely)$/.test(next.text)
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

function isOfItsOwn(tokens: readonly Token[], at: number, length: number): boolean {
  return (
    length > 1 &&
    tokens[at]!.text === 'worst' &&
    tokens[at - 1]?.text === 'its' &&
    /^(?:is|was|reaches|comes|stands|error)$/.test(tokens[at + length]?.text ?? '')
  );
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
      (endsClause(tokens[ahead + 1]) || /^(?:inch|inches|in|")$/.test(tokens[ahead + 1]?.text ?? ''))
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
