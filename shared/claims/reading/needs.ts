import { type Item, type MeaningKind, meaningKinds } from './items.ts';

/** What a clause has that no single word shows. */
export type ClauseSign =
  | 'number'
  /** A number out of others, or of points */
  | 'scale'
  /** A word for a score or an award */
  | 'scoreWord'
  /** The sentence names what scores are given for. */
  | 'criterionSaid'
  /** A number with "under", "at least" … */
  | 'limit'
  /** A number of times */
  | 'times'
  /** A set is named or meant, here or in the clause before. */
  | 'set'
  /** A stretch or place on an axis */
  | 'axis'
  /** The size of the patch */
  | 'window'
  /** Said of the set as adjusted */
  | 'adjusted'
  /** A maker's number was quoted before. */
  | 'claimed'
  /** A question was asked before. */
  | 'asked'
  /** One thing was stated just before, which this may repeat. */
  | 'statement'
  /** The paragraph has spoken of ports. */
  | 'portsBefore'
  /** An earlier clause stated something. */
  | 'saidBefore'
  /** "Its rival", "the others" */
  | 'rival'
  /** A comparative that says what it compares: "brighter", not "more" */
  | 'comparison'
  /** Something that a set has a number of */
  | 'countable'
  /** A quantity was spoken of before. */
  | 'quantityBefore'
  /** What is seen was named before. */
  | 'topicBefore';

/** One of these kinds of meaning, signs or words. */
export interface Need {
  kinds?: readonly (MeaningKind | ClauseSign)[];
  /** Folded texts of items */
  words?: readonly string[];
}

/** Without one of each a rule finds nothing. */
export type Needs = readonly Need[];

/**
 * Needs that are met, a bit each. A word, a kind and a sign have the bits of the needs that they meet, so that those of a
 * clause are joined once, and one step or rule after another is held against them in no time.
 */
type Bits = number[];

/** The needs that a clause or a sentence meets. */
export type Signs = Bits;

/** {@link Needs} as bits, all of which have to be met. */
export type NeedBits = readonly number[];

/** In one number; 32 would not all be small integers to every engine. */
const bitsInNumber = 30;
/** Numbers in a set: for as many needs as there are, and some to come. */
const width = 8;

const bitsOfNeeds = new Map<string, number>();
const byKind = new Map<string, Bits>();
const byWord = new Map<string, Bits>();

function noBits(): Bits {
  const bits: Bits = [];
  for (let at = 0; at < width; at++) bits.push(0);
  return bits;
}

function setBit(bits: Bits, bit: number): undefined {
  bits[(bit / bitsInNumber) | 0]! |= 1 << (bit % bitsInNumber);
}

function join(bits: Bits, more: NeedBits | undefined): undefined {
  if (more === undefined) return;
  for (let at = 0; at < width; at++) bits[at]! |= more[at]!;
}

/** The bit of a need, given out when it is first asked for; equal needs share one. */
function bitOf({ kinds = [], words = [] }: Need): number {
  const name = JSON.stringify([kinds, words]);
  const known = bitsOfNeeds.get(name);
  if (known !== undefined) return known;
  const bit = bitsOfNeeds.size;
  if (bit >= width * bitsInNumber) throw new Error('there are more needs than bits for them');
  bitsOfNeeds.set(name, bit);
  for (const [meeting, bits] of [[kinds, byKind] as const, [words, byWord] as const])
    for (const one of meeting) {
      const own = bits.get(one) ?? noBits();
      setBit(own, bit);
      bits.set(one, own);
    }
  return bit;
}

/** Made once for each rule or step, before anything is read. */
export function needBits(needs: Needs): NeedBits {
  const bits = noBits();
  for (const need of needs) setBit(bits, bitOf(need));
  return bits;
}

export function meets(signs: Signs, needs: NeedBits): boolean {
  for (let at = 0; at < width; at++) if ((signs[at]! & needs[at]!) !== needs[at]!) return false;
  return true;
}

const singly = ['number', 'countable'] as const;

/** What is asked for alone, each as a need of its own. */
const byOne = new Map<string, NeedBits>(
  [...meaningKinds, ...singly].map((kind) => [kind, needBits([{ kinds: [kind] }])]),
);

/** Is there a word with this kind of meaning, a number, or what a set has a number of? */
export function shows(signs: Signs, kind: MeaningKind | (typeof singly)[number]): boolean {
  return meets(signs, byOne.get(kind)!);
}

/** Comparatives that do not say what they compare: "more", "less", "better", "worse" */
export const openComparatives: ReadonlySet<string> = new Set(['higher', 'lower', 'better', 'worse']);

/**
 * What its items show by themselves.
 * @param numbers whether its numbers are shown
 */
export function signsOfItems(items: readonly Item[], numbers = true): Signs {
  const signs = noBits();
  for (let order = 0; order < items.length; order++) {
    const { text, meanings, number } = items[order]!;
    join(signs, byWord.get(text));
    for (let at = 0; at < meanings.length; at++) {
      const { kind, key, data } = meanings[at]!;
      join(signs, byKind.get(kind));
      if (kind === 'pronoun' && key === 'rival') mark(signs, 'rival', true);
      else if (kind === 'comparative' && !openComparatives.has(key)) mark(signs, 'comparison', true);
      else if (kind === 'concept' && (key === 'score' || key === 'award')) mark(signs, 'scoreWord', true);
      else if (kind === 'fact' && data === 'count') mark(signs, 'countable', true);
    }
    if (!number) continue;
    if (numbers) mark(signs, 'number', true);
    if (number.comparator !== undefined) mark(signs, 'limit', true);
    if (number.dimension === 'times') mark(signs, 'times', true);
    if (number.outOf !== undefined || number.dimension === 'points') mark(signs, 'scale', true);
  }
  return signs;
}

export function mark(signs: Signs, sign: ClauseSign, isThere: boolean): undefined {
  if (isThere) join(signs, byKind.get(sign));
}
