import type { Span } from './claim.ts';
import type { House } from './house.ts';

export type BlockKind = 'heading' | 'paragraph' | 'item' | 'quote' | 'cell' | 'caption' | 'alt';

/** One block of the article's plain text; blocks are joined by two line feeds. */
export interface Block extends Span {
  index: number;
  kind: BlockKind;
  /** Heading level 1–6 */
  level?: number;
  /** For cells: zero-based row (0 = header) and column, and the number of the table in the article. */
  table?: { number: number; row: number; column: number };
}

/** The article's plain text as `formats.md` defines it. Offsets are UTF-16 code units. */
export interface ArticleText {
  text: string;
  blocks: readonly Block[];
}

/** What reading must know of the library to recognise names; no measured number is in it. */
export interface ReadingContext {
  /** Id of the article's own unit */
  own: string;
  /** BCP 47; decides decimal and thousands marks */
  locale: string;
  /** The article's date, `2026-10-02`: its today */
  date?: string;
  conditions?: Readonly<Record<string, { mode?: string; stage?: string; dimming?: string; sample?: string }>>;
  units: readonly NamedUnit[];
  /** Ids of the units that the article compares its own with */
  against?: readonly string[];
  /** Names of awards that reviews of the library give */
  awards?: readonly string[];
  house: House;
  /** A spoken take: no punctuation, numbers as words. */
  spoken?: boolean;
}

export interface NamedUnit {
  id: string;
  maker: string;
  model: string;
  diagonalInches?: number;
  /** Diagonals of the model's other sizes */
  variantInches: readonly number[];
  /** Picture modes that its runs name, and the signals each was measured with */
  modes: readonly { mode: string; signal: string; stage: string }[];
  /** Fact keys it has */
  facts: readonly string[];
  /** Ids of single values that its runs name with a mode: `power.calm`, `lag.game` */
  quantities?: readonly string[];
  /** Topics it has observations on */
  topics: readonly string[];
  /** Criteria ids of the score sheet, the same for all */
  criteria?: readonly string[];
}
