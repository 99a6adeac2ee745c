import type { ArticleText } from '../contract/articleText.ts';
import type { Claim, Proposal, Sentence, Span } from '../contract/claim.ts';
import type { StoredClaim } from '../contract/storedClaim.ts';
import type { AnchorResult } from './anchors.ts';
import { statementKey } from './digests.ts';

/** A stored claim at the place where its words stand now. */
export function placeStored(
  stored: StoredClaim,
  anchored: AnchorResult,
  text: ArticleText,
  sentences: readonly Sentence[],
): Claim {
  const { anchor } = stored;
  const { start, end } = anchored.span ?? anchor;
  const sentence = anchored.span ? sentenceAt(sentences, start) : undefined;
  // A copy, not a literal, for the reason given in reading/index.ts.
  const claim: Claim = { ...blank };
  claim.id = stored.id;
  claim.start = start;
  claim.end = end;
  claim.text = anchored.span ? text.text.slice(start, end) : anchor.exact;
  claim.sentence = sentence?.index ?? 0;
  claim.check = stored.check;
  claim.origin = stored.origin;
  claim.anchor = anchored.outcome;
  if (sentence) claim.sentenceText = sentence.text;
  if (stored.check === null && stored.opinion) claim.opinion = true;
  if (stored.proof) claim.accepted = stored.proof as NonNullable<Claim['accepted']>;
  return claim;
}

const blank: Claim = {
  id: '',
  start: 0,
  end: 0,
  text: '',
  sentence: 0,
  check: null,
  origin: 'manual',
  anchor: 'same',
  rule: 'stored',
  words: [],
};

/** The last sentence that begins at or before an offset. */
function sentenceAt(sentences: readonly Sentence[], offset: number): Sentence | undefined {
  let low = 0;
  let high = sentences.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sentences[middle]!.start <= offset) low = middle + 1;
    else high = middle;
  }
  return sentences[low - 1] ?? sentences[0];
}

/** A stored claim takes the place of a proposal over (mostly) the same words, or of the same check over some of them. */
export function standsFor(claim: Claim, proposal: Proposal): boolean {
  const shared = Math.min(claim.end, proposal.end) - Math.max(claim.start, proposal.start);
  if (shared <= 0) return false;
  const shorter = Math.min(claim.end - claim.start, proposal.end - proposal.start);
  if (shared * 2 >= shorter) return true;
  return (
    claim.check !== null &&
    proposal.check !== null &&
    statementKey(claim.check) === statementKey(proposal.check)
  );
}

/** Finds what overlaps a span. */
export interface Overlaps<T extends Span> {
  /** Is there one among them that passes? */
  some(span: Span, passes: (one: T) => boolean): boolean;
  /** All of them, in the order of the list */
  all(span: Span): T[];
}

/** Spans sorted by their starts, with the greatest end up to each: a search looks at few more than it finds. */
export function overlapsOf<T extends Span>(list: readonly T[]): Overlaps<T> {
  const order = list.map((_, index) => index);
  order.sort((one, other) => list[one]!.start - list[other]!.start || one - other);
  const reach: number[] = [];
  let furthest = 0;
  for (const index of order) {
    furthest = Math.max(furthest, list[index]!.end);
    reach.push(furthest);
  }
  /** Calls `visit` with the indices of what overlaps, until it returns true. */
  function visitOverlaps({ start, end }: Span, visit: (index: number) => boolean): boolean {
    let low = 0;
    let high = order.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (list[order[middle]!]!.start < end) low = middle + 1;
      else high = middle;
    }
    for (let at = low - 1; at >= 0 && reach[at]! > start; at--) {
      const index = order[at]!;
      if (list[index]!.end > start && visit(index)) return true;
    }
    return false;
  }
  return {
    some: (span, passes) => visitOverlaps(span, (index) => passes(list[index]!)),
    all(span) {
      const found: number[] = [];
      visitOverlaps(span, (index) => {
        found.push(index);
        return false;
      });
      return found.sort((one, other) => one - other).map((index) => list[index]!);
    },
  };
}
