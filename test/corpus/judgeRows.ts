import { join } from 'node:path';
import { dossierEvidence } from '../../main/dossier/dossierEvidence.ts';
import { readDossier } from '../../main/dossier/readDossier.ts';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { judge } from '../../shared/claims/checking/index.ts';
import { readingContextOf } from '../../shared/claims/context.ts';
import { defaultHouse } from '../../shared/claims/house/defaults.ts';
import { readArticle } from '../../shared/claims/reading/index.ts';
import type { Article } from '../../shared/contract/article.ts';
import type { ArticleRecord, Evidence } from '../../shared/contract/evidence.ts';
import { articleOfRow } from './articleOfRow.ts';
import type { Row } from './rows.ts';
import { type Found, type Outcome, scoreRow } from './scoring.ts';

/** Reads a dossier folder; a fault is an error here, because the corpus has none. */
export async function evidenceOf(folder: string): Promise<Evidence> {
  const read = await readDossier(folder);
  if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join('\n'));
  return dossierEvidence(read.value.dossier);
}

export type MarkdownReader = (meta: Article, markdown: string, id?: string) => Found[];

/**
 * Reads and judges small articles against one library. Opinion candidates are left out: they claim nothing. Offsets
 * are those of the article's plain text.
 */
export function createMarkdownReader(evidence: Evidence): MarkdownReader {
  const measurer = createMeasurer();
  return (meta, markdown, id = 'corpus') => {
    const article: ArticleRecord = { id, meta };
    const world: Evidence = {
      units: evidence.units,
      articles: [...evidence.articles.filter((other) => other.id !== id), article],
    };
    const context = readingContextOf(world, article, defaultHouse);
    const { proposals } = readArticle(plainTextOfMarkdown(markdown), context);
    return proposals
      .filter((proposal) => !proposal.opinion)
      .map((proposal, index) => {
        const claim = { ...proposal, id: String(index), origin: 'proposed' as const };
        const judgement = judge(claim, {
          evidence: world,
          article,
          house: defaultHouse,
          measure: measurer.measure,
          draws: measurer.draws,
        });
        const { start, end, text } = proposal;
        const { kind, quantity, verdict, reason } = judgement;
        return { start, end, text, kind, quantity, verdict, reason };
      });
  };
}

/** Reads each row as its own small article and scores what was found in the row's sentence. */
export async function judgeRows(rows: readonly Row[]): Promise<Outcome<Row>[]> {
  const read = createMarkdownReader(await evidenceOf(join(import.meta.dirname, 'library')));
  return rows.map((row) => {
    const { meta, markdown } = articleOfRow(row);
    const start = startOfText(markdown, row);
    const found = read(meta, markdown)
      .filter((claim) => claim.start >= start && claim.end <= start + row.text.length)
      .map((claim) => ({ ...claim, start: claim.start - start, end: claim.end - start }));
    return scoreRow(row, found);
  });
}

/** Where a row's sentence stands in its article's plain text; a list number or a mark may be gone from its start. */
function startOfText(markdown: string, row: Row): number {
  const { text } = plainTextOfMarkdown(markdown);
  const before = row.context.before ? text.indexOf(row.context.before) + row.context.before.length : 0;
  const start = text.indexOf(row.text, before);
  return start >= 0 ? start : before;
}
