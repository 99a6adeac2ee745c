import { splitBlock } from '../../article/sentences.ts';
import type { Block, ReadingContext } from '../../contract/articleText.ts';
import { copyCarry, sameCarry } from './carriedState.ts';
import type { Carry } from './carry.ts';
import type { Finding } from './finding.ts';
import { readSentence } from './sentence.ts';
import { readCell } from './table.ts';

/** One sentence as it was read after `before`; the same words after the same state are the same reading. */
export interface SentenceReading {
  /** Offsets from the block's start */
  start: number;
  end: number;
  text: string;
  isHeading: boolean;
  before: Carry;
  after: Carry;
  /** Offsets from the sentence's start */
  findings: readonly Finding[];
}

/** One block as it was read in the state `before`. Never changed once made. */
export interface BlockReading {
  before: Carry;
  after: Carry;
  sentences: readonly SentenceReading[];
}

/** Sentences read before, by their words. */
export type KnownSentences = ReadonlyMap<string, readonly SentenceReading[]>;

/** Reads a block; a sentence that is known in the state that it would be read in is not read again. */
export function readBlock(
  text: string,
  block: Block,
  context: ReadingContext,
  before: Carry,
  known: KnownSentences,
): BlockReading {
  const spans = splitBlock(text, context.locale);
  if (block.kind === 'cell' && block.table && spans.length > 0)
    return readTableCell(text, spans, block.table, context, before);
  const isHeading = block.kind === 'heading';
  const sentences: SentenceReading[] = [];
  let carry = before;
  for (const { start, end } of spans) {
    const words = text.slice(start, end);
    const same = known.get(words)?.find((one) => one.isHeading === isHeading && sameCarry(one.before, carry));
    const reading = same
      ? { ...same, start, end }
      : { start, end, ...readFrom(words, context, carry, isHeading) };
    sentences.push(reading);
    carry = reading.after;
  }
  return { before, after: isHeading ? withLevel(carry, block.level ?? 1) : carry, sentences };
}

function readFrom(
  text: string,
  context: ReadingContext,
  before: Carry,
  isHeading: boolean,
): Omit<SentenceReading, 'start' | 'end'> {
  const after = copyCarry(before);
  const findings = readSentence(text, context, after, isHeading);
  return { text, isHeading, before, after, findings };
}

/** A cell is read as one sentence with its column's header and its row's head. */
function readTableCell(
  text: string,
  spans: readonly { start: number; end: number }[],
  place: NonNullable<Block['table']>,
  context: ReadingContext,
  before: Carry,
): BlockReading {
  const after = copyCarry(before);
  const findings = readCell(text, place, context, after);
  const sentences = spans.map(({ start, end }, order) => ({
    start,
    end,
    text: text.slice(start, end),
    isHeading: false,
    before,
    after,
    findings: order === 0 ? findings : [],
  }));
  return { before, after, sentences };
}

/** The reader of a heading's sentence does not know its level. */
function withLevel(carry: Carry, level: number): Carry {
  return {
    ...carry,
    headings: carry.headings.map((heading) => (heading.level === 0 ? { ...heading, level } : heading)),
  };
}
