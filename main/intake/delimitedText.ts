import Papa from 'papaparse';
import { type Fault, fail, type Result, succeed } from '../../shared/contract/fault.ts';
import { evenLineEnds } from './lineEnds.ts';

/** One record of a delimited file, with the physical line (from 1) it starts on and where its text stands. */
export interface DelimitedRecord {
  cells: string[];
  line: number;
  start: number;
  end: number;
}

export interface DelimitedText {
  header: string[];
  headerLine: number;
  delimiter: string;
  /** Data records; blank lines and comments are left out and counted in the notes. */
  records: DelimitedRecord[];
  notes: string[];
  faults: Fault[];
  /** Text that `start` and `end` count in */
  text: string;
}

const delimiters = [',', ';', '\t', '|'];

/**
 * Splits delimited text (RFC 4180, with other delimiters and line ends) without guessing at types. The delimiter
 * is the one that the header uses most. Lines before the header and single-cell lines that begin with # are
 * skipped and named in the notes.
 * Errors: an empty file, no header, a quote that never closes (named by the line where it opens), a column name
 * that occurs twice. Rows of another width are `faults`, so that the caller sees every one.
 */
export function splitDelimited(source: string, file: string, fixedDelimiter?: string): Result<DelimitedText> {
  if (source.trim() === '')
    return fail({
      code: 'bad-input',
      sentence: 'The file is empty.',
      mend: 'Export it again.',
      place: { file },
    });
  const notes: string[] = [];
  const headerStart = skipPreamble(source, notes);
  const headerEnd = source.slice(headerStart).search(/[\r\n]/);
  const headerText =
    headerEnd === -1 ? source.slice(headerStart) : source.slice(headerStart, headerStart + headerEnd);
  const delimiter = fixedDelimiter ?? mostUsed(headerText);
  const { text, newline, mixed } = evenLineEnds(source, delimiter);
  if (mixed) notes.push('The file mixes several kinds of line end.');

  const records: DelimitedRecord[] = [];
  const faults: Fault[] = [];
  const preamble = text.slice(0, headerStart);
  let line = 1 + countLines(preamble);
  let start = headerStart;
  let openQuote: number | null = null;
  Papa.parse<string[]>(text.slice(headerStart), {
    delimiter,
    newline,
    step({ data, errors, meta }) {
      const end = headerStart + meta.cursor;
      if (errors.some(({ code }) => code === 'MissingQuotes')) openQuote ??= line;
      for (const { code, message } of errors)
        if (code === 'InvalidQuotes')
          faults.push(rowFault(file, line, `${message}.`, 'Double every quote inside a quoted cell.'));
      records.push({ cells: data, line, start, end });
      line += countLines(text.slice(start, end));
      start = end;
    },
  });
  if (openQuote !== null)
    return fail(
      rowFault(
        file,
        openQuote,
        `The quote opened on line ${openQuote} is never closed.`,
        'Close it or take it away.',
      ),
    );

  const header = records.shift();
  if (header === undefined)
    return fail({ code: 'bad-input', sentence: 'The file has no header row.', place: { file } });
  const twice = header.cells.find((name, index) => header.cells.indexOf(name) !== index);
  if (twice !== undefined)
    return fail(
      rowFault(
        file,
        header.line,
        `The column name "${twice}" occurs twice.`,
        'Rename or remove one of the two.',
      ),
    );
  const kept = keepDataRows(records, header.cells.length, text, file, notes, faults);
  return succeed({
    header: header.cells,
    headerLine: header.line,
    delimiter,
    records: kept,
    notes,
    faults,
    text,
  });
}

/** Column (from 1, UTF-16 code units) in its line at which a cell of a record begins. */
export function cellColumn(split: DelimitedText, record: DelimitedRecord, cell: number): number {
  let quoted = false;
  let seen = 0;
  let lineStart = record.start;
  for (let index = record.start; index < record.end; index += 1) {
    if (seen === cell && !quoted) return index - lineStart + 1;
    const mark = split.text[index];
    if (mark === '"') quoted = !quoted;
    else if (mark === split.delimiter && !quoted) {
      seen += 1;
      if (seen === cell) return index - lineStart + 2;
    } else if (mark === '\n') lineStart = index + 1;
  }
  return 1;
}

function skipPreamble(source: string, notes: string[]): number {
  let start = 0;
  let line = 1;
  while (start < source.length) {
    const rest = source.slice(start);
    const length = rest.search(/[\r\n]/);
    const content = length === -1 ? rest : rest.slice(0, length);
    if (content.trim() !== '' && !content.startsWith('#')) break;
    if (length === -1) break;
    if (content.trim() !== '')
      notes.push(`Line ${line} stands before the header and was skipped: ${content}`);
    start += length + (rest.startsWith('\r\n', length) ? 2 : 1);
    line += 1;
  }
  return start;
}

function mostUsed(header: string): string {
  const outside = header.replace(/"(?:[^"]|"")*"/g, '');
  const counted = delimiters.map((mark) => ({ mark, count: outside.split(mark).length - 1 }));
  return counted.reduce((best, next) => (next.count > best.count ? next : best)).mark;
}

function keepDataRows(
  records: readonly DelimitedRecord[],
  width: number,
  text: string,
  file: string,
  notes: string[],
  faults: Fault[],
): DelimitedRecord[] {
  const kept: DelimitedRecord[] = [];
  const last = records.findLast(({ cells }) => cells.length > 1 || cells[0]!.trim() !== '');
  for (const record of records) {
    const { cells, line } = record;
    if (cells.length === 1 && width > 1 && cells[0]!.trim() === '') continue;
    if (cells.length === 1 && cells[0] === '') continue;
    if (cells.length === 1 && width > 1 && cells[0]!.startsWith('#')) {
      notes.push(`Line ${line} is a comment and was skipped: ${cells[0]}`);
      continue;
    }
    if (cells.length === width + 1 && cells[width] === '') {
      notes.push(`Line ${line} ends with a comma too many; the empty cell was left out.`);
      kept.push({ ...record, cells: cells.slice(0, width) });
      continue;
    }
    if (cells.length !== width) {
      const cut = record === last && cells.length < width && !/[\r\n]$/.test(text);
      faults.push(
        rowFault(
          file,
          line,
          `The row has ${cells.length} cells, the header ${width}.${cut ? ' The file ends inside it and may be cut off.' : ''}`,
          cut ? 'Export the file again.' : 'Give each row as many cells as the header.',
        ),
      );
      continue;
    }
    kept.push(record);
  }
  return kept;
}

function rowFault(file: string, line: number, sentence: string, mend: string): Fault {
  return { code: 'bad-input', sentence, mend, place: { file, line } };
}

function countLines(text: string): number {
  let count = 0;
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code === 10 || (code === 13 && text.charCodeAt(index + 1) !== 10)) count += 1;
  }
  return count;
}
