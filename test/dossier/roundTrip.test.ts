import { join } from 'node:path';
import { expect, test } from 'vitest';
import { exportDossier } from '../../main/dossier/exportDossier.ts';
import { importDossier } from '../../main/dossier/importDossier.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { filesBelow, foreignFiles, freshFolder, writeFiles } from './sampleDossier.ts';

async function throughLibrary(from: string, to: string): Promise<Record<string, string>> {
  const library = await openLibrary(`${to}.sqlite`);
  if (!library.ok) throw new Error(library.faults[0]!.sentence);
  expect(await importDossier(from, library.value)).toMatchObject({ ok: true });
  expect(await exportDossier(library.value, to)).toMatchObject({ ok: true });
  await library.value.close();
  return filesBelow(to);
}

test('a foreign dossier is stable from its first export, and an exported one comes back byte for byte', async () => {
  const folder = freshFolder();
  const first = await throughLibrary(
    writeFiles(join(folder, 'foreign'), foreignFiles),
    join(folder, 'first'),
  );
  const second = await throughLibrary(join(folder, 'first'), join(folder, 'second'));
  expect(second).toEqual(first);
  expect(Object.keys(first).sort()).toEqual(Object.keys(foreignFiles).sort());
});

test('number texts, unknown keys, columns and files survive', async () => {
  const folder = freshFolder();
  const out = await throughLibrary(writeFiles(join(folder, 'foreign'), foreignFiles), join(folder, 'out'));
  expect(out['units/orrinvale-hearth-55/runs/sdr-calm.csv']).toBe(
    'series,code,x,y,Y,probe\ngreyscale,64,0.3000,0.310,0.0500,A\ngreyscale,502,0.3130,0.3290,57.90,A\ngreyscale,940,0.3127,0.329,301.20,"A, B"\n',
  );
  expect(out['units/orrinvale-hearth-55/runs/sdr-calm.json']).toContain('"humidity": 0.450');
  const unit = out['units/orrinvale-hearth-55/unit.json']!;
  for (const kept of ['55.0', '1039.00', '1.0E3', '"sticker": "0.10"', '"returned": null'])
    expect(unit).toContain(kept);
  expect(out['notes.txt']).toBe('kept\r\nas it is\n');
  expect(out['units/orrinvale-hearth-55/photos/blooming.jpg']).toBe('\u00ff\u00d8\u0000\n\r\u00ff');
});

test('text that a spreadsheet would run leaves with an apostrophe and comes back without', async () => {
  const folder = freshFolder();
  const first = await throughLibrary(writeFiles(join(folder, 'foreign'), foreignFiles), join(folder, 'out'));
  expect(first['units/orrinvale-hearth-55/observations.csv']).toBe(
    'id,severity,topic,angle,weather,note\nb1,1,blooming,,rain,"\'=SUM(1,2)"\nb2,0,banding,-30.50,,"said ""no"""\n',
  );
  const library = await openLibrary(join(folder, 'again.sqlite'));
  if (!library.ok) throw new Error('library');
  await importDossier(join(folder, 'out'), library.value);
  const unit = await library.value.readUnit('orrinvale-hearth-55');
  expect(unit.ok && unit.value.observations[0]!.note).toBe('=SUM(1,2)');
  await library.value.close();
});

test('null where a value is optional counts as missing, and stays in the file', async () => {
  const folder = freshFolder();
  const files = {
    ...foreignFiles,
    'units/orrinvale-hearth-55/unit.json':
      '{"maker":"Orrinvale","model":"Hearth 55","firmware":null,"size":null}',
  };
  const out = await throughLibrary(writeFiles(join(folder, 'foreign'), files), join(folder, 'out'));
  expect(out['units/orrinvale-hearth-55/unit.json']).toContain('"firmware": null');
  const library = await openLibrary(join(folder, 'out.sqlite'));
  if (!library.ok) throw new Error('library');
  const unit = await library.value.readUnit('orrinvale-hearth-55');
  expect(unit.ok && unit.value.unit).toEqual({ maker: 'Orrinvale', model: 'Hearth 55' });
  await library.value.close();
});
