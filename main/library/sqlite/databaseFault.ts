import Database from 'better-sqlite3';
import { type Fault, fail, type Result } from '../../../shared/contract/fault.ts';

/** Thrown inside a transaction to roll it back; comes out of {@link settle} as the faults. */
export class Refusal extends Error {
  readonly faults: Fault[];
  constructor(...faults: Fault[]) {
    super(faults.map(({ sentence }) => sentence).join(' '));
    this.faults = faults;
  }
}

/** Runs a write; refusals and what the disk or another process cause become faults, mistakes are thrown on. */
export function settle<T>(file: string, write: () => Result<T>): Result<T> {
  try {
    return write();
  } catch (error) {
    if (error instanceof Refusal) return fail(...error.faults);
    const fault = databaseFault(error, file);
    if (fault === null) throw error;
    return fail(fault);
  }
}

type Cause = Pick<Fault, 'code' | 'sentence' | 'mend'>;

/** What the world outside causes, by the start of SQLite's result code (its "Result and Error Codes" page). */
const causes: readonly (readonly [codes: readonly string[], Cause])[] = [
  [
    ['SQLITE_FULL'],
    {
      code: 'unreadable',
      sentence: 'The disk is full; nothing was changed.',
      mend: 'Make room and try again.',
    },
  ],
  [
    ['SQLITE_READONLY'],
    {
      code: 'refused',
      sentence: 'The library can only be read here.',
      mend: 'Check the permissions of the file and its folder.',
    },
  ],
  [
    ['SQLITE_BUSY', 'SQLITE_LOCKED'],
    {
      code: 'refused',
      sentence: 'Another program is writing to the library.',
      mend: 'Try again in a moment.',
    },
  ],
  [
    ['SQLITE_NOTADB'],
    {
      code: 'unreadable',
      sentence: 'This file is no Nitproof library.',
      mend: 'Name a library file, or a dossier folder.',
    },
  ],
  [
    ['SQLITE_CORRUPT'],
    {
      code: 'unreadable',
      sentence: 'The library file is damaged.',
      mend: 'Restore a backup; `nitproof restore` takes one.',
    },
  ],
  [
    ['SQLITE_CANTOPEN'],
    {
      code: 'unreadable',
      sentence: 'The library cannot be opened.',
      mend: 'Check that the folder exists and can be written.',
    },
  ],
  [
    ['SQLITE_IOERR'],
    {
      code: 'unreadable',
      sentence: 'The disk reported an error; nothing was changed.',
      mend: 'Check the disk.',
    },
  ],
];

/** The fault behind an error of SQLite that the world outside causes; null for a programmer's mistake. */
export function databaseFault(error: unknown, file: string): Fault | null {
  if (!(error instanceof Database.SqliteError)) return null;
  const { code } = error;
  const found = causes.find(([starts]) => starts.some((start) => code.startsWith(start)));
  return found === undefined ? null : { ...found[1], place: { file } };
}
