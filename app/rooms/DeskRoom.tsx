import { verdictSeverity } from '../../shared/contract/claim.ts';
import { hashOf } from '../shell/route.ts';
import { type Standing, VerdictGlyph, verdictWord } from '../theme/VerdictGlyph.tsx';
import { releaseChecks } from './releaseChecks.ts';
import { NothingYet } from './ScoreRoom.tsx';
import { useJudgedArticle } from './useJudgedArticle.ts';
import './rooms.css';

const order: readonly Standing[] = [...verdictSeverity, 'working'];

/** Every claim of the article, worst first, each with the way to its sentence. Sign-off is not here yet. */
export function DeskRoom() {
  const { document, verdicts } = useJudgedArticle();
  if (!document || !verdicts) return <NothingYet title="Desk" />;
  const claims = [...verdicts.claims].sort(
    (a, b) => order.indexOf(a.judgement.verdict) - order.indexOf(b.judgement.verdict) || a.start - b.start,
  );
  return (
    <div className="page">
      <h1>Desk</h1>
      <p className="by">
        {document.meta.title}, {claims.length} claims
      </p>
      <h2>Before release</h2>
      <ul className="release-checks">
        {releaseChecks(verdicts, document.meta, new Date().toISOString()).map((check) => (
          <li key={check.id} className={check.passed ? 'holds' : check.isGrave ? 'breaks' : 'close'}>
            <span className="tone" aria-hidden="true">
              {check.passed ? '✓' : check.isGrave ? '✗' : '?'}
            </span>
            <span>
              <span className="unseen">{check.passed ? 'Done: ' : 'Open: '}</span>
              {check.at === null ? (
                check.words
              ) : (
                <a className="act" href={hashOf('draft', [document.id], { at: String(check.at) })}>
                  {check.words}
                </a>
              )}
            </span>
          </li>
        ))}
      </ul>
      <h2>Every claim, the worst first</h2>
      <ol className="galley">
        {claims.map((claim, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two claims may share their words; the list is made anew each time
          <li key={`${claim.id} ${index}`} className={claim.judgement.verdict}>
            <span className="galley-verdict tone">
              <VerdictGlyph verdict={claim.judgement.verdict} />
              {verdictWord[claim.judgement.verdict]}
            </span>
            <div>
              <a className="galley-words" href={hashOf('draft', [document.id], { at: String(claim.start) })}>
                {claim.text}
              </a>
              <p className="quiet">{claim.judgement.reason}</p>
            </div>
          </li>
        ))}
      </ol>
      <p className="quiet">
        Remarks, sending back and sign-off are not built yet; this page lists what they will go through.
      </p>
    </div>
  );
}
