import type { ArticleText, Block, ReadingContext } from '../../contract/articleText.ts';
import type { Proposal, Sentence } from '../../contract/claim.ts';
import { type BlockReading, type KnownSentences, readBlock, type SentenceReading } from './blockReading.ts';
import { sameCarry } from './carriedState.ts';
import { type Carry, enterBlock, startOfArticle } from './carry.ts';
import type { Finding } from './finding.ts';

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
  findings: readonly Finding[];
}

export function createReadingMemo(): ReadingMemo {
  return { context: null, blocks: [] };
}

/** What reading an article gives. */
export interface ArticleReading {
  sentences: Sentence[];
  proposals: Proposal[];
  /** What each proposal was made from: the same object for as long as its sentence's reading is kept. */
  findings: Finding[];
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
  const result: ArticleReading = { sentences: [], proposals: [], findings: [] };
  let carry = startOfArticle();
  for (const [order, block] of text.blocks.entries()) {
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
    for (const finding of next.findings) result.findings.push(finding);
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
    for (const sentence of reading.sentences) {
      const list = sentences.get(sentence.text);
      if (list) list.push(sentence);
      else sentences.set(sentence.text, [sentence]);
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

/** @param same the block as it stood in the call before, or the text of a block that is new */
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
    const before = enterBlock(from, block);
    reading =
      !isNew && sameCarry(before, same.reading.before)
        ? same.reading
        : readBlock(text, block, context, before, known);
  }
  const stands =
    !isNew &&
    reading === same.reading &&
    first === same.first &&
    block.start === same.block.start &&
    block.index === same.block.index;
  if (stands) return same.from === from ? same : { ...same, from };
  const sentences: Sentence[] = [];
  const proposals: Proposal[] = [];
  const findings: Finding[] = [];
  for (const one of reading.sentences) {
    const sentence = {
      index: first + sentences.length,
      text: one.text,
      start: block.start + one.start,
      end: block.start + one.end,
      block: block.index,
    };
    sentences.push(sentence);
    for (const finding of one.findings) {
      proposals.push(proposalOf(finding, sentence, text, one.start));
      findings.push(finding);
    }
  }
  return { block, text, from, reading, first, sentences, proposals, findings };
}

/** @param blockText the block's text, in which the sentence begins at `offset` */
function proposalOf(finding: Finding, at: Sentence, blockText: string, offset: number): Proposal {
  const words = finding.words.map((word) => ({ start: at.start + word.start, end: at.start + word.end }));
  return {
    start: at.start + finding.start,
    end: at.start + finding.end,
    text: blockText.slice(offset + finding.start, offset + finding.end),
    sentence: at.index,
    check: finding.check,
    ...(finding.why !== undefined && { why: finding.why }),
    ...(finding.asks && { asks: finding.asks }),
    ...(finding.opinion && { opinion: true }),
    rule: finding.rule,
    words,
  };
}
