import { type Fault, fail, type Result, succeed } from '../../shared/contract/fault.ts';

/** One table of a CGATS.17 file, all cells as text. */
export interface CgatsTable {
  keywords: Map<string, string>;
  fields: string[];
  sets: string[][];
  /** Physical line on which each set begins */
  lines: number[];
  formatLine: number;
}

export interface CgatsFile {
  tables: CgatsTable[];
  notes: string[];
  faults: Fault[];
}

interface Token {
  text: string;
  quoted: boolean;
  line: number;
}

/** True for text that begins with a CGATS.17 / ISO 28178 identification. */
export function isCgats(text: string): boolean {
  return /^\s*CGATS(?:\.\d+)?\s*[\r\n]/.test(text);
}

/**
 * Parses CGATS.17 (ISO 28178) keyword-value text by tokens: quoted strings, comments from # on, formats and sets
 * that wrap over lines, several tables. The grammar is from memory; field names were seen in a public reader.
 * Errors: findings in sets come back in `faults`; a file without a table is a failure.
 */
export function parseCgats(text: string, file: string): Result<CgatsFile> {
  const notes: string[] = [];
  const faults: Fault[] = [];
  const tables: CgatsTable[] = [];
  const tokens = tokenise(text, notes);
  const fault = (line: number, sentence: string, mend: string): void => {
    faults.push({ code: 'bad-input', sentence, mend, place: { file, line } });
  };
  let table = emptyTable();
  let declaredFields: number | null = null;
  let declaredSets: { count: number; line: number } | null = null;
  let at = 0;

  const untilWord = (word: string): { taken: Token[]; closed: boolean } => {
    const taken: Token[] = [];
    while (at < tokens.length && (tokens[at]!.quoted || tokens[at]!.text !== word)) taken.push(tokens[at++]!);
    const closed = at < tokens.length;
    at += 1;
    return { taken, closed };
  };

  while (at < tokens.length) {
    const token = tokens[at++]!;
    const word = token.text;
    if (/^CGATS/.test(word)) continue;
    if (word === 'BEGIN_DATA_FORMAT') {
      table.formatLine = tokens[at]?.line ?? token.line;
      table.fields = untilWord('END_DATA_FORMAT').taken.map((field) => field.text);
      if (declaredFields !== null && declaredFields !== table.fields.length)
        fault(
          table.formatLine,
          `NUMBER_OF_FIELDS says ${declaredFields}, the format names ${table.fields.length}.`,
          'Export the file again.',
        );
    } else if (word === 'BEGIN_DATA') {
      const { taken, closed } = untilWord('END_DATA');
      const complete = takeSets(table, taken, fault);
      const last = taken.at(-1)?.line ?? token.line;
      if (!closed) fault(last, 'END_DATA is missing: the file is cut off.', 'Export the file again.');
      if (declaredSets !== null && declaredSets.count !== complete)
        fault(
          declaredSets.line,
          `NUMBER_OF_SETS says ${declaredSets.count}; the file has ${complete} complete sets.`,
          'Export the file again.',
        );
      tables.push(table);
      table = emptyTable();
      declaredFields = null;
      declaredSets = null;
    } else {
      const value = tokens[at];
      if (value === undefined || value.line !== token.line) continue;
      at += 1;
      if (word === 'NUMBER_OF_FIELDS') declaredFields = Number(value.text);
      else if (word === 'NUMBER_OF_SETS') declaredSets = { count: Number(value.text), line: token.line };
      else if (word !== 'KEYWORD') table.keywords.set(word, value.text);
    }
  }
  if (tables.length === 0)
    return fail({
      code: 'bad-input',
      sentence: 'The file has no BEGIN_DATA.',
      mend: 'Export the file again.',
      place: { file },
    });
  return succeed({ tables, notes, faults });
}

function emptyTable(): CgatsTable {
  return { keywords: new Map(), fields: [], sets: [], lines: [], formatLine: 1 };
}

/** Sets may wrap over lines, so tokens are counted. Returns the number of complete sets, readable or not. */
function takeSets(
  table: CgatsTable,
  tokens: readonly Token[],
  fault: (line: number, sentence: string, mend: string) => void,
): number {
  const width = table.fields.length;
  if (width === 0) return 0;
  for (let start = 0; start < tokens.length; start += width) {
    const set = tokens.slice(start, start + width);
    const line = set[0]!.line;
    if (set.length < width) {
      fault(
        set.at(-1)!.line,
        `The set has ${set.length} values instead of ${width}.`,
        'Export the file again.',
      );
      continue;
    }
    const decimalComma = set.findIndex(
      ({ text, quoted }, cell) => !quoted && cell > 0 && /^[+-]?\d+,\d+$/.test(text),
    );
    if (decimalComma !== -1) {
      fault(
        line,
        `${table.fields[decimalComma]}: "${set[decimalComma]!.text}" has a decimal comma.`,
        'Write decimals with a point.',
      );
      continue;
    }
    table.sets.push(set.map(({ text }) => text));
    table.lines.push(line);
  }
  return Math.floor(tokens.length / width);
}

function tokenise(text: string, notes: string[]): Token[] {
  const tokens: Token[] = [];
  for (const [index, lineText] of text.split(/\r\n|\n|\r/).entries()) {
    const line = index + 1;
    for (const [, double, single, bare] of lineText.matchAll(
      /"((?:[^"]|"")*)"|'([^']*)'|#.*|([^\s"'#]\S*)/g,
    )) {
      if (double !== undefined) tokens.push({ text: double.replaceAll('""', '"'), quoted: true, line });
      else if (single !== undefined) {
        notes.push(`Line ${line}: a string in single quotes was read as text.`);
        tokens.push({ text: single, quoted: true, line });
      } else if (bare !== undefined) tokens.push({ text: bare, quoted: false, line });
    }
  }
  return tokens;
}
