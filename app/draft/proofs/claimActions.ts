import { closeHistory } from 'prosemirror-history';
import type { EditorView } from 'prosemirror-view';
import { digestsOf, type JudgingBench } from '../../../shared/claims/index.ts';
import type { Check } from '../../../shared/contract/check.ts';
import type { Verdict } from '../../../shared/contract/claim.ts';
import { articleSchema, type ClaimMarkAttributes } from '../document/schema.ts';
import type { ProofItem } from './proofItem.ts';
import { markedRanges } from './storedClaims.ts';
import { inWritersUnit, replacementFor } from './suggestion.ts';

/** Puts one claim mark on a range and takes other claims off it; one step of the history. */
function setClaim(view: EditorView, item: ProofItem, attributes: ClaimMarkAttributes): void {
  const { state } = view;
  const transaction = state.tr;
  removeFrom(transaction, state.doc, item.claim.id);
  transaction.addMark(item.from, item.to, articleSchema.mark('claim', attributes));
  view.dispatch(closeHistory(transaction));
}

function removeFrom(
  transaction: EditorView['state']['tr'],
  document: EditorView['state']['doc'],
  id: string,
): void {
  const marked = markedRanges(document).get(id);
  if (marked) transaction.removeMark(marked.from, marked.to, marked.mark);
}

const storedId = (item: ProofItem) =>
  item.claim.origin === 'proposed' ? crypto.randomUUID() : item.claim.id;

/** Accepts the verdict as it stands: from now on a change of text, check, house or evidence makes it stale. */
export function acceptClaim(
  view: EditorView,
  item: ProofItem,
  bench: JudgingBench,
  by: string,
  at: string,
): void {
  const { claim } = item;
  const { verdict, reason, found } = claim.judgement;
  if (verdict === 'working') return;
  setClaim(view, item, {
    id: storedId(item),
    origin: claim.origin === 'manual' ? 'manual' : 'accepted',
    check: claim.check,
    opinion: verdict === 'opinion',
    proof: { verdict: verdict as Verdict, reason, found, digests: digestsOf(claim, bench), by, at },
  });
}

/** A person says: not checkable. */
export function markAsOpinion(view: EditorView, item: ProofItem): void {
  setClaim(view, item, { id: storedId(item), origin: 'manual', check: null, opinion: true, proof: null });
}

/** Ties the words to another run, quantity or definition. */
export function relinkClaim(view: EditorView, item: ProofItem, check: Check): void {
  setClaim(view, item, { id: storedId(item), origin: 'manual', check, opinion: false, proof: null });
}

/** Lets the stored proof go, so that the sentence is read afresh. */
export function letGo(view: EditorView, item: ProofItem): void {
  const transaction = view.state.tr;
  removeFrom(transaction, view.state.doc, item.claim.id);
  if (transaction.docChanged) view.dispatch(transaction);
}

/**
 * Reads a stale claim again. Where the sentence is still the one that was accepted, its check stays and is judged
 * on the evidence of today; where the words changed, the old check goes with the old words.
 */
export function readAgain(view: EditorView, item: ProofItem, bench: JudgingBench): void {
  const { claim } = item;
  const accepted = claim.accepted?.digests.sentence;
  const sameWords = claim.anchor !== 'changed' && accepted === digestsOf(claim, bench).sentence;
  if (!sameWords || !claim.check) {
    letGo(view, item);
    return;
  }
  setClaim(view, item, { id: claim.id, origin: 'manual', check: claim.check, opinion: false, proof: null });
}

/**
 * Writes the wording that would hold in the place of the words that do not. The stored check spoke of the old words
 * and goes with them; both come back with one undo, which takes nothing else back.
 */
export function writeSuggestion(view: EditorView, item: ProofItem): boolean {
  const { suggestion } = item.claim.judgement;
  if (!suggestion) return false;
  const text = view.state.doc.textBetween(item.from, item.to, ' ', ' ');
  const replacement = replacementFor(text, inWritersUnit(text, suggestion));
  if (!replacement) return false;
  const transaction = view.state.tr;
  removeFrom(transaction, view.state.doc, item.claim.id);
  transaction.insertText(replacement.text, item.from + replacement.start, item.from + replacement.end);
  view.dispatch(closeHistory(transaction.scrollIntoView()));
  return true;
}
