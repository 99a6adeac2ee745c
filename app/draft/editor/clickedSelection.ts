import { TextSelection } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { beforeKeys } from '../../commands/registry.ts';

/**
 * Takes over where a click has put the cursor before the next key acts. The browser moves its selection with the
 * click but tells of it in a later task; a key that is already waiting goes first. Returns the way to stop.
 */
export function readClicks(view: EditorView): () => void {
  let isUnread = false;
  const onPress = () => {
    isUnread = true;
  };
  const onTold = () => {
    isUnread = false;
  };
  const read = () => {
    if (!isUnread || view.isDestroyed || !view.hasFocus()) return;
    isUnread = false;
    const { anchorNode, anchorOffset, focusNode, focusOffset } = view.dom.ownerDocument.getSelection() ?? {};
    if (!anchorNode || !focusNode || !view.dom.contains(anchorNode) || !view.dom.contains(focusNode)) return;
    const { doc, selection, tr } = view.state;
    const anchor = view.posAtDOM(anchorNode, anchorOffset ?? 0);
    const head = view.posAtDOM(focusNode, focusOffset ?? 0);
    if (anchor === selection.anchor && head === selection.head) return;
    view.dispatch(tr.setSelection(TextSelection.between(doc.resolve(anchor), doc.resolve(head))));
  };
  view.dom.addEventListener('mousedown', onPress, true);
  view.dom.ownerDocument.addEventListener('selectionchange', onTold);
  const stop = beforeKeys(read);
  return () => {
    view.dom.removeEventListener('mousedown', onPress, true);
    view.dom.ownerDocument.removeEventListener('selectionchange', onTold);
    stop();
  };
}
