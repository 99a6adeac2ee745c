/**
 * A copy of the text in which marks that mean the same look the same, with a way back to the original's
 * UTF-16 offsets. Thin and no-break spaces become U+00A0, so that they can still hold a number together.
 */
export interface NormalisedText {
  text: string;
  /** Original offset of an offset in `text`; for the end of a span pass the end. */
  original(offset: number): number;
}

const replacements: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '‘': "'",
    '’': "'",
    '‛': "'",
    ʼ: "'",
    '′': "'",
    '`': "'",
    '´': "'",
    '“': '"',
    '”': '"',
    '„': '"',
    '‟': '"',
    '«': '"',
    '»': '"',
    '″': '"',
    '‐': '-',
    '‑': '-',
    '‒': '–',
    '―': '—',
    '−': '-',
    '﹣': '-',
    '－': '-',
    '\u2009': '\u00a0',
    '\u202f': '\u00a0',
    '\u2007': '\u00a0',
    '\u2008': '\u00a0',
    '\u200a': '\u00a0',
    '\u2002': ' ',
    '\u2003': ' ',
    '\t': ' ',
    '\n': ' ',
    '∆': 'Δ',
    '✕': '×',
    '⨯': '×',
    ⅹ: 'x',
    '：': ':',
    '∶': ':',
    '％': '%',
    '﹪': '%',
    º: '°',
    '˚': '°',
    '²': '2',
    '³': '3',
    '₀': '0',
    '₁': '1',
    '₂': '2',
    '₃': '3',
    '₄': '4',
    '₅': '5',
    '₆': '6',
    '₇': '7',
    '₈': '8',
    '₉': '9',
    '⁄': '/',
    '·': '·',
    K: 'K',
  }),
);
const dropped = /[\u00ad\u200b-\u200d\u2060\ufeff]/;
const combining = /[\u0300-\u036f]/;
const needsWork = /[^\u0020-\u007e]/;

const same = (offset: number) => offset;

export function normaliseText(text: string): NormalisedText {
  if (!needsWork.test(text)) return { text, original: same };
  if (!combining.test(text) && !dropped.test(text)) {
    let changed = '';
    for (const char of text) changed += replacements.get(char) ?? char;
    // Every replacement above is one code unit for one code unit.
    return { text: changed, original: same };
  }
  let result = '';
  const map: number[] = [];
  for (let at = 0; at < text.length; ) {
    let end = at + (text.codePointAt(at)! > 0xffff ? 2 : 1);
    while (end < text.length && combining.test(text[end]!)) end += 1;
    const cluster = text.slice(at, end);
    if (!dropped.test(cluster)) {
      for (const char of cluster.normalize('NFC')) {
        const kept = replacements.get(char) ?? char;
        for (let unit = 0; unit < kept.length; unit += 1) map.push(at);
        result += kept;
      }
    }
    at = end;
  }
  map.push(text.length);
  return { text: result, original: (offset) => map[offset] ?? text.length };
}
