import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parseCgats } from '../../main/intake/cgats.ts';
import { decodeText } from '../../main/intake/decodeText.ts';
import { splitDelimited } from '../../main/intake/delimitedText.ts';
import { type ReadingsFile, readReadings } from '../../main/intake/readReadings.ts';

/**
 * The import cases of the outside references (`test/reference/data/csv_cases/index.json`). They name their columns
 * otherwise, so an adapter gives their names to our columns; a row without a series is read as a chart row.
 */
const folder = join(import.meta.dirname, '..', 'reference', 'data', 'csv_cases');

interface Case {
  file: string;
  records: number;
  rows_accepted: number;
  encoding: string;
  delimiter: string | null;
  errors: { line: number; what: string; action: string }[];
  warnings?: { line: number; what: string; action: string }[];
}
const cases = (JSON.parse(readFileSync(join(folder, 'index.json'), 'utf8')) as { cases: Case[] }).cases;

const rename = new Map([
  ['Y_cd_m2', 'Y'],
  ['signal_pct', 'stimulus'],
  ['taken_at', 'taken'],
  ['dx', 'angle'],
]);

function bytesOf(file: string): Buffer {
  return readFileSync(join(folder, file));
}

async function read(
  file: string,
): Promise<{ file: ReadingsFile | null; faultLines: number[]; sentences: string[]; notes: string[] }> {
  const result = await readReadings(bytesOf(file), file, { rename, assume: new Map([['series', 'chart']]) });
  const faults = result.ok ? result.value.faults : result.faults;
  return {
    file: result.ok ? result.value : null,
    faultLines: [...new Set(faults.map(({ place }) => place?.line ?? 0))],
    sentences: faults.map(({ sentence }) => sentence),
    notes: result.ok ? result.value.notes : [],
  };
}

test.each(cases.filter(({ file }) => /^\d/.test(file)).map((entry) => [entry.file, entry] as const))(
  '%s: the rows accepted and the lines refused are those that the case asks for',
  async (file, entry) => {
    const outcome = await read(file);
    expect({ rows: outcome.file?.readings.length ?? 0, lines: outcome.faultLines }).toEqual({
      rows: entry.rows_accepted,
      lines: entry.errors.map(({ line }) => line),
    });
  },
);

test.each([
  ['03_quoting.csv', 'Line 5: The patch has no name.'],
  ['06_windows1252.csv', 'The bytes are not valid UTF-8; they were decoded as windows-1252.'],
  [
    '14_duplicate_rows.csv',
    'Line 3: Identical to an earlier row and counted as a repeat; remove it if it was pasted twice.',
  ],
  [
    '18_formula_cells.csv',
    'Line 2, 3, 4, 5, 6 and 1 more: A text cell looks like a formula; it is kept as plain text.',
  ],
  ['19_ragged_rows.csv', 'Line 4 ends with a comma too many; the empty cell was left out.'],
  ['20_preamble_blank_comment.csv', 'Line 1 stands before the header and was skipped: # exported 2031-02-03'],
  ['20_preamble_blank_comment.csv', 'Line 6 is a comment and was skipped: # second block'],
  ['21_mixed_newlines.csv', 'The file mixes several kinds of line end.'],
  ['25_footlambert_header.csv', 'Line 1: the luminance is in foot-lambert; 1 is 3.4262590996 cd/m².'],
  ['26_unicode_digits_minus.csv', 'Line 2: Column angle: the minus sign U+2212 was read as -.'],
  [
    '29_timestamps.csv',
    'Line 3: Column taken: "2031-02-03 10:16" has no time zone and counts as local time.',
  ],
])('%s: the reader is told "%s"', async (file, note) => {
  expect((await read(file)).notes).toContain(note);
});

test('values come out as each case expects them', async () => {
  const luminances = async (file: string): Promise<(number | null)[]> =>
    (await read(file)).file!.readings.map((reading) => reading.Y);
  const patches = async (file: string): Promise<(string | undefined)[]> =>
    (await read(file)).file!.readings.map((reading) => reading.patch);
  expect(await luminances('01_rfc4180_crlf.csv')).toEqual([0.05, 6.31, 57.9, 178.4, 301.2]);
  expect((await read('02_lf_no_final_newline.csv')).file!.readings[3]).toMatchObject({
    patch: 'blue',
    y: 0.0605,
  });
  expect(await patches('03_quoting.csv')).toEqual(['white, full', 'two\r\nline name', undefined, 'grey']);
  expect(await patches('04_utf8_bom.csv')).toEqual(['white', 'café wall']);
  expect(await patches('05_utf16le_bom.csv')).toEqual(['white', '白']);
  expect((await read('08_semicolon_decimal_comma.csv')).file!.readings[1]).toMatchObject({
    Y: 57.9,
    x: 0.3129,
  });
  expect(await patches('09_tab_separated.tsv')).toEqual(['black', 'white, full']);
  expect(await luminances('10_thousands_point_decimal.csv')).toEqual([1234.5, 10000, 1234.5]);
  expect(await luminances('11_thousands_comma_decimal.csv')).toEqual([1234.5, 1234.5, 1234.5, 1234.5]);
  expect(await luminances('12_nonfinite_empty_negative.csv')).toEqual([0, 5, 0.5, 5, 1000, 0.0001]);
  expect(await luminances('13_overflow_and_odd_numbers.csv')).toEqual([0.1]);
  expect(await luminances('14_duplicate_rows.csv')).toEqual([301.2, 301.2, 57.9, 58.4]);
  expect(await luminances('21_mixed_newlines.csv')).toEqual([301.2, 57.9, 0.05]);
  expect((await read('26_unicode_digits_minus.csv')).file!.readings.map(({ angle }) => angle)).toEqual([
    -0.0012, -0.0012,
  ]);
  const [white, black] = await luminances('25_footlambert_header.csv');
  expect(white).toBeCloseTo(301.1682, 4);
  expect(black).toBeCloseTo(0.050023, 6);
});

test('cells stay text as they came: quoting, formulas, keys of objects, encodings', async () => {
  const cells = async (file: string): Promise<string[][]> => (await read(file)).file!.table.rows;
  expect((await cells('03_quoting.csv'))[0]).toEqual([
    'white, full',
    'said "bright" twice',
    '301.2',
    'chart',
  ]);
  expect((await cells('03_quoting.csv'))[3]![1]).toBe(' leading space kept ');
  expect((await cells('18_formula_cells.csv')).map((row) => row[1])).toEqual([
    "=cmd|'/C echo x'!A1",
    '+SUM(1;2)',
    '-2+3',
    '@ref',
    '\t=1+1',
    '=HYPERLINK("http://example.invalid","x")',
  ]);
  expect((await read('27_object_key_names.csv')).file!.table).toEqual({
    columns: ['__proto__', 'constructor', 'toString', 'Y', 'series'],
    rows: [['a', 'b', 'c', '301.2', 'chart']],
  });
  expect((await cells('06_windows1252.csv')).map((row) => row[5])).toEqual(['23 °C – warm', 'cost 5 €']);
  expect((await read('07_latin1_unit.csv')).file!.table.columns[1]).toBe('Y (cd/m²)');
});

test('faults say what is wrong in the words of a person', async () => {
  expect((await read('15_duplicate_header.csv')).sentences).toEqual(['The column name "Y" occurs twice.']);
  expect((await read('16_truncated_last_row.csv')).sentences).toEqual([
    'The row has 3 cells, the header 5. The file ends inside it and may be cut off.',
  ]);
  expect((await read('17_unterminated_quote.csv')).sentences).toEqual([
    'The quote opened on line 2 is never closed.',
  ]);
  expect((await read('22_header_only.csv')).sentences).toEqual(['The file has a header and no data rows.']);
  expect((await read('23_empty.csv')).sentences).toEqual(['The file is empty.']);
  expect((await read('24_nul_bytes.csv')).sentences).toEqual([
    "The row holds a NUL byte (the file's first is at byte 22).",
  ]);
  expect((await read('29_timestamps.csv')).sentences).toEqual([
    'Column taken: "03/02/2031 10:17" does not say which number is the day and which the month.',
    'Column taken: "2031-02-30T10:18:00Z" names a day that does not exist.',
  ]);
});

test('the header stands on the line where a person sees it', () => {
  const split = splitDelimited(decodeText(bytesOf('20_preamble_blank_comment.csv')).text, 'case');
  expect(
    split.ok && { header: split.value.headerLine, lines: split.value.records.map(({ line }) => line) },
  ).toEqual({
    header: 3,
    lines: [4, 7],
  });
  const quoting = splitDelimited(decodeText(bytesOf('03_quoting.csv')).text, 'case');
  expect(quoting.ok && quoting.value.records.map(({ line }) => line)).toEqual([2, 3, 5, 6]);
});

test('CGATS.17: a grey ramp with tristimulus values becomes greyscale readings', async () => {
  const read = await readReadings(bytesOf('c1_cgats_basic.txt'), 'c1_cgats_basic.txt');
  expect(read.ok && read.value.faults).toEqual([]);
  const readings = read.ok ? read.value.readings : [];
  expect(readings).toHaveLength(5);
  expect(readings[4]).toMatchObject({ series: 'greyscale', stimulus: 100, Y: 301.2 });
  expect(readings[4]!.x).toBeCloseTo(0.31251, 5);
  expect(readings[4]!.y).toBeCloseTo(0.329, 5);
  expect(read.ok && read.value.notes).toEqual([
    'The file says DESCRIPTOR: Invented grey ramp',
    'Line 7: the luminance is taken as cd/m²; the file does not say so.',
    'Line 7: RGB is taken as 0 to 255, from its greatest value.',
  ]);
});

test('CGATS.17: comments, wrapped sets and private keywords are read by tokens', async () => {
  const parsed = parseCgats(bytesOf('c2_cgats_comments_keywords.txt').toString('utf8'), 'c2');
  expect(parsed.ok && parsed.value.faults).toEqual([]);
  const table = parsed.ok ? parsed.value.tables[0]! : null;
  expect(table).toMatchObject({
    fields: ['SAMPLE_ID', 'STRING', 'XYY_X', 'XYY_Y', 'XYY_CAPY'],
    sets: [
      ['A1', 'white, full field', '0.3131', '0.3296', '301.2'],
      ['A2', 'grey # not a comment', '0.3129', '0.3291', '57.9'],
      ['A3', 'black', '0.2900', '0.3000', '0.050'],
    ],
  });
  expect(table!.keywords.get('ROOM_LUX')).toBe('0.4');
  expect(parsed.ok && parsed.value.notes).toEqual(['Line 4: a string in single quotes was read as text.']);
});

test('CGATS.17: a decimal comma, a short set, a missing end and a wrong count are all named', () => {
  const parsed = parseCgats(bytesOf('c3_cgats_faults.txt').toString('utf8'), 'c3');
  expect(parsed.ok && parsed.value.tables[0]!.sets).toEqual([['1', '95.19', '-1.03', '2.93']]);
  expect(parsed.ok && parsed.value.faults.map(({ place, sentence }) => [place!.line, sentence])).toEqual([
    [12, 'LAB_L: "81,29" has a decimal comma.'],
    [13, 'The set has 3 values instead of 4.'],
    [13, 'END_DATA is missing: the file is cut off.'],
    [9, 'NUMBER_OF_SETS says 4; the file has 2 complete sets.'],
  ]);
});

test('CGATS.17: of two tables the one with luminance is taken and the other named', async () => {
  const read = await readReadings(bytesOf('c4_cgats_two_tables.txt'), 'c4', {
    assume: new Map([['series', 'chart']]),
  });
  expect(read.ok && read.value.readings.map(({ Y }) => Y)).toEqual([301.2, 57.9]);
  expect(read.ok && read.value.notes).toContain(
    'Line 20: the table with SAMPLE_ID, D_VIS has no luminance or is a second one, and was left out.',
  );
});
