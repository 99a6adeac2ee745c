import { splitBlock } from '../../article/sentences.ts';
import type { Block, ReadingContext } from '../../contract/articleText.ts';
import type { Proposal, Sentence, Span } from '../../contract/claim.ts';
import { copyCarry, sameCarry } from './carriedState.ts';
import type { Carry } from './carry.ts';
import type { Finding } from './finding.ts';
import { readSentence } from './sentence.ts';
import { readCell } from './table.ts';

/** One sentence as it was read after `before`; the same words after the same state are the same reading. */
export interface SentenceReading {
  /** As if its block were the whole article */
  sentence: Sentence;
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
  /** Of all its sentences, as if the block were the whole article */
  proposals: readonly Proposal[];
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
  for (const span of spans) {
    const sentence = sentenceOf(text, span, sentences.length);
    const same = known
      .get(sentence.text)
      ?.find((one) => one.isHeading === isHeading && sameCarry(one.before, carry));
    const reading = same ? { ...same, sentence } : readFrom(sentence, context, carry, isHeading);
    sentences.push(reading);
    carry = reading.after;
  }
  const after = isHeading ? withLevel(carry, block.level ?? 1) : carry;
  return { before, after, sentences, proposals: proposalsOf(sentences, text) };
}

function sentenceOf(text: string, { start, end }: Span, index: number): Sentence {
  return { index, text: text.slice(start, end), start, end, block: 0 };
}

function readFrom(
  sentence: Sentence,
  context: ReadingContext,
  before: Carry,
  isHeading: boolean,
): SentenceReading {
  const after = copyCarry(before);
  const findings = readSentence(sentence.text, context, after, isHeading);
  return { sentence, isHeading, before, after, findings };
}

/**
 * What a block's reading becomes in another state before it; undefined where the block has to be read again. A cell
 * below the header sees of the header row no more than its own column and the first: it stands while the others change.
 */
export function readingAfter(known: BlockReading, { table }: Block, before: Carry): BlockReading | undefined {
  if (sameCarry(before, known.before)) return known;
  if (!table || table.row === 0 || table.column === 0) return undefined;
  const { header: now, ...rest } = before;
  const { header: then, ...others } = known.before;
  if (now?.[0] !== then?.[0] || now?.[table.column] !== then?.[table.column] || !sameCarry(rest, others))
    return undefined;
  const after = copyCarry(before);
  const sentences = known.sentences.map((one) => ({ ...one, before, after }));
  return { ...known, before, after, sentences };
}

/** A cell is read as one sentence with its column's header and its row's head. */
function readTableCell(
  text: string,
  spans: readonly Span[],
  place: NonNullable<Block['table']>,
  context: ReadingContext,
  before: Carry,
): BlockReading {
  const after = copyCarry(before);
  const findings = readCell(text, place, context, after);
  const sentences = spans.map((span, order) => ({
    sentence: sentenceOf(text, span, order),
    isHeading: false,
    before,
    after,
    findings: order === 0 ? findings : [],
  }));
  return { before, after, sentences, proposals: proposalsOf(sentences, text) };
}

function proposalsOf(sentences: readonly SentenceReading[], text: string): Proposal[] {
  return sentences.flatMap(({ sentence, findings }) =>
    findings.map((finding) => proposalOf(finding, sentence, text)),
  );
}

function proposalOf(finding: Finding, at: Sentence, blockText: string): Proposal {
  const start = at.start + finding.start;
  const end = at.start + finding.end;
  return {
    start,
    end,
    text: blockText.slice(start, end),
    sentence: at.index,
    check: finding.check,
    ...(finding.why !== undefined && { why: finding.why }),
    ...(finding.asks && { asks: finding.asks }),
    ...(finding.opinion && { opinion: true }),
    rule: finding.rule,
    words: finding.words.map((word) => ({ start: at.start + word.start, end: at.start + word.end })),
  };
}

/** The reader of a heading's sentence does not know its level. */
function withLevel(carry: Carry, level: number): Carry {
  return {
    ...carry,
    headings: carry.headings.map((heading) => (heading.level === 0 ? { ...heading, level } : heading)),
  };
}
