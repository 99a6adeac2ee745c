import { Plugin } from 'prosemirror-state';
import { Decoration, DecorationSet } from 'prosemirror-view';

/** Keeps an element of the window (state, date, length) under the title without making it part of the text. */
export function byLinePlugin(element: HTMLElement): Plugin {
  return new Plugin({
    props: {
      decorations({ doc }) {
        const first = doc.firstChild;
        const isTitle = first?.type.name === 'heading' && first.attrs.level === 1;
        const widget = Decoration.widget(isTitle ? first.nodeSize : 0, element, {
          key: 'by-line',
          side: -1,
          ignoreSelection: true,
          stopEvent: () => true,
        });
        return DecorationSet.create(doc, [widget]);
      },
    },
  });
}
