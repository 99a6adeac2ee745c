import { type DecimalMark, isPlainNumber, readNumber } from './numberText.ts';
import type { ColumnKind } from './readingColumns.ts';
import { checkTime } from './timeText.ts';

export interface RowFinding {
  /** Index of the cell, -1 for a column that the file lacks */
  cell: number;
  sentence: string;
  mend?: string;
}

/** What a cell of a known column says: a number, or what is to be said or changed about it. */
export interface CheckedCell {
  value?: number;
  /** The number in point decimals, where that differs from the text */
  canonical?: string;
  note?: string;
  fault?: Omit<RowFinding, 'cell'>;
}

/** Checks one cell against its column; null: nothing to say (empty, or text that is allowed). */
export function checkCell(
  kind: ColumnKind,
  text: string,
  name: string,
  decimal: DecimalMark,
): number | CheckedCell | null {
  switch (kind.holds) {
    case 'number':
      return checkNumber(kind, text, name, decimal);
    case 'word':
      if (text === '' || kind.words.includes(text)) return null;
      return {
        fault: {
          sentence: `Column ${name}: "${text}" is not one of ${kind.words.join(', ')}.`,
          mend: 'Write one of these.',
        },
      };
    case 'place':
      if (text === '' || /^r[1-9]c[1-9]$/.test(text)) return null;
      return {
        fault: { sentence: `Column ${name}: "${text}" is not a grid place.`, mend: 'Write it like r1c3.' },
      };
    case 'time': {
      const finding = text === '' ? null : checkTime(text);
      if (finding === null) return null;
      if ('note' in finding) return { note: `Column ${name}: ${finding.note}.` };
      return {
        fault: {
          sentence: `Column ${name}: ${finding.fault}.`,
          mend: 'Write it like 2026-09-15T10:20:00+01:00.',
        },
      };
    }
    case 'text':
      return null;
  }
}

function checkNumber(
  kind: ColumnKind & { holds: 'number' },
  text: string,
  name: string,
  decimal: DecimalMark,
): number | CheckedCell | null {
  if (text === '') return null;
  if (decimal === '.' && isPlainNumber(text)) {
    const value = Number(text);
    if (value !== 0 && Number.isFinite(value)) {
      const fault = outside(kind, value, text, name);
      return fault === null ? value : { fault };
    }
  }
  const read = readNumber(text, decimal);
  if (read.state === 'missing') return null;
  if (read.state === 'fault')
    return {
      fault: { sentence: `Column ${name}: ${read.sentence}.`, ...(read.mend ? { mend: read.mend } : {}) },
    };
  const fault = outside(kind, read.value, text.trim(), name);
  const note = read.note === undefined ? {} : { note: `Column ${name}: ${read.note}.` };
  if (fault !== null) return { fault, ...note };
  const canonical = decimal === ',' || read.note !== undefined ? { canonical: read.canonical } : {};
  return { value: read.value, ...note, ...canonical };
}

function outside(
  kind: ColumnKind & { holds: 'number' },
  value: number,
  text: string,
  name: string,
): Omit<RowFinding, 'cell'> | null {
  const { low, high, lowOpen, what } = kind;
  if (low !== undefined && (lowOpen ? value <= low : value < low))
    return {
      sentence: `Column ${name}: ${text} is ${low === 0 ? (lowOpen ? 'not above 0' : 'negative') : `under ${low}`}.`,
      mend:
        name === 'Y'
          ? 'A luminance cannot be negative; write 0 if the instrument only shows its noise, or leave the row out.'
          : `The ${what} must be ${lowOpen ? 'above' : 'at least'} ${low}.`,
    };
  if (high !== undefined && value > high)
    return {
      sentence: `Column ${name}: ${text} is above ${high}.`,
      mend: `The ${what} cannot exceed ${high}; are two columns swapped?`,
    };
  return null;
}
