import type { ArticleText } from '../contract/articleText.ts';
import type { Claim, Proposal, Sentence, Span } from '../contract/claim.ts';
import type { StoredClaim } from '../contract/storedClaim.ts';
import { anchorClaim } from './anchors.ts';
import { statementKey } from './digests.ts';

/** A stored claim at the place where its words stand now. */
export function placeStored(stored: StoredClaim, text: ArticleText, sentences: readonly Sentence[]): Claim {
  const anchored = anchorClaim(text.text, stored.anchor);
  const span = anchored.span ?? { start: stored.anchor.start, end: stored.anchor.end };
  const sentence = anchored.span ? sentenceAt(sentences, span.start) : undefined;
  return {
    id: stored.id,
    ...span,
    text: anchored.span ? text.text.slice(span.start, span.end) : stored.anchor.exact,
    sentence: sentence?.index ?? 0,
    ...(sentence ? { sentenceText: sentence.text } : {}),
    check: stored.check,
    ...(stored.check === null && stored.opinion ? { opinion: true } : {}),
    origin: stored.origin,
    anchor: anchored.outcome,
    ...(stored.proof ? { accepted: stored.proof as NonNullable<Claim['accepted']> } : {}),
    rule: 'stored',
    words: [],
  };
}

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

/** Finds what overlaps a span, in the order of the list. */
export interface Overlaps<T extends Span> {
  with(span: Span): T[];
}

/** Spans sorted by their starts, with the greatest end up to each: a search looks at few more than it finds. */
export function overlapsOf<T extends Span>(list: readonly T[]): Overlaps<T> {
  const order = list.map((_, index) => index);
  order.sort((one, other) => list[one]!.start - list[other]!.start || one - other);
  const reach: number[] = [];
  for (const index of order) reach.push(Math.max(reach.at(-1) ?? 0, list[index]!.end));
  return {
    with({ start, end }) {
      let low = 0;
      let high = order.length;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (list[order[middle]!]!.start < end) low = middle + 1;
        else high = middle;
      }
      const found: number[] = [];
      for (let at = low - 1; at >= 0 && reach[at]! > start; at--)
        if (list[order[at]!]!.end > start) found.push(order[at]!);
      return found.sort((one, other) => one - other).map((index) => list[index]!);
    },
  };
}
