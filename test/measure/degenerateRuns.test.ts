import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readEvidenceSource } from '../../main/hosts/cli/evidenceSource.ts';
import { type MetricsReport, metricsReport } from '../../main/hosts/cli/metricsReport.ts';
import { runCommandLine } from '../../main/hosts/cli.ts';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { measureRun } from '../../shared/measure/index.ts';
import { cases } from './degenerateCases.ts';
import { sdrConditions } from './inventedUnit.ts';

/** Runs that lack something or hold nothing but nonsense, through the command line as a reviewer meets it. */

const folder = mkdtempSync(join(tmpdir(), 'nitproof-test-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function dossierOf(name: string, runs: Record<string, { csv?: string; conditions?: object }>): string {
  const dossier = join(folder, name);
  const at = join(dossier, 'units', 'orrinvale-hearth-55', 'runs');
  mkdirSync(at, { recursive: true });
  writeFileSync(join(dossier, 'dossier.json'), '{"format":"nitproof-dossier","version":1}');
  writeFileSync(
    join(at, '..', 'unit.json'),
    JSON.stringify({ maker: 'Orrinvale', model: 'Hearth 55', zones: 32 }),
  );
  for (const [run, { csv, conditions }] of Object.entries(runs)) {
    writeFileSync(join(at, `${run}.json`), JSON.stringify(conditions ?? sdrConditions));
    if (csv !== undefined) writeFileSync(join(at, `${run}.csv`), csv);
  }
  return dossier;
}

async function metrics(dossier: string): Promise<{ status: number; out: string; error: string }> {
  let out = '';
  let error = '';
  const status = await runCommandLine(['metrics', dossier, '--unit', 'orrinvale-hearth-55', '--json'], {
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { status, out, error };
}

const written = (order: (rows: string[]) => string[]) =>
  Object.fromEntries(
    Object.entries(cases).map(([name, { csv, conditions }]) => [
      name,
      {
        csv: `${[csv[0], ...order(csv.slice(1))].join('\n')}\n`,
        ...(conditions === undefined ? {} : { conditions }),
      },
    ]),
  );

const dossier = dossierOf(
  'as-read',
  written((rows) => rows),
);
const printed = await metrics(dossier);
const report: MetricsReport = JSON.parse(printed.out);

type Quantity = MetricsReport['runs'][string][string];
const undefinedIn = (quantity: Quantity | undefined) =>
  quantity !== undefined && 'undefined' in quantity ? quantity.undefined : undefined;

test('a unit of nothing but degenerate runs is measured, with exit status 0 and not a word of error', () => {
  expect({ status: printed.status, error: printed.error }).toEqual({ status: 0, error: '' });
  expect(Object.keys(report.runs).sort()).toEqual(Object.keys(cases).sort());
});

test('nothing in the report is null, NaN or infinite, and every reason is a text', () => {
  expect(printed.out).not.toMatch(/null|NaN|Infinity/);
  for (const [run, quantities] of Object.entries(report.runs))
    for (const [id, quantity] of Object.entries(quantities)) {
      const where = `${run} ${id}`;
      if ('undefined' in quantity) expect(quantity.undefined, where).toMatch(/\w{2}/);
      else if ('over' in quantity) expect(quantity.over, where).toBeGreaterThan(0);
      else {
        expect(quantity.values.length, where).toBeGreaterThan(0);
        const isReported = id === 'lag' || id.startsWith('power.');
        for (const { u } of quantity.values)
          expect(typeof u, where).toBe(isReported ? 'undefined' : 'number');
      }
    }
});

describe.each(Object.entries(cases))('%s', (name, { undefined: reasons, value, over, absent }) => {
  const found = report.runs[name]!;
  const reasonFor = (id: string) =>
    Object.entries(reasons ?? {})
      .filter(([key]) => (key.endsWith('*') ? id.startsWith(key.slice(0, -1)) : id === key))
      .sort(([one], [other]) => other.length - one.length)[0]?.[1];

  test('what cannot be given says why, and nothing else is undefined', () => {
    for (const [id, quantity] of Object.entries(found))
      if (undefinedIn(quantity) !== undefined || reasonFor(id) !== undefined)
        expect([id, undefinedIn(quantity)]).toEqual([id, reasonFor(id)]);
    for (const key of Object.keys(reasons ?? {}))
      expect(
        Object.keys(found).some((id) => (key.endsWith('*') ? id.startsWith(key.slice(0, -1)) : id === key)),
        key,
      ).toBe(true);
  });

  test('what can be given has its value', () => {
    for (const [id, expected] of Object.entries(value ?? {})) {
      const quantity = found[id]!;
      if (!('values' in quantity)) expect.fail(`${id}: ${JSON.stringify(quantity)}`);
      expect(Math.abs(quantity.values[0]!.value - expected), id).toBeLessThanOrEqual(
        id === 'grey.balance.red' ? 0.1 : 1e-6 * Math.max(1, Math.abs(expected)),
      );
    }
    for (const [id, expected] of Object.entries(over ?? {})) expect(found[id]).toEqual({ over: expected });
    for (const id of absent ?? []) expect(found[id], id).toBeUndefined();
  });
});

test('where no level counts, average and maximum say so', () => {
  const error = report.runs['hdr-all-above-the-peak']!['eotf.error']!;
  if (!('values' in error)) expect.fail(JSON.stringify(error));
  const reason = { undefined: 'no level counts: all are too dark, too low or from the roll-off up' };
  expect([error.average, error.max]).toEqual([reason, reason]);
});

test('repeats without spread are as sure as one reading, and duplicates are averaged', () => {
  const u = (run: string) => {
    const white = report.runs[run]!.white!;
    return 'values' in white ? white.values[0]!.u! : Number.NaN;
  };
  expect(u('repeats-without-spread')).toBe(u('one-white'));
  // √(0.96·1 % ² + 0.04·1 % ²)·200 = 2, with the floor of 0.002
  expect(u('one-white')).toBeCloseTo(2, 4);
});

test('the order of rows changes nothing to the last digit where the run is the same', async () => {
  const source = await readEvidenceSource(dossier);
  if (!source.ok) throw new Error('the dossier cannot be read');
  const unit = source.value.evidence.units.get('orrinvale-hearth-55')!;
  const turned: UnitEvidence = {
    ...unit,
    runs: unit.runs.map((run) => ({ ...run, readings: [...run.readings].reverse() })),
  };
  const measured = new Map(turned.runs.map((run) => [run.id, measureRun(turned, run)]));
  expect(metricsReport(turned, measured)).toEqual(report);
});

test('a file with its rows in another order gives the same values, its draws the same u within 5 %', async () => {
  const turned = await metrics(
    dossierOf(
      'turned',
      written((rows) => [...rows].reverse()),
    ),
  );
  expect(turned.status).toBe(0);
  compare(JSON.parse(turned.out), report, '');
});

/** Equal but for u: other rows are another run, with draws of its own. */
function compare(found: unknown, expected: unknown, where: string): void {
  if (typeof expected !== 'object' || expected === null) {
    if (where.endsWith('.u') && (expected as number) > 0)
      expect(Math.abs((found as number) / (expected as number) - 1), where).toBeLessThan(0.05);
    else expect(found, where).toBe(expected);
    return;
  }
  expect(Object.keys(found as object), where).toEqual(Object.keys(expected));
  for (const [key, value] of Object.entries(expected))
    compare((found as Record<string, unknown>)[key], value, `${where}.${key}`);
}

test('a run without a readings file has no quantities', async () => {
  const { status, out } = await metrics(dossierOf('without', { empty: {} }));
  expect(status).toBe(0);
  expect(JSON.parse(out).runs).toEqual({ empty: {} });
});

test.each([
  ['a header and no rows', 'series,stimulus,x,y,Y\n', 'The file has a header and no data rows.'],
  ['no text', '', 'The file is empty.'],
  [
    'a negative luminance',
    'series,stimulus,x,y,Y\ngreyscale,100,0.31,0.33,-3\n',
    ':2:25: Column Y: -3 is negative.',
  ],
  [
    'x above 1',
    'series,stimulus,x,y,Y\ngreyscale,100,1.2,0.33,90\n',
    ':2:15: No light has the chromaticity x 1.2',
  ],
  ['x + y above 1', 'series,stimulus,x,y,Y\ngreyscale,100,0.7,0.5,90\n', 'x + y is above 1'],
  [
    'y of 0',
    'series,stimulus,x,y,Y\ngreyscale,100,0.3,0,90\n',
    ':2:19: No light has the chromaticity x 0.3, y 0',
  ],
  ['x without y', 'series,stimulus,x,y,Y\ngreyscale,100,0.3,,90\n', 'The row has x without y.'],
  ['NaN', 'series,stimulus,x,y,Y\ngreyscale,100,NaN,0.33,90\n', '"NaN" is not a measurement'],
  ['infinity', 'series,stimulus,x,y,Y\ngreyscale,100,0.31,0.33,1e400\n', '"1e400" is too large'],
  ['no luminance', 'series,stimulus,x,y\ngreyscale,100,0.31,0.33\n', 'needs a luminance'],
  ['a stimulus above 100', 'series,stimulus,x,y,Y\ngreyscale,101,0.31,0.33,9\n', '101 is above 100'],
])('a readings file with %s is refused with its place, exit status 2', async (what, csv, sentence) => {
  const { status, out, error } = await metrics(
    dossierOf(what.replaceAll(/\W/g, '-'), { bad: { csv }, good: { csv: cases['one-lag']!.csv.join('\n') } }),
  );
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(error).toContain('bad.csv');
  expect(error).toContain(sentence);
  expect(error).not.toMatch(/\n\s+at /);
});
