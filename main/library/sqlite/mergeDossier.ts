import type { Fault, Result } from '../../../shared/contract/fault.ts';
import { type Dossier, type DossierArticle, type DossierUnit, runFileName } from '../../dossier/dossier.ts';
import { withoutLocation } from '../../photos/withoutLocation.ts';
import type { MergeReport } from '../library.ts';
import { articleRow } from './articleRows.ts';
import { Refusal } from './databaseFault.ts';
import { checkHistory } from './historyChain.ts';
import { contentDigest, insertReadings, insertRun, type RunRow } from './runRows.ts';
import type { Store } from './store.ts';
import { historyLines } from './takeDossier.ts';
import { insertPhoto, observationTable, sha256, unitContent } from './unitRows.ts';

type Preference = 'theirs' | 'ours' | undefined;

/**
 * Merges by id, all or nothing. Equal content changes nothing; other content under an id that the library has is a
 * conflict, listed, unless a preference decides. Adds no line to the history.
 */
export function mergeDossier(store: Store, dossier: Dossier, prefer: Preference): Result<MergeReport> {
  return store.change(() => {
    const merge = new Merge(store, prefer);
    merge.description(dossier.description.text);
    if (dossier.house !== null) merge.document('house.json', dossier.house.text);
    if (dossier.scoreSheet !== null) merge.document('scoresheet.json', dossier.scoreSheet.text);
    for (const [path, text] of dossier.documents) merge.document(path, text);
    for (const [path, bytes] of dossier.others) merge.other(path, bytes);
    for (const unit of dossier.units) merge.unit(unit);
    for (const article of dossier.articles) merge.article(article);
    merge.history(dossier.history);
    if (merge.conflicts.length > 0) throw new Refusal(...merge.conflicts);
    return {
      units: dossier.units.length,
      articles: dossier.articles.length,
      notes: merge.notes,
      revision: merge.changed ? store.raise() : store.revision(),
    };
  });
}

class Merge {
  readonly store: Store;
  readonly prefer: Preference;
  readonly conflicts: Fault[] = [];
  readonly notes: string[] = [];
  changed = false;

  constructor(store: Store, prefer: Preference) {
    this.store = store;
    this.prefer = prefer;
  }

  /** Whether to write what came. `same` is null when the library has nothing under this id. */
  decide(what: string, same: boolean | null): boolean {
    if (same === true) return false;
    if (same === null) {
      this.changed = true;
      return true;
    }
    if (this.prefer === undefined) {
      this.conflicts.push({
        code: 'conflict',
        sentence: `${what} differs from the library's.`,
        mend: 'Choose with --prefer theirs (take the incoming one) or --prefer ours (keep the library’s).',
      });
      return false;
    }
    const theirs = this.prefer === 'theirs';
    this.notes.push(`${what} differed; ${theirs ? 'the incoming one was taken' : 'the library’s was kept'}.`);
    this.changed ||= theirs;
    return theirs;
  }

  description(text: string): void {
    const known = this.store.sql("SELECT value FROM library WHERE key = 'description'").pluck().get();
    if (this.decide('dossier.json', known === undefined ? null : known === text))
      this.store
        .sql(
          "INSERT INTO library (key, value) VALUES ('description', ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value",
        )
        .run(text);
  }

  document(path: string, text: string): void {
    const known = this.store.sql('SELECT content FROM document WHERE path = ?').pluck().get(path);
    if (this.decide(path, known === undefined ? null : known === text))
      this.store
        .sql(
          'INSERT INTO document (path, content) VALUES (?, ?) ON CONFLICT (path) DO UPDATE SET content = excluded.content',
        )
        .run(path, text);
  }

  other(path: string, bytes: Uint8Array): void {
    const known = this.store.sql('SELECT content FROM other_file WHERE path = ?').pluck().get(path) as
      | Buffer
      | undefined;
    if (this.decide(path, known === undefined ? null : known.equals(bytes)))
      this.store
        .sql(
          'INSERT INTO other_file (path, content) VALUES (?, ?) ON CONFLICT (path) DO UPDATE SET content = excluded.content',
        )
        .run(path, Buffer.from(bytes));
  }

  unit({ id, document, runs, observations, photos }: DossierUnit): void {
    const known = unitContent(this.store, id);
    if (this.decide(`The unit ${id}`, known === undefined ? null : known === document.text))
      this.store
        .sql(
          'INSERT INTO unit (id, content) VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET content = excluded.content',
        )
        .run(id, document.text);
    for (const run of runs) this.run(id, run);
    if (observations !== null) this.observations(id, observations.table.columns, observations.table.rows);
    for (const { name, bytes } of photos) {
      const known = this.store
        .sql('SELECT digest, content FROM photo WHERE unit = ? AND name = ?')
        .get(id, name) as { digest: string; content: Buffer } | undefined;
      // A copy that had left without its location is the same photo come back; the original stays.
      const isSame = known && [known.digest, sha256(withoutLocation(known.content))].includes(sha256(bytes));
      if (this.decide(`The photo ${name} of ${id}`, known === undefined ? null : isSame === true))
        insertPhoto(this.store, id, name, bytes);
    }
  }

  run(unit: string, run: DossierUnit['runs'][number]): void {
    const known = this.store
      .sql('SELECT key, digest FROM run WHERE unit = ? AND id = ? AND version = ?')
      .get(unit, run.id, run.version) as Pick<RunRow, 'key' | 'digest'> | undefined;
    const digest = contentDigest(run.document.text, run.table);
    const what = `The run ${runFileName(run)} of ${unit}`;
    if (!this.decide(what, known === undefined ? null : known.digest === digest)) return;
    if (known !== undefined) this.store.sql('DELETE FROM run WHERE key = ?').run(known.key);
    const key = insertRun(this.store, unit, run.id, run.version, run.document.text, run.table);
    if (run.table !== null) insertReadings(this.store, key, run.table, run.readings);
  }

  observations(unit: string, columns: readonly string[], rows: readonly (readonly string[])[]): void {
    const known = observationTable(this.store, unit);
    const merged = known?.columns ?? [...columns];
    const added = columns.filter((name) => !merged.includes(name));
    const rowById = new Map(known?.rows.map((cells) => [cells[merged.indexOf('id')]!, cells]));
    merged.push(...added);
    for (const cells of rowById.values()) cells.push(...added.map(() => ''));
    let position = rowById.size;
    for (const cells of rows) {
      const id = cells[columns.indexOf('id')]!;
      const arranged = merged.map((name) => cells[columns.indexOf(name)] ?? '');
      const before = rowById.get(id);
      const same = before === undefined ? null : before.every((cell, index) => cell === arranged[index]);
      if (!this.decide(`The observation ${id} of ${unit}`, same)) continue;
      rowById.set(id, arranged);
      position += 1;
      this.store
        .sql(
          `INSERT INTO observation (unit, id, position, cells) VALUES (?, ?, ?, ?)
           ON CONFLICT (unit, id) DO UPDATE SET cells = excluded.cells`,
        )
        .run(unit, id, position, JSON.stringify(arranged));
    }
    if (known !== null && added.length === 0) return;
    this.store.sql('UPDATE unit SET observation_columns = ? WHERE id = ?').run(JSON.stringify(merged), unit);
    if (added.length > 0)
      for (const [id, cells] of rowById)
        this.store
          .sql('UPDATE observation SET cells = ? WHERE unit = ? AND id = ?')
          .run(JSON.stringify(cells), unit, id);
  }

  article({ id, document, markdown, claims, remarks }: DossierArticle): void {
    const known = articleRow(this.store, id);
    const same =
      known !== undefined &&
      known.content === document.text &&
      known.markdown === markdown &&
      known.claims === (claims?.text ?? null) &&
      known.remarks === remarks;
    if (!this.decide(`The article ${id}`, known === undefined ? null : same)) return;
    this.store
      .sql(
        `INSERT INTO article (id, content, markdown, claims, remarks, revision) VALUES (?, ?, ?, ?, ?, 1)
         ON CONFLICT (id) DO UPDATE SET content = excluded.content, markdown = excluded.markdown,
           claims = excluded.claims, remarks = excluded.remarks, revision = article.revision + 1`,
      )
      .run(id, document.text, markdown, claims?.text ?? null, remarks);
  }

  /** Two chains merge when one continues the other. */
  history(incoming: readonly string[]): void {
    const finding = checkHistory(incoming)[0];
    if (finding !== undefined) {
      this.conflicts.push({
        code: 'bad-input',
        sentence: `history.jsonl: line ${finding.line} ${finding.sentence}.`,
        mend: 'Take the history from the library that wrote it, or leave the file out.',
        place: { file: 'history.jsonl', line: finding.line },
      });
      return;
    }
    const known = historyLines(this.store);
    const shared = Math.min(known.length, incoming.length);
    const continues = incoming.slice(0, shared).every((line, index) => line === known[index]);
    if (continues && incoming.length <= known.length) return;
    if (!this.decide('history.jsonl', continues ? null : false)) return;
    if (!continues) this.store.sql('DELETE FROM history').run();
    const insert = this.store.sql('INSERT INTO history (line) VALUES (?)');
    for (const line of continues ? incoming.slice(shared) : incoming) insert.run(line);
  }
}
