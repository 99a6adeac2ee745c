import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { importDossier } from '../../main/dossier/importDossier.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { faultLine } from '../../shared/contract/fault.ts';
import { filesBelow, foreignFiles, freshFolder, writeFiles } from './sampleDossier.ts';

const unitFolder = 'units/orrinvale-hearth-55';
const run = `${unitFolder}/runs/sdr-calm`;

/** Imports the sample with some files changed (null: removed) and gives the faults back, paths from the folder on. */
async function faultsOf(changes: Record<string, string | Buffer | null>): Promise<string[]> {
  const folder = freshFolder();
  const files = Object.fromEntries(
    Object.entries({ ...foreignFiles, ...changes }).filter(
      (entry): entry is [string, string | Buffer] => entry[1] !== null,
    ),
  );
  const from = writeFiles(join(folder, 'd'), files);
  const library = await openLibrary(join(folder, 'library.sqlite'));
  if (!library.ok) throw new Error('library');
  const result = await importDossier(from, library.value);
  const { units, articles, revision } = await library.value.describe();
  expect({ units, articles, revision }).toEqual({ units: 0, articles: 0, revision: 0 });
  await library.value.close();
  return result.ok ? [] : result.faults.map((fault) => faultLine(fault).replaceAll(`${from}/`, ''));
}

const header = 'series,stimulus,x,y,Y\n';

test.each([
  [
    'a negative luminance',
    `${header}greyscale,0,,,0.05\ngreyscale,100,0.3127,0.3290,-0.2\n`,
    `${run}.csv:3:29: Column Y: -0.2 is negative.`,
  ],
  [
    'x + y above 1',
    `${header}greyscale,100,0.7,0.4,100\n`,
    `${run}.csv:2:15: No light has the chromaticity x 0.7, y 0.4: x + y is above 1.`,
  ],
  [
    'text in a number column',
    `${header}greyscale,bright,0.3,0.3,100\n`,
    `${run}.csv:2:11: Column stimulus: "bright" is not a number.`,
  ],
  [
    'an unknown series',
    `${header}grayscale,100,0.3,0.3,100\n`,
    `${run}.csv:2:1: Column series: "grayscale" is not one of greyscale, primaries`,
  ],
  [
    'a missing column',
    'series,stimulus,x,y\ngreyscale,100,0.3,0.3\n',
    `${run}.csv:2:1: A row of the series greyscale needs a luminance: there is no column Y.`,
  ],
  ['no series column', 'stimulus,x,y,Y\n100,0.3,0.3,100\n', `${run}.csv:1:1: There is no column series.`],
  [
    'column names in the wrong case',
    'Series,stimulus,x,y,Y\ngreyscale,100,0.3,0.3,100\n',
    `${run}.csv:1:1: There is no column series.`,
  ],
  [
    'a code that 10 bits cannot hold',
    'series,code,x,y,Y\ngreyscale,1024,0.3,0.3,100\n',
    `${run}.csv:2:11: Column code: 1024 is not a code value of a 10-bit source.`,
  ],
  [
    'a stimulus above 100 %',
    `${header}greyscale,101,0.3,0.3,100\n`,
    `${run}.csv:2:11: Column stimulus: 101 is above 100.`,
  ],
])('readings: %s is refused with file, line and column', async (_what, csv, start) => {
  const faults = await faultsOf({ [`${run}.csv`]: csv });
  expect(faults).toHaveLength(1);
  expect(faults[0]).toMatch(new RegExp(`^${start.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`));
});

test.each([
  [
    'broken JSON',
    `${run}.json`,
    '{\n  "mode": "Calm",\n  "stage" "adjusted"\n}',
    `${run}.json:3:11: This is not JSON: "\\"" stands where a colon should be.`,
  ],
  [
    'JSON that ends early',
    `${run}.json`,
    '{"mode": "Calm",',
    `${run}.json:1:17: This is not JSON: the file ends where a key in double quotes should be.`,
  ],
  [
    'a comma after the last value',
    `${run}.json`,
    '{"mode": "Calm",\n}',
    `${run}.json:2:1: This is not JSON: "}" stands where a key in double quotes should be.`,
  ],
  [
    'a key that occurs twice',
    `${unitFolder}/unit.json`,
    '{"maker":"Orrinvale","model":"Hearth","maker":"Veltrane"}',
    `${unitFolder}/unit.json:1:39: The key "maker" occurs twice.`,
  ],
  [
    'a wrong stage',
    `${run}.json`,
    '{"mode":"Calm","stage":"tuned","signal":"SDR",\n "target":{"gamut":"BT.709","white":"D65","eotf":"BT.1886"}}',
    `${run}.json:1:24: "stage": `,
  ],
  [
    'an unknown eotf',
    `${run}.json`,
    '{"mode":"Calm","stage":"adjusted","signal":"SDR",\n "target":{"gamut":"BT.709","white":"D65","eotf":"2.2"}}',
    `${run}.json:2:50: "target.eotf": eotf is BT.1886, PQ, HLG, sRGB or "gamma 2.2".`,
  ],
  [
    'a missing maker',
    `${unitFolder}/unit.json`,
    '{"model":"Hearth 55"}',
    `${unitFolder}/unit.json:1:1: "maker": `,
  ],
  [
    'a wrong format version',
    'dossier.json',
    '{"format":"nitproof-dossier","version":2}',
    'dossier.json:1:40: This dossier has the format version 2; this Nitproof reads version 1.',
  ],
  [
    'another format',
    'dossier.json',
    '{"format":"something","version":1}',
    'dossier.json:1:11: "format": format is "nitproof-dossier".',
  ],
  [
    'an article on a unit that is not there',
    'articles/hearth-55.json',
    '{"title":"T","state":"draft",\n "unit":"veltrane-plain-50"}',
    'articles/hearth-55.json:2:9: The article names the unit "veltrane-plain-50", which is not there.',
  ],
  [
    'a rival that is not there',
    'articles/hearth-55.json',
    '{"title":"T","state":"draft","unit":"orrinvale-hearth-55","against":["nocthale"]}',
    'articles/hearth-55.json:1:70: The article names the unit "nocthale"',
  ],
  [
    'an unknown state',
    'articles/hearth-55.json',
    '{"title":"T","state":"printed","unit":"orrinvale-hearth-55"}',
    'articles/hearth-55.json:1:22: "state": ',
  ],
  [
    'bytes that are not UTF-8',
    'articles/hearth-55.md',
    Buffer.from([0x41, 0x0a, 0xff, 0xfe, 0x41]),
    'articles/hearth-55.md:2: This file is not valid UTF-8.',
  ],
  [
    'an impossible day',
    `${run}.json`,
    '{"mode":"Calm","stage":"adjusted","signal":"SDR","taken":"2026-02-30T10:00:00Z","target":{"gamut":"BT.709","white":"D65","eotf":"BT.1886"}}',
    `${run}.json:1:58: "taken": "2026-02-30T10:00:00Z" names a day that does not exist.`,
  ],
  [
    'a severity beyond 4',
    `${unitFolder}/observations.csv`,
    'id,topic,severity\nb1,blooming,5\n',
    `${unitFolder}/observations.csv:2:13: Column severity: "5" is not allowed.`,
  ],
  [
    'an observation id that stands twice',
    `${unitFolder}/observations.csv`,
    'id,topic,severity\nb1,blooming,1\nb1,banding,1\n',
    `${unitFolder}/observations.csv:3:1: The id "b1" stands twice, on lines 2 and 3.`,
  ],
  [
    'a bad unit id',
    'units/Hearth 55/unit.json',
    '{"maker":"Orrinvale","model":"Hearth 55"}',
    'units/Hearth 55/unit.json: "Hearth 55" is not an id.',
  ],
  [
    'readings without conditions',
    `${unitFolder}/runs/alone.csv`,
    `${header}greyscale,100,0.3,0.3,100\n`,
    `${unitFolder}/runs/alone.csv: These readings have no conditions. Add ${unitFolder}/runs/alone.json.`,
  ],
])('%s is refused with its place', async (_what, path, content, start) => {
  const faults = await faultsOf({ [path]: content });
  expect(faults).toHaveLength(1);
  expect(faults[0]!.startsWith(start), `${faults[0]}\n should begin\n${start}`).toBe(true);
});

test('every finding in every file is reported at once', async () => {
  expect(
    await faultsOf({
      [`${unitFolder}/unit.json`]: null,
      'articles/hearth-55.md': null,
      [`${run}.csv`]: `${header}greyscale,100,0.7,0.4,100\ngreyscale,100,0.3,0.3,\n`,
    }),
  ).toHaveLength(4);
});

test('a folder without dossier.json is no dossier', async () => {
  expect(await faultsOf({ 'dossier.json': null })).toEqual([
    expect.stringContaining('This folder is no dossier: it has no dossier.json.'),
  ]);
});

test('a failed import leaves the files it read alone', async () => {
  const folder = freshFolder();
  const from = writeFiles(join(folder, 'd'), { ...foreignFiles, [`${run}.csv`]: 'x' });
  const before = filesBelow(from);
  const library = await openLibrary(join(folder, 'library.sqlite'));
  if (!library.ok) throw new Error('library');
  expect((await importDossier(from, library.value)).ok).toBe(false);
  await library.value.close();
  expect(filesBelow(from)).toEqual(before);
  expect(existsSync(join(folder, 'library.sqlite'))).toBe(true);
});
