import { canonicalJson } from '../../../shared/claims/canonical.ts';
import { type Result, succeed } from '../../../shared/contract/fault.ts';
import type { Run } from '../../../shared/contract/run.ts';
import { formatJson, nodeOf, parseJson } from '../../dossier/jsonNode.ts';
import { cancelled, type ReadingsFile } from '../../intake/readReadings.ts';
import type { Revised, SaveReadingsOptions } from '../library.ts';
import { Refusal } from './databaseFault.ts';
import {
  cellsOf,
  contentDigest,
  currentRun,
  insertReadings,
  insertRun,
  supersede,
  typeCells,
} from './runRows.ts';
import { bench, type Store } from './store.ts';

const rowsAtATime = 1000;
const staged = -1;

/** JSON text of a value, with the number texts and key order of the text it replaces. */
export function textOf(value: unknown, former: string | undefined): string {
  const before = former === undefined ? null : parseJson(former, 'library');
  return formatJson(nodeOf(value, before?.ok ? before.value : undefined));
}

export function saveRun(store: Store, unit: string, run: string, conditions: Run): Result<Revised> {
  return store.change(() => {
    store.requireUnit(unit);
    const former = currentRun(store, unit, run);
    const content = textOf(conditions, former?.content);
    if (former === undefined) insertRun(store, unit, run, 0, content, null);
    else {
      const table = cellsOf(store, former);
      if (table !== null) refuseUntyped(table, conditions);
      store
        .sql('UPDATE run SET content = ?, digest = ? WHERE key = ?')
        .run(content, contentDigest(content, table), former.key);
      if (table !== null) {
        store.sql('DELETE FROM reading WHERE run = ?').run(former.key);
        insertReadings(store, former.key, table, typeCells(table, conditions).readings);
      }
    }
    store.record('run-saved', `units/${unit}/runs/${run}`, bench, {
      digest: currentRun(store, unit, run)!.digest,
      ...(former === undefined ? {} : { before: changedFrom(former.content, content) }),
    });
    return { revision: store.raise() };
  });
}

/** The fields of a run's file that a change touched, as they stood before; null for one that was not there. */
function changedFrom(former: string, content: string): Record<string, unknown> {
  const before = JSON.parse(former) as Record<string, unknown>;
  const after = JSON.parse(content) as Record<string, unknown>;
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return Object.fromEntries(
    names
      .filter((name) => canonicalJson(before[name] ?? null) !== canonicalJson(after[name] ?? null))
      .map((name) => [name, before[name] ?? null]),
  );
}

/** New conditions must still make sense of the readings, for instance a source with enough bits for their codes. */
function refuseUntyped(table: Parameters<typeof typeCells>[0], conditions: Run): void {
  const [fault] = typeCells(table, conditions).faults;
  if (fault !== undefined)
    throw new Refusal({
      code: 'bad-input',
      sentence: `Under these conditions reading ${fault.row} cannot stand: ${fault.finding.sentence}`,
      mend: 'Mend the source’s bits and range.',
    });
}

/**
 * Writes readings in small transactions into a hidden version, then makes it the run in one: between the pieces
 * other work goes on, and a crash or cancel leaves the run as it was.
 */
export async function saveReadings(
  store: Store,
  unit: string,
  run: string,
  conditions: Run | undefined,
  file: ReadingsFile,
  { progress, record = true }: SaveReadingsOptions,
): Promise<Result<Revised>> {
  const { table, readings } = file;
  const begun = store.change(() => {
    store.requireUnit(unit);
    const former = currentRun(store, unit, run);
    if (former === undefined && conditions === undefined)
      throw new Refusal({
        code: 'not-found',
        sentence: `The unit "${unit}" has no run "${run}".`,
        mend: 'Give the conditions of a new run, or mend the id.',
      });
    const content = conditions === undefined ? former!.content : textOf(conditions, former?.content);
    store.sql('DELETE FROM run WHERE unit = ? AND id = ? AND version = ?').run(unit, run, staged);
    return { key: insertRun(store, unit, run, staged, content, table), content };
  });
  if (!begun.ok) return begun;
  const discard = (): Result<null> =>
    store.change(() => {
      store.sql('DELETE FROM run WHERE key = ?').run(begun.value.key);
      return null;
    });
  for (let from = 0; from < table.rows.length; from += rowsAtATime) {
    const to = Math.min(from + rowsAtATime, table.rows.length);
    const written = store.change(() => {
      insertReadings(store, begun.value.key, table, readings, from, to);
      return null;
    });
    if (!written.ok) {
      discard();
      return written;
    }
    if (progress && !(await progress(to / table.rows.length))) {
      discard();
      return { ok: false, faults: [cancelled] };
    }
  }
  const finished = store.change(() => {
    const former = currentRun(store, unit, run);
    if (former !== undefined) {
      if (former.columns === null) store.sql('DELETE FROM run WHERE key = ?').run(former.key);
      else supersede(store, former);
    }
    store.sql('UPDATE run SET version = 0 WHERE key = ?').run(begun.value.key);
    if (record)
      store.record('readings-brought', `units/${unit}/runs/${run}`, bench, {
        rows: table.rows.length,
        digest: contentDigest(begun.value.content, table),
      });
    return { revision: store.raise() };
  });
  if (!finished.ok) discard();
  return finished.ok ? succeed(finished.value) : finished;
}

/** Pieces of an import that a crash cut off. */
export function sweepStaged(store: Store): void {
  store.sql('DELETE FROM run WHERE version = ?').run(staged);
}
