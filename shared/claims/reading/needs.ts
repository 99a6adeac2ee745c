import type { Item, MeaningKind } from './items.ts';
import type { Scene } from './scene.ts';

/** What a clause has that no single word shows. */
export type ClauseSign =
  | 'number'
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

/** Sets of kinds, signs and words as bits, so that a clause is held against all rules in no time. */
type Bits = number[];

/** What a clause or a sentence has. */
export type Signs = Bits;

/** {@link Needs} as bits. */
export type NeedBits = readonly (readonly number[])[];

/** In one number; 32 would not all be small integers to every engine. */
const bitsInNumber = 30;
/** Numbers in a set: for as many kinds, signs and words as rules name, and some to come. */
const width = 12;

const kindBits = new Map<string, number>();
const wordBits = new Map<string, number>();

/** The bit of a kind, sign or word, given out when a rule first names it; undefined for those that no rule names. */
function bitOf(known: Map<string, number>, name: string): number {
  let bit = known.get(name);
  if (bit === undefined) {
    bit = kindBits.size + wordBits.size;
    if (bit >= width * bitsInNumber) throw new Error('rules need more kinds and words than there are bits');
    known.set(name, bit);
  }
  return bit;
}

function noBits(): Bits {
  const bits: Bits = [];
  for (let at = 0; at < width; at++) bits.push(0);
  return bits;
}

function add(bits: Bits, bit: number | undefined): undefined {
  if (bit !== undefined) bits[(bit / bitsInNumber) | 0]! |= 1 << (bit % bitsInNumber);
}

/** Made once for each rule, before anything is read. */
export function needBits(needs: Needs): NeedBits {
  return needs.map(({ kinds = [], words = [] }) => {
    const bits = noBits();
    for (const kind of kinds) add(bits, bitOf(kindBits, kind));
    for (const word of words) add(bits, bitOf(wordBits, word));
    return bits;
  });
}

export function meets(signs: Signs, needs: NeedBits): boolean {
  for (let at = 0; at < needs.length; at++) if (!haveCommon(signs, needs[at]!)) return false;
  return true;
}

function haveCommon(signs: Signs, wanted: readonly number[]): boolean {
  for (let at = 0; at < width; at++) if ((signs[at]! & wanted[at]!) !== 0) return true;
  return false;
}

/** Comparatives that do not say what they compare: "more", "less", "better", "worse" */
export const openComparatives: ReadonlySet<string> = new Set(['higher', 'lower', 'better', 'worse']);

/** What its items show by themselves. */
export function signsOfItems(items: readonly Item[]): Signs {
  const signs = noBits();
  for (const { text, meanings, number } of items) {
    add(signs, wordBits.get(text));
    for (let at = 0; at < meanings.length; at++) {
      const { kind, key, data } = meanings[at]!;
      add(signs, kindBits.get(kind));
      if (kind === 'pronoun' && key === 'rival') mark(signs, 'rival', true);
      else if (kind === 'comparative' && !openComparatives.has(key)) mark(signs, 'comparison', true);
      else if (kind === 'fact' && data === 'count') mark(signs, 'countable', true);
    }
    if (!number) continue;
    mark(signs, 'number', true);
    if (number.comparator !== undefined) mark(signs, 'limit', true);
    if (number.dimension === 'times') mark(signs, 'times', true);
  }
  return signs;
}

export function mark(signs: Signs, sign: ClauseSign, isThere: boolean): undefined {
  if (isThere) add(signs, kindBits.get(sign));
}

export function unmark(signs: Signs, sign: ClauseSign): undefined {
  const bit = kindBits.get(sign);
  if (bit !== undefined) signs[(bit / bitsInNumber) | 0]! &= ~(1 << (bit % bitsInNumber));
}

export function signsOf(scene: Scene): Signs {
  const { carry, conditions, previous } = scene;
  const signs = signsOfItems(scene.items);
  mark(
    signs,
    'set',
    scene.units.length > 0 ||
      scene.unitNamed ||
      scene.unit !== undefined ||
      scene.share !== undefined ||
      isSetBefore(scene),
  );
  mark(signs, 'axis', scene.axes.length > 0);
  mark(signs, 'window', conditions.window !== undefined);
  mark(signs, 'adjusted', conditions.stage === 'adjusted');
  mark(signs, 'claimed', carry.claimed !== undefined);
  mark(signs, 'asked', carry.asked !== undefined);
  mark(signs, 'statement', (previous ? previous.said : carry.statement) !== undefined);
  mark(signs, 'portsBefore', carry.ports !== undefined);
  const said = hasSaid(previous);
  mark(signs, 'saidBefore', said);
  mark(signs, 'quantityBefore', said || carry.said !== undefined);
  mark(signs, 'topicBefore', carry.topic !== undefined || (previous !== null && hasTopic(scene.sentence)));
  return signs;
}

function hasSaid(scene: Scene | null): boolean {
  for (let at = scene; at; at = at.previous) if (at.said !== undefined) return true;
  return false;
}

function isSetBefore({ carry, previous }: Scene): boolean {
  return previous ? previous.units.length > 0 || previous.unit !== undefined : carry.unit !== undefined;
}

function hasTopic(items: readonly Item[]): boolean {
  return items.some(({ meanings }) => meanings.some(({ kind }) => kind === 'topic'));
}
