import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkArticles } from '../../main/hosts/cli/check.ts';
import { readEvidenceSource } from '../../main/hosts/cli/evidenceSource.ts';
import { metricsReport } from '../../main/hosts/cli/metricsReport.ts';
import { checkReportSchema, metricsReportSchema } from '../../main/schema/reports.ts';
import { schemaFiles } from '../../main/schema/schemas.ts';
import { createMeasurer } from '../../shared/certainty/index.ts';

const root = join(import.meta.dirname, '..', '..');
const folder = join(root, 'docs', 'schema');

test('docs/schema is what the program checks by (else run: node main/schema/write.ts)', () => {
  const wanted = schemaFiles();
  expect(
    readdirSync(folder)
      .filter((name) => name.endsWith('.schema.json'))
      .sort(),
  ).toEqual([...wanted.keys()].sort());
  for (const [name, text] of wanted) expect(readFileSync(join(folder, name), 'utf8'), name).toBe(text);
});

test('the reports on the demo have the form that their schemas describe', async () => {
  const source = await readEvidenceSource(join(root, 'main', 'demo', 'dossier'));
  if (!source.ok) throw new Error(source.faults[0]!.sentence);
  const checked = checkReportSchema.safeParse(
    JSON.parse(JSON.stringify(checkArticles(source.value, 'hearth-55'))),
  );
  expect(checked.error?.issues ?? []).toEqual([]);
  const measurer = createMeasurer();
  const unit = source.value.evidence.units.get('orrinvale-hearth-55')!;
  const report = metricsReport(unit, new Map(unit.runs.map((run) => [run.id, measurer.measure(unit, run)])));
  expect(metricsReportSchema.safeParse(JSON.parse(JSON.stringify(report))).error?.issues ?? []).toEqual([]);
});

test('the readings row names every column of the format page', () => {
  const { properties } = JSON.parse(schemaFiles().get('reading.schema.json')!);
  for (const name of [
    ...[
      'series',
      'stimulus',
      'code',
      'signal_r',
      'signal_g',
      'signal_b',
      'hue',
      'saturation',
      'patch',
      'ref_L',
      'ref_a',
    ],
    ...[
      'ref_b',
      'ref_x',
      'ref_y',
      'ref_Y',
      'window',
      'seconds',
      'pattern',
      'position',
      'level',
      'angle',
      'plane',
    ],
    ...['quantity', 'value', 'unit', 'x', 'y', 'Y', 'X', 'Z'],
  ])
    expect(properties).toHaveProperty([name]);
});
