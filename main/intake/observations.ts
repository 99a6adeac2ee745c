import { type Fault, fail, type Result, succeed } from '../../shared/contract/fault.ts';
import { type Observation, observationSchema } from '../../shared/contract/observation.ts';
import type { CellTable } from './cellTable.ts';
import { cellColumn, splitDelimited } from './delimitedText.ts';
import { withoutGuard } from './formulaGuard.ts';
import { readNumber } from './numberText.ts';

/** The columns of `observations.csv` in the order in which a new file has them. */
export const observationColumns = [
  'id',
  'topic',
  'pattern',
  'severity',
  'mode',
  'stage',
  'signal',
  'dimming',
  'angle',
  'room_lux',
  'content',
  'timecode',
  'source',
  'by',
  'note',
  'photo',
  'seen',
] as const;

const numberColumns = new Set(['severity', 'angle', 'room_lux']);

/** Cell texts of `observations.csv` with the typed rows, in the same order. Unknown columns stay in the table. */
export interface ObservationsFile {
  table: CellTable;
  observations: Observation[];
}

/**
 * Reads `observations.csv`. Errors: a missing id, topic or severity, a severity that is not 0–4, text in a number
 * column, an id that stands twice; each with file, line and column.
 */
export function readObservations(text: string, file: string): Result<ObservationsFile> {
  const split = splitDelimited(text, file, ',');
  if (!split.ok) return split;
  const { header, headerLine, records } = split.value;
  for (const name of ['id', 'topic', 'severity'])
    if (!header.includes(name))
      return fail({
        code: 'bad-input',
        sentence: `There is no column ${name}. The header has ${header.join(', ')}.`,
        mend: 'Add it; names are case-sensitive.',
        place: { file, line: headerLine, column: 1 },
      });
  const faults: Fault[] = [...split.value.faults];
  const rows: string[][] = [];
  const observations: Observation[] = [];
  const lines = new Map<string, number>();
  for (const record of records) {
    const cells = record.cells.map(withoutGuard);
    const typed = typeObservation(header, cells);
    if (!typed.ok) {
      for (const { cell, sentence, mend } of typed.findings)
        faults.push({
          code: 'bad-input',
          sentence,
          mend,
          place: { file, line: record.line, column: cellColumn(split.value, record, cell) },
        });
      continue;
    }
    const before = lines.get(typed.observation.id);
    if (before !== undefined)
      faults.push({
        code: 'bad-input',
        sentence: `The id "${typed.observation.id}" stands twice, on lines ${before} and ${record.line}.`,
        mend: 'Give each observation its own id.',
        place: { file, line: record.line, column: cellColumn(split.value, record, header.indexOf('id')) },
      });
    lines.set(typed.observation.id, record.line);
    rows.push(cells);
    observations.push(typed.observation);
  }
  if (faults.length > 0) return fail(...faults);
  return succeed({ table: { columns: header, rows }, observations });
}

/** Types one row; the library uses it again for the cells that it kept. */
export function typeObservation(
  columns: readonly string[],
  cells: readonly string[],
):
  | { ok: true; observation: Observation }
  | { ok: false; findings: { cell: number; sentence: string; mend: string }[] } {
  const fields: Record<string, string | number> = {};
  const findings: { cell: number; sentence: string; mend: string }[] = [];
  for (const name of observationColumns) {
    const cell = columns.indexOf(name);
    const text = cell === -1 ? '' : (cells[cell] ?? '');
    if (text.trim() === '') continue;
    if (!numberColumns.has(name)) {
      fields[name] = text;
      continue;
    }
    const read = readNumber(text, '.');
    if (read.state === 'number') fields[name] = read.value;
    else if (read.state === 'fault')
      findings.push({ cell, sentence: `Column ${name}: ${read.sentence}.`, mend: 'Write a number.' });
  }
  const parsed = observationSchema.safeParse(fields);
  if (parsed.success && findings.length === 0) return { ok: true, observation: parsed.data };
  if (!parsed.success)
    for (const issue of parsed.error.issues) {
      const name = String(issue.path[0]);
      const cell = Math.max(columns.indexOf(name), 0);
      const text = cells[columns.indexOf(name)] ?? '';
      if (findings.some((finding) => finding.cell === cell)) continue;
      findings.push({
        cell,
        sentence:
          text.trim() === ''
            ? `The observation has no ${name}.`
            : `Column ${name}: "${text}" is not allowed.`,
        mend: name === 'severity' ? 'Write a whole number from 0 (not seen) to 4 (unusable).' : 'Fill it in.',
      });
    }
  return { ok: false, findings };
}

/** The cells of an observation under these columns; cells of unknown columns come from `former`. */
export function observationCells(
  columns: readonly string[],
  observation: Observation,
  former?: readonly string[],
): string[] {
  const known = new Set<string>(observationColumns);
  return columns.map((name, cell) => {
    const before = former?.[cell] ?? '';
    if (!known.has(name)) return before;
    const value = Object.hasOwn(observation, name) ? observation[name] : undefined;
    if (value === undefined || value === null) return '';
    if (typeof value === 'number') {
      const read = readNumber(before, '.');
      return read.state === 'number' && read.value === value ? before : String(value);
    }
    return String(value);
  });
}
