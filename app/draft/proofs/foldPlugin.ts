import { Plugin, PluginKey } from 'prosemirror-state';
import { Decoration, DecorationSet, type EditorView } from 'prosemirror-view';
import { create } from 'zustand';
import { isProblem } from './proofItem.ts';
import { proofKey } from './proofPlugin.ts';

interface FoldState {
  narrow: boolean;
  set: DecorationSet;
}

const foldKey = new PluginKey<FoldState>('fold');

/** Elements under the sentences of a narrow window, by the key of the proof that belongs there. */
export const useFoldPlaces = create<{ places: ReadonlyMap<string, HTMLElement> }>(() => ({
  places: new Map(),
}));

/**
 * Where the window is too narrow for a margin, problems and the proof in focus stand under the paragraph that
 * holds their sentence. The plugin makes the places; the proofs are put there from outside.
 */
export function foldPlugin(): Plugin<FoldState> {
  return new Plugin<FoldState>({
    key: foldKey,
    state: {
      init: () => ({ narrow: false, set: DecorationSet.empty }),
      apply(transaction, before, _old, state) {
        const narrow = (transaction.getMeta(foldKey) as boolean | undefined) ?? before.narrow;
        if (!narrow) return before.narrow ? { narrow, set: DecorationSet.empty } : before;
        const proofs = proofKey.getState(state)!;
        const shown = proofs.items.filter((item) => isProblem(item) || item.key === proofs.focus);
        const widgets = shown.map((item) => {
          const $to = state.doc.resolve(item.to);
          const after = $to.depth > 0 ? $to.after($to.depth) : item.to;
          return Decoration.widget(after, () => foldPlace(item.key), {
            key: `fold-${item.key}`,
            side: -1,
            ignoreSelection: true,
            stopEvent: () => true,
          });
        });
        return { narrow, set: DecorationSet.create(state.doc, widgets) };
      },
    },
    props: { decorations: (state) => foldKey.getState(state)?.set },
    view: () => ({
      destroy: () => {
        places.clear();
        useFoldPlaces.setState({ places: new Map() });
      },
    }),
  });
}

const places = new Map<string, HTMLElement>();

function foldPlace(key: string): HTMLElement {
  const element = document.createElement('div');
  element.className = 'fold';
  element.contentEditable = 'false';
  places.set(key, element);
  queueMicrotask(() => useFoldPlaces.setState({ places: new Map(places) }));
  return element;
}

export function setNarrow(view: EditorView, narrow: boolean): void {
  if (foldKey.getState(view.state)?.narrow !== narrow) view.dispatch(view.state.tr.setMeta(foldKey, narrow));
}
