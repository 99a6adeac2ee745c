import { describe, expect, it } from 'vitest';
import { documentOfMarkdown } from '../../../app/draft/document/readMarkdown.ts';
import { articleSchema } from '../../../app/draft/document/schema.ts';
import { markdownOfDocument } from '../../../app/draft/document/writeMarkdown.ts';

/** The document with every block made anew, so that nothing is remembered from the source. */
function fresh(markdown: string) {
  return articleSchema.nodeFromJSON(documentOfMarkdown(markdown).toJSON());
}

describe('Markdown in and out of the editor', () => {
  it('keeps what nobody touched as its author typed it', () => {
    const odd = 'Setext\n======\n\n*  wide   bullet\n\n__strong__ and _em_,\nwrapped by hand\n';
    expect(markdownOfDocument(documentOfMarkdown(odd))).toBe(odd);
  });

  it('writes edited blocks so that they read back the same', () => {
    const sources = [
      'a *b **c** d* e `f` [g](https://example.org "h")',
      'AT&amp;amp;T &lt;b&gt; 3 < 4 \\<i>',
      '- a\n- b\n  1. c\n  2. d',
      '- a\n\n- b',
      '- one list\n\n* another list',
      '> quote\n>\n> more',
      '| a | b |\n| :-: | --: |\n| x \\| y | `p \\| q` |',
      '![alt \\[x\\]](<a b.png> "t \\"q\\"")',
      '[742 cd/m²](measured:orrinvale-hearth-55/hdr-calm/peak?axis=10)',
      '```js\na\n\nb\n```',
      '<div>\nx\n</div>',
      'a <kbd>F8</kbd> b',
      '\\# not a heading\n\n\\- not a list\n\n1\\. not a list\n\n\\> no quote',
      'one\\\ntwo',
    ];
    for (const source of sources) {
      const document = fresh(source);
      const again = fresh(markdownOfDocument(document));
      expect([source, again.toJSON()]).toEqual([source, document.toJSON()]);
    }
  });

  it('writes a link to a measured value in the form that an article keeps', () => {
    const link = 'It reaches [742 cd/m²](measured:orrinvale-hearth-55/hdr-calm/peak?axis=10).\n';
    expect(markdownOfDocument(fresh(link))).toBe(link);
  });

  it('leaves no trace of claims', () => {
    const document = documentOfMarkdown('White reaches 742 nits here.');
    const mark = articleSchema.mark('claim', { id: 'a', origin: 'accepted', opinion: false });
    const marked = articleSchema.node('doc', null, [
      articleSchema.node('paragraph', null, [
        articleSchema.text('White '),
        articleSchema.text('reaches 742', [mark]),
        articleSchema.text(' nits here.'),
      ]),
    ]);
    expect(markdownOfDocument(marked)).toBe(markdownOfDocument(document));
  });
});
