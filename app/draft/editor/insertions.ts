import { Fragment, type Node, Slice } from 'prosemirror-model';
import {
  type Command,
  type EditorState,
  NodeSelection,
  TextSelection,
  type Transaction,
} from 'prosemirror-state';
import { documentOfMarkdown } from '../document/readMarkdown.ts';
import { articleSchema, isSafeAddress } from '../document/schema.ts';

const { nodes, marks } = articleSchema;

/** The address under which an article names a photo of a unit, as a dossier's folders have it. */
export function photoSource(unit: string, name: string): string {
  return `../units/${unit}/photos/${encodeURIComponent(name)}`;
}

/**
 * A photo as a paragraph of its own after the present block, or the one at a position, with its alternative text; a
 * caption may follow.
 */
export function insertPhoto(src: string, alt: string, caption: string, at?: number): Command {
  return (state, dispatch) => {
    const $to = at === undefined ? state.selection.$to : state.doc.resolve(at);
    const after = $to.depth === 0 ? $to.pos : $to.after(1);
    const added: Node[] = [nodes.paragraph!.create(null, nodes.image!.create({ src, alt }))];
    if (caption) added.push(nodes.paragraph!.create(null, articleSchema.text(caption, [marks.em!.create()])));
    const transaction = state.tr.insert(after, added);
    dispatch?.(transaction.setSelection(NodeSelection.create(transaction.doc, after + 1)).scrollIntoView());
    return true;
  };
}

/** The link around the cursor or in the selection, with its whole extent; null when there is none. */
export function linkAround(state: Parameters<Command>[0]): { from: number; to: number; href: string } | null {
  const { $from, from, to } = state.selection;
  const link = marks.link!.isInSet($from.marks()) ?? marks.link!.isInSet($from.nodeAfter?.marks ?? []);
  if (!link) return null;
  let [start, end] = [from, to];
  $from.parent.forEach((node, offset) => {
    const at = $from.start() + offset;
    if (!link.isInSet(node.marks)) return;
    if (at <= from && at + node.nodeSize >= from) {
      start = Math.min(start, at);
      end = Math.max(end, at + node.nodeSize);
    }
  });
  return { from: start, to: end, href: link.attrs.href as string };
}

/**
 * Makes the selected words a link, changes the one around the cursor, or writes the address itself where nothing
 * is selected; an empty address takes the link away. False: the address is of a kind that an article may not carry.
 */
export function setLink(href: string): Command {
  return (state, dispatch) => {
    const around = linkAround(state);
    const { from, to } = around ?? state.selection;
    if (href === '') {
      if (around) dispatch?.(state.tr.removeMark(from, to, marks.link!));
      return around !== null;
    }
    if (!isSafeAddress(href)) return false;
    const mark = marks.link!.create({ href });
    const transaction =
      from === to
        ? state.tr.insert(from, articleSchema.text(href, [mark]))
        : state.tr.removeMark(from, to, marks.link!).addMark(from, to, mark);
    dispatch?.(transaction.removeStoredMark(mark).scrollIntoView());
    return true;
  };
}

/**
 * A sentence (Markdown, one paragraph) at the cursor, with a space before it where one is missing; its first blank
 * `…` is selected. `from` and `to` enclose the sentence in the new document.
 */
export function phraseAtCursor(
  state: EditorState,
  markdown: string,
): { transaction: Transaction; from: number; to: number } {
  const { from, $from } = state.selection;
  const before = $from.parent.textBetween(0, $from.parentOffset, undefined, '\ufffc');
  const { content } = documentOfMarkdown(markdown).firstChild!;
  const lead = /[^\s(“]$/.test(before) ? Fragment.from(articleSchema.text(' ')) : Fragment.empty;
  const added = lead.append(content);
  const transaction = state.tr.replaceSelection(new Slice(added, 0, 0));
  const blank = added.textBetween(0, added.size, undefined, '\ufffc').indexOf('…');
  if (blank >= 0)
    transaction.setSelection(TextSelection.create(transaction.doc, from + blank, from + blank + 1));
  return { transaction: transaction.scrollIntoView(), from: from + lead.size, to: from + added.size };
}
