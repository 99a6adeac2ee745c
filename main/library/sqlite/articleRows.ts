import { canonicalJson } from '../../../shared/claims/canonical.ts';
import { type Article, articleSchema } from '../../../shared/contract/article.ts';
import type { ArticleDocument, ArticleSummary } from '../../../shared/contract/door.ts';
import type { ArticleRecord } from '../../../shared/contract/evidence.ts';
import { fail, type Result, succeed } from '../../../shared/contract/fault.ts';
import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';
import { claimsCollectionSchema, claimsOf, claimsText } from '../../dossier/claimsCollection.ts';
import { documentValue } from '../../dossier/parseDocument.ts';
import { type ArticleChange, leaseSeconds, type Revised } from '../library.ts';
import { Refusal } from './databaseFault.ts';
import { textOf } from './runWrites.ts';
import { bench, type Store } from './store.ts';
import { sha256 } from './unitRows.ts';

export interface ArticleRow {
  id: string;
  content: string;
  markdown: string;
  claims: string | null;
  remarks: string | null;
  revision: number;
  saved_at: string | null;
}

/** Typing is recorded in the history at most this often for one person and article; the text itself is always saved. */
const minutesBetweenTextEvents = 10;

export function articleRows(store: Store): ArticleRow[] {
  return store.sql('SELECT * FROM article ORDER BY id').all() as ArticleRow[];
}

export function articleRow(store: Store, id: string): ArticleRow | undefined {
  return store.sql('SELECT * FROM article WHERE id = ?').get(id) as ArticleRow | undefined;
}

export function storedClaims(text: string | null): StoredClaim[] {
  return text === null ? [] : claimsOf(documentValue(text, claimsCollectionSchema));
}

export function articleRecords(store: Store): ArticleRecord[] {
  return articleRows(store).map(({ id, content }) => ({
    id,
    meta: documentValue(content, articleSchema),
  }));
}

export function articleSummaries(store: Store): ArticleSummary[] {
  return articleRows(store).map((row) => {
    const meta = documentValue(row.content, articleSchema);
    return {
      id: row.id,
      title: meta.title,
      unit: meta.unit,
      state: meta.state,
      date: meta.date ?? null,
      words: row.markdown.match(/[\p{L}\p{N}]+(?:[.,'’-][\p{L}\p{N}]+)*/gu)?.length ?? 0,
      revision: row.revision,
      savedAt: row.saved_at,
    };
  });
}

export function readArticle(store: Store, article: string): Result<ArticleDocument> {
  const row = articleRow(store, article);
  if (row === undefined)
    return fail({
      code: 'not-found',
      sentence: `There is no article "${article}".`,
      mend: 'Check the id.',
    });
  return succeed({
    id: row.id,
    meta: documentValue(row.content, articleSchema),
    markdown: row.markdown,
    claims: storedClaims(row.claims),
    revision: row.revision,
    savedAt: row.saved_at,
  });
}

export function createArticle(
  store: Store,
  article: string,
  meta: Article,
  markdown: string,
  claims: readonly StoredClaim[] = [],
): Result<Revised> {
  return store.change(() => {
    if (articleRow(store, article) !== undefined)
      throw new Refusal({
        code: 'conflict',
        sentence: `There is an article "${article}" already.`,
        mend: 'Choose another id.',
      });
    requireUnits(store, meta);
    const kept = claims.length === 0 ? null : claimsText(article, claims, null);
    store
      .sql(
        'INSERT INTO article (id, content, markdown, claims, revision, saved_at) VALUES (?, ?, ?, ?, 1, ?)',
      )
      .run(article, textOf(meta, undefined), markdown, kept, store.now());
    store.record('article-created', `articles/${article}`, bench);
    if (kept !== null)
      store.record('proofs-changed', `articles/${article}`, bench, {
        proofs: claims.length,
        digest: sha256(kept),
      });
    store.raise();
    return { revision: 1 };
  });
}

export function saveArticle(
  store: Store,
  article: string,
  change: ArticleChange,
): Result<Revised & { savedAt: string }> {
  return store.change(() => {
    const row = articleRow(store, article);
    if (row === undefined)
      throw new Refusal({ code: 'not-found', sentence: `There is no article "${article}".` });
    if (row.revision !== change.revision)
      throw new Refusal({
        code: 'stale-revision',
        sentence: `The article was saved by somebody else in between (revision ${row.revision}, yours rests on ${change.revision}).`,
        mend: 'Nothing was overwritten: take the newer text, then bring your changes in again.',
      });
    requireUnits(store, change.meta);
    const content = textOf(change.meta, row.content);
    const sameClaims = canonicalJson(storedClaims(row.claims)) === canonicalJson(change.claims);
    const claims = sameClaims
      ? row.claims
      : change.claims.length === 0
        ? null
        : claimsText(article, change.claims, row.claims);
    const savedAt = store.now();
    const revision = row.revision + 1;
    store
      .sql(
        'UPDATE article SET content = ?, markdown = ?, claims = ?, revision = ?, saved_at = ? WHERE id = ?',
      )
      .run(content, change.markdown, claims, revision, savedAt, article);
    recordChange(store, article, row, change, content, claims, sameClaims);
    store.raise();
    return { revision, savedAt };
  });
}

function recordChange(
  store: Store,
  article: string,
  row: ArticleRow,
  change: ArticleChange,
  content: string,
  claims: string | null,
  sameClaims: boolean,
): void {
  const of = `articles/${article}`;
  const state = documentValue(row.content, articleSchema).state;
  if (state !== change.meta.state)
    store.record('state-changed', of, change.by, {
      from: state,
      to: change.meta.state,
      text: sha256(change.markdown),
    });
  else if (content !== row.content) store.record('facts-changed', of, change.by, { digest: sha256(content) });
  if (!sameClaims)
    store.record('proofs-changed', of, change.by, {
      proofs: change.claims.length,
      digest: sha256(claims ?? ''),
    });
  if (row.markdown !== change.markdown && !writtenJustNow(store, of, change.by))
    store.record('text-changed', of, change.by);
}

function writtenJustNow(store: Store, of: string, by: string): boolean {
  const at = store
    .sql(
      `SELECT line ->> '$.at' FROM history
       WHERE line ->> '$.what' = 'text-changed' AND line ->> '$.of' = ? AND line ->> '$.by' = ?
       ORDER BY number DESC LIMIT 1`,
    )
    .pluck()
    .get(of, by) as string | undefined;
  return at !== undefined && store.clock().getTime() - Date.parse(at) < minutesBetweenTextEvents * 60_000;
}

function requireUnits(store: Store, meta: Article): void {
  for (const unit of [meta.unit, ...(meta.against ?? [])]) store.requireUnit(unit);
}

export function leaseArticle(
  store: Store,
  article: string,
  client: string,
  release: boolean,
): Result<boolean> {
  return store.change(() => {
    if (articleRow(store, article) === undefined)
      throw new Refusal({ code: 'not-found', sentence: `There is no article "${article}".` });
    const now = store.clock().getTime();
    if (release) {
      store.sql('DELETE FROM lease WHERE article = ? AND client = ?').run(article, client);
      return false;
    }
    const { changes } = store
      .sql(
        `INSERT INTO lease (article, client, until) VALUES (?, ?, ?)
         ON CONFLICT (article) DO UPDATE SET client = excluded.client, until = excluded.until
         WHERE lease.client = excluded.client OR lease.until < ?`,
      )
      .run(article, client, now + leaseSeconds * 1000, now);
    return changes > 0;
  });
}
