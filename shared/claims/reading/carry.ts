import type { Block } from '../../contract/articleText.ts';
import type { Check, FactCheck } from '../../contract/check.ts';
import type { LimitSaid } from './limitSaid.ts';
import { isTurn } from './turns.ts';

/** Conditions and quantity that a heading or an earlier sentence hands on (`judging.md`, "Conditions"). */
export interface CarriedConditions {
  stage?: string;
  mode?: string;
  signal?: string;
  dimming?: string;
  /** Of a heading only: "On firmware 3.1", "Before the update" */
  firmware?: string;
  before?: 'update';
}

/** What one sentence leaves for the next. Plain data, so that it can be compared and kept. */
export interface Carry {
  /** Conditions of the headings in force, outermost first */
  headings: { level: number; conditions: CarriedConditions; concept?: string; unit?: string }[];
  /** Named in this paragraph */
  paragraph: CarriedConditions;
  /** The quantity concept that "the average" and "it" speak of in this paragraph */
  concept?: string;
  /** The one before that, where a number cannot be of the later */
  earlierConcept?: string;
  /** Hues and gamut that came with it */
  hue?: string;
  gamut?: string;
  /** Statistic of the sentence before ("the average … it falls to") */
  stat?: string;
  /** Unit that the sentence before was about; absent: the article's own */
  unit?: string;
  /** A pronoun stood for the unit in the sentence before: another pronoun does not say whom it means. */
  unitIsOld?: boolean;
  /** Several sets that the sentence before named, in order, for "they cost £749 and £599 respectively" */
  sets?: string[];
  /** The other unit last compared with, for "its rival" */
  rival?: string;
  /** Topic of a question just asked ("Banding? None.") */
  asked?: string;
  /** Set of a question just asked ("The Plain? 2,000:1.") */
  askedUnit?: string;
  /** Set of a question just asked that the answer compares with ("Against the Plain? Twice as bright.") */
  askedAgainst?: string;
  /** Patch of a question just asked ("Whole screen? 266 nits."), in % of the screen */
  window?: number;
  /** A maker's claim that "we got there" answers */
  claimed?: { key: string; x: number; place: number; unit: string; factKey?: string; of?: string };
  /** What the sentence before said was seen, for "it becomes distracting" */
  topic?: string;
  /** The one quantity that the sentence before spoke of, for "that is twice the Kasulind" */
  said?: { id: string; window?: number; angle?: number; stage?: string; stat?: string };
  /** The one statement of the sentence before, for "the Kasulind's isn't"; `no`: it denied something, `asked`: a question */
  statement?: { check: Check; no: boolean; asked?: true };
  /** What the sentence before counted last, for "the Kasulind gives you two of those" */
  counted?: FactCheck;
  /** The ports that this paragraph spoke of last (a key of facts), for "three sockets" */
  ports?: string;
  /** The one limit that the sentence before put on a series of levels, for "every step is over it" */
  limit?: LimitSaid;
  /** Header row of the table in hand: texts by column */
  header?: string[];
  table?: number;
  /** The turn ended by asking, and what it set is for the answer. */
  questioned?: true;
  /** The block was a turn of a conversation, which the next turn goes on from. */
  turn?: true;
  /** First cell of the row in hand */
  rowHead?: string;
  row?: number;
}

/** Every member from the beginning: all states are of one shape to the engine, which then reads them at once. */
const nothing: Carry = {
  headings: [],
  paragraph: {},
  concept: undefined,
  earlierConcept: undefined,
  hue: undefined,
  gamut: undefined,
  stat: undefined,
  unit: undefined,
  unitIsOld: undefined,
  sets: undefined,
  rival: undefined,
  asked: undefined,
  askedUnit: undefined,
  askedAgainst: undefined,
  window: undefined,
  claimed: undefined,
  topic: undefined,
  said: undefined,
  statement: undefined,
  counted: undefined,
  ports: undefined,
  limit: undefined,
  header: undefined,
  table: undefined,
  questioned: undefined,
  turn: undefined,
  rowHead: undefined,
  row: undefined,
};

function under(headings: Carry['headings']): Carry {
  const carry: Carry = { ...nothing };
  carry.headings = headings;
  carry.paragraph = {};
  return carry;
}

export function startOfArticle(): Carry {
  return under([]);
}

/**
 * The state at the beginning of a block, from the state at the end of the one before. A turn of a conversation goes on
 * with what the turn before spoke of.
 */
export function enterBlock(carry: Carry, block: Block, text: string): Carry {
  const turn = block.kind !== 'heading' && block.kind !== 'cell' && isTurn(text);
  if (turn) {
    // Conditions last to the paragraph's end, but what a question set is for its answer.
    if (carry.turn) return carry.questioned ? carry : { ...carry, paragraph: {} };
    const next = under(carry.headings);
    next.turn = turn;
    return next;
  }
  if (block.kind === 'heading') {
    const level = block.level ?? 1;
    return under(carry.headings.filter((heading) => heading.level < level));
  }
  if (block.kind === 'cell' && block.table) {
    const same = carry.table === block.table.number;
    const next = under(carry.headings);
    next.table = block.table.number;
    if (same && carry.header) next.header = carry.header;
    if (block.table.column > 0 && same && carry.rowHead !== undefined && carry.row === block.table.row)
      next.rowHead = carry.rowHead;
    next.row = block.table.row;
    if (headingConcept(carry) !== undefined)
      next.headings = carry.headings.map(({ level, conditions }) => ({ level, conditions }));
    return next;
  }
  return under(carry.headings);
}

/** Conditions in force: each dimension by itself, the paragraph before the headings, inner before outer. */
export function carriedConditions(carry: Carry): CarriedConditions {
  const result: CarriedConditions = {};
  for (const heading of carry.headings) Object.assign(result, heading.conditions);
  return Object.assign(result, carry.paragraph);
}

/** The set that the innermost heading with a set's name speaks of ("## The Oboe"); `own` included. */
export function sectionUnit(carry: Carry): string | undefined {
  for (let at = carry.headings.length - 1; at >= 0; at -= 1)
    if (carry.headings[at]!.unit !== undefined) return carry.headings[at]!.unit;
  return undefined;
}

/** The concept in force: the paragraph's, else the innermost heading's. */
export function carriedConcept(carry: Carry): string | undefined {
  if (carry.concept) return carry.concept;
  return headingConcept(carry);
}

function headingConcept(carry: Carry): string | undefined {
  for (let at = carry.headings.length - 1; at >= 0; at -= 1)
    if (carry.headings[at]!.concept) return carry.headings[at]!.concept;
  return undefined;
}

/** What was spoken of before the concept in force, nearest first. */
export function earlierConcepts(carry: Carry): string[] {
  return [carry.concept, carry.earlierConcept, headingConcept(carry)].filter((key) => key !== undefined);
}
