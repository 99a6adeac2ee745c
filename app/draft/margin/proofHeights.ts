import type { ProofForm } from './placeProofs.ts';

/** Heights of a proof's three parts when shown whole, px. */
interface Parts {
  main: number;
  figure: number;
  more: number;
}

export interface ProofHeights {
  /** What it shows has changed. It stands whole until it has been measured. */
  changed(proof: HTMLElement): void;
  /** The column has another width: all are measured again. */
  allChanged(proofs: Iterable<HTMLElement>): void;
  /** Heights of its forms; reads the page only where something changed. */
  of(proof: HTMLElement, line: number): Readonly<Record<ProofForm, number>>;
}

/**
 * Measures each proof once for what it shows. One that is cut to its form or out of sight has no whole height to
 * read, so it keeps the last one.
 */
export function createProofHeights(): ProofHeights {
  const known = new WeakMap<HTMLElement, Parts>();

  function changed(proof: HTMLElement): void {
    known.delete(proof);
    proof.dataset.form = 'unmeasured';
    proof.hidden = false;
  }

  return {
    changed,
    allChanged(proofs) {
      for (const proof of proofs) changed(proof);
    },
    of(proof, line) {
      let parts = known.get(proof);
      if (!parts) {
        parts = measure(proof);
        known.set(proof, parts);
      }
      const { main, figure, more } = parts;
      const stale = proof.classList.contains('stale') ? more : 0;
      const shown = proof.classList.contains('breaks') ? figure : 0;
      return { open: main + figure + more, full: main + shown + stale, brief: main + stale, line };
    },
  };
}

function measure(proof: HTMLElement): Parts {
  const parts: Parts = { main: 0, figure: 0, more: 0 };
  for (const part of proof.children) {
    if (part.className === 'proof-main') parts.main = (part as HTMLElement).offsetHeight;
    else if (part.className === 'proof-figure') parts.figure = part.scrollHeight;
    else parts.more = part.scrollHeight;
  }
  return parts;
}
