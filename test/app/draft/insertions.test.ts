import { EditorState, TextSelection } from 'prosemirror-state';
import { describe, expect, it } from 'vitest';
import { documentOfMarkdown } from '../../../app/draft/document/readMarkdown.ts';
import { markdownOfDocument } from '../../../app/draft/document/writeMarkdown.ts';
import { insertPhoto, photoSource, phraseAtCursor, setLink } from '../../../app/draft/editor/insertions.ts';

function stateOf(markdown: string, from: number, to = from): EditorState {
  const doc = documentOfMarkdown(markdown);
  return EditorState.create({ doc, selection: TextSelection.create(doc, from, to) });
}

function changed(state: EditorState, command: ReturnType<typeof setLink>): EditorState {
  let next = state;
  command(state, (transaction) => {
    next = state.apply(transaction);
  });
  return next;
}

describe('what is put into the text', () => {
  it('a photo with its words and caption comes after the paragraph', () => {
    const src = photoSource('orrinvale-hearth-55', 'a b.png');
    const next = changed(stateOf('One.\n\nTwo.', 2), insertPhoto(src, 'A bloom', 'Seen at night.'));
    expect(markdownOfDocument(next.doc)).toBe(
      'One.\n\n![A bloom](../units/orrinvale-hearth-55/photos/a%20b.png)\n\n*Seen at night.*\n\nTwo.\n',
    );
  });

  it('words become a link, the link changes whole, and an empty address takes it away', () => {
    const linked = changed(stateOf('See the bench now.', 5, 14), setLink('https://example.org'));
    expect(markdownOfDocument(linked.doc)).toBe('See [the bench](https://example.org) now.\n');
    const inside = linked.apply(linked.tr.setSelection(TextSelection.create(linked.doc, 8)));
    expect(markdownOfDocument(changed(inside, setLink('https://example.net')).doc)).toBe(
      'See [the bench](https://example.net) now.\n',
    );
    expect(markdownOfDocument(changed(inside, setLink('')).doc)).toBe('See the bench now.\n');
  });

  it('an address that runs a script is refused', () => {
    const state = stateOf('See it.', 1, 4);
    expect(setLink('javascript:alert(1)')(state, undefined)).toBe(false);
  });

  it('a phrase gets its space, and its first blank is selected', () => {
    const { transaction, ...range } = phraseAtCursor(stateOf('One.', 5), 'White reaches ….');
    const next = { doc: transaction.doc, selection: transaction.selection };
    expect(transaction.doc.textBetween(range.from, range.to)).toBe('White reaches ….');
    expect(markdownOfDocument(next.doc)).toBe('One. White reaches ….\n');
    const { from, to } = next.selection;
    expect(next.doc.textBetween(from, to)).toBe('…');
  });
});
