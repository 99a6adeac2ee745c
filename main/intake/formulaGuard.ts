import { looksNumeric } from './numberText.ts';

const formulaStarts = '=+-@\t\r';

/**
 * True for text that a spreadsheet would run when it opens the file; signed numbers are not formulas.
 * Source: CWE-1236 and the OWASP requirement on formula injection.
 */
export function looksLikeFormula(cell: string): boolean {
  return formulaStarts.includes(cell.charAt(0)) && cell !== '' && !looksNumeric(cell);
}

/** The cell as an export writes it: an apostrophe before what a spreadsheet would run. */
export function withGuard(cell: string): string {
  return looksLikeFormula(cell) ? `'${cell}` : cell;
}

/** The cell as it was before {@link withGuard}. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && looksLikeFormula(cell.slice(1)) ? cell.slice(1) : cell;
}
