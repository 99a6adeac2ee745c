import type { Node } from 'prosemirror-model';
import { type EditorState, Plugin, PluginKey, type Transaction } from 'prosemirror-state';
import { Decoration, DecorationSet, type EditorView } from 'prosemirror-view';
import { isProblem, type ProofItem, standingOf } from './proofItem.ts';

export interface ProofState {
  /** In order of the text, positions mapped through every edit */
  items: readonly ProofItem[];
  /** Key of the proof that has the reader's attention */
  focus: string | null;
  /** Underlines, the tint behind the words in focus, the line under the title: one set, so that typing maps one. */
  decorations: DecorationSet;
  /** Grows when verdicts or the focus change, not when typing moves things */
  version: number;
}

type ProofMeta = { items: readonly ProofItem[] } | { focus: string | null };

export const proofKey = new PluginKey<ProofState>('proofs');

/**
 * Underlines what claims something and knows which proof has the attention. Typing only maps positions; new
 * verdicts arrive from outside as a transaction that never enters the undo history. `byLine` stands under the
 * title without being part of the text.
 */
export function proofPlugin(byLine: HTMLElement, changed: (state: ProofState) => void): Plugin<ProofState> {
  const decorate = (document: Node, items: readonly ProofItem[], focus: string | null) =>
    DecorationSet.create(document, [
      byLineWidget(document, byLine),
      ...items.map(underline),
      ...items.filter((item) => item.key === focus).map(tint),
    ]);
  return new Plugin<ProofState>({
    key: proofKey,
    state: {
      init: (_config, state) => ({
        items: [],
        focus: null,
        decorations: decorate(state.doc, [], null),
        version: 0,
      }),
      apply(transaction, before, old, state) {
        const meta = transaction.getMeta(proofKey) as ProofMeta | undefined;
        let { items, decorations, focus, version } = before;
        if (meta && 'items' in meta) items = meta.items;
        else if (transaction.docChanged) items = mapped(items, transaction);
        if (meta && 'focus' in meta) focus = meta.focus;
        else if (transaction.selectionSet && !transaction.getMeta('pointless'))
          focus = itemAt(items, state)?.key ?? null;
        if (focus !== null && !items.some((item) => item.key === focus)) focus = null;
        if (items === before.items && focus === before.focus && !transaction.docChanged) return before;
        const isTitleNew = transaction.docChanged && old.doc.firstChild!.type !== state.doc.firstChild!.type;
        if (isTitleNew) decorations = decorate(state.doc, items, focus);
        else {
          if (transaction.docChanged) decorations = decorations.map(transaction.mapping, state.doc);
          if (meta && 'items' in meta) decorations = underlined(decorations, before.items, items, state.doc);
          if (focus !== before.focus || (meta && 'items' in meta && focus !== null)) {
            decorations = tinted(decorations, items, focus, state.doc);
          }
        }
        if ((meta && 'items' in meta) || focus !== before.focus || items.length !== before.items.length)
          version += 1;
        return { items, focus, decorations, version };
      },
    },
    props: { decorations: (state) => proofKey.getState(state)?.decorations },
    view: () => ({
      update(view, beforeState) {
        const now = proofKey.getState(view.state)!;
        if (now.version !== proofKey.getState(beforeState)?.version) changed(now);
      },
    }),
  });
}

function byLineWidget(document: Node, element: HTMLElement): Decoration {
  const first = document.firstChild!;
  const isTitle = first.type.name === 'heading' && first.attrs.level === 1;
  return Decoration.widget(isTitle ? first.nodeSize : 0, element, {
    key: 'by-line',
    side: -1,
    ignoreSelection: true,
    stopEvent: () => true,
  });
}

function underline(item: ProofItem): Decoration {
  return Decoration.inline(
    item.from,
    item.to,
    { class: `claim ${standingOf(item)}`, 'data-proof': item.key },
    { proof: item.key },
  );
}

/** The same set where only some claims changed: the editor draws again the paragraphs of those and no others. */
function underlined(
  decorations: DecorationSet,
  before: readonly ProofItem[],
  items: readonly ProofItem[],
  document: Node,
): DecorationSet {
  const look = (item: ProofItem) => `${item.key} ${item.from} ${item.to} ${standingOf(item)}`;
  const old = new Set(before.map(look));
  const now = new Set(items.map(look));
  const gone = before.filter((item) => !now.has(look(item)));
  const come = items.filter((item) => !old.has(look(item)));
  if (gone.length === 0 && come.length === 0) return decorations;
  const removed = gone.flatMap((item) =>
    decorations.find(item.from, item.to, (spec) => spec.proof === item.key),
  );
  return decorations.remove(removed).add(document, come.map(underline));
}

function tint(item: ProofItem): Decoration {
  return Decoration.inline(
    item.from,
    item.to,
    { class: `here ${standingOf(item)}` },
    { tint: standingOf(item) },
  );
}

/** The tint moved to the claim in focus; the same set where it is there already. */
function tinted(
  decorations: DecorationSet,
  items: readonly ProofItem[],
  focus: string | null,
  document: Node,
): DecorationSet {
  const old = decorations.find(undefined, undefined, (spec) => spec.tint !== undefined);
  const item = items.find(({ key }) => key === focus);
  const [first] = old;
  if (item && first?.from === item.from && first.to === item.to && first.spec.tint === standingOf(item))
    return decorations;
  return decorations.remove(old).add(document, item ? [tint(item)] : []);
}

function mapped(items: readonly ProofItem[], transaction: Transaction): ProofItem[] {
  const kept: ProofItem[] = [];
  for (const item of items) {
    // Text typed at either edge stays outside the claim.
    const from = transaction.mapping.map(item.from, 1);
    const to = transaction.mapping.map(item.to, -1);
    if (to <= from) continue;
    kept.push(from === item.from && to === item.to ? item : { ...item, from, to });
  }
  return kept;
}

/** The narrowest claim around the cursor. */
function itemAt(items: readonly ProofItem[], state: EditorState): ProofItem | null {
  const { head } = state.selection;
  let best: ProofItem | null = null;
  for (const item of items) {
    if (item.from > head) break;
    if (item.to >= head && (!best || item.to - item.from < best.to - best.from)) best = item;
  }
  return best;
}

export function proofsOf(state: EditorState): ProofState {
  return proofKey.getState(state)!;
}

/** Shows new verdicts. */
export function setProofs(view: EditorView, items: readonly ProofItem[]): void {
  view.dispatch(view.state.tr.setMeta(proofKey, { items }).setMeta('addToHistory', false));
}

export function setFocus(view: EditorView, focus: string | null): void {
  view.dispatch(view.state.tr.setMeta(proofKey, { focus }).setMeta('addToHistory', false));
}

/** The next problem after the focus or the cursor, around the end of the text; null when nothing is wrong. */
export function nextProblem(state: EditorState, step: 1 | -1): ProofItem | null {
  const { items, focus } = proofsOf(state);
  const wrong = items.filter(isProblem);
  if (wrong.length === 0) return null;
  const here = items.find((item) => item.key === focus)?.from ?? state.selection.head;
  if (step > 0)
    return (
      wrong.find((item) => item.from > here || (item.from === here && item.key !== focus && !focus)) ??
      wrong[0]!
    );
  return wrong.findLast((item) => item.from < here) ?? wrong.at(-1)!;
}
