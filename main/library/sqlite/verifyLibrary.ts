import { canonicalJson } from '../../../shared/claims/canonical.ts';
import { articleSchema } from '../../../shared/contract/article.ts';
import { runSchema } from '../../../shared/contract/run.ts';
import { documentValue, parseDocument } from '../../dossier/parseDocument.ts';
import type { Verification } from '../library.ts';
import { articleRows, storedClaims } from './articleRows.ts';
import { checkHistory } from './historyChain.ts';
import { cellsOf, contentDigest, runsOf, typeCells } from './runRows.ts';
import type { Store } from './store.ts';
import { historyLines } from './takeDossier.ts';
import { sha256, unitIds } from './unitRows.ts';

/** Checks the file, the history's chain, and every stored digest against what the library holds. */
export function verifyLibrary(store: Store): Verification {
  const findings: string[] = [];
  for (const row of store.database.pragma('integrity_check') as { integrity_check: string }[])
    if (row.integrity_check !== 'ok') findings.push(`The file is damaged: ${row.integrity_check}.`);
  if ((store.database.pragma('foreign_key_check') as unknown[]).length > 0)
    findings.push('Some rows belong to units or runs that are gone.');

  const history = historyLines(store);
  for (const { line, sentence } of checkHistory(history)) findings.push(`History: line ${line} ${sentence}.`);

  let runs = 0;
  for (const unit of unitIds(store))
    for (const row of runsOf(store, unit, true)) {
      runs += 1;
      const name = `units/${unit}/runs/${row.id}${row.version === 0 ? '' : `@${row.version}`}`;
      const table = cellsOf(store, row);
      if (contentDigest(row.content, table) !== row.digest)
        findings.push(`${name}: the readings or conditions were changed outside Nitproof.`);
      else if (table !== null && typeCells(table, documentValue(row.content, runSchema)).faults.length > 0)
        findings.push(`${name}: some readings cannot be read any more.`);
    }

  const photos = store.sql('SELECT unit, name, digest, content FROM photo ORDER BY unit, name').all() as {
    unit: string;
    name: string;
    digest: string;
    content: Buffer;
  }[];
  for (const { unit, name, digest, content } of photos)
    if (sha256(content) !== digest)
      findings.push(`units/${unit}/photos/${name}: the photo was changed outside Nitproof.`);

  const articles = articleRows(store);
  for (const { id, content, claims } of articles) {
    if (!parseDocument(content, id, articleSchema).ok)
      findings.push(`articles/${id}: the facts cannot be read.`);
    findings.push(...proofFindings(id, claims, history));
  }
  return {
    findings,
    checked: { runs, photos: photos.length, articles: articles.length, history: history.length },
  };
}

/** The last history line on an article's proofs names their digest; later changes outside Nitproof show there. */
function proofFindings(article: string, claims: string | null, history: readonly string[]): string[] {
  const events = history.flatMap((line) => {
    const event = JSON.parse(line) as { what?: string; of?: string; digest?: string; proofs?: number };
    return event.what === 'proofs-changed' && event.of === `articles/${article}` ? [event] : [];
  });
  const last = events.at(-1);
  if (last !== undefined && last.digest !== sha256(claims ?? ''))
    return [`articles/${article}: the proofs are not those that the history tells of.`];
  const ids = storedClaims(claims).map(({ id }) => canonicalJson(id));
  return new Set(ids).size === ids.length ? [] : [`articles/${article}: two proofs share an id.`];
}
