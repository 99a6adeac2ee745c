import { describe, expect, it } from 'vitest';
import { cleanPastedHtml, looksLikeMarkdown } from '../../../app/draft/editor/paste.ts';

describe('paste', () => {
  it('makes lists of paragraphs that are lists in name only', () => {
    const html =
      '<p class="x" style="mso-list:l0 level1"><span>·</span><span>&nbsp;&nbsp;</span>one</p><p style="mso-list:l0">· two</p>';
    expect(cleanPastedHtml(html)).toBe(
      '<ul><li><p><span></span><span></span>one</p></li><li><p>two</p></li></ul>',
    );
  });

  it('drops what word processors add and keeps the words', () => {
    const html =
      '<!--[if gte mso 9]><xml>junk</xml><![endif]--><style>p{color:red}</style><p>Peak <o:p></o:p><b>742</b></p><p>&nbsp;</p>';
    expect(cleanPastedHtml(html)).toBe('<p>Peak <b>742</b></p>');
  });

  it('knows Markdown from prose with stars in it', () => {
    expect(looksLikeMarkdown('## Off axis\n\nWhite shifts.')).toBe(true);
    expect(looksLikeMarkdown('It costs 3 * 4 pounds - or 12.')).toBe(false);
  });
});
