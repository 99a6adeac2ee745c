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
import { createAgreement } from './agreement.ts';
import { createAnchoring } from './anchoring.ts';
import type { JudgingBench } from './checking/index.ts';
import { readingContextOf } from './context.ts';
import { createJudgingMemo } from './memo.ts';
import { overlapsOf, placeStored, standsFor } from './placing.ts';
import { type ArticleReading, createReadingMemo, readArticle } from './reading/index.ts';
import { createStaleness } from './staleness.ts';
import { createUnsaid, type Finding, findingsOf } from './unsaid.ts';

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

/** What a checker may leave out or read otherwise. */
export interface CheckerOptions {
  /** A spoken take: no punctuation, numbers and letters as words. Else as the article itself says. */
  spoken?: boolean;
  /** False: what the article leaves unsaid is not asked for (and its quantities are not measured for it). */
  unsaid?: boolean;
}

/** A checker for one article. The same text and evidence give the same verdicts, whatever came before. */
export function createChecker(first: JudgingBench, options: CheckerOptions = {}): ArticleChecker {
  let bench = first;
  let context = contextOf(bench, options);
  let findings: Finding[] | null = options.unsaid === false ? [] : null;
  const readingMemo = createReadingMemo();
  const memo = createJudgingMemo(bench);
  const anchoring = createAnchoring();
  const staleness = createStaleness();
  const agreement = createAgreement();
  const unsaid = createUnsaid();
  /**
   * The last claim of each source, with what it was made of. By the source, which stays while the text moves: what a
   * weak map keeps by a key that is new at each keystroke is collected late, in long pauses.
   */
  let proposed = new WeakMap<Proposal, { proposal: Proposal; claim: JudgedClaim }>();

  /** A proposal as a claim: the same object again while its words, its place and its judgement are the same. */
  function judgeProposal(
    proposal: Proposal,
    source: Proposal,
    id: string,
    sentenceText: string,
  ): JudgedClaim {
    const { judgement } = memo.judge(proposal);
    const known = proposed.get(source);
    if (known?.proposal === proposal && known.claim.id === id && known.claim.judgement === judgement)
      return known.claim;
    const claim: JudgedClaim = { ...proposal, id, sentenceText, origin: 'proposed', judgement };
    if (known) Object.assign(known, { proposal, claim });
    else proposed.set(source, { proposal, claim });
    return claim;
  }

  function judgeStored(claim: Claim, proposalAt: (claim: Claim) => Proposal | undefined): JudgedClaim {
    const now = () => {
      const proposal = proposalAt(claim);
      return proposal && memo.judge(proposal).judgement;
    };
    return Object.assign(claim, { judgement: staleness.judge(claim, bench, memo.judge(claim), now) });
  }

  return {
    check(text, stored = []) {
      const reading = readArticle(text, context, readingMemo);
      const { sentences, proposals } = reading;
      anchoring.enter(text.text);
      const standing: Claim[] = [];
      const lost: JudgedClaim[] = [];
      for (const one of stored) {
        const claim = placeStored(one, anchoring.find(one.anchor), text, sentences);
        if (claim.anchor === 'lost') lost.push({ ...claim, judgement: lostJudgement(claim) });
        else standing.push(claim);
      }
      const find = proposalFinder(proposals);
      const claims = freeProposals(reading, standing, judgeProposal);
      for (const claim of standing) claims.push(judgeStored(claim, find));
      claims.sort(inOrder);
      findings ??= findingsOf(bench);
      return {
        sentences,
        claims,
        lost,
        agreement: agreement.of(claims),
        unsaid: unsaid.of(findings, claims, bench.article.meta.unit),
        totals: totalsOf(claims, lost),
      };
    },
    rebase(next) {
      bench = next;
      if (options.unsaid !== false) findings = null;
      memo.rebase(next);
      const nextContext = contextOf(next, options);
      // A context that says the same keeps what was read.
      if (nextContext !== context && JSON.stringify(nextContext) !== JSON.stringify(context)) {
        context = nextContext;
        proposed = new WeakMap();
      }
    },
    computed: memo.computed,
  };
}

function contextOf(
  { evidence, article, house, scoreSheet }: JudgingBench,
  { spoken }: CheckerOptions,
): ReadingContext {
  return readingContextOf(evidence, article, house, scoreSheet, spoken ?? article.meta.spoken);
}

function inOrder(one: Claim, other: Claim): number {
  return one.start - other.start || one.end - other.end || (one.id < other.id ? -1 : 1);
}

/** What the ids of a proposal's claims begin with, and the ids by how many with the same words stand before it. */
interface Names {
  words: string;
  ids: string[];
}

const namesBySource = new WeakMap<Proposal, Names>();

function namesOf(source: Proposal): Names {
  let names = namesBySource.get(source);
  if (!names) {
    names = { words: `${source.rule}:${source.text}`, ids: [] };
    namesBySource.set(source, names);
  }
  return names;
}

/** Proposals that no stored claim stands for. Ids follow the words, so that they stay while other text changes. */
function freeProposals(
  { proposals, sources, sentences }: ArticleReading,
  standing: readonly Claim[],
  judge: (proposal: Proposal, source: Proposal, id: string, sentenceText: string) => JudgedClaim,
): JudgedClaim[] {
  const over = overlapsOf(standing);
  const seen = new Map<string, number>();
  const free: JudgedClaim[] = [];
  for (let order = 0; order < proposals.length; order++) {
    const proposal = proposals[order]!;
    if (over.some(proposal, (claim) => standsFor(claim, proposal))) continue;
    const source = sources[order]!;
    const names = namesOf(source);
    const count = seen.get(names.words) ?? 0;
    seen.set(names.words, count + 1);
    let id = names.ids[count];
    if (id === undefined) {
      id = `${names.words}#${count}`;
      names.ids[count] = id;
    }
    free.push(judge(proposal, source, id, sentences[proposal.sentence]?.text ?? proposal.text));
  }
  return free;
}

/** What is read today where a stored claim stands; what overlaps what is found out when it is first asked. */
function proposalFinder(proposals: readonly Proposal[]): (claim: Claim) => Proposal | undefined {
  let over: ReturnType<typeof overlapsOf<Proposal>> | undefined;
  return (claim) => {
    over ??= overlapsOf(proposals);
    const found = over.all(claim).filter((proposal) => standsFor(claim, proposal));
    return found.find(({ check }) => check?.kind === claim.check?.kind) ?? found[0];
  };
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

function totalsOf(...lists: readonly (readonly JudgedClaim[])[]): Totals {
  const totals: Totals = { holds: 0, breaks: 0, close: 0, unproven: 0, stale: 0, opinion: 0 };
  for (const claims of lists)
    for (const { judgement } of claims)
      totals[judgement.verdict === 'working' ? 'unproven' : judgement.verdict]++;
  return totals;
}
