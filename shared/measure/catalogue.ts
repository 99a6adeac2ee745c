import { colourRows } from './catalogueOfColours.ts';
import { greyRows } from './catalogueOfGreys.ts';
import { lightRows } from './catalogueOfLight.ts';
import type { CatalogueRow } from './catalogueRow.ts';

export type { CatalogueRow } from './catalogueRow.ts';

export interface CatalogueEntry extends CatalogueRow {
  id: string;
}

const catalogueRows: readonly CatalogueRow[] = [...greyRows, ...colourRows, ...lightRows];

const wordsOf: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  gamut: { bt709: 'BT.709', p3: 'P3', bt2020: 'BT.2020' },
  diagram: { xy: 'CIE 1931 xy', uv: 'CIE 1976 u′v′' },
  mode: { sdr: 'SDR', hdr: 'HDR', hlg: 'HLG' },
};

const partOf: Readonly<Record<string, string>> = {
  hue: 'red|green|blue|cyan|magenta|yellow',
  channel: 'red|green|blue',
  gamut: 'bt709|p3|bt2020',
  diagram: 'xy|uv',
  level: '[^.]+',
  mode: '.+',
};

type Matcher = { row: CatalogueRow; pattern: RegExp; parts: readonly string[] };

const matchers: readonly Matcher[] = catalogueRows.map((row) => {
  const parts: string[] = [];
  const source = row.pattern
    .split(/(<\w+>)/)
    .map((piece) => {
      const name = /^<(\w+)>$/.exec(piece)?.[1];
      if (name === undefined) return piece.replaceAll('.', '\\.');
      parts.push(name);
      return `(${partOf[name]})`;
    })
    .join('');
  return { row, pattern: new RegExp(`^${source}$`, 'u'), parts };
});

/** Every quantity that a run can have; one row a pattern, in the order in which quantities are listed. */
export const catalogue: readonly CatalogueRow[] = catalogueRows;

const known = new Map<string, CatalogueEntry | undefined>();

/** The catalogue's entry for an id with its placeholders filled in; undefined for an id that no row covers. */
export function catalogueEntry(id: string): CatalogueEntry | undefined {
  if (!known.has(id)) known.set(id, entryOf(id));
  return known.get(id);
}

function entryOf(id: string): CatalogueEntry | undefined {
  for (const { row, pattern, parts } of matchers) {
    const match = pattern.exec(id);
    if (!match) continue;
    const fill = (text: string) =>
      text.replace(/<(\w+)>/g, (whole, name: string) => {
        const value = match[parts.indexOf(name) + 1];
        return value === undefined ? whole : (wordsOf[name]?.[value] ?? levelWord(value));
      });
    return { ...row, id, label: fill(row.label), short: fill(row.short) };
  }
  return undefined;
}

/** `grey50` reads "50 % grey"; other levels and modes read as they are. */
function levelWord(value: string): string {
  const grey = /^grey(\d+)$/.exec(value)?.[1];
  return grey === undefined ? value.replaceAll('-', ' ') : `${grey} % grey`;
}
