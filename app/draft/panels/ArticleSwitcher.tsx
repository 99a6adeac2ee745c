import { hashOf } from '../../shell/route.ts';
import { openSheet } from '../../shell/sheets.ts';
import { useArticle } from '../../stores/article.ts';
import { useLibrary } from '../../stores/library.ts';

/** The other articles, one quiet line each; newest first. */
export function ArticleSwitcher() {
  const articles = useLibrary((state) => state.articles);
  const open = useArticle((state) => state.id);
  const others = articles
    .filter((article) => article.id !== open)
    .sort((a, b) => (b.date ?? '').localeCompare(a.date ?? ''));
  return (
    <section aria-label="Articles">
      <h2>Other articles</h2>
      <ul>
        {others.map((article) => (
          <li key={article.id}>
            <a className="nav-link" href={hashOf('draft', [article.id])}>
              {article.title}
            </a>
          </li>
        ))}
        <li>
          <button type="button" className="nav-link" onClick={() => openSheet('new-article')}>
            New article…
          </button>
        </li>
      </ul>
    </section>
  );
}
