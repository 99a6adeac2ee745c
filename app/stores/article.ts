import { create } from 'zustand';
import type { ArticleVerdicts } from '../../shared/claims/index.ts';
import type { Article } from '../../shared/contract/article.ts';
import type { Standing } from '../theme/VerdictGlyph.tsx';

export interface OutlineEntry {
  text: string;
  level: number;
  /** Problems under it, by standing, worst first */
  problems: readonly { standing: Standing; count: number }[];
}

/** Where the text stands on its way to the library. */
export type SaveState =
  | { kind: 'saved'; at: string | null }
  | { kind: 'unsaved' }
  | { kind: 'saving' }
  | { kind: 'refused'; sentence: string }
  /** Somebody else saved in between; nothing was overwritten. */
  | { kind: 'overtaken' };

interface ArticleStore {
  id: string | null;
  meta: Article | null;
  save: SaveState;
  /** Another window writes; this one follows and cannot type. */
  following: boolean;
  /** Text that was not saved before the window went away, brought back on opening. */
  restored: { at: string; savedMarkdown: string } | null;
  verdicts: ArticleVerdicts | null;
  outline: readonly OutlineEntry[];
  words: number;
}

export const closedArticle: ArticleStore = {
  id: null,
  meta: null,
  save: { kind: 'saved', at: null },
  following: false,
  restored: null,
  verdicts: null,
  outline: [],
  words: 0,
};

/** The article that is open in the Draft, for every part of the window that speaks of it. */
export const useArticle = create<ArticleStore>(() => closedArticle);
