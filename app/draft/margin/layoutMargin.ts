import { type Placeable, type ProofForm, placeProofs } from './placeProofs.ts';

/** Whole heights of proofs shown as a line cannot be measured; they keep the last one measured. */
export type MainHeights = Map<string, number>;

const gap = { notes: 14, lines: 5 };

/**
 * Puts every proof of the margin beside its sentence: reads all heights and places once, then writes all. Called
 * in an animation frame, never while a key is handled.
 */
export function layoutMargin(
  article: HTMLElement,
  margin: HTMLElement,
  focus: string | null,
  mains: MainHeights,
): void {
  const proofs = [...margin.querySelectorAll<HTMLElement>(':scope > .proof')];
  if (proofs.length === 0) {
    margin.style.minHeight = '';
    return;
  }
  // Reading.
  const { top } = margin.getBoundingClientRect();
  const lineHeight = Number.parseFloat(getComputedStyle(margin).fontSize) * 1.46;
  const places = new Map<string, number>();
  for (const span of article.querySelectorAll<HTMLElement>('[data-proof]')) {
    const key = span.dataset.proof!;
    if (!places.has(key)) places.set(key, span.getClientRects()[0]?.top ?? 0);
  }
  const placeable: Placeable[] = [];
  // A claim whose words another claim covers whole has no span of its own; it stands with the one before it.
  let before = top;
  for (const proof of proofs) {
    const key = proof.dataset.key!;
    before = places.get(key) ?? before;
    const [main, ...rest] = proof.children as unknown as HTMLElement[];
    if (proof.dataset.form !== 'line') mains.set(key, main!.offsetHeight);
    const mainHeight = mains.get(key) ?? main!.offsetHeight;
    let figure = 0;
    let more = 0;
    for (const part of rest) {
      if (part.className === 'proof-figure') figure = part.scrollHeight;
      else more = part.scrollHeight;
    }
    const calm = !['breaks', 'stale', 'close', 'unproven'].some((name) => proof.classList.contains(name));
    const stale = proof.classList.contains('stale') ? more : 0;
    const full = mainHeight + (proof.classList.contains('breaks') ? figure : 0) + stale;
    placeable.push({
      key,
      ideal: Math.max(0, before - top + 2),
      calm,
      heights: { open: mainHeight + figure + more, full, brief: mainHeight + stale, line: lineHeight },
    });
  }
  const placed = placeProofs(placeable, focus, gap);
  // Writing.
  let foot = 0;
  placed.forEach(({ top: at, form }, index) => {
    const proof = proofs[index]!;
    const y = `translateY(${Math.round(at)}px)`;
    if (proof.style.transform !== y) proof.style.transform = y;
    if (proof.dataset.form !== form) proof.dataset.form = form satisfies ProofForm;
    foot = Math.max(foot, at + placeable[index]!.heights[form]);
  });
  margin.style.minHeight = `${Math.ceil(foot)}px`;
  margin.dataset.placed = 'true';
}
