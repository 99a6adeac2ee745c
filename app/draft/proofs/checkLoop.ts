import type { Node } from 'prosemirror-model';
import type { EditorView } from 'prosemirror-view';
import type { ArticleChecker, ArticleVerdicts } from '../../../shared/claims/index.ts';
import { disagreementsOf } from '../../evidence/disagreements.ts';
import { type OutlineEntry, useArticle } from '../../stores/article.ts';
import type { Standing } from '../../theme/VerdictGlyph.tsx';
import { type TextMap, textMapOf } from '../document/textMap.ts';
import { isProblem, type ProofItem, placeClaims, standingOf } from './proofItem.ts';
import { proofsOf, setProofs } from './proofPlugin.ts';
import { storedClaimsOf } from './storedClaims.ts';

export interface CheckLoop {
  /** The text changed: check once typing rests. */
  typed(): void;
  /** Something else that verdicts rest on changed: check again shortly, never in the middle of typing. */
  soon(): void;
  /** There is something to check for the first time: it waits for no rest. */
  atOnce(): void;
  /** Check at once, before a command that needs verdicts of the present text. */
  now(): void;
  stop(): void;
}

/** Milliseconds of rest after a keystroke, and the longest that verdicts may lag behind steady typing. */
const rest = 160;
const longest = 700;
/** Milliseconds in which what arrives is gathered for one check. */
const gathering = 50;

const severity: readonly Standing[] = ['breaks', 'stale', 'close', 'unproven'];

/** Half of a check: read and judged, not yet shown. */
interface Judged {
  doc: Node;
  map: TextMap;
  verdicts: ArticleVerdicts;
}

/** Reads and judges the article whenever typing pauses, and shows what came out. */
export function createCheckLoop(view: EditorView, checker: () => ArticleChecker | null): CheckLoop {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitingSince = 0;
  let typedAt = Number.NEGATIVE_INFINITY;
  /** Something arrived between the halves of a check. */
  let again = false;

  let judged: Judged | null = null;

  /** Reads and judges; false when there is nothing to show. */
  function judge(): boolean {
    clearTimeout(timer);
    timer = undefined;
    judged = null;
    const check = checker();
    if (!check || view.isDestroyed || view.composing) {
      waitingSince = 0;
      if (view.composing) typed();
      return false;
    }
    const { doc } = view.state;
    const map = textMapOf(doc);
    judged = { doc, map, verdicts: check.check(map.text, storedClaimsOf(doc, map)) };
    return true;
  }

  function show(): void {
    const found = judged;
    judged = null;
    timer = undefined;
    // A key in between has already asked for the next check; its text is not the one that was judged.
    if (found && !view.isDestroyed && found.doc === view.state.doc) display(found);
    if (again) soon();
    again = false;
  }

  function display({ doc, map, verdicts }: Judged): void {
    waitingSince = 0;
    const items = placeClaims(verdicts.claims, disagreementsOf(verdicts), map, proofsOf(view.state).items);
    setProofs(view, items);
    const known = useArticle.getState();
    useArticle.setState({
      verdicts: { ...verdicts, unsaid: kept(verdicts.unsaid, known.verdicts?.unsaid) },
      outline: kept(outlineOf(doc, items), known.outline),
      words: wordsOf(map.text.text),
    });
  }

  function now(): void {
    if (judge()) show();
  }

  function planFor(time: number): void {
    clearTimeout(timer);
    timer = setTimeout(
      () => {
        // Steady typing that has come between twice does not get a third chance.
        if (performance.now() - waitingSince > longest + 2 * rest) now();
        else if (judge()) timer = setTimeout(show);
      },
      Math.max(0, time - performance.now()),
    );
  }

  function typed(): void {
    typedAt = performance.now();
    waitingSince ||= typedAt;
    planFor(Math.min(typedAt + rest, waitingSince + longest));
  }

  function soon(): void {
    if (judged) again = true;
    if (timer !== undefined) return;
    const time = performance.now();
    waitingSince ||= time;
    planFor(Math.max(time + gathering, Math.min(typedAt + rest, waitingSince + longest)));
  }

  function atOnce(): void {
    const time = performance.now();
    waitingSince ||= time;
    planFor(time);
  }

  return { typed, soon, atOnce, now, stop: () => clearTimeout(timer) };
}

/** Headings with the problems between each and the next. */
function outlineOf(doc: Node, items: readonly ProofItem[]): OutlineEntry[] {
  const headings: { text: string; level: number; from: number }[] = [];
  doc.forEach((node, from) => {
    if (node.type.name === 'heading' && node.attrs.level > 1) {
      headings.push({ text: node.textContent, level: node.attrs.level as number, from });
    }
  });
  return headings.map(({ text, level, from }, index) => {
    const end = headings[index + 1]?.from ?? doc.content.size;
    const inside = items.filter((item) => item.from >= from && item.from < end && isProblem(item));
    const problems = severity
      .map((standing) => ({ standing, count: inside.filter((item) => standingOf(item) === standing).length }))
      .filter(({ count }) => count > 0);
    return { text, level, problems };
  });
}

/** The list that is shown already where the new one says the same, so that nothing is drawn anew for it. */
function kept<T>(list: readonly T[], known: readonly T[] = []): readonly T[] {
  return list.length === known.length && JSON.stringify(list) === JSON.stringify(known) ? known : list;
}

/** Words as a person counts them: what stands between white space and holds a letter or a digit. */
export function wordsOf(text: string): number {
  let words = 0;
  let counted = false;
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    const isSpace =
      code === 32 || code === 10 || code === 9 || code === 0xa0 || code === 0x2009 || code === 0x202f;
    if (isSpace) counted = false;
    else if (!counted && (code > 0xbf ? letter.test(text[index]!) : isPlainLetterOrDigit(code))) {
      words += 1;
      counted = true;
    }
  }
  return words;
}

const letter = /[\p{L}\p{N}\p{Cs}]/u;

function isPlainLetterOrDigit(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || (code >= 48 && code <= 57);
}
