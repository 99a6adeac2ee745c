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

/** What a clause or a sentence has. */
export interface Signs {
  kinds: Set<string>;
  words: Set<string>;
}

export function meets({ kinds, words }: Signs, needs: Needs): boolean {
  for (const need of needs) if (!hasOne(kinds, need.kinds) && !hasOne(words, need.words)) return false;
  return true;
}

function hasOne(present: ReadonlySet<string>, wanted: readonly string[] | undefined): boolean {
  if (wanted === undefined) return false;
  for (let at = 0; at < wanted.length; at++) if (present.has(wanted[at]!)) return true;
  return false;
}

/** Comparatives that do not say what they compare: "more", "less", "better", "worse" */
export const openComparatives: ReadonlySet<string> = new Set(['higher', 'lower', 'better', 'worse']);

/** What its items show by themselves. */
export function signsOfItems(items: readonly Item[]): Signs {
  const kinds = new Set<string>();
  const words = new Set<string>();
  for (const { text, meanings, number } of items) {
    words.add(text);
    for (let at = 0; at < meanings.length; at++) {
      const { kind, key, data } = meanings[at]!;
      kinds.add(kind);
      if (kind === 'pronoun' && key === 'rival') kinds.add('rival');
      else if (kind === 'comparative' && !openComparatives.has(key)) kinds.add('comparison');
      else if (kind === 'fact' && data === 'count') kinds.add('countable');
    }
    if (!number) continue;
    kinds.add('number');
    if (number.comparator !== undefined) kinds.add('limit');
    if (number.dimension === 'times') kinds.add('times');
  }
  return { kinds, words };
}

export function mark({ kinds }: Signs, sign: ClauseSign, isThere: boolean): undefined {
  if (isThere) kinds.add(sign);
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
