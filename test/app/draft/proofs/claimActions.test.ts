import { history, redo, undo } from 'prosemirror-history';
import { EditorState } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { describe, expect, it } from 'vitest';
import { documentOfMarkdown } from '../../../../app/draft/document/readMarkdown.ts';
import { textMapOf } from '../../../../app/draft/document/textMap.ts';
import { markdownOfDocument } from '../../../../app/draft/document/writeMarkdown.ts';
import { acceptClaim, writeSuggestion } from '../../../../app/draft/proofs/claimActions.ts';
import { placeClaims } from '../../../../app/draft/proofs/proofItem.ts';
import { storedClaimsOf } from '../../../../app/draft/proofs/storedClaims.ts';
import { createChecker } from '../../../../shared/claims/index.ts';
import { benchOf } from '../../../fixtures/hearth/index.ts';

const bench = benchOf();

/** As much of an editor as acts on proofs use. */
function editor(markdown: string) {
  const view = {
    state: EditorState.create({ doc: documentOfMarkdown(markdown), plugins: [history()] }),
    dispatch(transaction: Parameters<EditorState['apply']>[0]) {
      view.state = view.state.apply(transaction);
    },
  };
  const stored = () => storedClaimsOf(view.state.doc, textMapOf(view.state.doc));
  return {
    view: view as unknown as EditorView,
    stored,
    text: () => markdownOfDocument(view.state.doc),
    /** The one claim, as the Draft shows it */
    item() {
      const map = textMapOf(view.state.doc);
      const { claims } = createChecker(bench).check(map.text, stored());
      return placeClaims(claims, new Map(), map, [])[0]!;
    },
    type: (text: string) => view.dispatch(view.state.tr.insertText(text, view.state.doc.content.size - 1)),
    undo: () => undo(view.state, view.dispatch),
    redo: () => redo(view.state, view.dispatch),
  };
}

describe('a mended number', () => {
  it('takes the accepted proof of the old words with it, and one undo brings back both and nothing else', () => {
    const { view, stored, text, item, ...act } = editor('A 10% window reaches 900 nits.');
    act.type(' Bright.');
    acceptClaim(view, item(), bench, 'reviewer', '2026-10-02T10:00:00Z');
    const accepted = { text: text(), stored: stored() };
    expect(accepted.stored.map(({ proof }) => proof?.verdict)).toEqual(['breaks']);

    expect(writeSuggestion(view, item())).toBe(true);
    expect(text()).toMatch(/^A 10% window reaches 742.* Bright\.\n$/u);
    expect([stored(), item().claim.judgement.verdict]).toEqual([[], 'holds']);
    const mended = text();

    act.undo();
    expect({ text: text(), stored: stored() }).toEqual(accepted);
    act.redo();
    expect([text(), stored()]).toEqual([mended, []]);
  });

  it('is a step of its own after typing that was only a moment before', () => {
    const { view, text, item, ...act } = editor('A 10% window reaches 900 nits.');
    act.type(' Bright.');
    writeSuggestion(view, item());
    act.undo();
    expect(text()).toBe('A 10% window reaches 900 nits. Bright.\n');
    act.undo();
    expect(text()).toBe('A 10% window reaches 900 nits.\n');
  });
});
