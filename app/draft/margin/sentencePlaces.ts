import type { Node } from 'prosemirror-model';
import type { EditorView } from 'prosemirror-view';
import { proofsOf } from '../proofs/proofPlugin.ts';

/** What was read of one block; it holds while the block, its claims and its size stay as they are. */
interface Read {
  node: Node;
  keys: string;
  width: number;
  height: number;
  /** px from the block's top, by key of the proof */
  offsets: ReadonlyMap<string, number>;
}

export interface SentencePlaces {
  /** Where each proof's words begin, client px from the window's top. A claim whose words another covers whole has none. */
  read(view: EditorView): Map<string, number>;
  /** The letters have changed their shape: read everything anew. */
  forget(): void;
}

/** Finds the place of every claim's words, reading again only the blocks that have changed. */
export function createSentencePlaces(): SentencePlaces {
  let known = new WeakMap<Element, Read>();
  return {
    read(view) {
      const { items } = proofsOf(view.state);
      const places = new Map<string, number>();
      let next = 0;
      view.state.doc.forEach((node, offset) => {
        const first = next;
        while (next < items.length && items[next]!.from < offset + node.nodeSize) next += 1;
        if (next === first) return;
        const block = view.nodeDOM(offset);
        if (!(block instanceof HTMLElement)) return;
        const keys = items
          .slice(first, next)
          .map((item) => item.key)
          .join(' ');
        const { top, width, height } = block.getBoundingClientRect();
        let found = known.get(block);
        if (found?.node !== node || found.keys !== keys || found.width !== width || found.height !== height) {
          found = { node, keys, width, height, offsets: offsetsIn(block, top) };
          known.set(block, found);
        }
        for (const [key, at] of found.offsets) places.set(key, top + at);
      });
      return places;
    },
    forget() {
      known = new WeakMap();
    },
  };
}

function offsetsIn(block: HTMLElement, top: number): Map<string, number> {
  const offsets = new Map<string, number>();
  for (const span of block.querySelectorAll<HTMLElement>('[data-proof]')) {
    const key = span.dataset.proof!;
    const place = offsets.has(key) ? undefined : span.getClientRects()[0];
    if (place) offsets.set(key, place.top - top);
  }
  return offsets;
}
