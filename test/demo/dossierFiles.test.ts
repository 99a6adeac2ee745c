import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { inventDemo } from '../../main/demo/invent.ts';
import { readDossier } from '../../main/dossier/readDossier.ts';
import { dossierFiles } from '../../main/dossier/writeDossier.ts';
import { articleSchema } from '../../shared/contract/article.ts';
import { observationSchema } from '../../shared/contract/observation.ts';
import { runSchema } from '../../shared/contract/run.ts';
import { unitSchema } from '../../shared/contract/unit.ts';
import planted from './planted.json' with { type: 'json' };

const dossier = join(import.meta.dirname, '../../main/demo/dossier');
const files = readdirSync(dossier, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).slice(dossier.length + 1));
const text = (path: string) => readFileSync(join(dossier, path), 'utf8');

test('every computed file is what the seeded script makes, byte for byte', () => {
  const invented = inventDemo();
  const computed = files.filter((path) => path.includes('/runs/') || path.includes('/photos/'));
  expect(computed.sort()).toEqual([...invented.keys()].sort());
  for (const [path, content] of invented)
    expect(readFileSync(join(dossier, path)).equals(content), path).toBe(true);
});

test('units, runs, observations and articles are what the contract asks for', () => {
  for (const path of files.filter((file) => file.endsWith('.json'))) {
    const content: unknown = JSON.parse(text(path));
    const schema = path.endsWith('unit.json')
      ? unitSchema
      : path.includes('/runs/')
        ? runSchema
        : path.startsWith('articles/')
          ? articleSchema
          : undefined;
    expect(schema ? schema.safeParse(content).error : undefined, path).toBeUndefined();
  }
});

test('observations name known photos, and their severities are whole numbers from 0 to 4', () => {
  for (const path of files.filter((file) => file.endsWith('observations.csv'))) {
    const { data, errors } = Papa.parse<Record<string, string>>(text(path), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    for (const row of data) {
      const given = Object.fromEntries(Object.entries(row).filter(([, value]) => value !== ''));
      const numbers = { severity: Number(row.severity), angle: Number(row.angle), room_lux: 0.1 };
      expect(observationSchema.safeParse({ ...given, ...numbers }).error, row.id).toBeUndefined();
      if (row.photo) expect(existsSync(join(dossier, path, '../photos', row.photo)), row.photo).toBe(true);
    }
  }
});

test('every superseded run exists beside the run that replaces it', () => {
  for (const path of files.filter((file) => /runs\/.*\.json$/.test(file))) {
    const { supersedes } = runSchema.parse(JSON.parse(text(path)));
    if (supersedes) expect(files).toContain(join(path, '..', `${supersedes}.json`));
  }
});

test('text files use line feeds and end with one', () => {
  for (const path of files.filter((file) => /\.(json|csv|md)$/.test(file))) {
    expect(text(path), path).not.toContain('\r');
    expect(text(path).endsWith('\n'), path).toBe(true);
  }
});

test('photos are PNG with header, picture and end only: no place, no time', () => {
  for (const path of files.filter((file) => file.endsWith('.png'))) {
    const bytes = readFileSync(join(dossier, path));
    const chunks: string[] = [];
    for (let at = 8; at < bytes.length; at += 12 + bytes.readUInt32BE(at))
      chunks.push(bytes.toString('latin1', at + 4, at + 8));
    expect([...bytes.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    expect(chunks, path).toEqual(['IHDR', 'IDAT', 'IEND']);
  }
});

test('each planted sentence stands in its article once', () => {
  const article = text(`articles/${planted.article}.md`);
  for (const { sentence } of planted.planted) expect(article.split(sentence).length - 1, sentence).toBe(1);
});

test('the two long articles have 600 words or more', () => {
  for (const id of ['hearth-55', 'vane-50'])
    expect(text(`articles/${id}.md`).split(/\s+/).length, id).toBeGreaterThanOrEqual(600);
});

test('an export writes the demo as it stands, byte for byte', async () => {
  const read = await readDossier(dossier);
  if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join('\n'));
  const written = dossierFiles(read.value.dossier);
  expect([...written.keys()].sort()).toEqual([...files].sort());
  for (const [path, content] of written)
    expect(readFileSync(join(dossier, path)).equals(Buffer.from(content)), path).toBe(true);
  expect(read.value.notes).toEqual([]);
});
