import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { articleSchema } from '../../shared/contract/article.ts';
import { articleOfRow } from './articleOfRow.ts';
import { createMarkdownReader, evidenceOf } from './judgeRows.ts';
import { type Mutation, movedSpan, mutated, mutationsOf } from './mutate.ts';
import { reviewFolders } from './reviews.ts';
import { type Row, readRows } from './rows.ts';
import type { Found } from './scoring.ts';

/** Every n-th row, so that the test stays short on a slow machine; `MUTATE_ALL=1` takes every row. */
const step = process.env.MUTATE_ALL === '1' ? 1 : 5;
/** Every n-th claim of a review that holds: some have one article alone. */
const stride = Math.min(step, 3);

test('a claim that holds does not hold once its words are changed to a falsehood', {
  timeout: 300_000,
}, async () => {
  const read = createMarkdownReader(await evidenceOf(join(import.meta.dirname, 'library')));
  const readRow = (row: Row): Found[] => {
    const { meta, markdown } = articleOfRow(row);
    // Plain paragraphs only: the text is the end of the article.
    const start = markdown.length - 1 - row.text.length - (row.context.heading ? 3 : 0);
    return read(meta, markdown)
      .filter((claim) => claim.start >= start)
      .map((claim) => ({ ...claim, start: claim.start - start, end: claim.end - start }));
  };
  const survivors: string[] = [];
  let tried = 0;
  for (const row of readRows().filter(({ context }, at) => !context.markdown && at % step === 0)) {
    if (/[*_`[\]]/.test(row.text)) continue;
    const before = readRow(row).filter(({ verdict }) => verdict === 'holds');
    for (const holding of before)
      for (const mutation of mutationsOf(row.text, holding)) {
        tried += 1;
        const text = mutated(row.text, mutation);
        if (survives(readRow({ ...row, text }), before, holding, mutation)) survivors.push(text);
      }
  }
  expect(tried).toBeGreaterThan(50);
  expect([...new Set(survivors)]).toEqual([]);
});

test.each(reviewFolders().map((folder) => [basename(folder), folder]))(
  'the same within the whole articles of %s, where the sentences around it stay',
  { timeout: 300_000 },
  async (_name, folder) => {
    const articles = join(folder, 'dossier', 'articles');
    const read = createMarkdownReader(await evidenceOf(join(folder, 'dossier')));
    const survivors: string[] = [];
    let tried = 0;
    for (const file of readdirSync(articles).filter((name) => name.endsWith('.md'))) {
      const id = file.slice(0, -3);
      const meta = articleSchema.parse(JSON.parse(readFileSync(join(articles, `${id}.json`), 'utf8')));
      const markdown = readFileSync(join(articles, file), 'utf8');
      const { text } = plainTextOfMarkdown(markdown);
      const before = read(meta, markdown, id);
      const held = before.filter(({ verdict }) => verdict === 'holds');
      const sample = held.filter((_, at) => at % stride === 0);
      for (const holding of sample)
        for (const mutation of mutationsOf(text, holding)) {
          const changed = inMarkdown(markdown, text, mutation);
          if (changed === undefined) continue;
          tried += 1;
          if (survives(read(meta, changed, id), before, holding, mutation))
            survivors.push(`${mutation.name}: ${holding.text}`);
        }
    }
    expect(tried).toBeGreaterThan(2);
    expect([...new Set(survivors)]).toEqual([]);
  },
);

/** The article with the mutation made; undefined where the words around it do not stand once in the source. */
function inMarkdown(markdown: string, text: string, { at, removed, inserted }: Mutation): string | undefined {
  const lead = text
    .slice(Math.max(0, at - 25), at)
    .split('\n')
    .at(-1)!;
  const rest = text.slice(at, at + removed + 25).split('\n')[0]!;
  const first = markdown.indexOf(lead + rest);
  if (first < 0 || markdown.indexOf(lead + rest, first + 1) >= 0) return undefined;
  const place = first + lead.length;
  return markdown.slice(0, place) + inserted + markdown.slice(place + removed);
}

/** Does the claim still hold, with no other claim on the changed words that says it does not? */
function survives(
  after: readonly Found[],
  before: readonly Found[],
  holding: Found,
  mutation: Mutation,
): boolean {
  const span = movedSpan(holding, mutation);
  const covers = (claim: Found) => claim.start <= mutation.at && claim.end >= mutation.at;
  // Two claims can rest on the same words ("from 4.1 to 0.6"): the statement is refuted when one of them is.
  if (after.some((claim) => covers(claim) && claim.verdict !== 'holds')) return false;
  return after.some(
    (claim) =>
      claim.verdict === 'holds' &&
      claim.kind === holding.kind &&
      claim.quantity === holding.quantity &&
      claim.start < span.end &&
      claim.end > span.start &&
      !before.some((other) => other !== holding && other.text === claim.text),
  );
}
