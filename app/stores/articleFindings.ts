import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { createChecker, type Totals } from '../../shared/claims/index.ts';
import type { ArticleDocument } from '../../shared/contract/door.ts';
import type { ArticleRecord, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { House } from '../../shared/contract/house.ts';
import type { ScoreSheet } from '../../shared/contract/scoreSheet.ts';
import { disagreementsOf } from '../evidence/disagreements.ts';
import type { Standing } from '../theme/VerdictGlyph.tsx';

export interface CitationsRequest {
  units: readonly UnitEvidence[];
  articles: readonly ArticleRecord[];
  house: House;
  scoreSheet: ScoreSheet | null;
  documents: readonly ArticleDocument[];
}

/** A claim that rests on evidence, with what is needed to name it and go there. */
export interface Citation {
  article: string;
  title: string;
  sentence: string;
  /** UTF-16 offset of the claim in the article's plain text */
  start: number;
  verdict: Standing;
  /** `unit/<u>/run/<r>#<n>`, `unit/<u>/fact/<key>`, `unit/<u>/observation/<id>` */
  evidence: readonly string[];
}

export interface ArticleFindings {
  article: string;
  /** Claims by what they are shown as: two that contradict each other break, whatever each is alone. */
  totals: Totals;
  citations: readonly Citation[];
  /** Sentences on the article's own unit that nothing proves yet */
  unproven: readonly Citation[];
}

export type CitationsReply = { type: 'article'; findings: ArticleFindings } | { type: 'done' };

/** Evidence of the own unit may leave out the unit; here it never does. */
export function fullKey(own: string, evidence: string): string {
  if (evidence.startsWith('unit/')) return evidence;
  return /^(run|fact|observation)\//.test(evidence)
    ? `unit/${own}/${evidence}`
    : `unit/${own}/run/${evidence}`;
}

/** Reads and judges one article as it is stored. */
export function findingsOf(
  document: ArticleDocument,
  request: Omit<CitationsRequest, 'documents'>,
  measurer = createMeasurer(),
): ArticleFindings {
  const { id, meta } = document;
  const checker = createChecker(
    {
      evidence: { units: new Map(request.units.map((unit) => [unit.id, unit])), articles: request.articles },
      article: { id, meta },
      house: request.house,
      scoreSheet: request.scoreSheet,
      measure: measurer.measure,
      draws: measurer.draws,
    },
    { unsaid: false },
  );
  const verdicts = checker.check(plainTextOfMarkdown(document.markdown), document.claims);
  const totals = { ...verdicts.totals };
  for (const { judgement } of disagreementsOf(verdicts).keys()) {
    totals[judgement.verdict === 'working' ? 'unproven' : judgement.verdict] -= 1;
    totals.breaks += 1;
  }
  const citations = verdicts.claims.map(
    (claim): Citation => ({
      article: id,
      title: meta.title,
      sentence: verdicts.sentences[claim.sentence]?.text ?? claim.text,
      start: claim.start,
      verdict: claim.judgement.verdict,
      evidence: claim.judgement.evidence.map((each) => fullKey(meta.unit, each)),
    }),
  );
  const own = verdicts.claims.map(({ judgement }) => (judgement.conditions.unit ?? meta.unit) === meta.unit);
  return {
    article: id,
    totals,
    citations,
    unproven: citations.filter((citation, index) => citation.verdict === 'unproven' && own[index]),
  };
}
