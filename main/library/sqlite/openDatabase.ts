import { existsSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import Database from 'better-sqlite3';
import { fail, type Result, succeed } from '../../../shared/contract/fault.ts';
import { databaseFault } from './databaseFault.ts';
import { migrations as shipped } from './migrations/index.ts';
import { isOnNetwork } from './networkFolder.ts';

/** "NTPF": tells a Nitproof library from other SQLite files. */
const applicationId = 0x4e545046;

export interface OpenDatabaseOptions {
  /** Default true: a missing file is created */
  create?: boolean;
  readOnly?: boolean;
  /** Default: the shipped ones; tests of migrating pass their own */
  migrations?: readonly string[];
}

/**
 * Opens a library file: WAL, foreign keys, `synchronous=FULL`. An older library is copied through SQLite's backup,
 * the copy is verified, then the migrations run in one transaction. A newer one is refused with a way out.
 */
export async function openDatabase(
  file: string,
  options: OpenDatabaseOptions = {},
): Promise<Result<Database.Database>> {
  const migrations = options.migrations ?? shipped;
  const isNew = !existsSync(file);
  if (isNew && (options.create === false || options.readOnly))
    return fail({
      code: 'not-found',
      sentence: 'There is no such library.',
      mend: 'Check the path, or import a dossier into it first.',
      place: { file },
    });
  if (!existsSync(dirname(resolve(file))))
    return fail({
      code: 'not-found',
      sentence: 'The folder of this library does not exist.',
      mend: 'Make it first, or mend the path.',
      place: { file },
    });
  if (!options.readOnly && isOnNetwork(dirname(resolve(file))))
    return fail({
      code: 'refused',
      sentence: 'This folder is on a network drive, where a library that is written to can be damaged.',
      mend: 'Keep the library on a disk of this machine, and share a dossier or a backup.',
      place: { file },
    });
  let database: Database.Database | undefined;
  try {
    if (!isNew && statSync(file).isDirectory())
      return fail({
        code: 'bad-input',
        sentence: 'This is a folder, not a library file.',
        mend: 'Name a library file.',
        place: { file },
      });
    database = options.readOnly ? openToRead(file) : new Database(file, { timeout: 5000 });
    database.pragma('foreign_keys = ON');
    const known = recognise(database, file, migrations.length);
    if (!known.ok) {
      database.close();
      return known;
    }
    if (options.readOnly && known.value < migrations.length) {
      database.close();
      return fail({
        code: 'refused',
        sentence: 'This library has an older form that can only be read once it is brought up to date.',
        mend: 'Open it once in Nitproof; a backup is made first.',
        place: { file },
      });
    }
    if (options.readOnly) return succeed(database);
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    if (known.value > 0 && known.value < migrations.length)
      await backupDatabase(database, `${file}.schema-${known.value}.backup`);
    migrate(database, known.value, migrations);
    return succeed(database);
  } catch (error) {
    database?.close();
    const fault = databaseFault(error, file);
    if (fault === null) throw error;
    return fail(fault);
  }
}

/**
 * Opens for reading. SQLite cannot read a write-ahead-log file in a folder that it cannot write to; one that was
 * closed properly is then read from memory, its two version bytes set to "no log" (SQLite file format, 1.3.3).
 */
function openToRead(file: string): Database.Database {
  try {
    const database = new Database(file, { readonly: true, timeout: 5000 });
    try {
      database.prepare('SELECT 1 FROM sqlite_schema').get();
      return database;
    } catch (error) {
      database.close();
      throw error;
    }
  } catch (error) {
    const cannotOpen = error instanceof Database.SqliteError && /CANTOPEN|READONLY/.test(error.code);
    const log = statSync(`${file}-wal`, { throwIfNoEntry: false });
    if (!cannotOpen || (log?.size ?? 0) > 0) throw error;
    const bytes = readFileSync(file);
    bytes[18] = 1;
    bytes[19] = 1;
    return new Database(bytes, { readonly: true });
  }
}

/** The schema number, 0 for an empty file. Refuses files of other programs and of a newer Nitproof. */
function recognise(database: Database.Database, file: string, newest: number): Result<number> {
  const schema = database.pragma('user_version', { simple: true }) as number;
  const id = database.pragma('application_id', { simple: true }) as number;
  const tables = database.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() as number;
  if (tables > 0 && id !== applicationId)
    return fail({
      code: 'unreadable',
      sentence: 'This database belongs to another program.',
      mend: 'Name a Nitproof library.',
      place: { file },
    });
  if (schema > newest)
    return fail({
      code: 'newer-library',
      sentence: `This library was last opened by a newer Nitproof (schema ${schema}; this one knows ${newest}).`,
      mend: 'Open it with that Nitproof and export a dossier from it, which this one can import; or restore an older backup. The file was not touched.',
      place: { file },
    });
  return succeed(tables === 0 ? 0 : schema);
}

function migrate(database: Database.Database, from: number, migrations: readonly string[]): void {
  if (from >= migrations.length) return;
  database
    .transaction(() => {
      for (const migration of migrations.slice(from)) database.exec(migration);
      database.pragma(`application_id = ${applicationId}`);
      database.pragma(`user_version = ${migrations.length}`);
    })
    .exclusive();
}

/** Copies a live database and verifies the copy before it takes its name. Returns its size in bytes. */
export async function backupDatabase(database: Database.Database, target: string): Promise<number> {
  const partial = `${target}.partial`;
  rmSync(partial, { force: true });
  try {
    await database.backup(partial);
    const copy = new Database(partial);
    try {
      // A copy that is one plain file: no write-ahead log lies beside it.
      copy.pragma('journal_mode = DELETE');
      const check = copy.pragma('integrity_check', { simple: true });
      if (check !== 'ok') throw new Error(`The copy is damaged: ${String(check)}`);
    } finally {
      copy.close();
    }
    renameSync(partial, target);
  } catch (error) {
    rmSync(partial, { force: true });
    throw error;
  }
  return statSync(target).size;
}
