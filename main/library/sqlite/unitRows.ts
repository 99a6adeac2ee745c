import { createHash } from 'node:crypto';
import type { UnitSummary } from '../../../shared/contract/door.ts';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import { fail, type Result, succeed } from '../../../shared/contract/fault.ts';
import type { Observation } from '../../../shared/contract/observation.ts';
import { type Unit, unitSchema } from '../../../shared/contract/unit.ts';
import { documentValue } from '../../dossier/parseDocument.ts';
import type { CellTable } from '../../intake/cellTable.ts';
import { observationCells, observationColumns, typeObservation } from '../../intake/observations.ts';
import type { Revised } from '../library.ts';
import { Refusal } from './databaseFault.ts';
import { photoMime } from './photoMime.ts';
import { type RunCache, runsOf } from './runRows.ts';
import { textOf } from './runWrites.ts';
import { bench, type Store } from './store.ts';

export function unitContent(store: Store, unit: string): string | undefined {
  return store.sql('SELECT content FROM unit WHERE id = ?').pluck().get(unit) as string | undefined;
}

export function unitIds(store: Store): string[] {
  return store.sql('SELECT id FROM unit ORDER BY id').pluck().all() as string[];
}

export function saveUnit(store: Store, unit: string, content: Unit): Result<Revised> {
  return store.change(() => {
    const former = unitContent(store, unit);
    const text = textOf(content, former);
    store
      .sql(
        'INSERT INTO unit (id, content) VALUES (?, ?) ON CONFLICT (id) DO UPDATE SET content = excluded.content',
      )
      .run(unit, text);
    store.record('unit-saved', `units/${unit}`, bench, { digest: sha256(text) });
    return { revision: store.raise() };
  });
}

export function readUnit(store: Store, cache: RunCache, unit: string): Result<UnitEvidence> {
  const content = unitContent(store, unit);
  if (content === undefined)
    return fail({
      code: 'not-found',
      sentence: `There is no unit "${unit}".`,
      mend: 'Check the id on the Shelf.',
    });
  return succeed({
    id: unit,
    unit: documentValue(content, unitSchema),
    runs: runsOf(store, unit, false).map((row) => cache.evidence(store, row)),
    observations: observationsOf(store, unit),
  });
}

export function observationTable(store: Store, unit: string): CellTable | null {
  const columns = store.sql('SELECT observation_columns FROM unit WHERE id = ?').pluck().get(unit) as
    | string
    | null;
  if (columns === null || columns === undefined) return null;
  const cells = store
    .sql('SELECT cells FROM observation WHERE unit = ? ORDER BY position')
    .pluck()
    .all(unit) as string[];
  return {
    columns: JSON.parse(columns) as string[],
    rows: cells.map((text) => JSON.parse(text) as string[]),
  };
}

export function observationsOf(store: Store, unit: string): Observation[] {
  const table = observationTable(store, unit);
  if (table === null) return [];
  return table.rows.flatMap((cells) => {
    const typed = typeObservation(table.columns, cells);
    return typed.ok ? [typed.observation] : [];
  });
}

export function saveObservation(store: Store, unit: string, observation: Observation): Result<Revised> {
  return store.change(() => {
    store.requireUnit(unit);
    const table = observationTable(store, unit) ?? { columns: [...observationColumns], rows: [] };
    const missing = Object.keys(observation).filter(
      (name) => (observationColumns as readonly string[]).includes(name) && !table.columns.includes(name),
    );
    if (missing.length > 0 || table.rows.length === 0) {
      table.columns.push(...missing);
      store
        .sql('UPDATE unit SET observation_columns = ? WHERE id = ?')
        .run(JSON.stringify(table.columns), unit);
      table.rows.forEach((cells) => {
        cells.push(...missing.map(() => ''));
        store
          .sql('UPDATE observation SET cells = ? WHERE unit = ? AND id = ?')
          .run(JSON.stringify(cells), unit, cells[table.columns.indexOf('id')]);
      });
    }
    const id = table.columns.indexOf('id');
    const former = table.rows.find((cells) => cells[id] === observation.id);
    const cells = observationCells(table.columns, observation, former);
    const typed = typeObservation(table.columns, cells);
    if (!typed.ok)
      throw new Refusal(
        ...typed.findings.map(({ sentence, mend }) => ({ code: 'bad-input' as const, sentence, mend })),
      );
    store
      .sql(
        `INSERT INTO observation (unit, id, position, cells)
         VALUES (?, ?, (SELECT coalesce(max(position), 0) + 1 FROM observation WHERE unit = ?), ?)
         ON CONFLICT (unit, id) DO UPDATE SET cells = excluded.cells`,
      )
      .run(unit, observation.id, unit, JSON.stringify(cells));
    store.record('observation-saved', `units/${unit}/observations/${observation.id}`, bench, {
      digest: sha256(JSON.stringify(cells)),
    });
    return { revision: store.raise() };
  });
}

export function removeObservation(store: Store, unit: string, id: string): Result<Revised> {
  return store.change(() => {
    const { changes } = store.sql('DELETE FROM observation WHERE unit = ? AND id = ?').run(unit, id);
    if (changes === 0)
      throw new Refusal({ code: 'not-found', sentence: `The unit "${unit}" has no observation "${id}".` });
    if (store.sql('SELECT 1 FROM observation WHERE unit = ?').get(unit) === undefined)
      store.sql('UPDATE unit SET observation_columns = NULL WHERE id = ?').run(unit);
    store.record('observation-removed', `units/${unit}/observations/${id}`, bench);
    return { revision: store.raise() };
  });
}

export function unitSummary(store: Store, id: string): UnitSummary {
  const unit = documentValue(unitContent(store, id)!, unitSchema);
  const count = (sql: string): number => store.sql(sql).pluck().get(id) as number;
  return {
    id,
    maker: unit.maker,
    model: unit.model,
    diagonalInches: unit.size?.diagonal_in ?? null,
    panel: unit.panel ?? null,
    backlight: unit.backlight ?? null,
    price: unit.price ?? null,
    provenance: unit.provenance ?? null,
    dueBack: unit.due_back ?? null,
    returned: unit.returned ?? null,
    firmware: unit.firmware ?? null,
    runs: count('SELECT count(*) FROM run WHERE unit = ? AND version = 0'),
    observations: count('SELECT count(*) FROM observation WHERE unit = ?'),
    photos: count('SELECT count(*) FROM photo WHERE unit = ?'),
    latestRun:
      (store.sql('SELECT max(taken) FROM run WHERE unit = ? AND version = 0').pluck().get(id) as
        | string
        | null) ?? null,
  };
}

export function listPhotos(store: Store, unit: string): { name: string; mime: string; bytes: number }[] {
  const rows = store
    .sql('SELECT name, length(content) AS bytes FROM photo WHERE unit = ? ORDER BY name')
    .all(unit) as { name: string; bytes: number }[];
  return rows.map(({ name, bytes }) => ({ name, bytes, mime: photoMime(name) }));
}

export function insertPhoto(store: Store, unit: string, name: string, bytes: Uint8Array): void {
  store
    .sql(
      `INSERT INTO photo (unit, name, digest, content) VALUES (?, ?, ?, ?)
       ON CONFLICT (unit, name) DO UPDATE SET digest = excluded.digest, content = excluded.content`,
    )
    .run(unit, name, sha256(bytes), Buffer.from(bytes));
}

export function addPhoto(
  store: Store,
  unit: string,
  name: string,
  bytes: Uint8Array,
): Result<Revised & { name: string }> {
  return store.change(() => {
    store.requireUnit(unit);
    const safe = name
      .replace(/^.*[\\/]/, '')
      .replace(/[^\p{L}\p{N}._ -]/gu, '-')
      .replace(/^\.+/, '');
    if (safe === '' || !photoMime(safe).startsWith('image/'))
      throw new Refusal({
        code: 'bad-input',
        sentence: `"${name}" is not the name of a photo.`,
        mend: 'Bring a JPEG, PNG, WebP, AVIF, GIF or HEIC file.',
      });
    const taken = new Set(listPhotos(store, unit).map((photo) => photo.name));
    const dot = safe.lastIndexOf('.');
    let free = safe;
    for (let number = 2; taken.has(free); number += 1)
      free = `${safe.slice(0, dot)}-${number}${safe.slice(dot)}`;
    insertPhoto(store, unit, free, bytes);
    store.record('photo-added', `units/${unit}/photos/${free}`, bench, { digest: sha256(bytes) });
    return { name: free, revision: store.raise() };
  });
}

export function readPhoto(
  store: Store,
  unit: string,
  name: string,
): Result<{ mime: string; bytes: Uint8Array }> {
  const content = store
    .sql('SELECT content FROM photo WHERE unit = ? AND name = ?')
    .pluck()
    .get(unit, name) as Buffer | undefined;
  if (content === undefined)
    return fail({ code: 'not-found', sentence: `The unit "${unit}" has no photo "${name}".` });
  return succeed({ mime: photoMime(name), bytes: content });
}

export function sha256(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
