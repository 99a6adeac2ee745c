import { baseKeymap } from 'prosemirror-commands';
import { history } from 'prosemirror-history';
import { keymap } from 'prosemirror-keymap';
import { EditorState } from 'prosemirror-state';
import { EditorView } from 'prosemirror-view';
import { documentOfMarkdown } from '../../../app/draft/document/readMarkdown.ts';

/** An editor with the same text and schema and nothing else: what typing costs without Nitproof. */
const markdown = document.getElementById('markdown')!.textContent!;
new EditorView(document.getElementById('room')!, {
  state: EditorState.create({
    doc: documentOfMarkdown(markdown),
    plugins: [keymap(baseKeymap), history()],
  }),
  attributes: { class: 'article', spellcheck: 'true' },
});
