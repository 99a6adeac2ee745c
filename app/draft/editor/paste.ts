import { Plugin } from 'prosemirror-state';
import { documentOfMarkdown } from '../document/readMarkdown.ts';

/**
 * HTML from word processors, cleaned before the schema reads it: conditional comments, office namespaces, style
 * blocks and list paragraphs that are lists in name only.
 */
export function cleanPastedHtml(html: string): string {
  const cleaned = html
    .replace(/<!--\[if[\s\S]*?<!\[endif\]-->/gi, '')
    .replace(/<!--[\s\S]*?-->/g, (comment) => (/StartFragment|EndFragment/.test(comment) ? comment : ''))
    .replace(/<(style|script|xml|title)\b[^>]*>[\s\S]*?<\/\1>/gi, '')
    .replace(/<(meta|link)\b[^>]*>/gi, '')
    .replace(/<\/?(o|w|v|m|st1):[^>]*>/gi, '')
    .replace(/<(\/?)h7[^>]*>/gi, '<$1p>')
    .replace(/<p\b[^>]*>(\s|&nbsp;|\u00a0)*<\/p>/gi, '');
  return withRealLists(cleaned);
}

/** `<p style="mso-list: …">· item</p>` in a row become one list. */
function withRealLists(html: string): string {
  const item = /<p\b[^>]*mso-list[^>]*>([\s\S]*?)<\/p>/gi;
  return html.replace(/(?:<p\b[^>]*mso-list[^>]*>[\s\S]*?<\/p>\s*)+/gi, (run) => {
    const items = [...run.matchAll(item)].map((match) => match[1]!);
    const isNumbered = /^(?:<[^>]*>|\s|&nbsp;)*\d+[.)]/i.test(items[0] ?? '');
    const tag = isNumbered ? 'ol' : 'ul';
    const bare = items.map((content) =>
      content.replace(
        /^((?:<[^>]*>|\s|&nbsp;)*)(?:[·•o§\uf0b7-]|\d+[.)])((?:<\/?span[^>]*>|\s|&nbsp;)*)/i,
        (_match, before: string, after: string) => before + after.replace(/&nbsp;|\s/gi, ''),
      ),
    );
    return `<${tag}>${bare.map((content) => `<li><p>${content}</p></li>`).join('')}</${tag}>`;
  });
}

/** Does plain text look as if its author wrote Markdown? Then it is read as that. */
export function looksLikeMarkdown(text: string): boolean {
  return /^#{1,6} \S|^[-*] \S|^\d+\. \S|^> \S|^\|.+\|\s*$|\*\*\S[^*]*\*\*|\[[^\]]+\]\([^)]+\)/m.test(text);
}

/** Paste: word processors' HTML cleaned, Markdown read as Markdown, all other text as paragraphs. */
export function pasteCleaning(): Plugin {
  return new Plugin({
    props: {
      transformPastedHTML: cleanPastedHtml,
      handlePaste(view, event) {
        const data = event.clipboardData;
        if (!data || data.types.includes('text/html')) return false;
        const text = data.getData('text/plain');
        if (!looksLikeMarkdown(text)) return false;
        const slice = documentOfMarkdown(text).slice(0);
        const { content } = slice;
        const single = content.childCount === 1 && content.firstChild!.type.name === 'paragraph';
        const inserted = single ? content.firstChild!.slice(0) : slice;
        view.dispatch(view.state.tr.replaceSelection(inserted).scrollIntoView().setMeta('paste', true));
        return true;
      },
    },
  });
}
