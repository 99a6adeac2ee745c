import type { Claim, Judgement, Verdict } from '../contract/claim.ts';
import type { JudgingBench, Reasoned } from './checking/index.ts';
import { judgeReasoned } from './checking/index.ts';
import {
  checkDigest,
  digestDifferences,
  evidenceDigest,
  houseDigest,
  type ProofDigests,
  sentenceDigest,
} from './digests.ts';

/** Digests of what a claim's verdict rests on now; kept with the proof when a person accepts it. */
export function digestsOf(claim: Claim, bench: JudgingBench): ProofDigests {
  return digestsOfReasoned(claim, bench, judgeReasoned(claim, bench));
}

export function digestsOfReasoned(claim: Claim, bench: JudgingBench, reasoned: Reasoned): ProofDigests {
  return {
    sentence: sentenceDigest(claim.sentenceText ?? claim.text),
    check: checkDigest(claim.check),
    house: houseDigest(bench.house),
    evidence: evidenceDigest(reasoned.used),
  };
}

const changeWords: Readonly<Record<keyof ProofDigests, string>> = {
  sentence: 'the sentence',
  check: 'the check',
  house: 'the house words',
  evidence: 'the evidence',
};

/**
 * The judgement as it stands for an accepted claim: the fresh one while nothing that it rested on has changed, else
 * stale, with the new verdict beside it.
 * @param now the judgement of the words as they are read today, where they changed
 */
export function withStaleness(
  claim: Claim,
  bench: JudgingBench,
  reasoned: Reasoned,
  now?: Judgement,
): Judgement {
  const { judgement } = reasoned;
  if (judgement.verdict === 'working') return judgement;
  const isChanged = claim.anchor === 'changed';
  const changed =
    claim.accepted === undefined
      ? []
      : digestDifferences(claim.accepted.digests, digestsOfReasoned(claim, bench, reasoned));
  if (!isChanged && changed.length === 0) return judgement;
  const current = isChanged || changed.includes('sentence') ? (now ?? judgement) : judgement;
  if (current.verdict === 'working') return current;
  const what = isChanged && !changed.includes('sentence') ? ['sentence' as const, ...changed] : changed;
  const words = what.map((part) => changeWords[part]);
  const list = words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : words[0]!;
  return {
    ...current,
    verdict: 'stale',
    now: current.verdict as Verdict,
    reason: `${list.charAt(0).toUpperCase()}${list.slice(1)} changed after the proof was accepted; now: ${current.reason}`,
  };
}
