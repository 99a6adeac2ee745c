import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { exportDossier } from '../../main/dossier/exportDossier.ts';
import { importDossier } from '../../main/dossier/importDossier.ts';
import type { Library } from '../../main/library/library.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { filesBelow, foreignFiles, freshFolder, writeFiles } from './sampleDossier.ts';

const unitFolder = 'units/orrinvale-hearth-55';

async function libraryWithSample(): Promise<{ folder: string; library: Library }> {
  const folder = freshFolder();
  const library = await openLibrary(join(folder, 'library.sqlite'));
  if (!library.ok) throw new Error('library');
  const from = writeFiles(join(folder, 'sample'), foreignFiles);
  expect((await importDossier(from, library.value)).ok).toBe(true);
  return { folder, library: library.value };
}

async function exported(library: Library, folder: string): Promise<Record<string, string>> {
  rmSync(folder, { recursive: true, force: true });
  expect((await exportDossier(library, folder)).ok).toBe(true);
  return filesBelow(folder);
}

const changed = {
  ...foreignFiles,
  [`${unitFolder}/unit.json`]: '{"maker":"Orrinvale","model":"Hearth 55","panel":"LCD VA"}',
  [`${unitFolder}/runs/sdr-calm.csv`]: 'series,stimulus,x,y,Y\ngreyscale,100,0.3127,0.3290,299\n',
  [`${unitFolder}/observations.csv`]: 'id,topic,severity,light\nb1,blooming,3,\nb3,flicker,0,lamp\n',
  'articles/hearth-55.md': 'Another text.',
  'units/veltrane-plain-50/unit.json': '{"maker":"Veltrane","model":"Plain 50"}',
};

test('the same dossier twice changes nothing', async () => {
  const { folder, library } = await libraryWithSample();
  const before = await library.describe();
  const again = await importDossier(join(folder, 'sample'), library);
  expect(again).toMatchObject({ ok: true, value: { revision: before.revision } });
  await library.close();
});

test('other content under known ids is listed as conflicts, and nothing is written', async () => {
  const { folder, library } = await libraryWithSample();
  const before = await exported(library, join(folder, 'before'));
  const merged = await importDossier(writeFiles(join(folder, 'theirs'), changed), library);
  expect(merged.ok ? [] : merged.faults.map(({ code, sentence }) => `${code}: ${sentence}`)).toEqual([
    "conflict: The unit orrinvale-hearth-55 differs from the library's.",
    "conflict: The run sdr-calm of orrinvale-hearth-55 differs from the library's.",
    "conflict: The observation b1 of orrinvale-hearth-55 differs from the library's.",
    "conflict: The article hearth-55 differs from the library's.",
  ]);
  expect(await exported(library, join(folder, 'after'))).toEqual(before);
  await library.close();
});

test('--prefer ours keeps what is there and adds what is new', async () => {
  const { folder, library } = await libraryWithSample();
  const before = await exported(library, join(folder, 'before'));
  const merged = await importDossier(writeFiles(join(folder, 'theirs'), changed), library, {
    prefer: 'ours',
  });
  expect(merged.ok).toBe(true);
  const after = await exported(library, join(folder, 'after'));
  expect(after['units/veltrane-plain-50/unit.json']).toContain('Veltrane');
  expect(after['articles/hearth-55.md']).toBe(before['articles/hearth-55.md']);
  expect(after[`${unitFolder}/observations.csv`]).toBe(
    'id,severity,topic,angle,weather,note,light\nb1,1,blooming,,rain,"\'=SUM(1,2)",\nb2,0,banding,-30.50,,"said ""no""",\nb3,0,flicker,,,,lamp\n',
  );
  await library.close();
});

test('--prefer theirs takes the incoming content', async () => {
  const { folder, library } = await libraryWithSample();
  const merged = await importDossier(writeFiles(join(folder, 'theirs'), changed), library, {
    prefer: 'theirs',
  });
  expect(merged.ok).toBe(true);
  const after = await exported(library, join(folder, 'after'));
  expect(after['articles/hearth-55.md']).toBe('Another text.');
  expect(after[`${unitFolder}/unit.json`]).toContain('LCD VA');
  expect(after[`${unitFolder}/runs/sdr-calm.csv`]).toContain(',299\n');
  await library.close();
});

test('a history that continues the known one is taken; one that was tampered with is refused', async () => {
  const { folder, library } = await libraryWithSample();
  await library.saveUnit('orrinvale-hearth-55', { maker: 'Orrinvale', model: 'Hearth 55' });
  await exported(library, join(folder, 'longer'));
  const other = await openLibrary(join(folder, 'other.sqlite'));
  if (!other.ok) throw new Error('library');
  expect((await importDossier(join(folder, 'longer'), other.value)).ok).toBe(true);
  expect(await other.value.listHistory()).toEqual(await library.listHistory());
  expect((await other.value.verify()).findings).toEqual([]);

  const lines = filesBelow(join(folder, 'longer'))['history.jsonl']!;
  writeFiles(join(folder, 'longer'), { 'history.jsonl': lines.replace('unit-saved', 'unit-burnt') });
  const third = await openLibrary(join(folder, 'third.sqlite'));
  if (!third.ok) throw new Error('library');
  const refused = await importDossier(join(folder, 'longer'), third.value);
  expect(refused.ok ? '' : refused.faults[0]!.sentence).toBe(
    'history.jsonl: line 1 was changed after it was written.',
  );
  for (const opened of [library, other.value, third.value]) await opened.close();
});

test('an export into a folder with other files is refused; an older export is brought up to date', async () => {
  const { folder, library } = await libraryWithSample();
  const other = writeFiles(join(folder, 'mine'), { 'holiday.txt': 'sun' });
  const refused = await exportDossier(library, other);
  expect(refused).toMatchObject({ ok: false, faults: [{ code: 'refused' }] });
  const to = join(folder, 'dossier');
  await exportDossier(library, to);
  await library.removeObservation('orrinvale-hearth-55', 'b1');
  await library.removeObservation('orrinvale-hearth-55', 'b2');
  const again = await exportDossier(library, to);
  expect(again.ok && again.value.notes).toEqual([
    `${unitFolder}/observations.csv is not in the library and was left in place.`,
  ]);
  await library.close();
});

test('a cancelled export leaves no folder behind', async () => {
  const { folder, library } = await libraryWithSample();
  const to = join(folder, 'new');
  const cancelled = await exportDossier(library, to, async (done) => done < 3);
  expect(cancelled).toMatchObject({ ok: false, faults: [{ code: 'cancelled' }] });
  expect(Object.keys(filesBelow(folder)).filter((path) => path.startsWith('new'))).toEqual([]);
  await library.close();
});
