import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { exportDossier } from '../../main/dossier/exportDossier.ts';
import { importDossier } from '../../main/dossier/importDossier.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { openDatabase } from '../../main/library/sqlite/openDatabase.ts';
import { createSqliteLibrary } from '../../main/library/sqlite/sqliteLibrary.ts';
import { foreignFiles, freshFolder, writeFiles } from '../dossier/sampleDossier.ts';

/** A library whose disk has room for so many pages more. */
async function nearlyFull(file: string, pages: number) {
  const opened = await openDatabase(file);
  if (!opened.ok) throw new Error('library');
  const used = opened.value.pragma('page_count', { simple: true }) as number;
  opened.value.pragma(`max_page_count = ${used + pages}`);
  return createSqliteLibrary(opened.value, file, { clock: () => new Date(0), readOnly: false });
}

test('a disk that is full is said so, and nothing of the change stays', async () => {
  const folder = freshFolder();
  const library = await nearlyFull(join(folder, 'a.sqlite'), 4);
  const from = writeFiles(join(folder, 'd'), {
    ...foreignFiles,
    'units/orrinvale-hearth-55/photos/large.jpg': Buffer.alloc(200_000, 1),
  });
  const full = await importDossier(from, library);
  expect(full).toMatchObject({
    ok: false,
    faults: [{ code: 'unreadable', sentence: 'The disk is full; nothing was changed.' }],
  });
  expect(await library.describe()).toMatchObject({ units: 0, articles: 0, revision: 0 });
  expect((await library.saveUnit('hearth', { maker: 'Orrinvale', model: 'Hearth 55' })).ok).toBe(true);
  expect((await library.verify()).findings).toEqual([]);
  await library.close();
});

test('a library that can only be read says so instead of failing', async () => {
  const file = join(freshFolder(), 'a.sqlite');
  const first = await openLibrary(file);
  if (!first.ok) throw new Error('library');
  await first.value.close();
  const opened = await openLibrary(file, { readOnly: true });
  if (!opened.ok) throw new Error(opened.faults[0]!.sentence);
  expect(await opened.value.describe()).toMatchObject({ readOnly: true });
  expect(await opened.value.saveUnit('hearth', { maker: 'Orrinvale', model: 'Hearth 55' })).toMatchObject({
    ok: false,
    faults: [{ code: 'refused', sentence: 'The library can only be read here.' }],
  });
  await opened.value.close();
});

test('a second writer waits its turn and is told when the first does not end', async () => {
  const file = join(freshFolder(), 'a.sqlite');
  const opened = await openLibrary(file);
  const other = await openDatabase(file);
  if (!opened.ok || !other.ok) throw new Error('library');
  other.value.exec('BEGIN IMMEDIATE');
  const refused = await opened.value.saveUnit('hearth', { maker: 'Orrinvale', model: 'Hearth 55' });
  expect(refused).toMatchObject({
    ok: false,
    faults: [{ sentence: 'Another program is writing to the library.' }],
  });
  other.value.exec('ROLLBACK');
  expect((await opened.value.saveUnit('hearth', { maker: 'Orrinvale', model: 'Hearth 55' })).ok).toBe(true);
  other.value.close();
  await opened.value.close();
});

test('a damaged library is told from a sound one', async () => {
  const file = join(freshFolder(), 'a.sqlite');
  const first = await openLibrary(file);
  if (!first.ok) throw new Error('library');
  await first.value.close();
  writeFileSync(file, Buffer.concat([Buffer.from('SQLite format 3\0'), Buffer.alloc(4080, 7)]));
  expect(await openLibrary(file)).toMatchObject({ ok: false, faults: [{ code: 'unreadable' }] });
});

test('an export to where a file stands is refused and writes nothing', async () => {
  const folder = freshFolder();
  const opened = await openLibrary(join(folder, 'a.sqlite'));
  if (!opened.ok) throw new Error('library');
  writeFileSync(join(folder, 'file'), 'x');
  expect(await exportDossier(opened.value, join(folder, 'file'))).toMatchObject({
    ok: false,
    faults: [{ sentence: 'This is a file, not a folder.' }],
  });
  await opened.value.close();
});
