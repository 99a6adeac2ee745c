import search from 'approx-string-match';
import type { Span } from '../contract/claim.ts';
import type { StoredAnchor } from '../contract/storedClaim.ts';
import { normaliseQuote } from './normaliseQuote.ts';

/** Characters of context kept on each side of a quote. */
const contextLength = 32;

/** What became of a claim's words after edits that were made elsewhere than in the editor. */
export type AnchorResult =
  | { outcome: 'same' | 'moved' | 'changed'; span: Span }
  | { outcome: 'lost'; span?: undefined };

/**
 * Describes a span by quote, context and position (W3C Web Annotation Data Model, TextQuoteSelector and
 * TextPositionSelector; from memory). Offsets are UTF-16 code units of the plain text.
 */
export function describeAnchor(text: string, { start, end }: Span): StoredAnchor {
  return {
    exact: text.slice(start, end),
    prefix: text.slice(Math.max(0, start - contextLength), start),
    suffix: text.slice(end, end + contextLength),
    start,
    end,
  };
}

/**
 * Finds a described span again. `same` and `moved` mean that the words are the very words (typography aside) in the
 * surroundings they had; `changed` that something is there which is no longer them, so the proof does not carry
 * over; `lost` that nothing is. Approximate search only ever leads to `changed`: a sentence whose 850 became 580 is
 * still 97 % similar.
 */
export function anchorClaim(text: string, anchor: StoredAnchor): AnchorResult {
  return anchorExactly(text, anchor) ?? anchorApproximately(text, anchor) ?? { outcome: 'lost' };
}

/** From this similarity on, one side of the context is recognised. */
const recognised = 0.5;

type Candidate = { span: Span; prefix: number; suffix: number };

function anchorExactly(text: string, anchor: StoredAnchor): AnchorResult | null {
  // Nothing moved: the common case while typing costs one comparison of the quote and its context.
  if (
    text.startsWith(anchor.exact, anchor.start) &&
    text.slice(Math.max(0, anchor.start - contextLength), anchor.start) === anchor.prefix &&
    text.slice(anchor.end, anchor.end + contextLength) === anchor.suffix
  )
    return { outcome: 'same', span: { start: anchor.start, end: anchor.end } };
  const candidates = occurrences(text, anchor.exact).map((start) =>
    withContext(text, anchor, { start, end: start + anchor.exact.length }),
  );
  if (candidates.length === 0) return null;
  candidates.sort((one, other) => contextOf(other) - contextOf(one));
  const [best, second] = candidates;
  const known = Math.max(best!.prefix, best!.suffix) >= recognised;
  const apart = second === undefined || contextOf(best!) - contextOf(second) > 0.1;
  // The words are there, but whether these are the ones that were meant cannot be told: a person looks.
  if (!known || !apart) {
    const nearest = candidates.reduce((one, other) =>
      Math.abs(other.span.start - anchor.start) < Math.abs(one.span.start - anchor.start) ? other : one,
    );
    return known || candidates.length === 1 ? { outcome: 'changed', span: nearest.span } : null;
  }
  if (isJoined(text, best!.span, anchor)) return { outcome: 'changed', span: best!.span };
  return { outcome: best!.span.start === anchor.start ? 'same' : 'moved', span: best!.span };
}

/** True where something was typed against the quote, so that its first or last word is another: "742" in "1742". */
function isJoined(text: string, { start, end }: Span, { prefix, suffix }: StoredAnchor): boolean {
  const before = text.slice(Math.max(0, start - 1), start);
  const after = text.slice(end, end + 2);
  const joinsBefore = before !== prefix.slice(-1) && /[\p{L}\p{N}.,\u2212+-]/u.test(before);
  const joinsAfter = after.slice(0, 1) !== suffix.slice(0, 1) && /^(?:[\p{L}\p{N}%]|[.,]\p{N})/u.test(after);
  return joinsBefore || joinsAfter;
}

/** How many characters may be other than in the quote, for something to be what became of it. */
export function mayErr({ exact }: StoredAnchor): number {
  return Math.min(Math.floor(exact.length * 0.4), 60);
}

/** Is there anything in the text that could be the quote or what became of it, whatever stands around it? */
export function resembles(text: string, anchor: StoredAnchor): boolean {
  if (text.includes(anchor.exact)) return true;
  const allowed = mayErr(anchor);
  return allowed > 0 && search(text, anchor.exact, allowed).length > 0;
}

function anchorApproximately(text: string, anchor: StoredAnchor): AnchorResult | null {
  const { exact } = anchor;
  const allowed = mayErr(anchor);
  if (allowed === 0) return null;
  const found = search(text, exact, allowed).map(({ start, end, errors }) => ({
    ...withContext(text, anchor, { start, end }),
    errors,
  }));
  const scored = found
    .map((candidate) => ({
      ...candidate,
      score: 1 - candidate.errors / exact.length + contextOf(candidate) / 2,
      isKnown: Math.max(candidate.prefix, candidate.suffix) >= recognised,
    }))
    .filter(({ isKnown }) => isKnown)
    .sort((one, other) => other.score - one.score || one.span.start - other.span.start);
  const best = scored[0];
  if (!best) return null;
  const quote = text.slice(best.span.start, best.span.end);
  // Curly quotation marks or a no-break space instead of a plain one: the words are the same words.
  if (normaliseQuote(quote) === normaliseQuote(exact))
    return { outcome: best.span.start === anchor.start ? 'same' : 'moved', span: best.span };
  return { outcome: 'changed', span: best.span };
}

function occurrences(text: string, quote: string): number[] {
  const found: number[] = [];
  for (let at = text.indexOf(quote); at >= 0; at = text.indexOf(quote, at + 1)) found.push(at);
  return found;
}

function withContext(text: string, anchor: StoredAnchor, span: Span): Candidate {
  const before = text.slice(Math.max(0, span.start - contextLength), span.start);
  const after = text.slice(span.end, span.end + contextLength);
  return { span, prefix: similarity(before, anchor.prefix), suffix: similarity(after, anchor.suffix) };
}

function contextOf({ prefix, suffix }: Pick<Candidate, 'prefix' | 'suffix'>): number {
  return prefix + suffix;
}

/** 1 − Levenshtein distance / length of the longer; 1 for two empty contexts. */
function similarity(one: string, other: string): number {
  if (one === other) return 1;
  const longest = Math.max(one.length, other.length);
  let row = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++)
      next.push(
        Math.min(
          row[j]! + 1,
          next[j - 1]! + 1,
          row[j - 1]! + (one.charCodeAt(i - 1) === other.charCodeAt(j - 1) ? 0 : 1),
        ),
      );
    row = next;
  }
  return 1 - row[other.length]! / longest;
}
