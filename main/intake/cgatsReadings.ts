import { fail, type Result, succeed } from '../../shared/contract/fault.ts';
import type { CellTable } from './cellTable.ts';
import type { CgatsFile, CgatsTable } from './cgats.ts';

export interface CgatsReadings {
  table: CellTable;
  set: CgatsTable;
  notes: string[];
}

const measured: readonly (readonly [names: readonly string[], columns: readonly string[]])[] = [
  [
    ['XYY_X', 'XYY_Y', 'XYY_CAPY'],
    ['x', 'y', 'Y'],
  ],
  [
    ['XYZ_X', 'XYZ_Y', 'XYZ_Z'],
    ['X', 'Y', 'Z'],
  ],
];
const rgb = ['RGB_R', 'RGB_G', 'RGB_B'];

/**
 * Turns the first table with luminance into readings columns: RGB becomes the signal sent (% of its range, which is
 * inferred and noted), the sample's name the patch. Without a given series, equal R, G and B make a greyscale row,
 * full-amplitude colours primaries, the rest chart rows. Fields that Nitproof does not know are kept as columns.
 * Errors: no table has luminance.
 */
export function cgatsReadings(
  cgats: CgatsFile,
  series: string | undefined,
  file: string,
): Result<CgatsReadings> {
  const notes: string[] = [];
  const set = cgats.tables.find(({ fields }) =>
    measured.some(([names]) => names.every((name) => fields.includes(name))),
  );
  if (set === undefined)
    return fail(...cgats.faults, {
      code: 'bad-input',
      sentence: 'No table of the file has luminance: XYZ_X, XYZ_Y, XYZ_Z or XYY_X, XYY_Y, XYY_CAPY.',
      mend: 'Export the readings with one of these.',
      place: { file, line: cgats.tables[0]!.formatLine },
    });
  for (const table of cgats.tables)
    if (table !== set)
      notes.push(
        `Line ${table.formatLine}: the table with ${table.fields.join(', ')} has no luminance or is a second one, and was left out.`,
      );
  for (const [keyword, value] of set.keywords)
    if (!['ORIGINATOR', 'CREATED'].includes(keyword)) notes.push(`The file says ${keyword}: ${value}`);
  notes.push(`Line ${set.formatLine}: the luminance is taken as cd/m²; the file does not say so.`);

  const [names, targets] = measured.find(([wanted]) => wanted.every((name) => set.fields.includes(name)))!;
  const range = signalRange(set);
  if (range !== null)
    notes.push(`Line ${set.formatLine}: RGB is taken as 0 to ${range}, from its greatest value.`);
  const kept = set.fields.filter(
    (name) => !names.includes(name) && name !== 'SAMPLE_ID' && !(range !== null && rgb.includes(name)),
  );
  const columns = [
    'series',
    'stimulus',
    'hue',
    'patch',
    ...targets,
    ...(range === null ? [] : ['signal_r', 'signal_g', 'signal_b']),
    ...kept,
  ];
  const field = (cells: readonly string[], name: string): string => cells[set.fields.indexOf(name)] ?? '';
  const rows = set.sets.map((cells) => {
    const signal = range === null ? null : rgb.map((name) => (100 * Number(field(cells, name))) / range);
    const kind = kindOf(signal, series);
    return [
      kind.series,
      kind.stimulus,
      kind.hue,
      field(cells, 'SAMPLE_ID') || field(cells, 'SAMPLE_NAME'),
      ...names.map((name) => field(cells, name)),
      ...(signal === null ? [] : signal.map(percentText)),
      ...kept.map((name) => field(cells, name)),
    ];
  });
  return succeed({ table: { columns, rows }, set, notes });
}

function signalRange(set: CgatsTable): number | null {
  if (!rgb.every((name) => set.fields.includes(name))) return null;
  const positions = rgb.map((name) => set.fields.indexOf(name));
  const greatest = Math.max(
    0,
    ...set.sets.flatMap((cells) => positions.map((position) => Number(cells[position]))),
  );
  return [1, 100, 255, 1023, 4095].find((range) => greatest <= range) ?? null;
}

function kindOf(
  signal: readonly number[] | null,
  series: string | undefined,
): { series: string; stimulus: string; hue: string } {
  if (signal === null) return { series: series ?? 'chart', stimulus: '', hue: '' };
  const [r, g, b] = signal as [number, number, number];
  if (r === g && g === b) return { series: series ?? 'greyscale', stimulus: percentText(r), hue: '' };
  const names = ['', 'blue', 'green', 'cyan', 'red', 'magenta', 'yellow', 'white'];
  const full = signal.every((value) => value === 0 || value === 100);
  const hue = full ? (names[(r ? 4 : 0) + (g ? 2 : 0) + (b ? 1 : 0)] ?? '') : '';
  return { series: series ?? (full ? 'primaries' : 'chart'), stimulus: '', hue };
}

function percentText(value: number): string {
  return String(Number(value.toFixed(4)));
}
