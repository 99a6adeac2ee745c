import { codeToStimulus } from '../../shared/colour/transfer/codeValue.ts';
import { chromaticityFault, xyzToXy } from '../../shared/colour/xyz.ts';
import type { Reading, SeriesName } from '../../shared/contract/reading.ts';
import { defaultSource, type Source } from '../../shared/contract/run.ts';
import { type DecimalMark, readNumber } from './numberText.ts';
import { type ColumnKind, luminanceHeader, neededColumns, readingColumns } from './readingColumns.ts';
import { checkTime } from './timeText.ts';

/** The columns of one readings file, prepared once for all of its rows. */
export interface ReadingColumns {
  names: readonly string[];
  index: ReadonlyMap<string, number>;
  kinds: readonly (ColumnKind | null)[];
  /** cd/m² for one unit of the luminance column */
  luminanceFactor: number;
}

export interface RowFinding {
  /** Index of the cell, -1 for the row as a whole */
  cell: number;
  sentence: string;
  mend?: string;
}

export interface TypedRow {
  /** Null when the row has faults */
  reading: Reading | null;
  faults: RowFinding[];
  notes: RowFinding[];
  /** Cells with numbers in point decimals, digits as written; unknown columns untouched */
  cells: string[];
}

/** Luminance without which a row of these series says nothing. */
const luminanceSeries = new Set<SeriesName>([
  'greyscale',
  'chart',
  'window',
  'contrast',
  'uniformity',
  'angle',
]);
const chromaticitySeries = new Set<SeriesName>(['saturation']);

/** Finds the known columns; `rename` maps a header name of the file to one of ours. */
export function prepareColumns(
  header: readonly string[],
  rename?: ReadonlyMap<string, string>,
): ReadingColumns {
  const names = header.map((name) => rename?.get(name) ?? name);
  const index = new Map(names.map((name, position) => [name, position]));
  let luminanceFactor = 1;
  if (!index.has('Y')) {
    const position = names.findIndex((name) => luminanceHeader(name) !== null);
    if (position !== -1) {
      index.set('Y', position);
      luminanceFactor = luminanceHeader(names[position]!)!.factor;
    }
  }
  const kinds: (ColumnKind | null)[] = names.map(() => null);
  for (const [name, position] of index) kinds[position] = readingColumns.get(name) ?? kinds[position] ?? null;
  return { names, index, kinds, luminanceFactor };
}

/**
 * Types one row: chromaticity CIE 1931 2°, luminance in cd/m², tristimulus turned into x, y, Y, a code value into
 * stimulus % by the run's source (default: 10 bit narrow). Every finding names its cell. Pure; the same row gives
 * the same reading wherever it is stored.
 */
export function typeReading(
  columns: ReadingColumns,
  rawCells: readonly string[],
  row: number,
  source: Source | undefined,
  decimal: DecimalMark = '.',
): TypedRow {
  const faults: RowFinding[] = [];
  const notes: RowFinding[] = [];
  const cells = [...rawCells];
  const numbers = new Map<string, number>();

  for (const [name, cell] of columns.index) {
    const kind = columns.kinds[cell];
    const text = cells[cell];
    if (kind === null || kind === undefined || text === undefined) continue;
    const finding = checkCell(kind, text, name);
    if (finding !== null) faults.push({ ...finding, cell });
  }

  function checkCell(kind: ColumnKind, text: string, name: string): Omit<RowFinding, 'cell'> | null {
    const cell = columns.index.get(name)!;
    switch (kind.holds) {
      case 'number': {
        const read = readNumber(text, decimal);
        if (read.state === 'missing') return null;
        if (read.state === 'fault')
          return {
            sentence: `${columnOf(name)}: ${read.sentence}.`,
            ...(read.mend ? { mend: read.mend } : {}),
          };
        if (read.note !== undefined) notes.push({ cell, sentence: `${columnOf(name)}: ${read.note}.` });
        if (decimal === ',' || read.note !== undefined) cells[cell] = read.canonical;
        const tooLow =
          kind.low !== undefined && (kind.lowOpen ? read.value <= kind.low : read.value < kind.low);
        if (tooLow)
          return {
            sentence: `${columnOf(name)}: ${text.trim()} is ${kind.low === 0 ? (kind.lowOpen ? 'not above 0' : 'negative') : `under ${kind.low}`}.`,
            mend:
              name === 'Y'
                ? 'A luminance cannot be negative; write 0 if the instrument only shows its noise, or leave the row out.'
                : `The ${kind.what} must be ${kind.lowOpen ? 'above' : 'at least'} ${kind.low}.`,
          };
        if (kind.high !== undefined && read.value > kind.high)
          return {
            sentence: `${columnOf(name)}: ${text.trim()} is above ${kind.high}.`,
            mend: `The ${kind.what} cannot exceed ${kind.high}; are two columns swapped?`,
          };
        numbers.set(name, read.value);
        return null;
      }
      case 'word':
        if (text === '' || kind.words.includes(text)) return null;
        return {
          sentence: `${columnOf(name)}: "${text}" is not one of ${kind.words.join(', ')}.`,
          mend: 'Write one of these.',
        };
      case 'place':
        if (text === '' || /^r[1-9]c[1-9]$/.test(text)) return null;
        return { sentence: `${columnOf(name)}: "${text}" is not a grid place.`, mend: 'Write it like r1c3.' };
      case 'time': {
        const finding = text === '' ? null : checkTime(text);
        if (finding === null) return null;
        if ('note' in finding) {
          notes.push({ cell, sentence: `${columnOf(name)}: ${finding.note}.` });
          return null;
        }
        return {
          sentence: `${columnOf(name)}: ${finding.fault}.`,
          mend: 'Write it like 2026-09-15T10:20:00+01:00.',
        };
      }
      case 'text':
        return null;
    }
  }

  const word = (name: string): string | undefined => {
    const cell = columns.index.get(name);
    const text = cell === undefined ? undefined : cells[cell];
    return text === undefined || text === '' ? undefined : text;
  };
  const place = (name: string): number => columns.index.get(name) ?? -1;
  const hasText = (name: string): boolean => (word(name)?.trim() ?? '') !== '';
  const series = word('series') as SeriesName | undefined;
  if (series === undefined) {
    faults.push({
      cell: place('series'),
      sentence: 'The row names no series.',
      mend: 'Fill in the series column.',
    });
    return { reading: null, faults, notes, cells };
  }
  const alreadyFaulty = faults.length > 0;
  for (const choice of neededColumns[series] ?? [])
    if (
      !choice.some((name) =>
        columns.kinds[place(name)]?.holds === 'number' ? numbers.has(name) : hasText(name),
      )
    )
      if (!alreadyFaulty)
        faults.push({
          cell: place(choice[0]!),
          sentence: `A row of the series ${series} needs ${choice.join(' or ')}.`,
          mend: 'Fill it in, or leave the row out.',
        });

  const chromaticity = readChromaticity(columns, numbers, faults);
  const Y = numbers.get('Y');
  const hue = word('hue') as Reading['hue'];
  if (faults.length === 0) {
    const needsY = luminanceSeries.has(series);
    const needsXy = chromaticitySeries.has(series) || (series === 'primaries' && hue !== 'black');
    if (needsY && Y === undefined)
      faults.push({
        cell: place('Y'),
        sentence: `A row of the series ${series} needs a luminance: ${missingReason(columns, cells, 'Y')}.`,
        mend: 'Fill in Y in cd/m², or leave the row out; a missing reading is not 0.',
      });
    if (needsXy && chromaticity === null)
      faults.push({
        cell: place('x'),
        sentence: `A row of the series ${series} needs a chromaticity.`,
        mend: 'Fill in x and y, or X, Y and Z.',
      });
  }
  const stimulus = readStimulus(columns, numbers, source, faults);
  if (faults.length > 0) return { reading: null, faults, notes, cells };

  const reading: Reading = {
    row,
    series,
    x: chromaticity?.[0] ?? null,
    y: chromaticity?.[1] ?? null,
    Y: Y === undefined ? null : Y * columns.luminanceFactor,
  };
  if (stimulus !== undefined) reading.stimulus = stimulus;
  const signal = triple(numbers, 'signal_r', 'signal_g', 'signal_b');
  if (signal !== null) reading.signal = signal;
  if (hue !== undefined) reading.hue = hue;
  for (const name of ['saturation', 'window', 'seconds', 'angle', 'value'] as const) {
    const value = numbers.get(name);
    if (value !== undefined) reading[name] = value;
  }
  for (const name of ['patch', 'position', 'level', 'quantity', 'unit'] as const) {
    const text = word(name);
    if (text !== undefined) reading[name] = text;
  }
  const lab = triple(numbers, 'ref_L', 'ref_a', 'ref_b');
  if (lab !== null) reading.referenceLab = lab;
  const xyY = triple(numbers, 'ref_x', 'ref_y', 'ref_Y');
  if (xyY !== null) reading.referencexyY = xyY;
  const pattern = word('pattern');
  if (pattern !== undefined) reading.pattern = pattern as NonNullable<Reading['pattern']>;
  const plane = word('plane');
  if (plane !== undefined) reading.plane = plane as NonNullable<Reading['plane']>;
  if (series === 'chart' && columns.index.has('patch') && !hasText('patch'))
    notes.push({ cell: place('patch'), sentence: 'The patch has no name.' });
  return { reading, faults, notes, cells };
}

function columnOf(name: string): string {
  return `Column ${name}`;
}

function missingReason(columns: ReadingColumns, cells: readonly string[], name: string): string {
  const cell = columns.index.get(name);
  if (cell === undefined) return `there is no column ${name}`;
  const read = readNumber(cells[cell] ?? '', '.');
  return read.state === 'missing' ? read.sentence : 'it cannot be read';
}

function triple(
  numbers: ReadonlyMap<string, number>,
  ...names: [string, string, string]
): readonly [number, number, number] | null {
  const [one, two, three] = names.map((name) => numbers.get(name));
  return one === undefined || two === undefined || three === undefined ? null : [one, two, three];
}

/** x, y as written, else from X, Y, Z (which take Y from the same column); null where the row has neither. */
function readChromaticity(
  columns: ReadingColumns,
  numbers: ReadonlyMap<string, number>,
  faults: RowFinding[],
): readonly [number, number] | null {
  const cell = (name: string): number => columns.index.get(name) ?? -1;
  const [x, y, X, Y, Z] = ['x', 'y', 'X', 'Y', 'Z'].map((name) => numbers.get(name));
  if (x !== undefined && y !== undefined) {
    const fault = chromaticityFault(x, y);
    if (fault === undefined) return [x, y];
    const swapped = x > 1 || y > 1 ? ' Are two columns swapped?' : '';
    faults.push({
      cell: cell(y <= 0 && x >= 0 && x <= 1 ? 'y' : 'x'),
      sentence: `No light has the chromaticity x ${x}, y ${y}: ${fault}.${swapped}`,
      mend: 'Leave x and y empty where the instrument gave none.',
    });
    return null;
  }
  if (x !== undefined || y !== undefined) {
    if (faults.length === 0)
      faults.push({
        cell: cell(x === undefined ? 'x' : 'y'),
        sentence: `The row has ${x === undefined ? 'y without x' : 'x without y'}.`,
        mend: 'Give both or neither.',
      });
    return null;
  }
  if (X === undefined && Z === undefined) return null;
  if (X === undefined || Y === undefined || Z === undefined) {
    if (faults.length === 0)
      faults.push({
        cell: cell(X === undefined ? 'X' : Y === undefined ? 'Y' : 'Z'),
        sentence: 'Tristimulus values need all of X, Y and Z.',
        mend: 'Fill in the missing one.',
      });
    return null;
  }
  return X + Y + Z > 0 ? xyzToXy([X, Y, Z]) : null;
}

function readStimulus(
  columns: ReadingColumns,
  numbers: ReadonlyMap<string, number>,
  source: Source | undefined,
  faults: RowFinding[],
): number | undefined {
  const stimulus = numbers.get('stimulus');
  const code = numbers.get('code');
  if (stimulus !== undefined || code === undefined) return stimulus;
  const bits = source?.bits ?? defaultSource.bits;
  const range = source?.range ?? defaultSource.range;
  if (!Number.isInteger(code) || code > 2 ** bits - 1) {
    faults.push({
      cell: columns.index.get('code') ?? -1,
      sentence: `Column code: ${code} is not a code value of a ${bits}-bit source.`,
      mend: 'Mend the code, or the bits of the run’s source.',
    });
    return undefined;
  }
  return codeToStimulus(code, bits, range);
}
