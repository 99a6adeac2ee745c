import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { migrations } from '../../main/library/sqlite/migrations/index.ts';
import { isNetworkType, isOnNetwork } from '../../main/library/sqlite/networkFolder.ts';
import { openDatabase } from '../../main/library/sqlite/openDatabase.ts';
import { freshFolder } from '../dossier/sampleDossier.ts';

test('a library is written through a log, with foreign keys and full synchronisation', async () => {
  const opened = await openDatabase(join(freshFolder(), 'a.sqlite'));
  if (!opened.ok) throw new Error('library');
  const pragma = (name: string): unknown => opened.value.pragma(name, { simple: true });
  expect([
    pragma('journal_mode'),
    pragma('foreign_keys'),
    pragma('synchronous'),
    pragma('user_version'),
  ]).toEqual(['wal', 1, 2, migrations.length]);
  const tables = opened.value
    .prepare(
      "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'",
    )
    .all();
  expect(tables).toEqual([]);
  opened.value.close();
});

test('a library of a newer Nitproof is refused with a way out, and not touched', async () => {
  const file = join(freshFolder(), 'a.sqlite');
  const opened = await openDatabase(file);
  if (!opened.ok) throw new Error('library');
  opened.value.pragma(`user_version = ${migrations.length + 1}`);
  opened.value.close();
  const refused = await openLibrary(file);
  expect(refused).toMatchObject({ ok: false, faults: [{ code: 'newer-library', place: { file } }] });
  expect(refused.ok ? '' : refused.faults[0]!.mend).toContain('export a dossier');
  const database = new Database(file, { readonly: true });
  expect(database.pragma('user_version', { simple: true })).toBe(migrations.length + 1);
  database.close();
});

test('an older library is backed up, whole and verified, before it is migrated', async () => {
  const file = join(freshFolder(), 'a.sqlite');
  const opened = await openDatabase(file);
  if (!opened.ok) throw new Error('library');
  opened.value.prepare("INSERT INTO document (path, content) VALUES ('house.json', '{}')").run();
  opened.value.close();
  const later = [...migrations, 'CREATE TABLE later (id TEXT PRIMARY KEY) STRICT;'];
  const migrated = await openDatabase(file, { migrations: later });
  if (!migrated.ok) throw new Error('library');
  expect(migrated.value.pragma('user_version', { simple: true })).toBe(later.length);
  expect(migrated.value.prepare('SELECT path FROM document').pluck().all()).toEqual(['house.json']);
  migrated.value.close();
  const backup = new Database(`${file}.schema-${migrations.length}.backup`, { readonly: true });
  expect(backup.prepare('SELECT path FROM document').pluck().all()).toEqual(['house.json']);
  expect(backup.pragma('user_version', { simple: true })).toBe(migrations.length);
  backup.close();
});

test('a migration that fails leaves the library as it was', async () => {
  const file = join(freshFolder(), 'a.sqlite');
  const opened = await openDatabase(file);
  if (!opened.ok) throw new Error('library');
  opened.value.close();
  const broken = [...migrations, 'CREATE TABLE later (id TEXT PRIMARY KEY) STRICT; SELECT nonsense;'];
  await expect(openDatabase(file, { migrations: broken })).rejects.toThrow('nonsense');
  const database = new Database(file, { readonly: true });
  expect(database.pragma('user_version', { simple: true })).toBe(migrations.length);
  expect(database.prepare("SELECT count(*) FROM sqlite_schema WHERE name = 'later'").pluck().get()).toBe(0);
  database.close();
});

test.each([
  [
    'text',
    'this is a long text and by no means a database, not even nearly one, as anybody can see who reads it',
    'unreadable',
  ],
  ['a database of another program', null, 'unreadable'],
])('%s is no library', async (_what, content, code) => {
  const file = join(freshFolder(), 'a.sqlite');
  if (content !== null) writeFileSync(file, content);
  else {
    const database = new Database(file);
    database.exec('CREATE TABLE theirs (a)');
    database.close();
  }
  expect(await openLibrary(file)).toMatchObject({ ok: false, faults: [{ code, place: { file } }] });
});

test('a folder, a missing file and a missing folder are told apart', async () => {
  const folder = freshFolder();
  mkdirSync(join(folder, 'sub'));
  const code = async (file: string, create: boolean): Promise<string> => {
    const opened = await openLibrary(join(folder, file), { create });
    return opened.ok ? 'opened' : `${opened.faults[0]!.code}: ${opened.faults[0]!.sentence}`;
  };
  expect([
    await code('sub', true),
    await code('none.sqlite', false),
    await code('no/where.sqlite', true),
  ]).toEqual([
    'bad-input: This is a folder, not a library file.',
    'not-found: There is no such library.',
    'not-found: The folder of this library does not exist.',
  ]);
  expect(existsSync(join(folder, 'none.sqlite'))).toBe(false);
});

test('network drives are told from local ones', () => {
  expect([0x6969, 0xff534d42 | 0, 0xfe534d42].map(isNetworkType)).toEqual([true, true, true]);
  expect([0xef53, 0x9123683e, 0x01021994].map(isNetworkType)).toEqual([false, false, false]);
  expect(isOnNetwork(freshFolder())).toBe(false);
  expect(isOnNetwork('\\\\newsroom\\share')).toBe(true);
});
