import { basename } from 'node:path';
import type Database from 'better-sqlite3';
import type { Evidence } from '../../../shared/contract/evidence.ts';
import { fail, succeed } from '../../../shared/contract/fault.ts';
import type { HistoryEvent, Library } from '../library.ts';
import * as articles from './articleRows.ts';
import { databaseFault } from './databaseFault.ts';
import * as documents from './documentRows.ts';
import { mergeDossier } from './mergeDossier.ts';
import { backupDatabase } from './openDatabase.ts';
import { RunCache } from './runRows.ts';
import { saveReadings, saveRun, sweepStaged } from './runWrites.ts';
import { Store } from './store.ts';
import { historyLines, takeDossier } from './takeDossier.ts';
import * as units from './unitRows.ts';
import { verifyLibrary } from './verifyLibrary.ts';

/** The Library port on one SQLite connection. The connection is synchronous; the port is not, so that another store could stand here. */
export function createSqliteLibrary(
  database: Database.Database,
  file: string,
  options: { clock: () => Date; readOnly: boolean },
): Library {
  const store = new Store(database, file, options.clock);
  const cache = new RunCache();
  if (!options.readOnly) sweepStaged(store);

  const readEvidence = (): Evidence =>
    database.transaction(() => ({
      units: new Map(
        units.unitIds(store).flatMap((id) => {
          const unit = units.readUnit(store, cache, id);
          return unit.ok ? [[id, unit.value] as const] : [];
        }),
      ),
      articles: articles.articleRecords(store),
    }))();
  const count = (table: 'unit' | 'article'): number =>
    store.sql(`SELECT count(*) FROM ${table}`).pluck().get() as number;

  return {
    file,
    readOnly: options.readOnly,
    describe: async () => ({
      name: basename(file),
      file,
      units: count('unit'),
      articles: count('article'),
      revision: store.revision(),
      readOnly: options.readOnly,
    }),
    listShelf: async () => ({
      units: units.unitIds(store).map((id) => units.unitSummary(store, id)),
      articles: articles.articleSummaries(store),
    }),
    readEvidence: async () => readEvidence(),
    readUnit: async (unit) => units.readUnit(store, cache, unit),
    saveUnit: async (unit, content) => units.saveUnit(store, unit, content),
    saveRun: async (unit, run, conditions) => saveRun(store, unit, run, conditions),
    saveReadings: (unit, run, conditions, readings, how = {}) =>
      saveReadings(store, unit, run, conditions, readings, how),
    saveObservation: async (unit, observation) => units.saveObservation(store, unit, observation),
    removeObservation: async (unit, id) => units.removeObservation(store, unit, id),
    listPhotos: async (unit) => units.listPhotos(store, unit),
    addPhoto: async (unit, name, bytes) => units.addPhoto(store, unit, name, bytes),
    readPhoto: async (unit, name) => units.readPhoto(store, unit, name),
    readArticle: async (article) => articles.readArticle(store, article),
    createArticle: async (article, meta, markdown, claims) =>
      articles.createArticle(store, article, meta, markdown, claims),
    saveArticle: async (article, change) => articles.saveArticle(store, article, change),
    leaseArticle: async (article, client, release) => articles.leaseArticle(store, article, client, release),
    readHouse: async () => documents.readHouse(store),
    saveHouse: async (house) => documents.saveHouse(store, house),
    readScoreSheet: async () => documents.readScoreSheet(store),
    saveScoreSheet: async (scoreSheet) => documents.saveScoreSheet(store, scoreSheet),
    readDocument: async (path) => documents.documentText(store, path),
    listHistory: async (of) =>
      historyLines(store)
        .map((line) => JSON.parse(line) as HistoryEvent)
        .filter((event) => of === undefined || event.of === of || event.of.startsWith(`${of}/`)),
    takeDossier: async () => takeDossier(store),
    mergeDossier: async (dossier, prefer) => mergeDossier(store, dossier, prefer),
    verify: async () => verifyLibrary(store),
    backup: async (target) => {
      try {
        return succeed({ bytes: await backupDatabase(database, target) });
      } catch (error) {
        const fault = databaseFault(error, target);
        if (fault === null) throw error;
        return fail(fault);
      }
    },
    close: async () => {
      database.close();
    },
  };
}
