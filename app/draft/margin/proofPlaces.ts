import { TextSelection } from 'prosemirror-state';
import { announce } from '../../shell/announce.ts';
import { verdictWord } from '../../theme/VerdictGlyph.tsx';
import { currentSession } from '../currentSession.ts';
import { type ProofItem, standingOf } from '../proofs/proofItem.ts';
import { nextProblem, proofsOf, setFocus } from '../proofs/proofPlugin.ts';

/** Gives a proof the attention and brings its sentence into view, without moving the cursor. */
export function showProof(item: ProofItem): void {
  const session = currentSession();
  if (!session) return;
  setFocus(session.view, item.key);
  revealPosition(item.from);
}

/** Brings a document position into the middle of the room when it is out of sight. */
export function revealPosition(position: number): void {
  const view = currentSession()?.view;
  const room = document.getElementById('room');
  if (!view || !room) return;
  const place = view.coordsAtPos(position);
  const frame = room.getBoundingClientRect();
  // The proof beside it needs room below.
  if (place.top > frame.top + 60 && place.bottom < frame.top + frame.height * 0.6) return;
  const smooth = !window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  room.scrollTo({
    top: room.scrollTop + place.top - frame.top - frame.height / 3,
    behavior: smooth ? 'smooth' : 'auto',
  });
}

/** F8 and Shift+F8: the next problem gets the cursor and the attention. */
export function goToProblem(step: 1 | -1): void {
  const session = currentSession();
  if (!session) return;
  const item = nextProblem(session.view.state, step);
  if (item) goToItem(item);
  else announce('No problem in this article.');
}

/** Puts the cursor at a claim's first word and gives its proof the attention. */
export function goToItem(item: ProofItem): void {
  const session = currentSession();
  if (!session) return;
  const { view } = session;
  view.dispatch(
    view.state.tr
      .setSelection(TextSelection.near(view.state.doc.resolve(item.from), 1))
      .setMeta('pointless', true),
  );
  setFocus(view, item.key);
  view.focus();
  revealPosition(item.from);
  announce(`${verdictWord[standingOf(item)]}. ${item.claim.text}. ${item.claim.judgement.reason}`);
}

/** From the text to the proof in focus, and back to the words. */
export function goToProof(): void {
  const session = currentSession();
  if (!session) return;
  const { focus, items } = proofsOf(session.view.state);
  const key = focus ?? items[0]?.key;
  const head = document.querySelector<HTMLElement>(`.proof[data-key="${key}"] .proof-head`);
  if (head) focusHead(head);
}

/** Gives the keyboard to a proof, which may have been too far off to be drawn. */
export function focusHead(head: HTMLElement): void {
  const proof = head.closest<HTMLElement>('.proof');
  if (proof) proof.hidden = false;
  head.focus();
}

export function backToText(): void {
  const session = currentSession();
  if (!session) return;
  const { focus, items } = proofsOf(session.view.state);
  const item = items.find((candidate) => candidate.key === focus);
  if (item) goToItem(item);
  else session.view.focus();
}
