import { accessSync, constants } from 'node:fs';
import { type Result, succeed } from '../../shared/contract/fault.ts';
import type { Library } from './library.ts';
import { openDatabase } from './sqlite/openDatabase.ts';
import { createSqliteLibrary } from './sqlite/sqliteLibrary.ts';

export interface OpenLibraryOptions {
  /** Default true: a missing file is created */
  create?: boolean;
  /** Default: read only when the file cannot be written */
  readOnly?: boolean;
  /** The one clock; only history and saving times read it */
  clock?: () => Date;
}

/** Opens a library file. Errors: `not-found`, `unreadable`, `newer-library`, `bad-input` for a folder. */
export async function openLibrary(file: string, options: OpenLibraryOptions = {}): Promise<Result<Library>> {
  const readOnly = options.readOnly ?? isReadOnly(file);
  const opened = await openDatabase(file, {
    readOnly,
    ...(options.create === undefined ? {} : { create: options.create }),
  });
  if (!opened.ok) return opened;
  return succeed(
    createSqliteLibrary(opened.value, file, { clock: options.clock ?? (() => new Date()), readOnly }),
  );
}

function isReadOnly(file: string): boolean {
  try {
    accessSync(file, constants.F_OK);
  } catch {
    return false;
  }
  try {
    accessSync(file, constants.W_OK);
    return false;
  } catch {
    return true;
  }
}
