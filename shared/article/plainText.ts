import MarkdownIt, { type Token as MarkdownToken } from 'markdown-it';
import type { ArticleText, Block, BlockKind } from '../contract/articleText.ts';

/** CommonMark plus tables; typographic replacements stay off, so that the text is the author's own. */
const parser = new MarkdownIt('commonmark').enable('table');

/** What one inline token adds to its block's text. */
function inlineText(token: MarkdownToken): string {
  switch (token.type) {
    case 'text':
    case 'text_special':
      return token.content;
    case 'softbreak':
    case 'hardbreak':
      return ' ';
    default:
      // Emphasis and link marks carry no text; code and HTML are left out.
      return '';
  }
}

/** Text of the children of an image, which CommonMark makes its alternative text. */
function altText(token: MarkdownToken): string {
  return (token.children ?? [])
    .map((child) => (child.type === 'image' ? altText(child) : inlineText(child)))
    .join('');
}

interface Piece {
  text: string;
  kind: BlockKind;
  level?: number;
  table?: Block['table'];
}

/** One inline run: its own text as a block, each image's alt text as a block where it stands. */
function inlinePieces(inline: MarkdownToken, kind: BlockKind): Piece[] {
  const alts: { text: string; afterText: boolean }[] = [];
  let text = '';
  for (const child of inline.children ?? []) {
    if (child.type === 'image') alts.push({ text: altText(child).trim(), afterText: text.trim() !== '' });
    else text += inlineText(child);
  }
  const alt = (afterText: boolean): Piece[] =>
    alts.filter((entry) => entry.afterText === afterText).map((entry) => ({ text: entry.text, kind: 'alt' }));
  return [...alt(false), { text: text.trim(), kind }, ...alt(true)];
}

/** A paragraph wholly in emphasis, straight after an image that stands alone, is that image's caption. */
function isEmphasisOnly(inline: MarkdownToken): boolean {
  let depth = 0;
  let seen = false;
  for (const child of inline.children ?? []) {
    if (child.type === 'em_open') depth += 1;
    else if (child.type === 'em_close') depth -= 1;
    else if (child.type === 'text' && child.content.trim() === '') continue;
    else if (depth === 0) return false;
    else seen = true;
  }
  return seen;
}

/**
 * The plain text of a Markdown article (`formats.md`, "Plain text of an article"): blocks in order joined by
 * two line feeds; empty blocks are no blocks. Offsets are UTF-16 code units of the result.
 */
export function plainTextOfMarkdown(markdown: string): ArticleText {
  const pieces: Piece[] = [];
  let heading: number | undefined;
  let listDepth = 0;
  let quoteDepth = 0;
  let tables = 0;
  let cell: { row: number; column: number } | undefined;
  let row = -1;
  let column = -1;
  let lastWasImage = false;
  for (const token of parser.parse(markdown, {})) {
    switch (token.type) {
      case 'heading_open':
        heading = Number(token.tag.slice(1));
        break;
      case 'heading_close':
        heading = undefined;
        break;
      case 'list_item_open':
        listDepth += 1;
        break;
      case 'list_item_close':
        listDepth -= 1;
        break;
      case 'blockquote_open':
        quoteDepth += 1;
        break;
      case 'blockquote_close':
        quoteDepth -= 1;
        break;
      case 'table_open':
        tables += 1;
        row = -1;
        break;
      case 'tr_open':
        row += 1;
        column = -1;
        break;
      case 'th_open':
      case 'td_open':
        column += 1;
        cell = { row, column };
        break;
      case 'th_close':
      case 'td_close':
        cell = undefined;
        break;
      case 'inline': {
        const base: BlockKind =
          heading !== undefined
            ? 'heading'
            : cell
              ? 'cell'
              : listDepth > 0
                ? 'item'
                : quoteDepth > 0
                  ? 'quote'
                  : 'paragraph';
        const kind: BlockKind =
          base === 'paragraph' && lastWasImage && isEmphasisOnly(token) ? 'caption' : base;
        const made: Piece[] = inlinePieces(token, kind).filter((piece) => piece.text !== '');
        for (const piece of made) {
          if (piece.kind === 'heading') piece.level = heading;
          if (cell) piece.table = { number: tables - 1, row: cell.row, column: cell.column };
        }
        lastWasImage = made.length > 0 && made.every((piece) => piece.kind === 'alt');
        pieces.push(...made);
        break;
      }
    }
  }
  return joinBlocks(pieces);
}

/** Blocks from pieces of text, for callers that hold an article in another form than Markdown. */
export function joinBlocks(pieces: readonly Piece[]): ArticleText {
  const blocks: Block[] = [];
  let text = '';
  for (const piece of pieces) {
    if (text !== '') text += '\n\n';
    const start = text.length;
    text += piece.text;
    blocks.push({
      index: blocks.length,
      kind: piece.kind,
      start,
      end: text.length,
      ...(piece.level !== undefined && { level: piece.level }),
      ...(piece.table && { table: piece.table }),
    });
  }
  return { text, blocks };
}
