import { codeToStimulus } from '../../shared/colour/transfer/codeValue.ts';
import { chromaticityFault, xyzToXy } from '../../shared/colour/xyz.ts';
import type { Reading, SeriesName } from '../../shared/contract/reading.ts';
import { defaultSource, type Source } from '../../shared/contract/run.ts';
import { checkCell, type RowFinding } from './checkCell.ts';
import type { DecimalMark } from './numberText.ts';
import { readNumber } from './numberText.ts';
import { type ColumnKind, luminanceHeader, neededColumns, readingColumns } from './readingColumns.ts';

/** The columns of one readings file, prepared once for all of its rows. */
export interface ReadingColumns {
  names: readonly string[];
  /** Known columns: our name and where it stands */
  known: readonly { name: string; cell: number; kind: ColumnKind }[];
  /** Cell of a known column, -1 where the file lacks it */
  cellOf(name: string): number;
  /** cd/m² for one unit of the luminance column */
  luminanceFactor: number;
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
const plainNumbers = ['saturation', 'window', 'seconds', 'angle', 'value'] as const;
const plainTexts = ['patch', 'position', 'level', 'quantity', 'unit'] as const;

/** Finds the known columns; `rename` maps a header name of the file to one of ours. */
export function prepareColumns(
  header: readonly string[],
  rename?: ReadonlyMap<string, string>,
): ReadingColumns {
  const names = header.map((name) => rename?.get(name) ?? name);
  const index = new Map(names.map((name, cell) => [name, cell]));
  let luminanceFactor = 1;
  if (!index.has('Y')) {
    const cell = names.findIndex((name) => luminanceHeader(name) !== null);
    if (cell !== -1) {
      index.set('Y', cell);
      luminanceFactor = luminanceHeader(names[cell]!)!.factor;
    }
  }
  const known = [...readingColumns].flatMap(([name, kind]) => {
    const cell = index.get(name);
    return cell === undefined ? [] : [{ name, cell, kind }];
  });
  const cells = new Map(known.map(({ name, cell }) => [name, cell]));
  return { names, known, cellOf: (name) => cells.get(name) ?? -1, luminanceFactor };
}

/**
 * Types one row: chromaticity CIE 1931 2°, luminance in cd/m², tristimulus turned into x, y, Y, a code value into
 * stimulus % by the run's source (default: 10 bit narrow). Every finding names its cell. Pure; the same row gives
 * the same reading wherever it is stored.
 */
export function typeReading(
  columns: ReadingColumns,
  rawCells: string[],
  row: number,
  source: Source | undefined,
  decimal: DecimalMark = '.',
): TypedRow {
  return new RowTyping(columns, rawCells, source, decimal).typed(row);
}

class RowTyping {
  readonly columns: ReadingColumns;
  readonly source: Source | undefined;
  readonly faults: RowFinding[] = [];
  readonly notes: RowFinding[] = [];
  readonly numbers: (number | undefined)[];
  cells: string[];

  constructor(columns: ReadingColumns, rawCells: string[], source: Source | undefined, decimal: DecimalMark) {
    this.columns = columns;
    this.source = source;
    this.cells = rawCells;
    this.numbers = new Array<number | undefined>(rawCells.length);
    let changed: string[] | null = null;
    for (const { name, cell, kind } of columns.known) {
      const checked = checkCell(kind, rawCells[cell] ?? '', name, decimal);
      if (checked === null) continue;
      if (typeof checked === 'number') {
        this.numbers[cell] = checked;
        continue;
      }
      if (checked.fault !== undefined) this.faults.push({ cell, ...checked.fault });
      if (checked.note !== undefined) this.notes.push({ cell, sentence: checked.note });
      if (checked.value !== undefined) this.numbers[cell] = checked.value;
      if (checked.canonical !== undefined) {
        changed ??= [...rawCells];
        changed[cell] = checked.canonical;
      }
    }
    if (changed !== null) this.cells = changed;
  }

  number(name: string): number | undefined {
    const cell = this.columns.cellOf(name);
    return cell === -1 ? undefined : this.numbers[cell];
  }

  word(name: string): string | undefined {
    const cell = this.columns.cellOf(name);
    const text = cell === -1 ? undefined : this.cells[cell];
    return text === '' ? undefined : text;
  }

  fault(name: string, sentence: string, mend: string): void {
    this.faults.push({ cell: this.columns.cellOf(name), sentence, mend });
  }

  typed(row: number): TypedRow {
    const series = this.word('series') as SeriesName | undefined;
    if (series === undefined) this.fault('series', 'The row names no series.', 'Fill in the series column.');
    if (this.faults.length === 0) this.checkNeeds(series!);
    const chromaticity = this.chromaticity();
    if (this.faults.length === 0) this.checkMeasured(series!, chromaticity);
    const stimulus = this.stimulus();
    const { faults, notes, cells } = this;
    if (faults.length > 0) return { reading: null, faults, notes, cells };
    if (series === 'chart' && this.columns.cellOf('patch') !== -1 && !this.word('patch')?.trim())
      notes.push({ cell: this.columns.cellOf('patch'), sentence: 'The patch has no name.' });
    return { reading: this.reading(row, series!, chromaticity, stimulus), faults, notes, cells };
  }

  reading(
    row: number,
    series: SeriesName,
    chromaticity: readonly [number, number] | null,
    stimulus: number | undefined,
  ): Reading {
    const Y = this.number('Y');
    const reading: Reading = {
      row,
      series,
      x: chromaticity === null ? null : chromaticity[0],
      y: chromaticity === null ? null : chromaticity[1],
      Y: Y === undefined ? null : Y * this.columns.luminanceFactor,
    };
    if (stimulus !== undefined) reading.stimulus = stimulus;
    const signal = this.triple('signal_r', 'signal_g', 'signal_b');
    if (signal !== null) reading.signal = signal;
    const hue = this.word('hue');
    if (hue !== undefined) reading.hue = hue as NonNullable<Reading['hue']>;
    for (const name of plainNumbers) {
      const value = this.number(name);
      if (value !== undefined) reading[name] = value;
    }
    for (const name of plainTexts) {
      const text = this.word(name);
      if (text !== undefined) reading[name] = text;
    }
    const lab = this.triple('ref_L', 'ref_a', 'ref_b');
    if (lab !== null) reading.referenceLab = lab;
    const xyY = this.triple('ref_x', 'ref_y', 'ref_Y');
    if (xyY !== null) reading.referencexyY = xyY;
    const pattern = this.word('pattern');
    if (pattern !== undefined) reading.pattern = pattern as NonNullable<Reading['pattern']>;
    const plane = this.word('plane');
    if (plane !== undefined) reading.plane = plane as NonNullable<Reading['plane']>;
    return reading;
  }

  checkNeeds(series: SeriesName): void {
    for (const choice of neededColumns[series] ?? [])
      if (!choice.some((name) => this.number(name) !== undefined || this.isText(name)))
        this.fault(
          choice[0]!,
          `A row of the series ${series} needs ${choice.join(' or ')}.`,
          'Fill it in, or leave the row out.',
        );
  }

  isText(name: string): boolean {
    return readingColumns.get(name)?.holds !== 'number' && (this.word(name)?.trim() ?? '') !== '';
  }

  checkMeasured(series: SeriesName, chromaticity: readonly [number, number] | null): void {
    if (luminanceSeries.has(series) && this.number('Y') === undefined)
      this.fault(
        'Y',
        `A row of the series ${series} needs a luminance: ${this.missingReason('Y')}.`,
        'Fill in Y in cd/m², or leave the row out; a missing reading is not 0.',
      );
    const needsXy = series === 'saturation' || (series === 'primaries' && this.word('hue') !== 'black');
    if (needsXy && chromaticity === null)
      this.fault(
        'x',
        `A row of the series ${series} needs a chromaticity.`,
        'Fill in x and y, or X, Y and Z.',
      );
  }

  missingReason(name: string): string {
    const cell = this.columns.cellOf(name);
    if (cell === -1) return `there is no column ${name}`;
    const read = readNumber(this.cells[cell] ?? '', '.');
    return read.state === 'missing' ? read.sentence : 'it cannot be read';
  }

  triple(one: string, two: string, three: string): readonly [number, number, number] | null {
    const first = this.number(one);
    if (first === undefined) return null;
    const second = this.number(two);
    const third = this.number(three);
    return second === undefined || third === undefined ? null : [first, second, third];
  }

  /** x, y as written, else from X, Y, Z (which take Y from the same column); null where the row has neither. */
  chromaticity(): readonly [number, number] | null {
    const x = this.number('x');
    const y = this.number('y');
    if (x !== undefined && y !== undefined) {
      const fault = chromaticityFault(x, y);
      if (fault === undefined) return [x, y];
      this.fault(
        y <= 0 && x >= 0 && x <= 1 ? 'y' : 'x',
        `No light has the chromaticity x ${x}, y ${y}: ${fault}.${x > 1 || y > 1 ? ' Are two columns swapped?' : ''}`,
        'Leave x and y empty where the instrument gave none.',
      );
      return null;
    }
    if (x !== undefined || y !== undefined) {
      if (this.faults.length === 0)
        this.fault(
          x === undefined ? 'x' : 'y',
          `The row has ${x === undefined ? 'y without x' : 'x without y'}.`,
          'Give both or neither.',
        );
      return null;
    }
    const X = this.number('X');
    const Z = this.number('Z');
    if (X === undefined && Z === undefined) return null;
    const Y = this.number('Y');
    if (X === undefined || Y === undefined || Z === undefined) {
      if (this.faults.length === 0)
        this.fault(
          X === undefined ? 'X' : Y === undefined ? 'Y' : 'Z',
          'Tristimulus values need all of X, Y and Z.',
          'Fill in the missing one.',
        );
      return null;
    }
    return X + Y + Z > 0 ? xyzToXy([X, Y, Z]) : null;
  }

  stimulus(): number | undefined {
    const stimulus = this.number('stimulus');
    if (stimulus !== undefined) return stimulus;
    const code = this.number('code');
    if (code === undefined) return undefined;
    const bits = this.source?.bits ?? defaultSource.bits;
    const range = this.source?.range ?? defaultSource.range;
    if (Number.isInteger(code) && code <= 2 ** bits - 1) return codeToStimulus(code, bits, range);
    this.fault(
      'code',
      `Column code: ${code} is not a code value of a ${bits}-bit source.`,
      'Mend the code, or the bits of the run’s source.',
    );
    return undefined;
  }
}
