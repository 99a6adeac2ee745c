import type { ArticleVerdicts } from '../../shared/claims/index.ts';
import type { JudgedClaim } from '../../shared/contract/claim.ts';

/** For each claim that another claim of the article contradicts, the sentences that say so. */
export function disagreementsOf(
  verdicts: Pick<ArticleVerdicts, 'claims' | 'agreement'>,
): Map<JudgedClaim, string[]> {
  const found = new Map<JudgedClaim, string[]>();
  const breaking = verdicts.agreement.filter((pair) => pair.verdict === 'breaks');
  if (breaking.length === 0) return found;
  const bySentence = new Map<number, JudgedClaim[]>();
  for (const claim of verdicts.claims) {
    const list = bySentence.get(claim.sentence);
    if (list) list.push(claim);
    else bySentence.set(claim.sentence, [claim]);
  }
  for (const { claims, reason } of breaking) {
    for (const [sentence, index] of claims) {
      const claim = bySentence.get(sentence)?.[index];
      if (claim) found.set(claim, [...(found.get(claim) ?? []), reason]);
    }
  }
  return found;
}
