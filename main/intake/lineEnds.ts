export type LineEnd = '\n' | '\r\n' | '\r';

/**
 * The line end of a delimited text, looked for outside quotes. A text that mixes several kinds gets LF outside
 * quotes; the number of lines stays the same, and line breaks inside cells stay as they are.
 */
export function evenLineEnds(
  source: string,
  delimiter: string,
): { text: string; newline: LineEnd; mixed: boolean } {
  if (!source.includes('\r')) return { text: source, newline: '\n', mixed: false };
  const ends = lineEndsOutsideQuotes(source, delimiter);
  const kinds = [...new Set(ends.map(({ kind }) => kind))];
  if (kinds.length < 2) return { text: source, newline: kinds[0] ?? '\n', mixed: false };
  let text = '';
  let from = 0;
  for (const { at, kind } of ends) {
    text += `${source.slice(from, at)}\n`;
    from = at + kind.length;
  }
  return { text: text + source.slice(from), newline: '\n', mixed: true };
}

function lineEndsOutsideQuotes(source: string, delimiter: string): { at: number; kind: LineEnd }[] {
  const ends: { at: number; kind: LineEnd }[] = [];
  let quoted = false;
  let cellStart = true;
  for (let at = 0; at < source.length; at += 1) {
    const mark = source[at];
    if (quoted) {
      if (mark !== '"') continue;
      if (source[at + 1] === '"') at += 1;
      else quoted = false;
    } else if (mark === '\n' || mark === '\r') {
      const kind = mark === '\n' ? '\n' : source[at + 1] === '\n' ? '\r\n' : '\r';
      ends.push({ at, kind });
      at += kind.length - 1;
      cellStart = true;
    } else {
      quoted = mark === '"' && cellStart;
      cellStart = mark === delimiter;
    }
  }
  return ends;
}
