import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { dossierEvidence } from '../../main/dossier/dossierEvidence.ts';
import { readDossier } from '../../main/dossier/readDossier.ts';
import { articleOfRow } from './articleOfRow.ts';
import { inventLibrary } from './inventLibrary.ts';
import { halfOf, readRows } from './rows.ts';

const rows = readRows();
const library = join(import.meta.dirname, 'library');

test('there are 400 rows or more, each id and each sentence in its context once', () => {
  expect(rows.length).toBeGreaterThanOrEqual(400);
  expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
  expect(new Set(rows.map((row) => JSON.stringify([row.context, row.text]))).size).toBe(rows.length);
});

test('the half of a row follows from its id, and the halves are of like size', () => {
  for (const row of rows) expect(row.half, row.id).toBe(halfOf(row.id));
  const share = rows.filter((row) => row.half === 'develop').length / rows.length;
  expect(Math.abs(share - 0.5)).toBeLessThan(0.1);
});

test('each expected span stands in its sentence', () => {
  for (const row of rows) for (const { text } of row.expect) expect(row.text, row.id).toContain(text);
});

test('every kind of claim and every verdict but opinion and stale is expected somewhere', () => {
  const expected = rows.flatMap((row) => row.expect);
  expect(new Set(expected.flatMap(({ kind }) => kind ?? []))).toEqual(
    new Set([
      'value',
      'bound',
      'onset',
      'ratio',
      'difference',
      'order',
      'direction',
      'fact',
      'observed',
      'score',
    ]),
  );
  expect(new Set(expected.map(({ verdict }) => verdict))).toEqual(
    new Set(['holds', 'breaks', 'close', 'unproven']),
  );
});

test('the library of the corpus is read without faults, and its readings are what the seeded script makes', async () => {
  for (const [path, content] of inventLibrary())
    expect(readFileSync(join(library, path), 'utf8') === content, path).toBe(true);
  const read = await readDossier(library);
  if (!read.ok) throw new Error(read.faults.map((fault) => fault.sentence).join('\n'));
  expect([...dossierEvidence(read.value.dossier).units.keys()].sort()).toEqual(
    readdirSync(join(library, 'units')).sort(),
  );
});

test('every row stands in an article on a unit of the library', () => {
  const units = new Set(readdirSync(join(library, 'units')));
  for (const row of rows) expect(units.has(articleOfRow(row).meta.unit), row.id).toBe(true);
});
