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
 * @param now the judgement of the words as they are read today; asked for where they changed
 */
export function withStaleness(
  claim: Claim,
  bench: JudgingBench,
  reasoned: Reasoned,
  now: () => Judgement | undefined,
): Judgement {
  const { judgement } = reasoned;
  if (judgement.verdict === 'working') return judgement;
  const isChanged = claim.anchor === 'changed';
  const changed =
    claim.accepted === undefined
      ? []
      : digestDifferences(claim.accepted.digests, digestsOfReasoned(claim, bench, reasoned));
  if (!isChanged && changed.length === 0) return judgement;
  const current = isChanged || changed.includes('sentence') ? (now() ?? judgement) : judgement;
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

/** What a judgement of a proof was last made from, and what it was. */
interface Kept {
  check: Claim['check'];
  sentence: string;
  isChanged: boolean;
  house: JudgingBench['house'];
  reasoned: Reasoned;
  /** Undefined: the words read today were not asked for. */
  now: { judgement: Judgement | undefined } | undefined;
  judgement: Judgement;
}

/** {@link withStaleness}, remembering for each proof what it said of the same words, evidence and house. */
export interface Staleness {
  judge(claim: Claim, bench: JudgingBench, reasoned: Reasoned, now: () => Judgement | undefined): Judgement;
}

export function createStaleness(): Staleness {
  const kept = new WeakMap<NonNullable<Claim['accepted']>, Kept>();
  return {
    judge(claim, bench, reasoned, now) {
      const { accepted, check } = claim;
      if (!accepted) return withStaleness(claim, bench, reasoned, now);
      const sentence = claim.sentenceText ?? claim.text;
      const isChanged = claim.anchor === 'changed';
      const known = kept.get(accepted);
      if (
        known &&
        known.reasoned === reasoned &&
        known.sentence === sentence &&
        known.isChanged === isChanged &&
        known.check === check &&
        known.house === bench.house &&
        (known.now === undefined || known.now.judgement === now())
      )
        return known.judgement;
      let asked: Kept['now'];
      const judgement = withStaleness(claim, bench, reasoned, () => {
        asked = { judgement: now() };
        return asked.judgement;
      });
      kept.set(accepted, {
        check,
        sentence,
        isChanged,
        house: bench.house,
        reasoned,
        now: asked,
        judgement,
      });
      return judgement;
    },
  };
}
