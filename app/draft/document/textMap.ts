import type { Node } from 'prosemirror-model';
import type { ArticleText, Block, BlockKind } from '../../../shared/contract/articleText.ts';
import type { Span } from '../../../shared/contract/claim.ts';

/** A stretch of plain text and the document position of its first character, counted from its textblock's start. */
interface Stretch {
  /** Offset in its piece's text */
  at: number;
  length: number;
  /** Document position relative to the start of the textblock's content */
  from: number;
  /** An image's alt text is one place in the document, however long it is. */
  atom: boolean;
}

interface Piece {
  text: string;
  alt: boolean;
  stretches: readonly Stretch[];
}

/** Nodes never change, so a textblock's pieces are found once; typing rescans one paragraph. */
const piecesOf = new WeakMap<Node, readonly Piece[]>();

function readPieces(block: Node): readonly Piece[] {
  let text = '';
  const stretches: Stretch[] = [];
  const before: Piece[] = [];
  const after: Piece[] = [];
  block.forEach((child, offset) => {
    if (child.type.name === 'image') {
      const alt = (child.attrs.alt as string).trim();
      if (alt === '') return;
      const piece = {
        text: alt,
        alt: true,
        stretches: [{ at: 0, length: alt.length, from: offset, atom: true }],
      };
      (text.trim() === '' ? before : after).push(piece);
      return;
    }
    const isBreak = child.type.name === 'hard_break';
    if (!isBreak && (!child.isText || child.marks.some((mark) => mark.type.name === 'code'))) return;
    const added = isBreak ? ' ' : child.text!;
    const last = stretches.at(-1);
    if (last && last.from + last.length === offset) last.length += added.length;
    else stretches.push({ at: text.length, length: added.length, from: offset, atom: false });
    text += added;
  });
  const trimmed = text.trim();
  const body: Piece[] = trimmed === '' ? [] : [trim(text, trimmed, stretches)];
  return [...before, ...body, ...after];
}

function trim(text: string, trimmed: string, stretches: readonly Stretch[]): Piece {
  const cut = text.indexOf(trimmed);
  const kept: Stretch[] = [];
  for (const stretch of stretches) {
    const from = Math.max(stretch.at, cut);
    const to = Math.min(stretch.at + stretch.length, cut + trimmed.length);
    if (to > from)
      kept.push({ at: from - cut, length: to - from, from: stretch.from + from - stretch.at, atom: false });
  }
  return { text: trimmed, alt: false, stretches: kept };
}

function pieces(block: Node): readonly Piece[] {
  let known = piecesOf.get(block);
  if (!known) {
    known = readPieces(block);
    piecesOf.set(block, known);
  }
  return known;
}

function isEmphasisOnly(block: Node): boolean {
  let seen = false;
  for (let index = 0; index < block.childCount; index += 1) {
    const child = block.child(index);
    if (child.isText && child.text!.trim() === '') continue;
    if (!child.marks.some((mark) => mark.type.name === 'em')) return false;
    seen = true;
  }
  return seen;
}

/** One textblock's content in both countings; sorted by both. */
interface Placed {
  start: number;
  end: number;
  /** Document position of the textblock's content */
  content: number;
  stretches: readonly Stretch[];
}

/** The article's plain text with the way between its UTF-16 offsets and document positions. */
export interface TextMap {
  text: ArticleText;
  /** Document range of a span of plain text; null when no part of it is in the document. */
  rangeOf(span: Span): { from: number; to: number } | null;
  /** Span of plain text of a document range; null when the range holds no text that is read. */
  spanOf(from: number, to: number): Span | null;
}

/** The plain text of an editor document; equal to `plainTextOfMarkdown` of the document's Markdown. */
export function textMapOf(document: Node): TextMap {
  const blocks: Block[] = [];
  const placed: Placed[] = [];
  let text = '';
  let tables = -1;
  let lastWasImage = false;

  const visit = (node: Node, position: number, kind: BlockKind, cell: Block['table'] | undefined): void => {
    if (node.isTextblock) {
      if (node.type.name === 'code_block') return;
      const found = pieces(node);
      const heading = node.type.name === 'heading';
      const body: BlockKind = heading
        ? 'heading'
        : kind === 'paragraph' && lastWasImage && isEmphasisOnly(node)
          ? 'caption'
          : kind;
      for (const piece of found) {
        if (text !== '') text += '\n\n';
        const start = text.length;
        text += piece.text;
        blocks.push({
          index: blocks.length,
          kind: piece.alt ? 'alt' : body,
          start,
          end: text.length,
          ...(heading && !piece.alt ? { level: node.attrs.level as number } : {}),
          ...(cell ? { table: cell } : {}),
        });
        placed.push({ start, end: text.length, content: position + 1, stretches: piece.stretches });
      }
      lastWasImage = found.length > 0 && found.every((piece) => piece.alt);
      return;
    }
    const name = node.type.name;
    if (name === 'table') {
      tables += 1;
      const number = tables;
      node.forEach((row, rowOffset, rowIndex) => {
        row.forEach((tableCell, cellOffset, column) => {
          tableCell.forEach((child, offset) => {
            const at = position + 1 + rowOffset + 1 + cellOffset + 1 + offset;
            visit(child, at, 'cell', { number, row: rowIndex, column });
          });
        });
      });
      return;
    }
    const inner: BlockKind =
      name === 'list_item' || kind === 'item' ? 'item' : name === 'blockquote' ? 'quote' : kind;
    node.forEach((child, offset) => {
      visit(child, position + 1 + offset, inner, cell);
    });
  };
  visit(document, -1, 'paragraph', undefined);

  function placeAt(offset: number): Placed | undefined {
    let low = 0;
    let high = placed.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const place = placed[middle]!;
      if (offset < place.start) high = middle - 1;
      else if (offset >= place.end) low = middle + 1;
      else return place;
    }
    return undefined;
  }

  /** Document range of the one character at `offset`. */
  function character(offset: number): { from: number; to: number } | null {
    const place = placeAt(offset);
    if (!place) return null;
    const inside = offset - place.start;
    const stretch = place.stretches.find((one) => inside >= one.at && inside < one.at + one.length);
    if (!stretch) return null;
    const from = place.content + stretch.from + (stretch.atom ? 0 : inside - stretch.at);
    return { from, to: from + 1 };
  }

  return {
    text: { text, blocks },
    rangeOf({ start, end }) {
      const first = character(start);
      const last = character(end - 1);
      return first && last && last.to > first.from ? { from: first.from, to: last.to } : null;
    },
    spanOf(from, to) {
      let start = -1;
      let end = -1;
      for (const place of placed) {
        for (const stretch of place.stretches) {
          const at = place.content + stretch.from;
          const size = stretch.atom ? 1 : stretch.length;
          if (at + size <= from || at >= to) continue;
          const head = stretch.atom ? 0 : Math.max(from - at, 0);
          const tail = stretch.atom ? stretch.length : Math.min(to - at, stretch.length);
          if (start < 0) start = place.start + stretch.at + head;
          end = place.start + stretch.at + tail;
        }
      }
      return start < 0 ? null : { start, end };
    },
  };
}
