import { useEffect, useRef, useState } from 'react';
import type { ArticleDocument } from '../../shared/contract/door.ts';
import { type Fault, faultLine } from '../../shared/contract/fault.ts';
import { registerCommands } from '../commands/registry.ts';
import { afterPaint } from '../shell/afterPaint.ts';
import { Fetched, fetchedPart } from '../shell/Fetched.tsx';
import { useRoute } from '../shell/route.ts';
import { InNav } from '../shell/Slots.tsx';
import { openSheet, useSheet } from '../shell/sheets.ts';
import { useArticle } from '../stores/article.ts';
import { readArticle } from '../stores/articleAhead.ts';
import { useLibrary } from '../stores/library.ts';
import { blockCommands } from './blockCommands.ts';
import { useSession } from './currentSession.ts';
import { draftCommands } from './draftCommands.ts';
import { FindLine } from './find/FindLine.tsx';
import { useFind } from './find/findStore.ts';
import { goToItem } from './margin/proofPlaces.ts';
import { ArticleSwitcher } from './panels/ArticleSwitcher.tsx';
import { ByLine } from './panels/ByLine.tsx';
import { DraftNav } from './panels/DraftNav.tsx';
import { DraftStatus } from './panels/DraftStatus.tsx';
import { InsertPhotoSheet } from './panels/InsertPhotoSheet.tsx';
import { LinkSheet } from './panels/LinkSheet.tsx';
import { Notices } from './panels/Notices.tsx';
import { setNarrow } from './proofs/foldPlugin.ts';
import { proofsOf } from './proofs/proofPlugin.ts';
import { useProofs } from './proofs/proofStore.ts';
import { openSession } from './session.ts';
import './draft.css';
import './margin/proofs.css';

/** Proofs and what is made of measurements come after the text, with the program that judges it. */
const margin = fetchedPart(async () => (await import('./margin/Margin.tsx')).Margin);
const foldedProofs = fetchedPart(async () => (await import('./margin/Margin.tsx')).FoldedProofs);
const insertValue = fetchedPart(async () => (await import('./panels/InsertValueSheet.tsx')).InsertValueSheet);
const phrase = fetchedPart(async () => (await import('./panels/PhraseSheet.tsx')).PhraseSheet);

const lastKey = 'nitproof.last-article';
/** Under this width of the room the margin folds under the sentences, rem. */
const narrowUnder = 56;

/** The Draft: the article in the middle, its proofs in the margin. `#/draft/<article>?at=<offset>`. */
export function DraftRoom() {
  const route = useRoute();
  const articles = useLibrary((state) => state.articles);
  const ready = useLibrary((state) => state.state === 'ready');
  const last = localStorage.getItem(lastKey);
  const newest = [...articles].sort((a, b) => (b.date ?? '').localeCompare(a.date ?? ''))[0];
  const wanted = route.path[0] ?? articles.find((article) => article.id === last)?.id ?? newest?.id;
  useEffect(() => registerCommands([...draftCommands, ...blockCommands]), []);
  if (!ready) return null;
  if (!wanted) return <NoArticles />;
  return <OpenArticle key={wanted} id={wanted} at={route.query.at} />;
}

function NoArticles() {
  return (
    <div className="page">
      <h1>Nothing written yet</h1>
      <div className="prose">
        <p>
          An article is about one set. Write a sentence that claims something, such as “peaks at 742 nits in a
          10 % window”, and its proof appears beside it: what was measured, and whether the sentence holds.
        </p>
      </div>
      <button type="button" className="act" onClick={() => openSheet('new-article')}>
        Begin an article
      </button>
    </div>
  );
}

function OpenArticle({ id, at }: { id: string; at: string | undefined }) {
  const library = useLibrary((state) => state.description?.file ?? '');
  const [document, setDocument] = useState<ArticleDocument | null>(null);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const place = useRef<HTMLDivElement>(null);
  const room = useRef<HTMLDivElement>(null);
  const [narrow, setIsNarrow] = useState(false);
  const finding = useFind((state) => state.open);
  const sheet = useSheet((state) => state.sheet);
  const hasArticle = useArticle((state) => state.id === id);
  const isEmpty = useArticle((state) => state.verdicts !== null && state.words < 12);

  useEffect(() => {
    let gone = false;
    void readArticle(id).then((reply) => {
      if (gone) return;
      if (reply.ok) setDocument(reply.value);
      else setFaults(reply.faults);
    });
    return () => {
      gone = true;
    };
  }, [id]);

  useEffect(() => {
    if (!document || !place.current) return;
    const session = openSession(document, library, place.current);
    useSession.setState({ session });
    localStorage.setItem(lastKey, id);
    const stopWaiting = afterPaint(() => void margin.fetch());
    return () => {
      stopWaiting();
      useSession.setState({ session: null });
      session.close();
    };
  }, [document, library, id]);

  useEffect(() => {
    const element = room.current;
    if (!element || !hasArticle) return;
    const observer = new ResizeObserver(() => {
      const rem = Number.parseFloat(getComputedStyle(window.document.documentElement).fontSize);
      const isNarrow = element.clientWidth < narrowUnder * rem;
      setIsNarrow(isNarrow);
      const view = useSession.getState().session?.view;
      if (view) setNarrow(view, isNarrow);
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [hasArticle]);

  // A link from a reading or the Desk names a place in the plain text.
  const offset = at === undefined ? Number.NaN : Number(at);
  const placed = useProofs((state) => state.items.length > 0);
  useEffect(() => {
    const view = useSession.getState().session?.view;
    if (!placed || !view || Number.isNaN(offset)) return;
    const item = proofsOf(view.state).items.find(({ claim }) => claim.start <= offset && claim.end > offset);
    if (item) goToItem(item);
  }, [offset, placed]);

  if (faults.length > 0) {
    return (
      <div className="page">
        <InNav>
          <ArticleSwitcher />
        </InNav>
        <h1>This article cannot be opened</h1>
        <p className="by" role="alert">
          {faults.map(faultLine).join(' ')}
        </p>
      </div>
    );
  }
  return (
    <div className={`draft${narrow ? ' narrow' : ''}`} ref={room}>
      {hasArticle ? (
        <>
          <DraftNav />
          <DraftStatus />
        </>
      ) : null}
      {finding && hasArticle ? <FindLine /> : null}
      <Notices />
      <div className="spread">
        <div className="column">
          <div ref={place} />
          {hasArticle ? <ByLine /> : null}
          {isEmpty ? (
            <p className="teach">
              Write what you measured. A sentence with a number, a comparison or a house word gets a proof in
              the margin as you type: “The average stays under 3”, “A ten per cent window reaches 742 nits”.
            </p>
          ) : null}
        </div>
        {placed ? <Fetched key={String(narrow)} from={narrow ? foldedProofs : margin} /> : null}
      </div>
      {sheet === 'insert-value' && hasArticle ? <Fetched from={insertValue} /> : null}
      {sheet === 'insert-photo' && hasArticle ? <InsertPhotoSheet /> : null}
      {sheet === 'link' && hasArticle ? <LinkSheet /> : null}
      {sheet === 'phrase' && hasArticle ? <Fetched from={phrase} /> : null}
    </div>
  );
}
