import type { ArticleText, Block, ReadingContext } from '../../contract/articleText.ts';
import type { Proposal, Sentence, Span } from '../../contract/claim.ts';
import {
  type BlockReading,
  type KnownSentences,
  readBlock,
  readingAfter,
  type SentenceReading,
} from './blockReading.ts';
import { type Carry, enterBlock, startOfArticle } from './carry.ts';

/** The blocks of the call before, so that an edit re-reads only the sentences that it changes. */
export interface ReadingMemo {
  context: ReadingContext | null;
  blocks: readonly PlacedBlock[];
}

/** A block's reading at its place in the article. */
interface PlacedBlock {
  block: Block;
  text: string;
  /** The state that the block before left; kept by identity, so that an untouched stretch needs no comparison. */
  from: Carry;
  reading: BlockReading;
  /** Index of its first sentence */
  first: number;
  sentences: readonly Sentence[];
  proposals: readonly Proposal[];
}

export function createReadingMemo(): ReadingMemo {
  return { context: null, blocks: [] };
}

/** What reading an article gives. */
export interface ArticleReading {
  sentences: Sentence[];
  proposals: Proposal[];
  /** What each proposal was copied from: the same object for as long as its block's reading is kept. */
  sources: Proposal[];
}

/**
 * Reads an article: its sentences, and for every claim in them the check that it makes, or the reason why there
 * is none. Offsets are UTF-16 code units of the article's plain text. Pure; the memo only saves time. What was not
 * moved by an edit is given out as the same objects again, so nothing of it may be changed.
 */
export function readArticle(
  text: ArticleText,
  context: ReadingContext,
  memo: ReadingMemo = createReadingMemo(),
): ArticleReading {
  const old = memo.context === context ? memo.blocks : [];
  const known = matchBlocks(text, old);
  const placed: PlacedBlock[] = [];
  const result: ArticleReading = { sentences: [], proposals: [], sources: [] };
  let carry = startOfArticle();
  for (let order = 0; order < text.blocks.length; order++) {
    const block = text.blocks[order]!;
    const same = known.same[order];
    const next = placeBlock(
      same ?? ownText(text.text.slice(block.start, block.end)),
      block,
      carry,
      result.sentences.length,
      context,
      known.sentences,
    );
    carry = next.reading.after;
    placed.push(next);
    for (const sentence of next.sentences) result.sentences.push(sentence);
    for (const proposal of next.proposals) result.proposals.push(proposal);
    for (const source of next.reading.proposals) result.sources.push(source);
  }
  memo.context = context;
  memo.blocks = placed;
  return result;
}

/** A short piece of a text keeps the whole text alive (V8 slices refer to their parent); a joined one does not. */
function ownText(slice: string): string {
  return `${slice}\n`.slice(0, -1);
}

/**
 * For each block the one of the call before that says the same: those before and after all that changed, and among
 * what lies between those with the same words. Sentences of the rest are given by their words.
 */
function matchBlocks(
  { text, blocks }: ArticleText,
  old: readonly PlacedBlock[],
): { same: (PlacedBlock | undefined)[]; sentences: KnownSentences } {
  const same = new Array<PlacedBlock | undefined>(blocks.length).fill(undefined);
  const isSame = (block: Block, other: PlacedBlock) =>
    isAlike(block, other.block) &&
    block.end - block.start === other.text.length &&
    // Slices are compared a word at a time, `startsWith` by characters: six times as slow.
    text.slice(block.start, block.end) === other.text;
  const shorter = Math.min(blocks.length, old.length);
  let head = 0;
  for (; head < shorter && isSame(blocks[head]!, old[head]!); head++) same[head] = old[head];
  let tail = 0;
  for (; tail < shorter - head; tail++) {
    const block = blocks[blocks.length - 1 - tail]!;
    const other = old[old.length - 1 - tail]!;
    if (!isSame(block, other)) break;
    same[blocks.length - 1 - tail] = other;
  }
  const between = old.slice(head, old.length - tail);
  for (let order = head; order < blocks.length - tail; order++)
    same[order] = between.find((other) => isSame(blocks[order]!, other));
  const sentences = new Map<string, SentenceReading[]>();
  for (const { block, reading } of between) {
    if (block.kind === 'cell') continue;
    for (const one of reading.sentences) {
      const list = sentences.get(one.sentence.text);
      if (list) list.push(one);
      else sentences.set(one.sentence.text, [one]);
    }
  }
  return { same, sentences };
}

/** The same kind of block, a cell at the same place of the same table. */
function isAlike(one: Block, other: Block): boolean {
  return (
    one.kind === other.kind &&
    one.level === other.level &&
    one.table?.number === other.table?.number &&
    one.table?.row === other.table?.row &&
    one.table?.column === other.table?.column
  );
}

const unplaced: Partial<PlacedBlock> = {};

/**
 * Objects are made as copies of what was read, never by literals: V8 learns from the first reading of an article that
 * what a literal makes lives long, then puts all of it among the old, and typing pays with pauses of some 20 ms.
 * @param same the block as it stood in the call before, or the text of a block that is new
 */
function placeBlock(
  same: PlacedBlock | string,
  block: Block,
  from: Carry,
  first: number,
  context: ReadingContext,
  known: KnownSentences,
): PlacedBlock {
  const isNew = typeof same === 'string';
  const text = isNew ? same : same.text;
  let reading: BlockReading | undefined = isNew || same.from !== from ? undefined : same.reading;
  if (!reading) {
    const before = enterBlock(from, block, text);
    reading = isNew ? undefined : readingAfter(same.reading, block, before);
    reading ??= readBlock(text, block, context, before, known);
  }
  const stands =
    !isNew &&
    reading === same.reading &&
    first === same.first &&
    block.start === same.block.start &&
    block.index === same.block.index;
  if (stands) return same.from === from ? same : { ...same, from };
  const sentences = reading.sentences.map((one, order) => {
    const sentence: Sentence = { ...one.sentence };
    sentence.index = first + order;
    sentence.start += block.start;
    sentence.end += block.start;
    sentence.block = block.index;
    return sentence;
  });
  const proposals = reading.proposals.map((one) => {
    const proposal: Proposal = { ...one };
    proposal.start += block.start;
    proposal.end += block.start;
    proposal.sentence += first;
    proposal.words = one.words.map((word) => {
      const span: Span = { ...word };
      span.start += block.start;
      span.end += block.start;
      return span;
    });
    return proposal;
  });
  const before = isNew ? unplaced : same;
  return { ...before, block, text, from, reading, first, sentences, proposals };
}
