/** What the phrase layer makes of tokens: the pieces that rules look at. */

/** Everything that a word or a phrase may be taken for */
export const meaningKinds = [
  'concept',
  'gamut',
  'diagram',
  'hue',
  'tone',
  'fact',
  'format',
  'panelKind',
  'resolution',
  'stage',
  'signal',
  'dimming',
  'room',
  'side',
  'plane',
  'level',
  'mode',
  'hedge',
  'comparator',
  'trailing',
  'stat',
  'house',
  'negation',
  'verb',
  'saying',
  'gotThere',
  'fellShort',
  'makerWord',
  'pronoun',
  'multiple',
  'ordinal',
  'unit',
  'maker',
  'size',
  'measure',
  'comparative',
  'superlative',
  'equative',
  'tint',
  'direction',
  'topic',
  'severity',
  'intensity',
  'idiom',
  'opinion',
  'adjective',
  'currency',
  'criterion',
  'month',
  'count',
  'fullScreen',
  'lean',
  'cohortWord',
  'awardWord',
  'standing',
] as const;

export type MeaningKind = (typeof meaningKinds)[number];

export interface Meaning {
  kind: MeaningKind;
  key: string;
  /** Extra data of the lexicon entry: severity range, unit factor … */
  data?: unknown;
}

/** A number phrase with its unit, hedge and comparator. */
export interface NumberPhrase {
  x: number;
  place: number;
  /** Second number of a range "30 to 70 %" */
  to?: { x: number; place: number; start?: number; end?: number };
  /** Where the first number of a range ends, so that each of two states has words of its own */
  firstEnd?: number;
  /** The range was written with "between", "from … to" or a dash. */
  rangeWord?: 'between' | 'from' | 'dash' | 'to';
  /** "from 3.2 down to 0.5": two states, not the ends of a range */
  moves?: boolean;
  dimension: string;
  unit: string;
  factor: number;
  /** Spelled out in words */
  spelled: boolean;
  /** "out of 10", "/10" */
  outOf?: number;
  hedge?: string;
  hedgeText?: string;
  comparator?: string;
  /** Of two states that the words part, the one whose number this is; `open`: they do not say which */
  state?: 'before' | 'now' | 'open';
  /** The number of the other state: both are of one quantity */
  partner?: number;
  /** "well under": the limit is scaled by this. */
  role?: NumberRole;
  /** Said as a place on the signal's scale: "full white" */
  onScale?: true;
}

/**
 * A number before anything around it is known. Every member from the beginning, in one order: all numbers are of one
 * shape to the engine, which then reads them at once.
 */
export function numberPhrase(
  said: Pick<NumberPhrase, 'x' | 'place' | 'dimension' | 'unit' | 'factor' | 'spelled'>,
): NumberPhrase {
  return {
    x: said.x,
    place: said.place,
    to: undefined,
    firstEnd: undefined,
    rangeWord: undefined,
    moves: undefined,
    dimension: said.dimension,
    unit: said.unit,
    factor: said.factor,
    spelled: said.spelled,
    outOf: undefined,
    hedge: undefined,
    hedgeText: undefined,
    comparator: undefined,
    state: undefined,
    partner: undefined,
    role: undefined,
    onScale: undefined,
  };
}

export type NumberRole =
  | 'value'
  | 'axis'
  | 'axisOrValue'
  | 'window'
  | 'angle'
  | 'seconds'
  | 'lux'
  | 'size'
  | 'year'
  | 'date'
  | 'time'
  | 'name'
  | 'ignored'
  | 'limit'
  | 'money'
  | 'cohort';

export interface Item {
  type: 'word' | 'phrase' | 'number' | 'mark';
  /** Folded text */
  text: string;
  meanings: readonly Meaning[];
  start: number;
  end: number;
  capital: boolean;
  glued: boolean;
  number?: NumberPhrase;
  /** Position in the sentence's list of items */
  index: number;
}

/** The key that an item has as this kind of meaning, else undefined. */
export function keyOf(item: Item | undefined, kind: MeaningKind): string | undefined {
  if (!item) return undefined;
  const { meanings } = item;
  for (let at = 0; at < meanings.length; at++) if (meanings[at]!.kind === kind) return meanings[at]!.key;
  return undefined;
}

export function meaningOf(item: Item | undefined, kind: MeaningKind): Meaning | undefined {
  if (!item) return undefined;
  const { meanings } = item;
  for (let at = 0; at < meanings.length; at++) if (meanings[at]!.kind === kind) return meanings[at];
  return undefined;
}

/** Is it one of these words? Asked some hundred times a sentence: no list is made of the arguments. */
export function isWord(item: Item | undefined, ..._words: readonly string[]): boolean {
  if (item === undefined) return false;
  const { text } = item;
  // biome-ignore lint/complexity/noArguments: a rest parameter that is read is an array made anew at each call
  for (let at = 1; at < arguments.length; at++) if (arguments[at] === text) return true;
  return false;
}

/** Is it one of the words of a list? */
export function isOneOf(item: Item | undefined, words: readonly string[]): boolean {
  return item !== undefined && words.includes(item.text);
}
