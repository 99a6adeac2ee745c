import type { JudgingBench } from '../../../shared/claims/index.ts';
import type { Check } from '../../../shared/contract/check.ts';
import { person } from '../../door/door.ts';
import { announce } from '../../shell/announce.ts';
import { verdictWord } from '../../theme/VerdictGlyph.tsx';
import { currentSession } from '../currentSession.ts';
import {
  acceptClaim,
  letGo,
  markAsOpinion,
  readAgain,
  relinkClaim,
  writeSuggestion,
} from '../proofs/claimActions.ts';
import { type ProofItem, standingOf } from '../proofs/proofItem.ts';
import { proofsOf } from '../proofs/proofPlugin.ts';
import { showProof } from './proofPlaces.ts';

export type ProofAction = 'show' | 'accept' | 'opinion' | 'suggest' | 'again' | 'let-go';

function itemOf(key: string): ProofItem | undefined {
  const session = currentSession();
  return session ? proofsOf(session.view.state).items.find((item) => item.key === key) : undefined;
}

/** Does one thing with a proof; the item is looked up anew, since typing moves it. */
export function performOn(key: string, action: ProofAction): void {
  const session = currentSession();
  const item = itemOf(key);
  if (!session || !item) return;
  const { view } = session;
  const bench: JudgingBench | null = session.bench();
  if (action === 'show') {
    showProof(item);
    return;
  }
  if (action === 'opinion') markAsOpinion(view, item);
  else if (action === 'suggest') writeSuggestion(view, item);
  else if (action === 'let-go') letGo(view, item);
  else if (bench && action === 'accept')
    acceptClaim(view, item, bench, person.name(), new Date().toISOString());
  else if (bench && action === 'again') readAgain(view, item, bench);
  session.checkNow();
  const after = proofsOf(view.state).items.find((candidate) => candidate.key === key);
  if (after) announce(`${verdictWord[standingOf(after)]}. ${after.claim.judgement.reason}`);
}

export function relinkTo(key: string, check: Check): void {
  const session = currentSession();
  const item = itemOf(key);
  if (!session || !item) return;
  relinkClaim(session.view, item, check);
  session.checkNow();
}
