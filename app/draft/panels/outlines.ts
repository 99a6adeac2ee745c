/** Headings that an article may begin with; the names of signals and stages in them set the conditions of what follows. */
export interface ArticleOutline {
  id: string;
  name: string;
  headings: readonly string[];
}

export const articleOutlines: readonly ArticleOutline[] = [
  {
    id: 'review',
    name: 'Review',
    headings: ['Design', 'As delivered', 'Adjusted', 'High dynamic range', 'Off axis', 'Verdict'],
  },
  { id: 'first-look', name: 'First look', headings: ['Out of the box', 'What is still to be measured'] },
  {
    id: 'comparison',
    name: 'Comparison',
    headings: ['The sets', 'Brightness', 'Colour', 'Off axis', 'Which one'],
  },
  { id: 'blank', name: 'Blank page', headings: [] },
];

/** The Markdown that a new article begins with. */
export function outlineMarkdown(title: string, outline: ArticleOutline): string {
  return `${[`# ${title}`, ...outline.headings.map((heading) => `## ${heading}`)].join('\n\n')}\n`;
}

/** An id for a dossier's folder from a title: `[a-z0-9-]{1,80}`, never one that is taken. */
export function articleIdFor(title: string, taken: ReadonlySet<string>): string {
  const base =
    title
      .normalize('NFKD')
      .toLowerCase()
      .replace(/[\u0300-\u036f]/g, '')
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 72) || 'article';
  let id = base;
  for (let number = 2; taken.has(id); number += 1) id = `${base}-${number}`;
  return id;
}
