import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { articleSchema } from '../../shared/contract/article.ts';
import { createMarkdownReader, evidenceOf } from './judgeRows.ts';
import { expectedSchema } from './rows.ts';
import { type Gold, type Outcome, scoreRow } from './scoring.ts';

const sentenceSchema = z.strictObject({ text: z.string().min(1), expect: z.array(expectedSchema) });
/** The sentences of each article in their order. */
const reviewsSchema = z.record(z.string(), z.array(sentenceSchema));

export interface GoldSentence extends Gold {
  article: string;
}

/** Folders of whole reviews, each with its `dossier/` and `expected.json`. */
export function reviewFolders(): string[] {
  const folder = join(import.meta.dirname, 'reviews');
  return readdirSync(folder)
    .sort()
    .map((name) => join(folder, name));
}

/**
 * Reads and judges the whole articles of a folder. What is found outside the sentences that are listed there counts as
 * found in a sentence of which nothing is expected.
 */
export async function judgeReviews(folder: string): Promise<Outcome<GoldSentence>[]> {
  const dossier = join(folder, 'dossier');
  const read = createMarkdownReader(await evidenceOf(dossier));
  const expected = reviewsSchema.parse(JSON.parse(readFileSync(join(folder, 'expected.json'), 'utf8')));
  return Object.entries(expected).flatMap(([article, sentences]) => {
    const file = (ending: string) => readFileSync(join(dossier, 'articles', `${article}.${ending}`), 'utf8');
    const markdown = file('md');
    const claims = read(articleSchema.parse(JSON.parse(file('json'))), markdown, article);
    const { text } = plainTextOfMarkdown(markdown);
    const listed = placesOf(text, sentences);
    const outcomes = listed.map(({ sentence, start, end }) =>
      scoreRow(
        { ...sentence, article },
        claims
          .filter((claim) => claim.start >= start && claim.end <= end)
          .map((claim) => ({ ...claim, start: claim.start - start, end: claim.end - start })),
      ),
    );
    const elsewhere = claims.filter(
      (claim) => !listed.some(({ start, end }) => claim.start >= start && claim.end <= end),
    );
    return [...outcomes, scoreRow({ text, expect: [], article }, elsewhere)];
  });
}

/** Where the sentences stand in the text, one after the other. */
function placesOf<Sentence extends Gold>(text: string, sentences: readonly Sentence[]) {
  let from = 0;
  return sentences.map((sentence) => {
    const start = text.indexOf(sentence.text, from);
    if (start < 0) throw new Error(`not in the article after offset ${from}: ${sentence.text}`);
    from = start + sentence.text.length;
    return { sentence, start, end: from };
  });
}
