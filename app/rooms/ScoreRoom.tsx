import { formatNumber } from '../../shared/article/formatNumber.ts';
import { useLibrary } from '../stores/library.ts';
import { useJudgedArticle } from './useJudgedArticle.ts';

/** The score recorded with the article. Criteria and curves are not here yet, and the page says so. */
export function ScoreRoom() {
  const { document, verdicts } = useJudgedArticle();
  if (!document) return <NothingYet title="Score sheet" />;
  const { meta } = document;
  const spoken = verdicts?.claims.filter((claim) => claim.check?.kind === 'score') ?? [];
  return (
    <div className="page">
      <h1>Score sheet</h1>
      <p className="by">{meta.title}</p>
      <div className="prose">
        {typeof meta.score === 'number' ? (
          <p>
            {formatNumber(meta.score, { decimals: Number.isInteger(meta.score) ? 0 : 1 })} out of{' '}
            {formatNumber(meta.score_max ?? 10, { decimals: 0 })}
            {meta.award ? `; award: ${meta.award === true ? 'yes' : meta.award}` : '; no award'}.
          </p>
        ) : (
          <p>No score is recorded with this article yet.</p>
        )}
        {spoken.map((claim) => (
          <p key={claim.id}>
            The text says “{claim.text}”. {claim.judgement.reason}
          </p>
        ))}
      </div>
      <p className="quiet">
        Criteria with curves, weights and the award rule are not built yet; until then the score recorded with
        the article counts.
      </p>
    </div>
  );
}

/** Nothing while the library is still being read. */
export function NothingYet({ title }: { title: string }) {
  const isEmpty = useLibrary((state) => state.state === 'ready' && state.articles.length === 0);
  return (
    <div className="page">
      <h1>{title}</h1>
      {isEmpty ? <p className="by">There is no article yet. Begin one in the Draft.</p> : null}
    </div>
  );
}
