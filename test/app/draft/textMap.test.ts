import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { documentOfMarkdown } from '../../../app/draft/document/readMarkdown.ts';
import { articleSchema } from '../../../app/draft/document/schema.ts';
import { textMapOf } from '../../../app/draft/document/textMap.ts';
import { markdownOfDocument } from '../../../app/draft/document/writeMarkdown.ts';
import { plainTextOfMarkdown } from '../../../shared/article/plainText.ts';

const article = `# A hearth that burns *a shade* too green

In the Calm mode **greyscale errors** climb
over 3 from 50 % upwards, and \`code\` is left out.\\
A hard break, an entity &amp; an escaped \\*star\\*, <b>markup</b> and [a link](https://example.org "Title").

> A quoted paragraph with 3 % in it.

- first item
- second item

  with a second paragraph

3. third
4. fourth

![White at 742 nits](photos/white.jpg)

*Peak at 742 nits in a 10 % window.*

| Set | Peak, cd/m² |
|:----|------------:|
| Orrinvale Hearth 55 | 742 |
| Kasulind \\| Vane 50 | **731** |

\`\`\`text
not read
\`\`\`

<div>
not read either
</div>

***

Text before ![an image between](photos/a.png) and after.
`;

/** Blocks written by hand in the forms that reviewers use, joined at random. */
const block = fc.constantFrom(
  'Plain words, 3.0 ± 0.2 and −7 %.',
  '*All in emphasis.*',
  '![alt with 742](a.png)',
  '![](a.png)',
  '## Heading with `code`',
  '#### **Strong** heading',
  '- a\n- b\n- c',
  '* a\n\n* b\n\n  c',
  '1. one\n2. two\n   - nested 5 %',
  '> quote\n>\n> - item in quote',
  '| a | b |\n|---|:-:|\n| 1 | 2 |\n| `x` | *y* |',
  'Line one\nline two  \nline three\\\nline four',
  '    indented code',
  '<!-- remark -->',
  'a < b & c &lt; d &copy; 2 * 3 * 4 _x_ 1\\. 2',
  '`only code`',
  '[link](<a b.html>) and <https://example.org/a_b>',
  '---',
);

describe('plain text of an editor document', () => {
  it('equals the plain text of the Markdown it was read from', () => {
    expect(textMapOf(documentOfMarkdown(article)).text).toEqual(plainTextOfMarkdown(article));
  });

  it('equals the plain text of Markdown put together at random, and of that Markdown written back', () => {
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 9 }), (blocks) => {
        const markdown = blocks.join('\n\n');
        const document = documentOfMarkdown(markdown);
        const expected = plainTextOfMarkdown(markdown);
        expect(textMapOf(document).text).toEqual(expected);
        expect(plainTextOfMarkdown(markdownOfDocument(document))).toEqual(expected);
        const anew = articleSchema.nodeFromJSON(document.toJSON());
        expect(plainTextOfMarkdown(markdownOfDocument(anew))).toEqual(textMapOf(anew).text);
      }),
      { numRuns: 300, seed: 7 },
    );
  });

  it('leads every character to the document and back', () => {
    const document = documentOfMarkdown(article);
    const map = textMapOf(document);
    for (const { start, end, kind } of map.text.blocks) {
      if (kind === 'alt') continue;
      for (let offset = start; offset < end; offset += 1) {
        const range = map.rangeOf({ start: offset, end: offset + 1 })!;
        const character = document.textBetween(range.from, range.to, '', ' ');
        expect([offset, character]).toEqual([offset, map.text.text[offset]]);
        expect(map.spanOf(range.from, range.to)).toEqual({ start: offset, end: offset + 1 });
      }
    }
  });

  it('takes an alt text as one place', () => {
    const map = textMapOf(documentOfMarkdown(article));
    const start = map.text.text.indexOf('742 nits');
    const range = map.rangeOf({ start, end: start + 3 })!;
    expect(range.to - range.from).toBe(1);
    expect(map.spanOf(range.from, range.to)).toEqual({
      start: start - 'White at '.length,
      end: start + '742 nits'.length,
    });
  });
});
