import type Database from 'better-sqlite3';
import { type Result, succeed } from '../../../shared/contract/fault.ts';
import { Refusal, settle } from './databaseFault.ts';
import { appendHistory } from './historyChain.ts';

/** What every part of the adapter shares: the connection, its prepared statements, the clock and the revision. */
export class Store {
  readonly database: Database.Database;
  readonly file: string;
  readonly clock: () => Date;
  readonly #statements = new Map<string, Database.Statement>();

  constructor(database: Database.Database, file: string, clock: () => Date) {
    this.database = database;
    this.file = file;
    this.clock = clock;
  }

  /** A prepared statement, kept for the life of the connection. */
  sql(text: string): Database.Statement {
    const known = this.#statements.get(text);
    if (known !== undefined) return known;
    const statement = this.database.prepare(text);
    this.#statements.set(text, statement);
    return statement;
  }

  now(): string {
    return this.clock().toISOString();
  }

  revision(): number {
    return Number(this.sql("SELECT value FROM library WHERE key = 'revision'").pluck().get());
  }

  /** Raises the library's revision; every change does it once, in its own transaction. */
  raise(): number {
    this.sql("UPDATE library SET value = CAST(value AS INTEGER) + 1 WHERE key = 'revision'").run();
    return this.revision();
  }

  /** Runs a change in one transaction; a {@link Refusal} rolls it back and becomes the faults. */
  change<T>(write: () => T): Result<T> {
    return settle(this.file, () => succeed(this.database.transaction(write).immediate()));
  }

  /** Adds a line to the history, in the transaction of the change that it tells of. */
  record(what: string, of: string, by: string, more: Record<string, unknown> = {}): void {
    appendHistory(this.database, { at: this.now(), by, what, of, ...more });
  }

  requireUnit(unit: string): void {
    if (this.sql('SELECT 1 FROM unit WHERE id = ?').get(unit) === undefined)
      throw new Refusal({
        code: 'not-found',
        sentence: `There is no unit "${unit}".`,
        mend: 'Check the id on the Shelf.',
      });
  }
}

/** Who a change is recorded for when the request names nobody. */
export const bench = 'bench';
