import type { Result } from '../../../shared/contract/fault.ts';
import { type House, houseSchema } from '../../../shared/contract/house.ts';
import { type ScoreSheet, scoreSheetSchema } from '../../../shared/contract/scoreSheet.ts';
import { documentValue } from '../../dossier/parseDocument.ts';
import type { Revised } from '../library.ts';
import { textOf } from './runWrites.ts';
import { bench, type Store } from './store.ts';
import { sha256 } from './unitRows.ts';

/** The house's own documents (`house.json`, `scoresheet.json`, `protocol.json`, recipes), each under its path. */
export function documentText(store: Store, path: string): string | null {
  return (
    (store.sql('SELECT content FROM document WHERE path = ?').pluck().get(path) as string | undefined) ?? null
  );
}

export function readHouse(store: Store): House | null {
  const text = documentText(store, 'house.json');
  return text === null ? null : documentValue(text, houseSchema);
}

export function saveHouse(store: Store, house: House): Result<Revised> {
  return saveDocument(store, 'house.json', house, 'house-saved');
}

export function readScoreSheet(store: Store): ScoreSheet | null {
  const text = documentText(store, 'scoresheet.json');
  return text === null ? null : documentValue(text, scoreSheetSchema);
}

export function saveScoreSheet(store: Store, scoreSheet: ScoreSheet): Result<Revised> {
  return saveDocument(store, 'scoresheet.json', scoreSheet, 'score-sheet-saved');
}

function saveDocument(
  store: Store,
  path: string,
  content: { version: number },
  what: string,
): Result<Revised> {
  return store.change(() => {
    const text = textOf(content, documentText(store, path) ?? undefined);
    store
      .sql(
        'INSERT INTO document (path, content) VALUES (?, ?) ON CONFLICT (path) DO UPDATE SET content = excluded.content',
      )
      .run(path, text);
    store.record(what, path, bench, { version: content.version, digest: sha256(text) });
    return { revision: store.raise() };
  });
}
