import { Plugin } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { addPhoto, picturesIn } from '../../bench/observations/photos.ts';
import { insertPhoto, photoSource } from './insertions.ts';

/**
 * Pictures that are dropped or pasted into the text are kept with the set under review and stand after the block they
 * fell on; what they show is still to be said, and the picture asks for it.
 */
export function photoDrop(unit: () => string): Plugin {
  async function bring(view: EditorView, files: readonly File[], position: number): Promise<void> {
    for (const file of files) {
      const name = await addPhoto(unit(), file);
      if (name === null || view.isDestroyed) continue;
      const at = Math.min(position, view.state.doc.content.size);
      insertPhoto(photoSource(unit(), name), '', '', at)(view.state, view.dispatch);
    }
  }
  return new Plugin({
    props: {
      handleDrop(view, event) {
        const files = picturesIn(event.dataTransfer);
        if (files.length === 0 || !view.editable) return false;
        const at = view.posAtCoords({ left: event.clientX, top: event.clientY });
        event.preventDefault();
        void bring(view, files, at?.pos ?? view.state.doc.content.size);
        return true;
      },
      handlePaste(view, event) {
        const files = picturesIn(event.clipboardData);
        // Word processors put a picture of the words beside the words.
        if (files.length === 0 || event.clipboardData?.types.includes('text/html')) return false;
        void bring(view, files, view.state.selection.to);
        return true;
      },
    },
  });
}
