import type { Node } from 'prosemirror-model';
import { type EditorState, Plugin, PluginKey, type Transaction } from 'prosemirror-state';
import { Decoration, DecorationSet, type EditorView } from 'prosemirror-view';
import { isProblem, type ProofItem, standingOf } from './proofItem.ts';

export interface ProofState {
  /** In order of the text, positions mapped through every edit */
  items: readonly ProofItem[];
  underlines: DecorationSet;
  /** Key of the proof that has the reader's attention */
  focus: string | null;
  highlight: DecorationSet;
}

type ProofMeta = { items: readonly ProofItem[] } | { focus: string | null };

export const proofKey = new PluginKey<ProofState>('proofs');

/**
 * Underlines what claims something and knows which proof has the attention. Typing only maps positions; new
 * verdicts arrive from outside as a transaction that never enters the undo history.
 */
export function proofPlugin(changed: (state: ProofState) => void): Plugin<ProofState> {
  return new Plugin<ProofState>({
    key: proofKey,
    state: {
      init: () => ({
        items: [],
        underlines: DecorationSet.empty,
        focus: null,
        highlight: DecorationSet.empty,
      }),
      apply(transaction, before, _old, state) {
        const meta = transaction.getMeta(proofKey) as ProofMeta | undefined;
        let { items, underlines, focus } = before;
        if (meta && 'items' in meta) {
          items = meta.items;
          underlines = underlined(state.doc, items);
        } else if (transaction.docChanged) {
          items = mapped(items, transaction);
          underlines = underlines.map(transaction.mapping, transaction.doc);
        }
        if (meta && 'focus' in meta) focus = meta.focus;
        else if (transaction.selectionSet && !transaction.getMeta('pointless'))
          focus = itemAt(items, state)?.key ?? null;
        if (focus !== null && !items.some((item) => item.key === focus)) focus = null;
        if (items === before.items && focus === before.focus && !transaction.docChanged) return before;
        return { items, underlines, focus, highlight: highlighted(state.doc, items, focus) };
      },
    },
    props: {
      decorations(state) {
        return proofKey.getState(state)?.underlines;
      },
    },
    view: () => ({
      update(view, beforeState) {
        const now = proofKey.getState(view.state)!;
        if (now !== proofKey.getState(beforeState)) changed(now);
      },
    }),
  });
}

/** The tint behind the words in focus, apart from the underlines so that moving it rebuilds nothing. */
export function highlightPlugin(): Plugin {
  return new Plugin({ props: { decorations: (state) => proofKey.getState(state)?.highlight } });
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

function underlined(document: Node, items: readonly ProofItem[]): DecorationSet {
  return DecorationSet.create(
    document,
    items.map((item) =>
      Decoration.inline(item.from, item.to, { class: `claim ${standingOf(item)}`, 'data-proof': item.key }),
    ),
  );
}

function highlighted(document: Node, items: readonly ProofItem[], focus: string | null): DecorationSet {
  const item = focus === null ? undefined : items.find((candidate) => candidate.key === focus);
  if (!item) return DecorationSet.empty;
  return DecorationSet.create(document, [
    Decoration.inline(item.from, item.to, { class: `here ${standingOf(item)}` }),
  ]);
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
