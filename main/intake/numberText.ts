/** How a file writes numbers; decided once for a file, never for a cell. */
export type DecimalMark = '.' | ',';

export type NumberReading =
  | {
      state: 'number';
      value: number /** Point decimal, no groups, digits as written */;
      canonical: string;
      note?: string;
    }
  | { state: 'missing'; sentence: string }
  | { state: 'fault'; sentence: string; mend?: string };

const groupMarks = "'’\u00a0\u202f ";
const grammar = {
  '.': {
    plain: /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/,
    grouped: new RegExp(`^[+-]?\\d{1,3}(?:(?:,\\d{3})+|(?:[${groupMarks}]\\d{3})+)(?:\\.\\d+)?$`),
  },
  ',': {
    plain: /^[+-]?(?:\d+,?\d*|,\d+)(?:[eE][+-]?\d+)?$/,
    grouped: new RegExp(`^[+-]?\\d{1,3}(?:(?:\\.\\d{3})+(?=,)|(?:[${groupMarks}]\\d{3})+)(?:,\\d+)?$`),
  },
} as const;
const missingWords = /^(?:[-–—]|n\/?a|none|null|missing)$/i;

/**
 * Reads one cell as a number under the file's decimal mark. An empty cell, "n/a" or a dash is missing, never 0;
 * infinities, NaN, hexadecimal, units inside the cell, ambiguous or broken groups, full-width digits and numbers
 * that binary64 turns into 0 or infinity are faults. Source: the import cases of the outside references.
 */
export function readNumber(text: string, decimal: DecimalMark): NumberReading {
  const trimmed = text.trim();
  if (trimmed === '') return { state: 'missing', sentence: 'the cell is empty' };
  if (missingWords.test(trimmed)) return { state: 'missing', sentence: `"${trimmed}" stands for no reading` };
  const note = trimmed.startsWith('\u2212') ? 'the minus sign U+2212 was read as -' : undefined;
  const signed = trimmed.replace(/^\u2212/, '-');
  const { plain, grouped } = grammar[decimal];
  const canonical = plain.test(signed)
    ? signed.replace(',', '.')
    : grouped.test(signed)
      ? withoutGroups(signed, decimal)
      : null;
  if (canonical === null) return explain(trimmed, decimal);
  const value = Number(canonical);
  if (!Number.isFinite(value)) return { state: 'fault', sentence: `"${trimmed}" is too large for a number` };
  if (value === 0 && /[1-9]/.test(canonical.replace(/[eE].*$/, '')))
    return { state: 'fault', sentence: `"${trimmed}" is so small that it would become 0` };
  return { state: 'number', value, canonical, ...(note === undefined ? {} : { note }) };
}

/** True for the everyday form of a number with a decimal point, without spaces. */
export function isPlainNumber(text: string): boolean {
  return grammar['.'].plain.test(text);
}

/** True for a cell that a spreadsheet would take as a number and not as a formula. */
export function looksNumeric(text: string): boolean {
  return grammar['.'].plain.test(text.trim()) || grammar[','].plain.test(text.trim());
}

/** The decimal mark of a file whose cells are not separated by commas, from its number cells. */
export function detectDecimal(cells: Iterable<string>): DecimalMark {
  let comma = 0;
  let point = 0;
  for (const cell of cells) {
    const text = cell.trim();
    if (/^[+\-\u2212]?[\d.'’\u00a0\u202f ]*,\d+(?:[eE][+-]?\d+)?$/.test(text)) comma += 1;
    else if (/^[+\-\u2212]?[\d,'’\u00a0\u202f ]*\.\d+(?:[eE][+-]?\d+)?$/.test(text)) point += 1;
  }
  return comma > point || (comma > 0 && comma === point) ? ',' : '.';
}

function withoutGroups(text: string, decimal: DecimalMark): string {
  const marks = decimal === '.' ? /[,'’\u00a0\u202f ]/g : /[.'’\u00a0\u202f ]/g;
  return text.replace(marks, '').replace(',', '.');
}

function explain(text: string, decimal: DecimalMark): NumberReading {
  const fault = (sentence: string, mend?: string): NumberReading => ({
    state: 'fault',
    sentence,
    ...(mend === undefined ? {} : { mend }),
  });
  if (/^[+-]?(?:nan|inf(?:inity)?)$/i.test(text)) return fault(`"${text}" is not a measurement`);
  if (/^\u2013[\d.,]+/.test(text))
    return fault(`"${text}" begins with an en dash`, 'Write a minus sign if it is one.');
  if (/[\uff10-\uff19\u0660-\u0669\u06f0-\u06f9\u0966-\u096f]/.test(text))
    return fault(`"${text}" is written in digits other than 0 to 9`, 'Write it in the digits 0 to 9.');
  if (decimal === ',' && /^[+-]?\d{1,3}(?:\.\d{3})+$/.test(text))
    return fault(
      `"${text}" could be ${text.replaceAll('.', '')} or ${text}: this file writes decimals with a comma`,
      'Write it without a group mark.',
    );
  if (decimal === '.' && /^[+-]?[\d,]+(?:\.\d+)?$/.test(text))
    return fault(
      `"${text}" is neither a grouped number nor a decimal with a point`,
      'Write decimals with a point and leave group marks out.',
    );
  if (/^[+\-\u2212]?[\d.,]+\s*[a-zA-Z%°²/]+[\w/²³%]*$/.test(text) && !/^0x/i.test(text))
    return fault(`"${text}" holds more than a number`, 'Put the unit into the header, not into the cell.');
  return fault(`"${text}" is not a number`);
}
