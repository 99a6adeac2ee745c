import { articleSchema } from '../../../shared/contract/article.ts';
import { type House, houseSchema } from '../../../shared/contract/house.ts';
import { runSchema } from '../../../shared/contract/run.ts';
import { type ScoreSheet, scoreSheetSchema } from '../../../shared/contract/scoreSheet.ts';
import { unitSchema } from '../../../shared/contract/unit.ts';
import type { Dossier, DossierArticle, DossierRun, DossierUnit } from '../../dossier/dossier.ts';
import { formatJson, nodeOf } from '../../dossier/jsonNode.ts';
import { type Document, parseDocument } from '../../dossier/parseDocument.ts';
import { dossierSchema, dossierVersion } from '../../dossier/schemas.ts';
import { withoutLocation } from '../../photos/withoutLocation.ts';
import { articleRows, storedClaims } from './articleRows.ts';
import { cellsOf, runsOf, typeCells } from './runRows.ts';
import type { Store } from './store.ts';
import { observationsOf, observationTable, unitContent, unitIds } from './unitRows.ts';

/** The whole library as a dossier, read in one transaction so that no change falls into the middle. */
export function takeDossier(store: Store): Dossier {
  return store.database.transaction(() => {
    const documents = new Map(
      (
        store.sql('SELECT path, content FROM document ORDER BY path').all() as {
          path: string;
          content: string;
        }[]
      ).map(({ path, content }) => [path, content]),
    );
    const house = documents.get('house.json');
    const scoreSheet = documents.get('scoresheet.json');
    documents.delete('house.json');
    documents.delete('scoresheet.json');
    return {
      description: stored(descriptionText(store), dossierSchema),
      units: unitIds(store).map((id) => takeUnit(store, id)),
      articles: articleRows(store).map(
        (row): DossierArticle => ({
          id: row.id,
          document: stored(row.content, articleSchema),
          markdown: row.markdown,
          claims: row.claims === null ? null : { text: row.claims, claims: storedClaims(row.claims) },
          remarks: row.remarks,
        }),
      ),
      house: house === undefined ? null : stored<House>(house, houseSchema),
      scoreSheet: scoreSheet === undefined ? null : stored<ScoreSheet>(scoreSheet, scoreSheetSchema),
      documents,
      others: new Map(
        (
          store.sql('SELECT path, content FROM other_file ORDER BY path').all() as {
            path: string;
            content: Buffer;
          }[]
        ).map(({ path, content }) => [path, content]),
      ),
      history: historyLines(store),
    };
  })();
}

export function historyLines(store: Store): string[] {
  return store.sql('SELECT line FROM history ORDER BY number').pluck().all() as string[];
}

/** `dossier.json`: as it came, or the plain one of a library that began empty. */
function descriptionText(store: Store): string {
  const text = store.sql("SELECT value FROM library WHERE key = 'description'").pluck().get() as
    | string
    | undefined;
  return text ?? formatJson(nodeOf({ format: 'nitproof-dossier', version: dossierVersion }));
}

function takeUnit(store: Store, id: string): DossierUnit {
  const table = observationTable(store, id);
  return {
    id,
    document: stored(unitContent(store, id)!, unitSchema),
    runs: runsOf(store, id, true).map((row): DossierRun => {
      const document = stored(row.content, runSchema);
      const cells = cellsOf(store, row);
      return {
        id: row.id,
        version: row.version,
        document,
        table: cells,
        readings: cells === null ? [] : typeCells(cells, document.value).readings,
      };
    }),
    observations: table === null ? null : { table, observations: observationsOf(store, id) },
    photos: photosOf(store, id),
  };
}

/** Copies for outside: the originals stay in the library, where they were taken stays with them. */
function photosOf(store: Store, unit: string): DossierUnit['photos'] {
  const rows = store
    .sql('SELECT name, content AS bytes FROM photo WHERE unit = ? ORDER BY name')
    .all(unit) as { name: string; bytes: Buffer }[];
  return rows.map(({ name, bytes }) => ({ name, bytes: withoutLocation(bytes) }));
}

/** What the library holds was checked on its way in. */
function stored<T>(text: string, schema: Parameters<typeof parseDocument<T>>[2]): Document<T> {
  const parsed = parseDocument(text, 'library', schema);
  if (!parsed.ok)
    throw new Error(`The library holds a document that does not parse: ${parsed.faults[0]?.sentence}`);
  return parsed.value;
}
