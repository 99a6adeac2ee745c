import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCommandLine } from '../../main/hosts/cli.ts';
import { filesBelow, foreignFiles, freshFolder, writeFiles } from '../dossier/sampleDossier.ts';

const demo = join(import.meta.dirname, '..', '..', 'main', 'demo', 'dossier');
const program = join(import.meta.dirname, '..', '..', 'main', 'hosts', 'cli.ts');

async function run(...args: string[]): Promise<{ status: number; out: string; error: string }> {
  let out = '';
  let error = '';
  const status = await runCommandLine(args, {
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { status, out, error };
}

function sample(changes: Record<string, string> = {}): { folder: string; dossier: string; library: string } {
  const folder = freshFolder();
  return {
    folder,
    dossier: writeFiles(join(folder, 'dossier'), { ...foreignFiles, ...changes }),
    library: join(folder, 'library.sqlite'),
  };
}

test('every command has a help, and the overview names them all', async () => {
  const overview = await run('--help');
  expect(overview.status).toBe(0);
  for (const name of [
    'check',
    'import',
    'export',
    'metrics',
    'serve',
    'release',
    'spoken',
    'verify',
    'backup',
    'restore',
  ]) {
    expect(overview.out).toContain(`  ${name} `);
    const help = await run(name, '--help');
    expect({ status: help.status, error: help.error }).toEqual({ status: 0, error: '' });
    expect(help.out).toContain(`nitproof ${name}`);
  }
});

test.each([
  [[], ''],
  [['inspect'], 'There is no command "inspect".'],
  [['check'], 'check takes one path, not 0'],
  [['check', 'a', 'b'], 'check takes one path, not 2'],
  [['check', 'nowhere'], 'nowhere: There is no such file or folder.'],
  [['check', demo, '--colour'], "Unknown option '--colour'"],
  [['check', demo, '--article', 'none'], 'There is no article "none". It has '],
  [['metrics', demo], '--unit is missing.'],
  [['metrics', demo, '--unit', 'none'], 'There is no unit "none". It has '],
  [['import', demo], '--into is missing.'],
  [['import', 'nowhere', '--into', 'x.sqlite'], 'nowhere: There is no such file or folder.'],
  [['import', demo, '--into', 'x.sqlite', '--prefer', 'mine'], '--prefer is theirs or ours, not "mine".'],
  [['export', 'nowhere.sqlite', '--to', 'x'], 'nowhere.sqlite: There is no such library.'],
  [['serve', '--port', 'many'], '--port is a whole number'],
  [['release', demo], 'has no release command yet'],
  [['spoken', demo], 'has no spoken command yet'],
])('a wrong command line %j exits with 2 and one sentence', async (args, sentence) => {
  const { status, error } = await run(...args);
  expect(status).toBe(2);
  expect(error).toContain(sentence);
  expect(error).not.toMatch(/\n\s+at /);
  expect(existsSync('x.sqlite')).toBe(false);
});

test('check: dossier and library give the same report byte for byte, and its status follows the verdicts', async () => {
  const library = join(freshFolder(), 'library.sqlite');
  expect((await run('import', demo, '--into', library)).status).toBe(0);
  const [fromDossier, fromLibrary] = [
    await run('check', demo, '--json', '--article', 'hearth-55'),
    await run('check', library, '--json', '--article', 'hearth-55'),
  ];
  expect(fromLibrary).toEqual(fromDossier);
  const report = JSON.parse(fromDossier.out);
  expect(report).toMatchObject({
    format: 'nitproof-check',
    version: 1,
    articles: [{ article: 'hearth-55' }],
  });
  expect(report.totals.breaks > 0 ? 1 : 0).toBe(fromDossier.status);
});

test('check: an opinion is fine, an unproven claim only breaks under --strict', async () => {
  const { dossier } = sample({ 'articles/hearth-55.md': 'Its 7 buttons sit under the frame.' });
  const plain = await run('check', dossier, '--json');
  expect(JSON.parse(plain.out).totals).toMatchObject({ breaks: 0, unproven: 1 });
  expect(plain.status).toBe(0);
  expect((await run('check', dossier, '--strict')).status).toBe(1);
});

test('metrics: the report has the form of the format page, numbers with 6 significant digits', async () => {
  const { out, status } = await run('metrics', demo, '--unit', 'orrinvale-hearth-55', '--json');
  expect(status).toBe(0);
  const report = JSON.parse(out);
  expect(report).toMatchObject({ format: 'nitproof-metrics', version: 1, unit: 'orrinvale-hearth-55' });
  expect(report.facts.price).toMatchObject({ value: 1039, unit: 'GBP' });
  const [runs] = [Object.values(report.runs) as Record<string, Record<string, unknown>>[]];
  const grey = runs.map((quantities) => quantities['grey.de2000']!).find((quantity) => 'values' in quantity)!;
  expect(grey).toMatchObject({
    unit: 'ΔE2000',
    values: expect.any(Array),
    average: { value: expect.any(Number), u: expect.any(Number) },
    max: { value: expect.any(Number), u: expect.any(Number) },
  });
  for (const digits of out.match(/-?\d+\.\d+(?:e[+-]?\d+)?/g) ?? [])
    expect(digits.replace(/e.*$/, '').replace(/^-?0?\.?0*|[.-]/g, '').length).toBeLessThanOrEqual(6);
});

test('import: a conflict is listed and exits with 2; a preference decides', async () => {
  const { dossier, library } = sample();
  await run('import', dossier, '--into', library);
  writeFileSync(join(dossier, 'articles', 'hearth-55.md'), 'Another.');
  const refused = await run('import', dossier, '--into', library);
  expect(refused).toMatchObject({ status: 2, out: '' });
  expect(refused.error).toContain("The article hearth-55 differs from the library's.");
  expect((await run('import', dossier, '--into', library, '--prefer', 'theirs')).status).toBe(0);
  expect((await run('import', dossier, '--into', library)).status).toBe(0);
});

test('import: a failure leaves no new library behind', async () => {
  const { folder, dossier, library } = sample({ 'dossier.json': '{' });
  const failed = await run('import', dossier, '--into', library);
  expect(failed.status).toBe(2);
  expect(failed.error).toContain('dossier.json:1:2: This is not JSON');
  expect(Object.keys(filesBelow(folder)).filter((path) => path.startsWith('library'))).toEqual([]);
});

test('import: one readings file into a run, with the conditions beside it', async () => {
  const { folder, dossier, library } = sample();
  await run('import', dossier, '--into', library);
  writeFiles(folder, {
    'ramp.csv': 'stimulus,x,y,Y\n50,0.3127,0.3290,60\n100,0.3127,0.3290,300\n',
    'ramp.json':
      '{"mode":"Film","stage":"adjusted","signal":"SDR","target":{"gamut":"BT.709","white":"D65","eotf":"BT.1886"}}',
  });
  const into = ['--into', library, '--unit', 'orrinvale-hearth-55', '--run', 'film'];
  const file = join(folder, 'ramp.csv');
  const missing = await run('import', file, ...into);
  expect(missing).toMatchObject({ status: 2 });
  expect(missing.error).toContain('ramp.csv:1:1: There is no column series.');
  const brought = await run('import', file, ...into, '--series', 'greyscale');
  expect(brought).toEqual({
    status: 0,
    out: 'Imported 2 readings into orrinvale-hearth-55, run film.\n',
    error: '',
  });
  const metrics = await run('metrics', library, '--unit', 'orrinvale-hearth-55', '--json');
  expect(Object.keys(JSON.parse(metrics.out).runs)).toEqual(['film', 'sdr-calm']);
});

test('import: other readings for a run that has some are a conflict; the old ones become a superseded version', async () => {
  const { folder, dossier, library } = sample();
  await run('import', dossier, '--into', library);
  writeFiles(folder, { 'anew.csv': 'series,stimulus,x,y,Y\ngreyscale,100,0.3127,0.3290,299\n' });
  const bring = (...more: string[]) =>
    run(
      'import',
      join(folder, 'anew.csv'),
      '--into',
      library,
      '--unit',
      'orrinvale-hearth-55',
      '--run',
      'sdr-calm',
      ...more,
    );
  const refused = await bring();
  expect(refused.status).toBe(2);
  expect(refused.error).toContain('orrinvale-hearth-55, run sdr-calm, has other readings already.');
  expect((await bring('--prefer', 'ours')).out).toBe('orrinvale-hearth-55, run sdr-calm, stays as it is.\n');
  expect((await bring('--prefer', 'theirs')).status).toBe(0);
  expect((await bring()).out).toBe('orrinvale-hearth-55, run sdr-calm, stays as it is.\n');
  await run('export', library, '--to', join(folder, 'out'));
  const files = filesBelow(join(folder, 'out'));
  expect(files['units/orrinvale-hearth-55/runs/sdr-calm.csv']).toContain(',299\n');
  expect(files['units/orrinvale-hearth-55/runs/sdr-calm@2.csv']).toContain(',301.20,');
  expect(files['history.jsonl']).toBeUndefined();
});

test('import and export add no line to the history', async () => {
  const { folder, dossier, library } = sample();
  await run('import', dossier, '--into', library);
  await run('export', library, '--to', join(folder, 'out'));
  expect(filesBelow(join(folder, 'out'))['history.jsonl']).toBeUndefined();
});

test('verify, backup and restore: a sound library is copied and comes back the same', async () => {
  const { folder, dossier, library } = sample();
  await run('import', dossier, '--into', library);
  expect((await run('verify', library)).out).toMatch(/^Sound: 2 runs, 1 photos, 1 articles/);
  expect((await run('backup', library, '--to', join(folder, 'copy'))).status).toBe(0);
  expect((await run('backup', library, '--to', join(folder, 'copy'))).status).toBe(2);
  expect((await run('restore', join(folder, 'copy'), '--to', join(folder, 'again.sqlite'))).status).toBe(0);
  await run('export', library, '--to', join(folder, 'one'));
  await run('export', join(folder, 'again.sqlite'), '--to', join(folder, 'two'));
  expect(filesBelow(join(folder, 'two'))).toEqual(filesBelow(join(folder, 'one')));
});

test('as a program: the status, stdout and stderr are those of the command', () => {
  const { dossier } = sample({ 'articles/hearth-55.md': 'Blacks are a deep 0.07 cd/m².' });
  const checked = spawnSync(process.execPath, [program, 'check', dossier, '--json'], { encoding: 'utf8' });
  expect({ status: checked.status, stderr: checked.stderr }).toEqual({ status: 1, stderr: '' });
  expect(JSON.parse(checked.stdout).totals.breaks).toBe(1);
  const wrong = spawnSync(process.execPath, [program, 'check'], { encoding: 'utf8' });
  expect(wrong).toMatchObject({ status: 2, stdout: '' });
  expect(execFileSync(process.execPath, [program, '--help'], { encoding: 'utf8' })).toContain('check');
});
