import type { Mark, Node } from 'prosemirror-model';
import type { EditorState, Transaction } from 'prosemirror-state';
import { anchorClaim, describeAnchor } from '../../../shared/claims/anchors.ts';
import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';
import { articleSchema, type ClaimMarkAttributes } from '../document/schema.ts';
import { type TextMap, textMapOf } from '../document/textMap.ts';

interface MarkedRange {
  from: number;
  to: number;
  mark: Mark;
}

/** Ranges of accepted and hand-made claims, first place first; a copy of a claim elsewhere counts once. */
export function markedRanges(document: Node): Map<string, MarkedRange> {
  const ranges = new Map<string, MarkedRange>();
  document.descendants((node, position) => {
    if (!node.isInline) return true;
    for (const mark of node.marks) {
      if (mark.type.name !== 'claim') continue;
      const id = mark.attrs.id as string;
      const known = ranges.get(id);
      if (!known) ranges.set(id, { from: position, to: position + node.nodeSize, mark });
      else if (position <= known.to + 1) known.to = position + node.nodeSize;
    }
    return false;
  });
  return ranges;
}

/** The claims that the article keeps, as stored beside it: from marks, and those whose words are gone. */
export function storedClaimsOf(document: Node, map: TextMap): StoredClaim[] {
  const claims: StoredClaim[] = [];
  for (const [id, range] of markedRanges(document)) {
    const span = map.spanOf(range.from, range.to);
    if (!span) continue;
    const { origin, check, opinion, proof } = range.mark.attrs as ClaimMarkAttributes;
    claims.push({
      id,
      anchor: describeAnchor(map.text.text, span),
      origin,
      check,
      ...(opinion ? { opinion } : {}),
      ...(proof ? { proof: proof as StoredClaim['proof'] } : {}),
    } as StoredClaim);
  }
  return [...claims, ...(document.attrs.lost as StoredClaim[])];
}

/** The document with its stored claims as marks; what cannot be found again is kept as lost. */
export function withStoredClaims(
  document: Node,
  stored: readonly StoredClaim[],
  apply: (node: Node) => EditorState,
): Node {
  const state = apply(document);
  const map = textMapOf(document);
  const lost: StoredClaim[] = [];
  const transaction: Transaction = state.tr;
  for (const claim of stored) {
    const found = anchorClaim(map.text.text, claim.anchor);
    const range = found.span ? map.rangeOf(found.span) : null;
    if (!range) {
      lost.push(claim);
      continue;
    }
    transaction.addMark(range.from, range.to, claimMark(claim.id, claim));
  }
  if (lost.length > 0) transaction.setDocAttribute('lost', lost);
  return transaction.doc;
}

function claimMark(id: string, claim: Pick<StoredClaim, 'origin' | 'check' | 'opinion' | 'proof'>): Mark {
  return articleSchema.mark('claim', {
    id,
    origin: claim.origin,
    check: claim.check,
    opinion: claim.opinion ?? false,
    proof: claim.proof ?? null,
  });
}
