import type { Place } from '../../shared/contract/fault.ts';

/** Line and column (from 1; UTF-16 code units) of an offset in a text whose lines end in LF, CR LF or CR. */
export function placeAt(text: string, offset: number, file: string): Place {
  let line = 1;
  let lineStart = 0;
  for (let index = 0; index < offset && index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    const endsLine = code === 10 || (code === 13 && text.charCodeAt(index + 1) !== 10);
    if (endsLine) {
      line += 1;
      lineStart = index + 1;
    }
  }
  return { file, line, column: offset - lineStart + 1 };
}
