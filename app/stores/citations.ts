import { create } from 'zustand';
import type { Evidence } from '../../shared/contract/evidence.ts';
import type { House } from '../../shared/contract/house.ts';
import type { ScoreSheet } from '../../shared/contract/scoreSheet.ts';
import { door } from '../door/door.ts';
import type { ArticleFindings, Citation, CitationsReply, CitationsRequest } from './articleFindings.ts';
import { useEvidence } from './evidence.ts';
import { useLibrary } from './library.ts';

interface CitationStore {
  state: 'idle' | 'gathering' | 'ready';
  /** By evidence key, across all articles */
  byEvidence: ReadonlyMap<string, readonly Citation[]>;
  byArticle: ReadonlyMap<string, ArticleFindings>;
  /**
   * Reads and judges every article once for a state of the library; without a change it does nothing. Articles on
   * `unit` come first.
   */
  gather(unit?: string): Promise<void>;
}

/** `unit/<u>/run/<r>#<n>`, as evidence is named across units. */
export function citationKey(unit: string, run: string, row: number): string {
  return `unit/${unit}/run/${run}#${row}`;
}

interface Basis {
  evidence: Evidence;
  house: House;
  scoreSheet: ScoreSheet | null;
  revisions: string;
}

let basis: Basis | null = null;
let worker: Worker | null = null;
let busy = false;

function startWorker(): Worker {
  return new Worker(new URL('./citationsWorker.ts', import.meta.url), { type: 'module' });
}

/** What the articles say about the evidence: which sentences rest on a reading, and how each article stands. */
export const useCitations = create<CitationStore>((set, get) => ({
  state: 'idle',
  byEvidence: new Map(),
  byArticle: new Map(),
  async gather(unit) {
    const { evidence, house, scoreSheet } = useEvidence.getState();
    const { articles } = useLibrary.getState();
    if (!evidence || !house) return;
    const revisions = articles.map((article) => `${article.id}@${article.revision}`).join(' ');
    if (
      basis?.evidence === evidence &&
      basis.house === house &&
      basis.scoreSheet === scoreSheet &&
      basis.revisions === revisions
    )
      return;
    const mine: Basis = { evidence, house, scoreSheet, revisions };
    basis = mine;
    set({ state: 'gathering' });
    const documents = await Promise.all(articles.map(({ id }) => door.ask('article.read', { article: id })));
    if (basis !== mine) return;
    // An idle worker keeps its measurements; one that still judges an older state is not waited for.
    if (busy) worker?.terminate();
    if (busy || !worker) worker = startWorker();
    busy = true;
    const byArticle = new Map<string, ArticleFindings>();
    worker.onmessage = ({ data }: MessageEvent<CitationsReply>) => {
      if (basis !== mine) return;
      if (data.type === 'article') {
        byArticle.set(data.findings.article, data.findings);
        set({ byArticle: new Map(byArticle), byEvidence: indexed(byArticle) });
        return;
      }
      busy = false;
      set({ state: 'ready', byArticle: new Map(byArticle), byEvidence: indexed(byArticle) });
    };
    worker.onerror = () => {
      basis = null;
      worker = null;
      busy = false;
      set({ state: get().byArticle.size > 0 ? 'ready' : 'idle' });
    };
    worker.postMessage({
      units: [...evidence.units.values()],
      articles: evidence.articles,
      house,
      scoreSheet,
      documents: documents
        .flatMap((reply) => (reply.ok ? [reply.value] : []))
        .sort((a, b) => Number(b.meta.unit === unit) - Number(a.meta.unit === unit)),
    } satisfies CitationsRequest);
  },
}));

function indexed(byArticle: ReadonlyMap<string, ArticleFindings>): Map<string, Citation[]> {
  const index = new Map<string, Citation[]>();
  for (const { citations } of byArticle.values()) {
    for (const citation of citations) {
      for (const key of citation.evidence) {
        const list = index.get(key);
        if (list) list.push(citation);
        else index.set(key, [citation]);
      }
    }
  }
  return index;
}
