import { beginsAnew } from './beginsAnew.ts';
import { piecesOf } from './cutPieces.ts';
import { type Item, isWord } from './items.ts';
import { leans, leansAsBefore, leansToo } from './ownStatement.ts';
import { endsBefore, endsBeforeRemark, goesWithNext, joinsList, leadsUp } from './pieceBounds.ts';
import { compares, contrastsWith, statesOwn } from './pieceStatement.ts';
import { hasVerb } from './verbs.ts';

/**
 * Parts a sentence into clauses at marks and conjunctions, but only where both sides claim something of their
 * own; leading and trailing phrases stay with the clause they belong to.
 */
export function clausesOf(items: readonly Item[]): Item[][] {
  const pieces = piecesOf(items);
  if (pieces.length < 2) return pieces.map((piece) => piece.items);
  const leaning = pieces.filter(({ items: piece }) => leansToo(piece) || leansAsBefore(piece)).length;
  const clauses: Item[][] = [];
  let pending: Item[] = [];
  let beginsStatement = false;
  const close = () => {
    if (pending.length > 0) clauses.push(pending);
    pending = [];
    beginsStatement = false;
  };
  for (const [order, piece] of pieces.entries()) {
    const following = pieces[order + 1];
    const contrasts = contrastsWith(piece, pending, clauses.length === 0);
    // "Takes HDR10 and HLG, whereas the other only takes HDR10": each side is a statement, with its own set.
    if (contrasts && (hasVerb(pending) || compares(pending) || leans(pending))) close();
    const isOwn = contrasts || statesOwn(piece, order === 0, leaning);
    const isNew = beginsAnew(piece, pending.length > 0 ? pending : (clauses.at(-1) ?? []), isOwn);
    if (isNew) {
      close();
      beginsStatement = true;
    }
    const last = clauses.at(-1);
    if (!isOwn) {
      const isApart = endsBeforeRemark(piece, pending);
      if (isApart) close();
      const goesOn =
        isNew || !last || pending.length > 0 || isApart || goesWithNext(piece, following, pending, last);
      (goesOn ? pending : last).push(...piece.items);
      continue;
    }
    if (leadsUp(piece, following, order === 0)) {
      pending.push(...piece.items);
      continue;
    }
    if (endsBefore(piece, pending)) close();
    else if (pending.length === 0 && last && joinsList(piece, last)) {
      last.push(...piece.items);
      continue;
    }
    pending.push(...piece.items);
    close();
  }
  const last = clauses.at(-1);
  const isApart = pending.length > 0 && isWord(items[items.indexOf(pending[0]!) - 1], ';');
  if (last && !hasVerb(pending) && !isApart && !beginsStatement) last.push(...pending);
  else close();
  return clauses;
}
