import { verdicts } from '../../shared/contract/claim.ts';
import type { ArticleSummary } from '../../shared/contract/door.ts';
import { dateText } from '../bench/dateText.ts';
import { hashOf } from '../shell/route.ts';
import { useCitations } from '../stores/citations.ts';
import { VerdictGlyph, verdictWord } from '../theme/VerdictGlyph.tsx';

const stateWords: Record<ArticleSummary['state'], string> = {
  draft: 'draft',
  'with-editor': 'with the editor',
  returned: 'sent back',
  'signed-off': 'signed off',
  released: 'released',
  corrected: 'corrected',
};

/** An article about a set: its title, where it stands, and how many of its claims have each verdict. */
export function ArticleLine({ article }: { article: ArticleSummary }) {
  const totals = useCitations((state) => state.byArticle.get(article.id)?.totals);
  return (
    <p className="article-line">
      <a href={hashOf('draft', [article.id])}>{article.title}</a>
      <span className="quiet">
        {stateWords[article.state]}
        {article.date ? `, ${dateText(article.date)}` : ''}
      </span>
      {totals &&
        verdicts
          .filter((verdict) => totals[verdict] > 0 && verdict !== 'opinion')
          .map((verdict) => (
            <span key={verdict} className={`article-total tone ${verdict}`} title={verdictWord[verdict]}>
              <VerdictGlyph verdict={verdict} />
              {totals[verdict]} <span className="unseen">{verdictWord[verdict]}</span>
            </span>
          ))}
    </p>
  );
}
