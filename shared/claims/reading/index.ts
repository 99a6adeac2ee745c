import { splitBlock } from '../../article/sentences.ts';
import type { ArticleText, Block, ReadingContext } from '../../contract/articleText.ts';
import type { Proposal, Sentence } from '../../contract/claim.ts';
import { type Carry, enterBlock, startOfArticle } from './carry.ts';
import type { Finding } from './finding.ts';
import { readSentence } from './sentence.ts';
import { readCell } from './table.ts';

/** Readings of blocks kept from an earlier call, so that an edit re-reads only what it changes. */
export interface ReadingMemo {
  context: ReadingContext | null;
  blocks: Map<string, BlockReading>;
}

interface BlockReading {
  /** Offsets from the block's start */
  sentences: readonly { text: string; start: number; end: number }[];
  findings: { sentence: number; finding: Finding }[];
  after: Carry;
}

export function createReadingMemo(): ReadingMemo {
  return { context: null, blocks: new Map() };
}

function readBlock(text: string, block: Block, context: ReadingContext, before: Carry): BlockReading {
  const carry: Carry = structuredCopy(before);
  const sentences = splitBlock(text, context.locale).map((span) => ({
    ...span,
    text: text.slice(span.start, span.end),
  }));
  const findings: BlockReading['findings'] = [];
  if (block.kind === 'cell' && block.table && sentences.length > 0) {
    for (const finding of readCell(text, block.table, context, carry))
      findings.push({ sentence: 0, finding });
    return { sentences, findings, after: carry };
  }
  for (const [order, sentence] of sentences.entries())
    for (const finding of readSentence(sentence.text, context, carry, block.kind === 'heading'))
      findings.push({ sentence: order, finding });
  if (block.kind === 'heading')
    for (const heading of carry.headings) if (heading.level === 0) heading.level = block.level ?? 1;
  return { sentences, findings, after: carry };
}

function structuredCopy(carry: Carry): Carry {
  return {
    ...carry,
    headings: carry.headings.map((heading) => ({ ...heading, conditions: { ...heading.conditions } })),
    paragraph: { ...carry.paragraph },
    ...(carry.header && { header: [...carry.header] }),
  };
}

/**
 * Reads an article: its sentences, and for every claim in them the check that it makes, or the reason why there
 * is none. Offsets are UTF-16 code units of the article's plain text. Pure; the memo only saves time.
 */
export function readArticle(
  text: ArticleText,
  context: ReadingContext,
  memo: ReadingMemo = createReadingMemo(),
): { sentences: Sentence[]; proposals: Proposal[] } {
  if (memo.context !== context) {
    memo.context = context;
    memo.blocks = new Map();
  }
  const sentences: Sentence[] = [];
  const proposals: Proposal[] = [];
  const kept = new Map<string, BlockReading>();
  let carry = startOfArticle();
  for (const block of text.blocks) {
    const blockText = text.text.slice(block.start, block.end);
    const before = enterBlock(carry, block);
    const place = block.table ? `${block.table.row}/${block.table.column}` : '';
    const key = `${block.kind}${block.level ?? ''}${place}\u0000${blockText}\u0000${carryKey(before)}`;
    const reading = memo.blocks.get(key) ?? readBlock(blockText, block, context, before);
    kept.set(key, reading);
    carry = reading.after;
    const first = sentences.length;
    for (const span of reading.sentences)
      sentences.push({
        index: sentences.length,
        text: span.text,
        start: block.start + span.start,
        end: block.start + span.end,
        block: block.index,
      });
    for (const { sentence, finding } of reading.findings)
      proposals.push(proposalOf(finding, sentences[first + sentence]!, text.text));
  }
  memo.blocks = kept;
  return { sentences, proposals };
}

/** The carried state as text; plain paragraphs under one heading share it, so that most keys are short. */
function carryKey(carry: Carry): string {
  return carry.headings.length === 0 && carry.table === undefined ? '' : JSON.stringify(carry);
}

function proposalOf(finding: Finding, at: Sentence, text: string): Proposal {
  return {
    start: at.start + finding.start,
    end: at.start + finding.end,
    text: text.slice(at.start + finding.start, at.start + finding.end),
    sentence: at.index,
    check: finding.check,
    ...(finding.why !== undefined && { why: finding.why }),
    ...(finding.asks && { asks: finding.asks }),
    ...(finding.opinion && { opinion: true }),
    rule: finding.rule,
    words: finding.words.map((word) => ({ start: at.start + word.start, end: at.start + word.end })),
  };
}
