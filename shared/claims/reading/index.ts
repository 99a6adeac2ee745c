import { splitSentences } from '../../article/sentences.ts';
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
  findings: { sentence: number; finding: Finding }[];
  after: Carry;
}

export function createReadingMemo(): ReadingMemo {
  return { context: null, blocks: new Map() };
}

function readBlock(
  sentences: readonly Sentence[],
  block: Block,
  context: ReadingContext,
  before: Carry,
): BlockReading {
  const carry: Carry = structuredCopy(before);
  const findings: BlockReading['findings'] = [];
  if (block.kind === 'cell' && block.table && sentences.length > 0) {
    const [first] = sentences;
    const cell = sentences.length === 1 ? first!.text : sentences.map((sentence) => sentence.text).join(' ');
    for (const finding of readCell(cell, block.table, context, carry))
      findings.push({ sentence: 0, finding });
    return { findings, after: carry };
  }
  for (const [order, sentence] of sentences.entries()) {
    for (const finding of readSentence(sentence.text, context, carry, block.kind === 'heading'))
      findings.push({ sentence: order, finding });
  }
  if (block.kind === 'heading')
    for (const heading of carry.headings) if (heading.level === 0) heading.level = block.level ?? 1;
  return { findings, after: carry };
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
  memo?: ReadingMemo,
): { sentences: Sentence[]; proposals: Proposal[] } {
  const sentences = splitSentences(text, context.locale);
  const proposals: Proposal[] = [];
  if (memo && memo.context !== context) {
    memo.context = context;
    memo.blocks = new Map();
  }
  const kept = new Map<string, BlockReading>();
  let carry = startOfArticle();
  let next = 0;
  for (const block of text.blocks) {
    const first = next;
    while (next < sentences.length && sentences[next]!.block === block.index) next += 1;
    const own = sentences.slice(first, next);
    const before = enterBlock(carry, block);
    let reading: BlockReading | undefined;
    let key = '';
    if (memo) {
      key = `${block.kind}${block.level ?? ''}${block.table ? `${block.table.row}/${block.table.column}` : ''}\u0000${text.text.slice(block.start, block.end)}\u0000${JSON.stringify(before)}`;
      reading = memo.blocks.get(key);
    }
    reading ??= readBlock(own, block, context, before);
    if (memo) kept.set(key, reading);
    carry = reading.after;
    for (const { sentence, finding } of reading.findings) {
      const at = own[sentence]!;
      proposals.push({
        start: at.start + finding.start,
        end: at.start + finding.end,
        text: text.text.slice(at.start + finding.start, at.start + finding.end),
        sentence: at.index,
        check: finding.check,
        ...(finding.why !== undefined && { why: finding.why }),
        ...(finding.asks && { asks: finding.asks }),
        ...(finding.opinion && { opinion: true }),
        rule: finding.rule,
        words: finding.words.map((word) => ({ start: at.start + word.start, end: at.start + word.end })),
      });
    }
  }
  if (memo) memo.blocks = kept;
  return { sentences, proposals };
}
