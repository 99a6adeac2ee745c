import MarkdownIt from 'markdown-it';
import { MarkdownParser } from 'prosemirror-markdown';
import type { Node } from 'prosemirror-model';
import { articleSchema, emptyDocument } from './schema.ts';
import { rememberSource } from './sourceText.ts';

type Tokenizer = InstanceType<typeof MarkdownIt>;
type Token = ReturnType<Tokenizer['parse']>[number];

/** The same reading of Markdown as `shared/article/plainText`: CommonMark and tables, nothing typographic. */
const tokenizer = new MarkdownIt('commonmark').enable('table');

/** Cells hold a paragraph in the editor; Markdown's cells hold bare inline text. */
function withCellParagraphs(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (const token of tokens) {
    const isCell = token.type === 'th_open' || token.type === 'td_open';
    const endsCell = token.type === 'th_close' || token.type === 'td_close';
    if (endsCell) out.push(Object.assign(Object.create(token), { type: 'paragraph_close' }));
    out.push(token);
    if (isCell) out.push(Object.assign(Object.create(token), { type: 'paragraph_open' }));
  }
  return out;
}

/** A list is tight when its items' paragraphs are hidden (CommonMark 0.31.2, §5.3). */
function isTight(tokens: readonly Token[], at: number): boolean {
  for (let index = at + 1; index < tokens.length; index += 1) {
    const token = tokens[index]!;
    if (token.type === 'paragraph_open') return token.hidden;
    if (token.level <= tokens[at]!.level && token.nesting < 0) return true;
  }
  return true;
}

function alignOf(token: Token): { align: string | null } {
  return {
    align: /text-align:\s*(left|right|center)/.exec(String(token.attrGet('style') ?? ''))?.[1] ?? null,
  };
}

let lastTokens: Token[] = [];
let lastHasReferences = false;

const parser = new MarkdownParser(
  articleSchema,
  {
    parse(source: string, environment: NonNullable<Parameters<Tokenizer['parse']>[1]>) {
      lastTokens = tokenizer.parse(source, environment);
      lastHasReferences = Object.keys((environment as { references?: object }).references ?? {}).length > 0;
      return withCellParagraphs(lastTokens);
    },
  } as unknown as Tokenizer,
  {
    blockquote: { block: 'blockquote' },
    paragraph: { block: 'paragraph' },
    list_item: { block: 'list_item' },
    bullet_list: {
      block: 'bullet_list',
      getAttrs: (token, tokens, at) => ({ tight: isTight(tokens, at), bullet: token.markup || '-' }),
    },
    ordered_list: {
      block: 'ordered_list',
      getAttrs: (token, tokens, at) => ({
        order: Number(token.attrGet('start') ?? 1),
        tight: isTight(tokens, at),
      }),
    },
    heading: { block: 'heading', getAttrs: (token) => ({ level: Number(token.tag.slice(1)) }) },
    code_block: { block: 'code_block', noCloseToken: true },
    fence: { block: 'code_block', getAttrs: (token) => ({ params: token.info }), noCloseToken: true },
    hr: { node: 'horizontal_rule' },
    html_block: { node: 'html_block', getAttrs: (token) => ({ html: token.content.replace(/\n+$/, '') }) },
    table: { block: 'table' },
    thead: { ignore: true },
    tbody: { ignore: true },
    tr: { block: 'table_row' },
    th: { block: 'table_header', getAttrs: alignOf },
    td: { block: 'table_cell', getAttrs: alignOf },
    image: {
      node: 'image',
      getAttrs: (token) => ({
        src: token.attrGet('src') ?? '',
        title: token.attrGet('title') || null,
        alt: plainAlt(token),
      }),
    },
    html_inline: { node: 'html_inline', getAttrs: (token) => ({ html: token.content }) },
    hardbreak: { node: 'hard_break' },
    em: { mark: 'em' },
    strong: { mark: 'strong' },
    link: {
      mark: 'link',
      getAttrs: (token) => ({ href: token.attrGet('href') ?? '', title: token.attrGet('title') || null }),
    },
    code_inline: { mark: 'code' },
  },
);

function plainAlt(token: Token): string {
  return (token.children ?? [])
    .map((child: Token) => {
      if (child.type === 'image') return plainAlt(child);
      if (child.type === 'softbreak' || child.type === 'hardbreak') return ' ';
      return child.type === 'text' || child.type === 'text_special' ? child.content : '';
    })
    .join('');
}

/**
 * Markdown as an editor document. Blocks remember the lines they came from, so that what nobody edits is
 * written back as its author typed it.
 */
export function documentOfMarkdown(markdown: string): Node {
  if (markdown.trim() === '') return emptyDocument();
  const document = parser.parse(markdown);
  if (document.childCount === 0) return emptyDocument();
  // Reference definitions belong to no block; with them every block is written anew, links in full.
  if (!lastHasReferences) rememberLines(document, markdown.split(/\r\n|\r|\n/));
  return document;
}

function rememberLines(document: Node, lines: readonly string[]): void {
  const tops = lastTokens.filter((token) => token.level === 0 && token.nesting >= 0 && token.map);
  if (tops.length !== document.childCount) return;
  tops.forEach((token, index) => {
    const [from, to] = token.map!;
    rememberSource(document.child(index), lines.slice(from, to).join('\n').replace(/\n+$/, ''));
  });
}
