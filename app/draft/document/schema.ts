import { type Node, Schema } from 'prosemirror-model';
import { tableNodes } from 'prosemirror-tables';
import type { Check } from '../../../shared/contract/check.ts';
import type { AcceptedProof } from '../../../shared/contract/claim.ts';

/** What a claim's mark carries, so that undo takes text and proof back together. */
export interface ClaimMarkAttributes {
  id: string;
  origin: 'accepted' | 'manual';
  check: Check | null;
  opinion: boolean;
  proof: AcceptedProof | null;
}

/** Addresses that a link may carry; everything else stays plain text. */
export function isSafeAddress(address: string): boolean {
  return /^(https?:|mailto:|measured:|#|\/|\.{0,2}\/|[^:]*$)/i.test(address);
}

const tables = tableNodes({
  tableGroup: 'block',
  cellContent: 'paragraph',
  cellAttributes: {
    align: {
      default: null,
      getFromDOM: (dom) => dom.style.textAlign || null,
      setDOMAttr: (value, attributes) => {
        if (value) attributes.style = `text-align: ${value}`;
      },
    },
  },
});

/** The article as an editor document: CommonMark and tables, with claims as marks that carry their proof. */
export const articleSchema = new Schema({
  nodes: {
    doc: {
      content: 'block+',
      // Stored claims whose words are nowhere in the text any more; kept until a person lets them go.
      attrs: { lost: { default: [] } },
    },
    paragraph: { content: 'inline*', group: 'block', parseDOM: [{ tag: 'p' }], toDOM: () => ['p', 0] },
    heading: {
      attrs: { level: { default: 2 } },
      content: 'inline*',
      group: 'block',
      defining: true,
      parseDOM: [1, 2, 3, 4, 5, 6].map((level) => ({ tag: `h${level}`, attrs: { level } })),
      toDOM: (node) => [`h${node.attrs.level as number}`, 0],
    },
    blockquote: {
      content: 'block+',
      group: 'block',
      defining: true,
      parseDOM: [{ tag: 'blockquote' }],
      toDOM: () => ['blockquote', 0],
    },
    bullet_list: {
      attrs: { tight: { default: true }, bullet: { default: '-' } },
      content: 'list_item+',
      group: 'block',
      parseDOM: [{ tag: 'ul' }],
      toDOM: () => ['ul', 0],
    },
    ordered_list: {
      attrs: { order: { default: 1 }, tight: { default: true } },
      content: 'list_item+',
      group: 'block',
      parseDOM: [{ tag: 'ol', getAttrs: (dom) => ({ order: Number(dom.getAttribute('start') ?? 1) || 1 }) }],
      toDOM: (node) =>
        node.attrs.order === 1 ? ['ol', 0] : ['ol', { start: node.attrs.order as number }, 0],
    },
    list_item: { content: 'block+', defining: true, parseDOM: [{ tag: 'li' }], toDOM: () => ['li', 0] },
    horizontal_rule: { group: 'block', parseDOM: [{ tag: 'hr' }], toDOM: () => ['hr'] },
    code_block: {
      attrs: { params: { default: '' } },
      content: 'text*',
      group: 'block',
      marks: '',
      code: true,
      defining: true,
      parseDOM: [{ tag: 'pre', preserveWhitespace: 'full' }],
      toDOM: () => ['pre', ['code', 0]],
    },
    html_block: {
      attrs: { html: { default: '' } },
      group: 'block',
      atom: true,
      toDOM: (node) => ['pre', { class: 'foreign' }, (node.attrs.html as string).trim()],
    },
    ...tables,
    text: { group: 'inline' },
    image: {
      attrs: { src: {}, alt: { default: '' }, title: { default: null } },
      inline: true,
      group: 'inline',
      draggable: true,
      parseDOM: [
        {
          tag: 'img[src]',
          getAttrs: (dom) => {
            const src = dom.getAttribute('src') ?? '';
            return isSafeAddress(src)
              ? { src, alt: dom.getAttribute('alt') ?? '', title: dom.getAttribute('title') }
              : false;
          },
        },
      ],
      toDOM: (node) => ['img', { src: node.attrs.src as string, alt: node.attrs.alt as string }],
    },
    html_inline: {
      attrs: { html: { default: '' } },
      inline: true,
      group: 'inline',
      atom: true,
      toDOM: (node) => ['code', { class: 'foreign' }, node.attrs.html as string],
    },
    hard_break: {
      inline: true,
      group: 'inline',
      selectable: false,
      parseDOM: [{ tag: 'br' }],
      toDOM: () => ['br'],
    },
  },
  marks: {
    // Claims stand outside the text's own marks, so that emphasis inside a claim does not split it.
    claim: {
      attrs: {
        id: {},
        origin: {},
        check: { default: null },
        opinion: { default: false },
        proof: { default: null },
      },
      inclusive: false,
      excludes: '',
      toDOM: (mark) => ['span', { 'data-claim': mark.attrs.id as string }, 0],
    },
    link: {
      attrs: { href: {}, title: { default: null } },
      inclusive: false,
      parseDOM: [
        {
          tag: 'a[href]',
          getAttrs: (dom) => {
            const href = dom.getAttribute('href') ?? '';
            return isSafeAddress(href) ? { href, title: dom.getAttribute('title') } : false;
          },
        },
      ],
      toDOM: (mark) => {
        const href = mark.attrs.href as string;
        return href.startsWith('measured:')
          ? ['span', { class: 'measured', title: 'Follows what was measured' }, 0]
          : [
              'a',
              { href: isSafeAddress(href) ? href : '#', title: (mark.attrs.title as string | null) ?? href },
              0,
            ];
      },
    },
    em: {
      parseDOM: [{ tag: 'i' }, { tag: 'em' }, { style: 'font-style=italic' }],
      toDOM: () => ['em', 0],
    },
    strong: {
      parseDOM: [
        { tag: 'strong' },
        { tag: 'b', getAttrs: (dom) => (dom.style.fontWeight === 'normal' ? false : null) },
        {
          style: 'font-weight',
          getAttrs: (value) => (/^(bold(er)?|[6-9]\d{2})$/.test(value) ? null : false),
        },
      ],
      toDOM: () => ['strong', 0],
    },
    code: { code: true, parseDOM: [{ tag: 'code' }], toDOM: () => ['code', 0] },
  },
});

/** An article without a word. */
export function emptyDocument(): Node {
  return articleSchema.node('doc', null, [articleSchema.node('paragraph')]);
}
