import { useEffect, useState } from 'react';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import type { ArticleVerdicts } from '../../shared/claims/index.ts';
import type { ArticleDocument } from '../../shared/contract/door.ts';
import { door } from '../door/door.ts';
import { benchOf, checkerOf } from '../evidence/articleChecker.ts';
import { openDraws } from '../evidence/draws.ts';
import { useRoute } from '../shell/route.ts';
import { useEvidence } from '../stores/evidence.ts';
import { useLibrary } from '../stores/library.ts';

/** The article that a room speaks of (named in the address, else the last one written) with all its verdicts. */
export function useJudgedArticle(): { document: ArticleDocument | null; verdicts: ArticleVerdicts | null } {
  const route = useRoute();
  const articles = useLibrary((state) => state.articles);
  const { evidence, house, scoreSheet } = useEvidence();
  const last = localStorage.getItem('nitproof.last-article');
  const id = route.path[0] ?? articles.find((article) => article.id === last)?.id ?? articles[0]?.id;
  const revision = articles.find((article) => article.id === id)?.revision;
  const [document, setDocument] = useState<ArticleDocument | null>(null);
  const [verdicts, setVerdicts] = useState<ArticleVerdicts | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a newer revision is read again
  useEffect(() => {
    if (!id) return;
    let gone = false;
    void door.ask('article.read', { article: id }).then((reply) => {
      if (reply.ok && !gone) setDocument(reply.value);
    });
    return () => {
      gone = true;
    };
  }, [id, revision]);

  useEffect(() => {
    if (!document || !evidence || !house) return;
    const text = plainTextOfMarkdown(document.markdown);
    const source = openDraws(() => check());
    const checker = checkerOf(benchOf(document.id, document.meta, evidence, { house, scoreSheet }, source));
    let gone = false;
    const check = () => {
      // Draws that were on their way when the article changed must not bring the old one's verdicts back.
      if (!gone) setVerdicts(checker.check(text, document.claims));
    };
    check();
    return () => {
      gone = true;
      source.close();
    };
  }, [document, evidence, house, scoreSheet]);

  return { document, verdicts };
}
