import type { ArticleText, ReadingContext } from '../contract/articleText.ts';
import type {
  Agreement,
  Claim,
  JudgedClaim,
  Judgement,
  Proposal,
  Sentence,
  Unsaid,
  Verdict,
} from '../contract/claim.ts';
import type { StoredClaim } from '../contract/storedClaim.ts';
import { agreementOf } from './agreement.ts';
import { anchorClaim } from './anchors.ts';
import type { JudgingBench } from './checking/index.ts';
import { readingContextOf } from './context.ts';
import { checkDigest } from './digests.ts';
import { createJudgingMemo } from './memo.ts';
import { createReadingMemo, readArticle } from './reading/index.ts';
import { withStaleness } from './staleness.ts';
import { type Finding, findingsOf, unsaidOf } from './unsaid.ts';

/** Number of claims by verdict; those still waiting for draws are counted as unproven. */
export type Totals = Record<Verdict, number>;

/** Everything that is said about an article's text. */
export interface ArticleVerdicts {
  sentences: readonly Sentence[];
  /** In the order of the text */
  claims: readonly JudgedClaim[];
  /** Stored claims whose words are gone: unproven, with no place in the text */
  lost: readonly JudgedClaim[];
  agreement: readonly Agreement[];
  unsaid: readonly Unsaid[];
  totals: Totals;
}

export interface ArticleChecker {
  /** Reads and judges; only what changed since the last call is done again. */
  check(text: ArticleText, stored?: readonly StoredClaim[]): ArticleVerdicts;
  /** Evidence, house words or the article's own statements changed. */
  rebase(bench: JudgingBench): void;
  /** How many judgements were computed so far; for tests and benchmarks. */
  computed(): number;
}

/** A checker for one article. The same text and evidence give the same verdicts, whatever came before. */
export function createChecker(first: JudgingBench): ArticleChecker {
  let bench = first;
  let context: ReadingContext = contextOf(bench);
  let findings: Finding[] | null = null;
  const readingMemo = createReadingMemo();
  const memo = createJudgingMemo(bench);

  function judgeClaim(claim: Claim, proposals: readonly Proposal[]): JudgedClaim {
    if (claim.anchor === 'lost') return { ...claim, judgement: lostJudgement(claim) };
    if (claim.origin === 'proposed') return { ...claim, judgement: memo.judge(claim).judgement };
    const reread = claim.anchor === 'changed' || claim.accepted ? proposalAt(claim, proposals) : undefined;
    const now = reread && memo.judge(reread).judgement;
    return { ...claim, judgement: withStaleness(claim, bench, memo.judge(claim), now) };
  }

  return {
    check(text, stored = []) {
      const { sentences, proposals } = readArticle(text, context, readingMemo);
      const placed = stored.map((claim) => placeStored(claim, text, sentences));
      const standing = placed.filter((claim) => claim.anchor !== 'lost');
      const claims = [...standing, ...freeProposals(proposals, standing, sentences)]
        .sort((one, other) => one.start - other.start || one.end - other.end || (one.id < other.id ? -1 : 1))
        .map((claim) => judgeClaim(claim, proposals));
      const lost = placed
        .filter((claim) => claim.anchor === 'lost')
        .map((claim) => judgeClaim(claim, proposals));
      findings ??= findingsOf(bench);
      return {
        sentences,
        claims,
        lost,
        agreement: agreementOf(claims),
        unsaid: unsaidOf(findings, claims, bench.article.meta.unit),
        totals: totalsOf([...claims, ...lost]),
      };
    },
    rebase(next) {
      bench = next;
      findings = null;
      memo.rebase(next);
      const nextContext = contextOf(next);
      // A context that says the same keeps what was read.
      if (JSON.stringify(nextContext) !== JSON.stringify(context)) context = nextContext;
    },
    computed: memo.computed,
  };
}

function contextOf({ evidence, article, house, scoreSheet }: JudgingBench): ReadingContext {
  return readingContextOf(evidence, article, house, scoreSheet);
}

/** A stored claim at the place where its words stand now. */
function placeStored(stored: StoredClaim, text: ArticleText, sentences: readonly Sentence[]): Claim {
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

/** Proposals that no stored claim stands for. Ids follow the words, so that they stay while other text changes. */
function freeProposals(
  proposals: readonly Proposal[],
  standing: readonly Claim[],
  sentences: readonly Sentence[],
): Claim[] {
  const seen = new Map<string, number>();
  const free: Claim[] = [];
  for (const proposal of proposals) {
    if (standing.some((claim) => standsFor(claim, proposal))) continue;
    const key = `${proposal.rule}:${proposal.text}`;
    const count = seen.get(key) ?? 0;
    seen.set(key, count + 1);
    free.push({
      ...proposal,
      id: `${key}#${count}`,
      sentenceText: sentences[proposal.sentence]?.text ?? proposal.text,
      origin: 'proposed',
    });
  }
  return free;
}

/** A stored claim takes the place of a proposal over (mostly) the same words, or of the same check over some of them. */
function standsFor(claim: Claim, proposal: Proposal): boolean {
  const shared = Math.min(claim.end, proposal.end) - Math.max(claim.start, proposal.start);
  if (shared <= 0) return false;
  const shorter = Math.min(claim.end - claim.start, proposal.end - proposal.start);
  if (shared * 2 >= shorter) return true;
  return (
    claim.check !== null &&
    proposal.check !== null &&
    checkDigest(claim.check) === checkDigest(proposal.check)
  );
}

/** What is read today where a stored claim stands. */
function proposalAt(claim: Claim, proposals: readonly Proposal[]): Proposal | undefined {
  const over = proposals.filter((proposal) => standsFor(claim, proposal));
  return over.find(({ check }) => check?.kind === claim.check?.kind) ?? over[0];
}

function lostJudgement(claim: Claim): Judgement {
  return {
    verdict: 'unproven',
    probability: null,
    reason: `The words “${claim.text}” are no longer in the text.`,
    stated: {},
    found: {},
    conditions: {},
    quantity: null,
    kind: claim.check?.kind ?? null,
    evidence: [],
  };
}

function totalsOf(claims: readonly JudgedClaim[]): Totals {
  const totals: Totals = { holds: 0, breaks: 0, close: 0, unproven: 0, stale: 0, opinion: 0 };
  for (const { judgement } of claims)
    totals[judgement.verdict === 'working' ? 'unproven' : judgement.verdict]++;
  return totals;
}
