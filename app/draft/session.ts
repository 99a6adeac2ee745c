import type { Node } from 'prosemirror-model';
import { EditorView } from 'prosemirror-view';
import type { ArticleChecker, JudgingBench } from '../../shared/claims/index.ts';
import type { Article } from '../../shared/contract/article.ts';
import type { ArticleDocument } from '../../shared/contract/door.ts';
import { clientId, door, person } from '../door/door.ts';
import type { DrawsSource } from '../evidence/drawsShop.ts';
import { afterPaint } from '../shell/afterPaint.ts';
import { closedArticle, useArticle } from '../stores/article.ts';
import { useEvidence } from '../stores/evidence.ts';
import { useLibrary } from '../stores/library.ts';
import { documentOfMarkdown } from './document/readMarkdown.ts';
import { textMapOf } from './document/textMap.ts';
import { markdownOfDocument } from './document/writeMarkdown.ts';
import { readClicks } from './editor/clickedSelection.ts';
import { articleState, storedDocument } from './editor/editorState.ts';
import { photoDrop } from './editor/photoDrop.ts';
import { photoView } from './editor/photoView.ts';
import { createAutosave } from './keeping/autosave.ts';
import { openJournal } from './keeping/journal.ts';
import { holdLease } from './keeping/lease.ts';
import { createCheckLoop } from './proofs/checkLoop.ts';
import { foldPlugin } from './proofs/foldPlugin.ts';
import { proofPlugin } from './proofs/proofPlugin.ts';
import { showProofs, useProofs } from './proofs/proofStore.ts';
import { storedClaimsOf } from './proofs/storedClaims.ts';
import { followUrgency } from './proofs/urgentDraws.ts';

/** One article open in this window: its editor, its verdicts, and the keeping of its text. */
export interface DraftSession {
  id: string;
  view: EditorView;
  /** Stands under the title; the room fills it. */
  byLine: HTMLElement;
  meta(): Article;
  setMeta(meta: Article): void;
  /** What verdicts rest on; null until the evidence is there. */
  bench(): JudgingBench | null;
  /** Verdicts of the text as it is at this moment */
  checkNow(): void;
  /** The text as Markdown */
  markdown(): string;
  /** Replaces the whole text, as one step of the history. */
  showMarkdown(markdown: string): void;
  /** Forgets stored claims whose words are gone; one step of the history. */
  letLostGo(): void;
  flush(): Promise<void>;
  /** Leave this window's text and show what the library holds. */
  reload(): Promise<void>;
  /** Save this window's text over a newer revision. */
  saveOver(): Promise<void>;
  close(): void;
}

type Judging = typeof import('./proofs/judging.ts');

/** There from the first article on that was judged in this window. */
let judging: Judging | null = null;

/** Opens an article in an element. What a crash left unsaved comes back, and the store says from when. */
export function openSession(document: ArticleDocument, library: string, place: HTMLElement): DraftSession {
  const { id } = document;
  const journal = openJournal(localStorage, library, id);
  const left = journal.read();
  const restored = left && left.markdown !== document.markdown ? left : null;
  if (left && !restored) journal.clear();
  let { meta } = document;
  let checker: ArticleChecker | null = null;
  let bench: JudgingBench | null = null;
  let quiet = false;
  let source: DrawsSource | null = null;
  let isClosed = false;

  const byLine = window.document.createElement('div');
  byLine.className = 'by';
  byLine.contentEditable = 'false';
  const plugins = [proofPlugin(byLine, showProofs), foldPlugin(), photoDrop(() => meta.unit)];
  const from = restored ?? document;
  // Where the article's first heading was its title, it stays so.
  const titled = titleOf(documentOfMarkdown(document.markdown)) === document.meta.title;
  const view = new EditorView(place, {
    state: articleState(storedDocument(from.markdown, from.claims), plugins),
    nodeViews: { image: photoView(() => meta.unit) },
    attributes: {
      class: 'article',
      spellcheck: 'true',
      lang: meta.locale ?? 'en-GB',
      'aria-label': 'Article',
      role: 'textbox',
      'aria-multiline': 'true',
    },
    editable: () => !useArticle.getState().following,
    dispatchTransaction(transaction) {
      view.updateState(view.state.apply(transaction));
      if (!transaction.docChanged) return;
      loop.typed();
      if (!quiet) saving.touch();
    },
    handleDOMEvents: {
      blur: () => {
        void saving.flush();
        return false;
      },
    },
  });
  const loop = createCheckLoop(view, () => checker);
  const saving = createAutosave({
    ask: door.ask,
    article: id,
    revision: document.revision,
    read: () => {
      const { doc } = view.state;
      const title = titled ? titleOf(doc) : null;
      if (title && title !== meta.title) meta = { ...meta, title };
      return { meta, markdown: markdownOfDocument(doc), claims: storedClaimsOf(doc, textMapOf(doc)) };
    },
    by: person.name,
    now: () => new Date().toISOString(),
    allowed: () => !useArticle.getState().following,
    journal,
    report: (save) => useArticle.setState({ save }),
  });

  /** Replaces the text without making it unsaved; the undo history begins anew. */
  function show(next: Pick<ArticleDocument, 'markdown' | 'claims'>): void {
    quiet = true;
    view.updateState(articleState(storedDocument(next.markdown, next.claims), plugins));
    quiet = false;
    loop.now();
  }

  async function reload(): Promise<void> {
    const reply = await door.ask('article.read', { article: id });
    if (!reply.ok) return;
    journal.clear();
    meta = reply.value.meta;
    saving.rebase(reply.value.revision);
    useArticle.setState({ meta, restored: null, save: { kind: 'saved', at: reply.value.savedAt } });
    rebuildChecker();
    show(reply.value);
  }

  async function beginJudging(): Promise<void> {
    judging ??= await import('./proofs/judging.ts');
    if (isClosed) return;
    source = judging.openDraws(() => loop.soon());
    rebuildChecker();
  }

  function rebuildChecker(): void {
    if (!judging || !source) return;
    const { evidence, house, scoreSheet } = useEvidence.getState();
    bench = evidence && house ? judging.benchOf(id, meta, evidence, { house, scoreSheet }, source) : null;
    const isFirst = checker === null;
    if (!bench) checker = null;
    else if (checker) checker.rebase(bench);
    else checker = judging.checkerOf(bench);
    if (bench && !useArticle.getState().following) judging.refreshMeasuredValues(view, bench);
    if (isFirst) loop.atOnce();
    else loop.soon();
  }

  const lease = holdLease(door.ask, id, clientId, (holder) => {
    const was = useArticle.getState().following;
    useArticle.setState({ following: !holder });
    view.setProps({});
    // Text brought back after a crash waits for its turn; everything else begins from what the library holds now.
    if (was && holder) void (saving.dirty ? saving.flush() : reload());
  });
  const stops = [
    readClicks(view),
    followUrgency(view, (claims) => bench && source?.prefer(claims, bench)),
    afterPaint(() => void beginJudging()),
    useEvidence.subscribe((now, before) => {
      const { evidence, house, scoreSheet } = before;
      if (now.evidence !== evidence || now.house !== house || now.scoreSheet !== scoreSheet) rebuildChecker();
    }),
    useLibrary.subscribe(({ articles }) => {
      const revision = articles.find((article) => article.id === id)?.revision ?? 0;
      if (revision > saving.revision && !saving.dirty) void reload();
    }),
  ];
  const onHide = () => {
    void saving.flush();
    lease.release();
  };
  const onHidden = () => {
    if (window.document.visibilityState === 'hidden') void saving.flush();
  };
  window.addEventListener('pagehide', onHide);
  window.document.addEventListener('visibilitychange', onHidden);

  useArticle.setState({
    ...closedArticle,
    id,
    meta,
    save: { kind: 'saved', at: document.savedAt },
    restored: restored ? { at: restored.at, savedMarkdown: document.markdown } : null,
  });
  if (restored) saving.touch();

  return {
    id,
    view,
    byLine,
    meta: () => meta,
    bench: () => bench,
    setMeta(next) {
      meta = next;
      useArticle.setState({ meta });
      rebuildChecker();
      saving.touch();
    },
    checkNow: loop.now,
    letLostGo() {
      view.dispatch(view.state.tr.setDocAttribute('lost', []));
      loop.now();
    },
    markdown: () => markdownOfDocument(view.state.doc),
    showMarkdown(markdown) {
      const doc = documentOfMarkdown(markdown);
      view.dispatch(view.state.tr.replaceWith(0, view.state.doc.content.size, doc.content));
      useArticle.setState({ restored: null });
    },
    flush: saving.flush,
    reload,
    async saveOver() {
      const reply = await door.ask('article.read', { article: id });
      if (reply.ok) await saving.saveOver(reply.value.revision);
    },
    close() {
      isClosed = true;
      void saving.flush();
      lease.release();
      loop.stop();
      for (const stop of stops) stop();
      window.removeEventListener('pagehide', onHide);
      window.document.removeEventListener('visibilitychange', onHidden);
      source?.close();
      view.destroy();
      useProofs.setState({ items: [], focus: null });
      useArticle.setState(closedArticle);
    },
  };
}

function titleOf(document: Node): string | null {
  const first = document.firstChild;
  return first?.type.name === 'heading' && first.attrs.level === 1 ? first.textContent : null;
}
