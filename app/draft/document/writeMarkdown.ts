import {
  defaultMarkdownSerializer,
  MarkdownSerializer,
  type MarkdownSerializerState,
} from 'prosemirror-markdown';
import type { Node } from 'prosemirror-model';
import { rememberSource, sourceOf } from './sourceText.ts';

const nodes = defaultMarkdownSerializer.nodes;
const marks = defaultMarkdownSerializer.marks;

/** The text that `write` adds, taken out again: cells are measured and escaped before they are written. */
function captured(state: MarkdownSerializerState, write: () => void): string {
  const open = state as unknown as { out: string };
  const before = open.out;
  open.out = '';
  write();
  const written = open.out;
  open.out = before;
  return written;
}

function writeTable(state: MarkdownSerializerState, table: Node): void {
  const rows: string[][] = [];
  const aligns: (string | null)[] = [];
  table.forEach((row, _offset, rowIndex) => {
    const cells: string[] = [];
    row.forEach((cell) => {
      if (rowIndex === 0) aligns.push(cell.attrs.align as string | null);
      const text = captured(state, () =>
        cell.forEach((paragraph) => {
          state.renderInline(paragraph, false);
        }),
      );
      cells.push(text.replace(/\\\n|\n/g, ' ').replace(/\|/g, '\\|'));
    });
    rows.push(cells);
  });
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const rule = aligns.map((align) =>
    align === 'center' ? ':-:' : align === 'right' ? '--:' : align === 'left' ? ':--' : '---',
  );
  [rows[0] ?? [], rule, ...rows.slice(1)].forEach((cells, index) => {
    if (index > 0) state.ensureNewLine();
    state.write(line(cells));
  });
  state.closeBlock(table);
}

const serializer = new MarkdownSerializer(
  {
    ...nodes,
    bullet_list(state, node, parent, index) {
      const before = index > 0 ? parent.maybeChild(index - 1) : null;
      const bullet = node.attrs.bullet as string;
      // Two lists in a row are two lists only by their different marks.
      const mark =
        before?.type === node.type && before.attrs.bullet === bullet ? (bullet === '-' ? '*' : '-') : bullet;
      state.renderList(node, '  ', () => `${mark} `);
    },
    html_block(state, node) {
      state.write((node.attrs.html as string).replace(/\n+$/, ''));
      state.closeBlock(node);
    },
    html_inline(state, node) {
      state.write(node.attrs.html as string);
    },
    image(state, node) {
      const { alt, src, title } = node.attrs as { alt: string; src: string; title: string | null };
      const address = /[\s()<>]/.test(src) ? `<${src.replace(/[<>]/g, '\\$&')}>` : src;
      state.write(`![${state.esc(alt)}](${address}${title ? ` "${title.replace(/["\\]/g, '\\$&')}"` : ''})`);
    },
    hard_break(state, _node, parent, index) {
      for (let after = index + 1; after < parent.childCount; after += 1) {
        if (parent.child(after).type.name !== 'hard_break') return state.write('\\\n');
      }
    },
    table: writeTable,
  },
  {
    ...marks,
    // A claim leaves no trace in the Markdown; it is stored beside the text as an annotation.
    claim: { open: '', close: '', mixable: true },
    link: {
      open: '[',
      close: (_state, mark) => {
        const { href, title } = mark.attrs as { href: string; title: string | null };
        const address = /[\s()<>]/.test(href) ? `<${href.replace(/[<>]/g, '\\$&')}>` : href;
        return `](${address}${title ? ` "${title.replace(/["\\]/g, '\\$&')}"` : ''})`;
      },
      mixable: true,
    },
  },
  // What would read back as an entity, a tag or an autolink is escaped.
  { escapeExtraCharacters: /&(?=#?\w+;)|<(?=[A-Za-z/!?])/g, strict: false },
);

/** One block of the document as Markdown; computed once a node. */
function blockMarkdown(document: Node, index: number): string {
  const block = document.child(index);
  const kept = sourceOf(block);
  if (kept !== undefined) return kept;
  const before = index > 0 ? document.child(index - 1) : null;
  const pair = before?.type === block.type && block.type.name.endsWith('_list') ? [before, block] : [block];
  const written = serializer.serialize(document.type.create(null, pair), { tightLists: true });
  if (pair.length === 1) {
    rememberSource(block, written);
    return written;
  }
  const alone = serializer.serialize(document.type.create(null, [before!]), { tightLists: true });
  return written.slice(alone.length).replace(/^\n+/, '');
}

/** The article as Markdown, ending in one line feed. Blocks that nobody touched keep their author's spelling. */
export function markdownOfDocument(document: Node): string {
  const blocks: string[] = [];
  for (let index = 0; index < document.childCount; index += 1) blocks.push(blockMarkdown(document, index));
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}
