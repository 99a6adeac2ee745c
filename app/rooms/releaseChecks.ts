import type { ArticleVerdicts } from '../../shared/claims/index.ts';
import type { Article } from '../../shared/contract/article.ts';
import type { Verdict } from '../../shared/contract/claim.ts';

/** One thing that stands between an article and its release, or no longer does. */
export interface ReleaseCheck {
  id: 'breaks' | 'contradictions' | 'stale' | 'close' | 'unproven' | 'lost' | 'embargo';
  passed: boolean;
  /** A publication that has it would be wrong, not merely open to question. */
  isGrave: boolean;
  words: string;
  /** Offset in the plain text of the first sentence it is about */
  at: number | null;
}

const several = (count: number, one: string, many: string, none: string) =>
  count === 0 ? none : count === 1 ? one : many.replace('#', String(count));

/**
 * What an editor goes through before an article leaves the house, gravest first; the same grounds as the command line's
 * `check --strict`.
 * @param now RFC 3339 time; an embargo is a day or such a time
 */
export function releaseChecks(
  { claims, agreement, lost }: Pick<ArticleVerdicts, 'claims' | 'agreement' | 'lost'>,
  meta: Pick<Article, 'embargo'>,
  now: string,
): ReleaseCheck[] {
  const of = (verdict: Verdict) => claims.filter(({ judgement }) => judgement.verdict === verdict);
  const check = (
    id: Extract<ReleaseCheck['id'], Verdict>,
    one: string,
    many: string,
    none: string,
  ): ReleaseCheck => {
    const found = of(id);
    return {
      id,
      passed: found.length === 0,
      isGrave: id === 'breaks',
      words: several(found.length, one, many, none),
      at: found[0]?.start ?? null,
    };
  };
  const contradictions = agreement.filter(({ verdict }) => verdict === 'breaks');
  const embargo = meta.embargo ?? null;
  const isOver =
    embargo === null ||
    (embargo.includes('T') ? Date.parse(embargo) <= Date.parse(now) : embargo <= now.slice(0, 10));
  return [
    check('breaks', 'One sentence breaks.', '# sentences break.', 'No sentence breaks.'),
    {
      id: 'contradictions',
      passed: contradictions.length === 0,
      isGrave: true,
      words:
        contradictions.length === 0
          ? 'No two sentences contradict each other.'
          : contradictions.map(({ reason }) => reason).join(' '),
      at: null,
    },
    check(
      'stale',
      'One accepted proof is stale.',
      '# accepted proofs are stale.',
      'No accepted proof is stale.',
    ),
    check(
      'close',
      'One sentence is too close to call.',
      '# sentences are too close to call.',
      'No sentence is too close to call.',
    ),
    check('unproven', 'One sentence is unproven.', '# sentences are unproven.', 'No sentence is unproven.'),
    {
      id: 'lost',
      passed: lost.length === 0,
      isGrave: false,
      words: several(
        lost.length,
        'One accepted proof has lost its words.',
        '# accepted proofs have lost their words.',
        'Every accepted proof still has its words.',
      ),
      at: null,
    },
    {
      id: 'embargo',
      passed: isOver,
      isGrave: true,
      words:
        embargo === null
          ? 'There is no embargo.'
          : isOver
            ? `The embargo of ${embargo} is over.`
            : `Under embargo until ${embargo}.`,
      at: null,
    },
  ];
}
