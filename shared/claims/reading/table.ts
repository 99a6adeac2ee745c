import type { ReadingContext } from '../../contract/articleText.ts';
import type { Carry } from './carry.ts';
import type { Finding } from './finding.ts';
import { readSentence } from './sentence.ts';

const unitInBrackets = /[([]\s*([^()[\]]{1,14})\s*[)\]]\s*$/;
const bareNumber = /^[^\p{L}%°"]*\d[\d\s.,\u2009\u202f\u00a0]*$/u;
const axisHead = /^\d+(?:[.,]\d+)?\s*(?:%|°|degrees?|per ?cent)?$/i;

/** "(cd/m²)" behind a heading is the unit of the numbers under it. */
function unitOf(heading: string): string | undefined {
  const inside = heading.match(unitInBrackets)?.[1]?.trim();
  return inside && /^(?:%|°|cd\/m²|cd\/m2|nits?|K|ms|W|dB|dB\(A\)|mm|cm|kg|Hz|lx)$/i.test(inside)
    ? inside
    : undefined;
}

/**
 * Reads a cell with its column's header and its row's head as if they were one sentence: "HDR Calm, peak
 * luminance: 742 cd/m²". The header row and the first column only name; they make no claims.
 */
export function readCell(
  cell: string,
  place: { row: number; column: number },
  context: ReadingContext,
  carry: Carry,
): Finding[] {
  if (place.row === 0) {
    carry.header ??= [];
    carry.header[place.column] = cell;
    return [];
  }
  if (place.column === 0) {
    carry.rowHead = cell;
    return [];
  }
  const header = carry.header?.[place.column] ?? '';
  const head = carry.rowHead ?? '';
  const headerIsUnit = unitOf(`(${header.trim()})`) !== undefined;
  const unit = bareNumber.test(cell)
    ? (unitOf(head) ?? (headerIsUnit ? header.trim() : unitOf(header)))
    : undefined;
  const clean = (text: string) => (unitOf(text) ? text.replace(unitInBrackets, '').trim() : text);
  const firstHeader = carry.header?.[0] ?? '';
  const headText = axisHead.test(head)
    ? `at ${head}${/^\d+$/.test(head) ? (/angle|degree|°/i.test(firstHeader) ? ' degrees' : ' % stimulus') : ''}`
    : clean(head);
  // "| Lag | ms |": the first column's header names the quantity of a column that is headed by its unit.
  const headerText = headerIsUnit
    ? clean(firstHeader)
    : /^(?:value|result|measured|reading|measurement|figure)s?$/i.test(header)
      ? ''
      : clean(header);
  const prefix = [headerText, headText].filter((text) => text !== '').join(', ');
  const lead = prefix ? `${prefix}: ` : '';
  const local: Carry = { ...carry, paragraph: { ...carry.paragraph } };
  const findings = readSentence(`${lead}${cell}${unit ? ` ${unit}` : ''}`, context, local, false);
  return findings.flatMap((finding) => {
    const inside = finding.words
      .filter((word) => word.end > lead.length)
      .map((word) => clamp(word, lead.length, cell.length));
    if (inside.length === 0) return [];
    return [{ ...finding, ...clamp(finding, lead.length, cell.length), words: inside }];
  });
}

function clamp(
  span: { start: number; end: number },
  lead: number,
  length: number,
): { start: number; end: number } {
  return { start: Math.max(0, span.start - lead), end: Math.min(length, Math.max(1, span.end - lead)) };
}
