import { dropCursor } from 'prosemirror-dropcursor';
import { gapCursor } from 'prosemirror-gapcursor';
import { history } from 'prosemirror-history';
import type { Node } from 'prosemirror-model';
import { search } from 'prosemirror-search';
import { EditorState, type Plugin } from 'prosemirror-state';
import { tableEditing } from 'prosemirror-tables';
import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';
import { documentOfMarkdown } from '../document/readMarkdown.ts';
import { withStoredClaims } from '../proofs/storedClaims.ts';
import { editorKeys } from './editorKeys.ts';
import { pasteCleaning } from './paste.ts';
import { markdownShortcuts } from './shortcuts.ts';

/** The document of an article as stored: its Markdown with the stored claims as marks. */
export function storedDocument(markdown: string, claims: readonly StoredClaim[]): Node {
  return withStoredClaims(documentOfMarkdown(markdown), claims, (doc) => EditorState.create({ doc }));
}

/** A new state for one article: undo never crosses from one article into another. */
export function articleState(doc: Node, further: readonly Plugin[]): EditorState {
  return EditorState.create({
    doc,
    plugins: [
      ...further,
      markdownShortcuts(),
      ...editorKeys(),
      pasteCleaning(),
      search(),
      tableEditing(),
      dropCursor({ width: 1.5, color: 'var(--accent)' }),
      gapCursor(),
      history({ newGroupDelay: 500 }),
    ],
  });
}
