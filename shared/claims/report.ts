import type { JudgedClaim } from '../contract/claim.ts';
import type { ArticleVerdicts, Totals } from './checker.ts';

/** One article with its verdicts. */
export interface CheckedArticle {
  article: string;
  verdicts: ArticleVerdicts;
}

export interface ReportedClaim {
  text: string;
  start: number;
  end: number;
  kind: string | null;
  quantity: string | null;
  origin: string;
  conditions: unknown;
  stated: unknown;
  found: unknown;
  probability: number | null;
  verdict: string;
  /** For a stale claim: the new verdict. */
  now?: string;
  reason: string;
  evidence: readonly string[];
}

export interface CheckReport {
  format: 'nitproof-check';
  version: 1;
  articles: {
    article: string;
    sentences: { index: number; text: string; start: number; end: number; claims: ReportedClaim[] }[];
    /** Stored claims whose words are gone; present only when there are any. */
    lost?: ReportedClaim[];
    agreement: { claims: unknown; verdict: string; reason: string }[];
    unsaid: { quantity: string; reason: string }[];
  }[];
  totals: Totals;
}

/**
 * The `nitproof-check` report. Numbers leave with 6 significant digits and probabilities with 3 decimals, articles by
 * id, so that the text is the same byte for byte on every host.
 */
export function reportOf(articles: readonly CheckedArticle[]): CheckReport {
  const totals: Totals = { holds: 0, breaks: 0, close: 0, unproven: 0, stale: 0, opinion: 0 };
  const sorted = [...articles].sort((one, other) => (one.article < other.article ? -1 : 1));
  for (const { verdicts } of sorted)
    for (const verdict of Object.keys(totals) as (keyof Totals)[])
      totals[verdict] += verdicts.totals[verdict];
  return {
    format: 'nitproof-check',
    version: 1,
    articles: sorted.map(({ article, verdicts }) => {
      const claims = Map.groupBy(verdicts.claims, ({ sentence }) => sentence);
      return {
        article,
        sentences: verdicts.sentences.map(({ index, text, start, end }) => ({
          index,
          text,
          start,
          end,
          claims: (claims.get(index) ?? []).map(reportedClaim),
        })),
        ...(verdicts.lost.length > 0 ? { lost: verdicts.lost.map(reportedClaim) } : {}),
        agreement: verdicts.agreement
          .filter(({ verdict }) => verdict === 'breaks')
          .map(({ claims: pair, verdict, reason }) => ({ claims: pair, verdict, reason })),
        unsaid: verdicts.unsaid.map(({ quantity, reason }) => ({ quantity, reason })),
      };
    }),
    totals,
  };
}

function reportedClaim({ text, start, end, origin, judgement }: JudgedClaim): ReportedClaim {
  const { kind, quantity, conditions, stated, found, probability, verdict, now, reason, evidence } =
    judgement;
  return {
    text,
    start,
    end,
    kind,
    quantity,
    origin,
    conditions: rounded(conditions),
    stated: rounded(stated),
    found: rounded(found),
    probability: probability === null ? null : Number(probability.toFixed(3)),
    verdict,
    ...(now === undefined ? {} : { now }),
    reason,
    evidence,
  };
}

/** Numbers with 6 significant digits; members that are absent or not finite are left out. */
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number.isFinite(value) ? Number(value.toPrecision(6)) : null;
  if (Array.isArray(value)) return value.map(rounded);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, member]) => member !== undefined)
      .map(([key, member]) => [key, rounded(member)]),
  );
}

/**
 * Exit status of a check: 1 where a claim breaks, a stale claim would break now, or two claims contradict each other;
 * with `strict` also where one is close, unproven or stale. Opinion is fine.
 */
export function exitStatusOf(report: CheckReport, strict = false): 0 | 1 {
  const breaks = report.articles.some(
    ({ sentences, agreement }) =>
      agreement.length > 0 ||
      sentences.some(({ claims }) =>
        claims.some(({ verdict, now }) => verdict === 'breaks' || now === 'breaks'),
      ),
  );
  const { close, unproven, stale } = report.totals;
  return breaks || (strict && close + unproven + stale > 0) ? 1 : 0;
}
