import { DOMSerializer } from 'prosemirror-model';
import { useEffect, useRef } from 'react';
import { documentOfMarkdown } from '../draft/document/readMarkdown.ts';
import { articleSchema } from '../draft/document/schema.ts';
import { NothingYet } from './ScoreRoom.tsx';
import { useJudgedArticle } from './useJudgedArticle.ts';
import '../draft/draft.css';

/** The text as readers would get it, to read and not to change. Publishing is not here yet, and the page says so. */
export function ReleaseRoom() {
  const { document } = useJudgedArticle();
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    if (!document || !place.current) return;
    const doc = documentOfMarkdown(document.markdown);
    place.current.replaceChildren(DOMSerializer.fromSchema(articleSchema).serializeFragment(doc.content));
  }, [document]);
  if (!document) return <NothingYet title="Release" />;
  return (
    <div className="page">
      <article className="article" ref={place} style={{ maxWidth: '38.75rem' }} />
      <p className="quiet" style={{ marginTop: '2rem' }}>
        Release is not built yet: this is the text as it stands, without its evidence page.
      </p>
    </div>
  );
}
