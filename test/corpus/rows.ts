import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { articleSchema } from '../../shared/contract/article.ts';
import { verdicts } from '../../shared/contract/claim.ts';

/** What a fair editor expects of a span; `kind` and `quantity` are null where the words may be read either way. */
export const expectedSchema = z.strictObject({
  text: z.string().min(1),
  kind: z.string().nullable(),
  quantity: z.string().nullable(),
  verdict: z.enum(verdicts),
  /** Other verdicts that are as good where the rules leave a choice */
  also: z.array(z.enum(verdicts)).optional(),
});
export type Expected = z.infer<typeof expectedSchema>;

const rowSchema = z.strictObject({
  id: z.string().regex(/^[a-z]+-\d{3}$/),
  half: z.enum(['develop', 'held-back']),
  context: z.strictObject({
    unit: z.string(),
    heading: z.string().optional(),
    /** Sentence(s) before it in the same paragraph */
    before: z.string().optional(),
    locale: z.string().optional(),
    /** The whole small article with `{{}}` where the text stands; for tables, lists, headings, captions */
    markdown: z.string().includes('{{}}').optional(),
    article: articleSchema.partial().optional(),
  }),
  text: z.string().min(1),
  expect: z.array(expectedSchema),
});
export type Row = z.infer<typeof rowSchema>;
export type Half = Row['half'];

/** Half of a row: by its id alone, so that nobody chooses what is held back. */
export function halfOf(id: string): Half {
  const start = createHash('sha256').update(id).digest('hex').slice(0, 8);
  return Number.parseInt(start, 16) % 2 === 0 ? 'develop' : 'held-back';
}

/** All rows, file by file in the order of their names. */
export function readRows(): Row[] {
  const folder = join(import.meta.dirname, 'sentences');
  return readdirSync(folder)
    .sort()
    .flatMap((name) => z.array(rowSchema).parse(JSON.parse(readFileSync(join(folder, name), 'utf8'))));
}
