import type { EditorView } from 'prosemirror-view';
import { useArticle } from '../../stores/article.ts';
import { useProofs } from '../proofs/proofStore.ts';
import { type Placeable, type PlacedProof, placeProofs } from './placeProofs.ts';
import { createProofHeights } from './proofHeights.ts';
import { createSentencePlaces } from './sentencePlaces.ts';

export interface MarginLayout {
  /** A proof shows something else than before. */
  changed(proof: HTMLElement): void;
  stop(): void;
}

const gap = { notes: 14, lines: 5 };

/** Proofs this many heights of the room above and below it are kept ready; those farther off are not drawn. */
const ready = 1;

/**
 * Keeps every proof of the margin beside its sentence: in one frame it reads what changed, places all, then writes.
 * Proofs far out of sight keep their place and are hidden, so that a frame costs what is seen and not what is written.
 */
export function keepMarginLaidOut(view: EditorView, margin: HTMLElement): MarginLayout {
  const heights = createProofHeights();
  const sentences = createSentencePlaces();
  const room = margin.closest<HTMLElement>('.room');
  const proofs = () => margin.children as unknown as HTMLCollectionOf<HTMLElement>;
  let placed: readonly (PlacedProof & { foot: number })[] = [];
  let width = -1;
  let line = 0;
  let frame = 0;
  let scrolled = 0;

  function layout(): void {
    frame = 0;
    if (view.isDestroyed || !margin.isConnected) return;
    const shown = [...proofs()];
    if (shown.length === 0) {
      placed = [];
      margin.style.minHeight = '';
      return;
    }
    if (margin.clientWidth !== width) {
      width = margin.clientWidth;
      line = Number.parseFloat(getComputedStyle(margin).fontSize) * 1.46;
      heights.allChanged(shown);
    }
    // Reading.
    const { top } = margin.getBoundingClientRect();
    const places = sentences.read(view);
    // A claim whose words another claim covers whole stands with the one before it.
    let before = top;
    const placeable = shown.map((proof): Placeable => {
      const key = proof.dataset.key!;
      before = places.get(key) ?? before;
      return {
        key,
        ideal: Math.max(0, before - top + 2),
        calm: !isProblem(proof),
        heights: heights.of(proof, line),
      };
    });
    const inSight = sight(top);
    // Writing.
    placed = placeProofs(placeable, useProofs.getState().focus, gap).map((one, index) => ({
      ...one,
      foot: one.top + placeable[index]!.heights[one.form],
    }));
    let foot = 0;
    placed.forEach((one, index) => {
      const proof = shown[index]!;
      // A transform would make each a layer of its own, which every frame of the page pays for.
      const y = `${Math.round(one.top)}px`;
      if (proof.style.top !== y) proof.style.top = y;
      if (proof.dataset.form !== one.form) proof.dataset.form = one.form;
      foot = Math.max(foot, one.foot);
    });
    hideFarOff(shown, inSight);
    const minHeight = `${Math.ceil(foot)}px`;
    if (margin.style.minHeight !== minHeight) margin.style.minHeight = minHeight;
    margin.dataset.placed = 'true';
  }

  /** The stretch of the margin that is drawn, px from its top. */
  function sight(top: number): { from: number; to: number } {
    const frameOf = room?.getBoundingClientRect() ?? { top: 0, height: window.innerHeight };
    const from = frameOf.top - top;
    return { from: from - ready * frameOf.height, to: from + (1 + ready) * frameOf.height };
  }

  function hideFarOff(shown: readonly HTMLElement[], { from, to }: { from: number; to: number }): void {
    const { focus, items } = useProofs.getState();
    const reachable = focus ?? items[0]?.key;
    placed.forEach(({ key, top, foot }, index) => {
      const proof = shown[index];
      if (!proof) return;
      const hidden =
        (foot < from || top > to) && key !== reachable && !proof.contains(document.activeElement);
      if (proof.hidden !== hidden) proof.hidden = hidden;
    });
  }

  /** Everything finds its place in the next frame, never while a key is handled. */
  function soon(): void {
    frame ||= requestAnimationFrame(layout);
  }

  function onScroll(): void {
    scrolled ||= requestAnimationFrame(() => {
      scrolled = 0;
      if (!frame && placed.length > 0) hideFarOff([...proofs()], sight(margin.getBoundingClientRect().top));
    });
  }

  const observer = new ResizeObserver((sizes) => {
    // Its own height is what was written here.
    if (sizes.some(({ target }) => target !== margin) || margin.clientWidth !== width) soon();
  });
  observer.observe(view.dom);
  observer.observe(margin);
  if (room) observer.observe(room);
  room?.addEventListener('scroll', onScroll, { passive: true });
  void document.fonts.ready.then(() => {
    sentences.forget();
    soon();
  });
  const stops = [
    useProofs.subscribe(soon),
    // After a check, words may have moved within their paragraph.
    useArticle.subscribe((now, before) => {
      if (now.verdicts !== before.verdicts) soon();
    }),
  ];
  soon();

  return {
    changed(proof) {
      heights.changed(proof);
      soon();
    },
    stop() {
      for (const stop of stops) stop();
      cancelAnimationFrame(frame);
      cancelAnimationFrame(scrolled);
      observer.disconnect();
      room?.removeEventListener('scroll', onScroll);
    },
  };
}

const problems = ['breaks', 'stale', 'close', 'unproven'];

function isProblem(proof: HTMLElement): boolean {
  return problems.some((name) => proof.classList.contains(name));
}
