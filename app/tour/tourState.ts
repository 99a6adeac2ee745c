/** The first steps, in the order in which they are proposed. */
export const tourSteps = ['open', 'problem', 'proof', 'settle', 'readings', 'desk', 'write'] as const;
export type TourStep = (typeof tourSteps)[number];

/** The demo library's article with mistakes planted in it: what the steps are taken on. */
export const tourArticle = 'vane-50';

/** What was there before a step was taken, so that a step counts only when something changed. */
interface Before {
  /** Most problems and fewest accepted proofs that were seen in the article */
  problems: number;
  accepted: number;
}

export interface Tour {
  /** How often they were begun again or ended: of two windows' records the one with more is the later word. */
  words: number;
  state: 'running' | 'ended' | 'finished';
  done: readonly TourStep[];
  /** Passed over by the person; never ticked */
  skipped: readonly TourStep[];
  /** Null until the article was seen with every verdict known */
  before: Before | null;
  /** Articles of the library when the steps began; null until the library was read */
  articles: readonly string[] | null;
}

/** What the window shows at one moment, as far as the steps ask. */
export interface Sight {
  room: string;
  /** Ids of every article of the library; null while it is being read */
  articles: readonly string[] | null;
  /** Article open in the Draft with its proofs on show; null elsewhere */
  article: string | null;
  /** A command of going from problem to problem has just brought one into focus. */
  wentToProblem: boolean;
  /** Keyboard or pointer is in the proof of a problem. */
  isInProof: boolean;
  /** Null while a verdict is still being worked out */
  counts: { problems: number; accepted: number } | null;
  /** Run on show at the Bench */
  run: string | null;
}

export type TourEvent =
  | { type: 'saw'; sight: Sight }
  | { type: 'skip' }
  | { type: 'end' }
  | { type: 'begin' };

export const freshTour: Tour = {
  words: 0,
  state: 'running',
  done: [],
  skipped: [],
  before: null,
  articles: null,
};

/** The step that is proposed now; null when none is. */
export function nextStep(tour: Tour): TourStep | null {
  if (tour.state !== 'running') return null;
  return tourSteps.find((step) => !tour.done.includes(step) && !tour.skipped.includes(step)) ?? null;
}

/**
 * The steps after something happened. A step is ticked when the window shows that it was taken, whichever was
 * proposed; what was ticked stays so. The same object when nothing changed.
 */
export function tourAfter(tour: Tour, event: TourEvent): Tour {
  if (event.type === 'begin') return { ...freshTour, words: tour.words + 1 };
  if (event.type === 'end')
    return tour.state === 'ended' ? tour : { ...tour, state: 'ended', words: tour.words + 1 };
  if (tour.state !== 'running') return tour;
  if (event.type === 'skip') {
    const step = nextStep(tour);
    return step ? finishedIfAll({ ...tour, skipped: [...tour.skipped, step] }) : tour;
  }
  const { sight } = event;
  const before = beforeWith(tour.before, sight);
  const articles = tour.articles ?? sight.articles;
  const taken = tourSteps.filter((step) => !tour.done.includes(step) && isTaken[step](sight, tour));
  if (taken.length === 0 && before === tour.before && articles === tour.articles) return tour;
  return finishedIfAll({ ...tour, done: [...tour.done, ...taken], before, articles });
}

const isTaken: Record<TourStep, (sight: Sight, tour: Tour) => boolean> = {
  open: ({ article }) => article === tourArticle,
  problem: ({ article, wentToProblem }) => article === tourArticle && wentToProblem,
  proof: ({ article, isInProof }) => article === tourArticle && isInProof,
  settle: ({ article, counts }, { before }) =>
    article === tourArticle &&
    counts !== null &&
    before !== null &&
    (counts.problems < before.problems || counts.accepted > before.accepted),
  readings: ({ room, run }) => room === 'bench' && run !== null,
  desk: ({ room }) => room === 'desk',
  write: ({ article }, { articles }) => article !== null && articles !== null && !articles.includes(article),
};

function beforeWith(before: Before | null, { article, counts }: Sight): Before | null {
  if (article !== tourArticle || counts === null) return before;
  const problems = Math.max(before?.problems ?? 0, counts.problems);
  const accepted = Math.min(before?.accepted ?? Number.POSITIVE_INFINITY, counts.accepted);
  return before?.problems === problems && before.accepted === accepted ? before : { problems, accepted };
}

function finishedIfAll(tour: Tour): Tour {
  return nextStep(tour) === null ? { ...tour, state: 'finished' } : tour;
}

/** What was remembered, or fresh when it is no tour. */
export function rememberedTour(text: string | null): Tour {
  try {
    const kept = JSON.parse(text ?? 'null') as Partial<Tour> | null;
    if (kept === null || !['running', 'ended', 'finished'].includes(kept.state ?? '')) return freshTour;
    const known = (steps: unknown) =>
      Array.isArray(steps) ? tourSteps.filter((step) => steps.includes(step)) : [];
    return {
      words: Number.isSafeInteger(kept.words) ? kept.words! : 0,
      state: kept.state!,
      done: known(kept.done),
      skipped: known(kept.skipped),
      before: isBefore(kept.before) ? kept.before : null,
      articles: Array.isArray(kept.articles) ? kept.articles : null,
    };
  } catch {
    return freshTour;
  }
}

function isBefore(value: unknown): value is Before {
  const { problems, accepted } = (value ?? {}) as Partial<Before>;
  return typeof problems === 'number' && typeof accepted === 'number';
}
