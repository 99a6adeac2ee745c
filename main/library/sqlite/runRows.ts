import { createHash } from 'node:crypto';
import type { RunEvidence } from '../../../shared/contract/evidence.ts';
import type { Reading } from '../../../shared/contract/reading.ts';
import { type Run, runSchema } from '../../../shared/contract/run.ts';
import { runEvidence } from '../../dossier/dossierEvidence.ts';
import { documentValue } from '../../dossier/parseDocument.ts';
import type { CellTable } from '../../intake/cellTable.ts';
import type { RowFinding } from '../../intake/checkCell.ts';
import { prepareColumns, typeReading } from '../../intake/typeReading.ts';
import type { Store } from './store.ts';

export interface RunRow {
  key: number;
  unit: string;
  id: string;
  version: number;
  content: string;
  columns: string | null;
  digest: string;
}

/** SHA-256 (hex) over what an export would write of a run; tells equal from changed without reading its rows. */
export function contentDigest(content: string, table: CellTable | null): string {
  const hash = createHash('sha256').update(content);
  if (table !== null) {
    hash.update(`\n${JSON.stringify(table.columns)}`);
    for (const cells of table.rows) hash.update(`\n${JSON.stringify(cells)}`);
  }
  return hash.digest('hex');
}

/** Inserts a run row and returns its key. */
export function insertRun(
  store: Store,
  unit: string,
  id: string,
  version: number,
  content: string,
  table: CellTable | null,
): number {
  const { lastInsertRowid } = store
    .sql('INSERT INTO run (unit, id, version, content, columns, digest) VALUES (?, ?, ?, ?, ?, ?)')
    .run(
      unit,
      id,
      version,
      content,
      table === null ? null : JSON.stringify(table.columns),
      contentDigest(content, table),
    );
  return Number(lastInsertRowid);
}

export function insertReadings(
  store: Store,
  run: number,
  table: CellTable,
  readings: readonly Reading[],
  from = 0,
  to = table.rows.length,
): void {
  const insert = store.sql(
    'INSERT INTO reading (run, row, series, stimulus, x, y, luminance, cells) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
  );
  for (let index = from; index < to; index += 1) {
    const reading = readings[index]!;
    insert.run(
      run,
      index + 1,
      reading.series,
      reading.stimulus ?? null,
      reading.x,
      reading.y,
      reading.Y,
      JSON.stringify(table.rows[index]),
    );
  }
}

export function cellsOf(store: Store, row: RunRow): CellTable | null {
  if (row.columns === null) return null;
  const cells = store
    .sql('SELECT cells FROM reading WHERE run = ? ORDER BY row')
    .pluck()
    .all(row.key) as string[];
  return {
    columns: JSON.parse(row.columns) as string[],
    rows: cells.map((text) => JSON.parse(text) as string[]),
  };
}

/** Types stored cells again under the run's conditions: the same function that typed them when they came in. */
export function typeCells(
  table: CellTable,
  conditions: Run,
): { readings: Reading[]; faults: { row: number; finding: RowFinding }[] } {
  const columns = prepareColumns(table.columns);
  const readings: Reading[] = [];
  const faults: { row: number; finding: RowFinding }[] = [];
  for (const [index, cells] of table.rows.entries()) {
    const typed = typeReading(columns, cells, index + 1, conditions.source);
    if (typed.reading !== null) readings.push(typed.reading);
    for (const finding of typed.faults) faults.push({ row: index + 1, finding });
  }
  return { readings, faults };
}

/** Typed runs, kept by what they hold, so that a changed unit does not cost the typing of all others. */
export class RunCache {
  readonly #runs = new Map<number, { digest: string; evidence: RunEvidence }>();

  evidence(store: Store, row: RunRow): RunEvidence {
    const known = this.#runs.get(row.key);
    if (known?.digest === row.digest) return known.evidence;
    const conditions = documentValue(row.content, runSchema);
    const table = cellsOf(store, row);
    const evidence = runEvidence(
      row.id,
      conditions,
      table === null ? [] : typeCells(table, conditions).readings,
    );
    this.#runs.set(row.key, { digest: row.digest, evidence });
    return evidence;
  }
}

const runFields = 'key, unit, id, version, content, columns, digest';

export function currentRun(store: Store, unit: string, id: string): RunRow | undefined {
  return store.sql(`SELECT ${runFields} FROM run WHERE unit = ? AND id = ? AND version = 0`).get(unit, id) as
    | RunRow
    | undefined;
}

export function runsOf(store: Store, unit: string, superseded: boolean): RunRow[] {
  return store
    .sql(`SELECT ${runFields} FROM run WHERE unit = ? AND version BETWEEN 0 AND ? ORDER BY id, version`)
    .all(unit, superseded ? Number.MAX_SAFE_INTEGER : 0) as RunRow[];
}

/** The run as it stands becomes its next superseded version. */
export function supersede(store: Store, row: RunRow): void {
  store
    .sql(
      'UPDATE run SET version = (SELECT max(version) + 1 FROM run WHERE unit = ? AND id = ?) WHERE key = ?',
    )
    .run(row.unit, row.id, row.key);
}
