import { basename } from 'node:path';
import { type Fault, fail, type Result, succeed } from '../../shared/contract/fault.ts';
import type { Reading } from '../../shared/contract/reading.ts';
import type { Source } from '../../shared/contract/run.ts';
import type { CellTable } from './cellTable.ts';
import { type CgatsTable, isCgats, parseCgats } from './cgats.ts';
import { cgatsReadings } from './cgatsReadings.ts';
import { decodeText } from './decodeText.ts';
import { cellColumn, type DelimitedText, splitDelimited } from './delimitedText.ts';
import { looksLikeFormula, withoutGuard } from './formulaGuard.ts';
import { type DecimalMark, detectDecimal } from './numberText.ts';
import { luminanceHeader } from './readingColumns.ts';
import { prepareColumns, type ReadingColumns, typeReading } from './typeReading.ts';

export interface ReadingsFile {
  table: CellTable;
  /** One for each row of the table, in order, when there are no faults */
  readings: Reading[];
  /** What was skipped, decoded by guess, converted or looks odd; nothing here stops an import. */
  notes: string[];
  /** Every finding that stops an import, each with file, line and column. */
  faults: Fault[];
}

export interface ReadingOptions {
  /** The run's source, for code values */
  source?: Source | undefined;
  /** Header names of the file → our column names */
  rename?: ReadonlyMap<string, string>;
  /** Values of columns that the file lacks, such as `series` → `greyscale` */
  assume?: ReadonlyMap<string, string>;
  /** Fixed for the files of a dossier (RFC 4180: comma); found out for others */
  delimiter?: string;
  /** Called now and then with the share done, 0–1; a false answer cancels. */
  progress?: (share: number) => Promise<boolean>;
}

const rowsBetweenPauses = 2000;

/**
 * Reads a readings file: delimited text or a CGATS.17 table. Numbers of a file that writes a decimal comma are
 * turned into point decimals with the same digits; everything else stays as written.
 * Errors: an unreadable structure is a failure; findings in rows come back in `faults`, all of them.
 */
export async function readReadings(
  bytes: Uint8Array,
  fileName: string,
  options: ReadingOptions = {},
): Promise<Result<ReadingsFile>> {
  const file = fileName.includes('/') ? fileName : basename(fileName);
  if (bytes.length === 0)
    return fail({
      code: 'bad-input',
      sentence: 'The file is empty.',
      mend: 'Export it again.',
      place: { file },
    });
  const decoded = decodeText(bytes);
  if (isCgats(decoded.text)) return readCgats(decoded.text, file, decoded.notes, options);
  const split = splitDelimited(decoded.text, file, options.delimiter);
  if (!split.ok) return split;
  return typeTable(split.value, file, [...decoded.notes, ...split.value.notes], options, bytes);
}

async function typeTable(
  split: DelimitedText,
  file: string,
  notes: string[],
  options: ReadingOptions,
  bytes: Uint8Array,
): Promise<Result<ReadingsFile>> {
  const assumed = [...(options.assume ?? [])].filter(([name]) => !split.header.includes(name));
  const header = [...split.header, ...assumed.map(([name]) => name)];
  const columns = prepareColumns(header, options.rename);
  const headerFault = missingColumns(columns, file, split);
  if (headerFault !== null) return fail(headerFault);
  if (split.records.length === 0 && split.faults.length === 0)
    return fail({
      code: 'bad-input',
      sentence: 'The file has a header and no data rows.',
      mend: 'Export the readings again.',
      place: { file, line: split.headerLine },
    });
  const unit = luminanceHeader(columns.names[columns.cellOf('Y')] ?? '');
  if (unit !== null && unit.factor !== 1)
    notes.push(`Line ${split.headerLine}: the luminance is in ${unit.unit}; 1 is ${unit.factor} cd/m².`);
  const decimal = decimalOf(split, columns);
  const faults: Fault[] = [...split.faults];
  const readings: Reading[] = [];
  const rows: string[][] = [];
  const odd = new OddRows();
  const nuls = split.text.includes('\0');
  for (const [number, record] of split.records.entries()) {
    if (options.progress && number % rowsBetweenPauses === 0)
      if (!(await options.progress(number / split.records.length))) return fail(cancelled);
    const raw = [...record.cells, ...assumed.map(([, value]) => value)].map(withoutGuard);
    if (nuls && raw.some((cell) => cell.includes('\0'))) {
      faults.push({
        code: 'bad-input',
        sentence: `The row holds a NUL byte (the file's first is at byte ${bytes.indexOf(0)}).`,
        mend: 'Export the file again; many NUL bytes mean UTF-16 without a byte order mark.',
        place: {
          file,
          line: record.line,
          column: cellColumn(
            split,
            record,
            raw.findIndex((cell) => cell.includes('\0')),
          ),
        },
      });
      continue;
    }
    const typed = typeReading(columns, raw, rows.length + 1, options.source, decimal);
    for (const { cell, sentence, mend } of typed.faults)
      faults.push({
        code: 'bad-input',
        sentence,
        ...(mend === undefined ? {} : { mend }),
        place: {
          file,
          line: record.line,
          column: cell >= 0 && cell < record.cells.length ? cellColumn(split, record, cell) : 1,
        },
      });
    for (const { sentence } of typed.notes) odd.note(sentence, record.line);
    if (typed.reading === null) continue;
    odd.see(typed.cells, record.line);
    readings.push(typed.reading);
    rows.push(typed.cells);
  }
  return succeed({
    table: { columns: [...columns.names], rows },
    readings,
    notes: [...notes, ...odd.notes()],
    faults: inOrder(faults),
  });
}

function readCgats(
  text: string,
  file: string,
  notes: string[],
  options: ReadingOptions,
): Promise<Result<ReadingsFile>> | Result<ReadingsFile> {
  const parsed = parseCgats(text, file);
  if (!parsed.ok) return parsed;
  const converted = cgatsReadings(parsed.value, options.assume?.get('series'), file);
  if (!converted.ok) return converted;
  return typeSets(
    converted.value.table,
    converted.value.set,
    file,
    [...notes, ...parsed.value.notes, ...converted.value.notes],
    parsed.value.faults,
    options,
  );
}

function typeSets(
  table: CellTable,
  set: CgatsTable,
  file: string,
  notes: string[],
  found: readonly Fault[],
  options: ReadingOptions,
): Result<ReadingsFile> {
  const columns = prepareColumns(table.columns);
  const faults = [...found];
  const readings: Reading[] = [];
  const rows: string[][] = [];
  for (const [number, cells] of table.rows.entries()) {
    const line = set.lines[number]!;
    const typed = typeReading(columns, cells, rows.length + 1, options.source);
    for (const { sentence, mend } of typed.faults)
      faults.push({ code: 'bad-input', sentence, ...(mend ? { mend } : {}), place: { file, line } });
    if (typed.reading === null) continue;
    readings.push(typed.reading);
    rows.push(typed.cells);
  }
  return succeed({ table: { columns: table.columns, rows }, readings, notes, faults: inOrder(faults) });
}

export const cancelled: Fault = { code: 'cancelled', sentence: 'Cancelled; nothing was kept.' };

function missingColumns(columns: ReadingColumns, file: string, split: DelimitedText): Fault | null {
  const place = { file, line: split.headerLine, column: 1 };
  const found = `The header has ${columns.names.join(', ')}.`;
  const fault = (sentence: string, mend: string): Fault => ({
    code: 'bad-input',
    sentence: `${sentence} ${found}`,
    mend,
    place,
  });
  const has = (name: string): boolean => columns.cellOf(name) !== -1;
  if (!has('series'))
    return fault('There is no column series.', 'Add one that names the series of each row.');
  const measured = (has('x') && has('y')) || has('Y') || (has('quantity') && has('value'));
  if (!measured)
    return fault(
      'There is no column Y.',
      'Give x, y and Y, or X, Y and Z, with Y in cd/m²; names are case-sensitive.',
    );
  for (const [one, other] of [
    ['x', 'y'],
    ['y', 'x'],
  ] as const)
    if (has(one) && !has(other))
      return fault(`There is no column ${other} beside ${one}.`, 'Give both or neither.');
  if ((has('X') || has('Z')) && !(has('X') && has('Y') && has('Z')) && !has('x'))
    return fault('Tristimulus values need the columns X, Y and Z.', 'Add the missing one.');
  return null;
}

function decimalOf(split: DelimitedText, columns: ReadingColumns): DecimalMark {
  if (split.delimiter === ',') return '.';
  const numeric = columns.known.flatMap(({ kind, cell }) => (kind.holds === 'number' ? [cell] : []));
  return detectDecimal(
    split.records.slice(0, 1000).flatMap(({ cells }) => numeric.map((cell) => cells[cell] ?? '')),
  );
}

function inOrder(faults: Fault[]): Fault[] {
  return faults.sort((one, other) => (one.place?.line ?? 0) - (other.place?.line ?? 0));
}

/** Gathers what looks odd, one note a kind of finding, so that a long file does not drown its reader. */
class OddRows {
  readonly seen = new Map<string, number>();
  readonly lines = new Map<string, number[]>();

  note(sentence: string, line: number): void {
    const lines = this.lines.get(sentence) ?? [];
    lines.push(line);
    this.lines.set(sentence, lines);
  }

  see(cells: readonly string[], line: number): void {
    const key = cells.join('\0');
    const first = this.seen.get(key);
    if (first === undefined) this.seen.set(key, line);
    else
      this.note(
        'Identical to an earlier row and counted as a repeat; remove it if it was pasted twice.',
        line,
      );
    for (const cell of cells)
      if (looksLikeFormula(cell))
        this.note('A text cell looks like a formula; it is kept as plain text.', line);
  }

  notes(): string[] {
    return [...this.lines].map(([sentence, lines]) => {
      const shown = [...new Set(lines)];
      const more = shown.length > 5 ? ` and ${shown.length - 5} more` : '';
      return `Line ${shown.slice(0, 5).join(', ')}${more}: ${sentence}`;
    });
  }
}
