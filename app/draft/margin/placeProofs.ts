/** How much of a proof is shown. */
export type ProofForm = 'open' | 'full' | 'brief' | 'line';

/** A proof to be placed, with the heights of its forms in px. */
export interface Placeable {
  key: string;
  /** Where its sentence begins, px from the margin's top */
  ideal: number;
  /** Holding proofs and opinions shrink first. */
  calm: boolean;
  heights: Readonly<Record<ProofForm, number>>;
}

export interface PlacedProof {
  key: string;
  top: number;
  form: ProofForm;
}

/** How far a proof may stand from its sentence before calm ones, then figures, then all shrink, px. */
const patience = { calm: 36, figures: 90, all: 180 };

/**
 * Sidenotes on one column: nothing overlaps, order is the text's order, the proof in focus stands beside its
 * sentence and the others move as little as they can (least squares, by pooling neighbours that touch). Where
 * that is not enough room, calm ones shrink to one line, then problems give up their figure, then all are lines.
 */
export function placeProofs(proofs: readonly Placeable[], focus: string | null, gap: number): PlacedProof[] {
  const forms = proofs.map(
    (proof): ProofForm => (proof.key === focus ? 'open' : proof.calm ? 'brief' : 'full'),
  );
  let tops = arrange(proofs, forms, focus, gap);
  const steps: { limit: number; shrink: (index: number) => ProofForm | null }[] = [
    { limit: patience.calm, shrink: (index) => (proofs[index]!.calm ? 'line' : null) },
    { limit: patience.figures, shrink: (index) => (forms[index] === 'full' ? 'brief' : null) },
    { limit: patience.all, shrink: () => 'line' },
  ];
  for (const { limit, shrink } of steps) {
    const crowded = crowdedGroups(proofs, forms, tops, gap, limit);
    if (crowded.length === 0) break;
    for (const index of crowded) {
      if (proofs[index]!.key === focus) continue;
      forms[index] = shrink(index) ?? forms[index]!;
    }
    tops = arrange(proofs, forms, focus, gap);
  }
  return proofs.map((proof, index) => ({ key: proof.key, top: tops[index]!, form: forms[index]! }));
}

/** Indices of proofs in groups that touch and in which somebody stands too far from the sentence. */
function crowdedGroups(
  proofs: readonly Placeable[],
  forms: readonly ProofForm[],
  tops: readonly number[],
  gap: number,
  limit: number,
): number[] {
  const crowded: number[] = [];
  let start = 0;
  for (let index = 1; index <= proofs.length; index += 1) {
    const touches =
      index < proofs.length &&
      tops[index]! <= tops[index - 1]! + proofs[index - 1]!.heights[forms[index - 1]!] + gap + 0.5;
    if (touches) continue;
    const group = Array.from({ length: index - start }, (_, offset) => start + offset);
    if (group.some((at) => Math.abs(tops[at]! - proofs[at]!.ideal) > limit)) crowded.push(...group);
    start = index;
  }
  return crowded;
}

function arrange(
  proofs: readonly Placeable[],
  forms: readonly ProofForm[],
  focus: string | null,
  gap: number,
): number[] {
  // In shifted coordinates (top less everything above) "no overlap" is "never decreasing".
  const above: number[] = [];
  let sum = 0;
  for (let index = 0; index < proofs.length; index += 1) {
    above.push(sum);
    sum += proofs[index]!.heights[forms[index]!] + gap;
  }
  const wanted = proofs.map((proof, index) => proof.ideal - above[index]!);
  const pin = focus === null ? -1 : proofs.findIndex((proof) => proof.key === focus);
  let shifted: number[];
  if (pin < 0) shifted = pool(wanted);
  else {
    // Where all above it do not fit over its sentence, the focus too has to move down: the margin starts at 0.
    const held = Math.max(wanted[pin]!, 0);
    shifted = [
      ...pool(wanted.slice(0, pin)).map((value) => Math.min(value, held)),
      held,
      ...pool(wanted.slice(pin + 1)).map((value) => Math.max(value, held)),
    ];
  }
  return shifted.map((value, index) => Math.max(value, 0) + above[index]!);
}

/** Isotonic regression by pooling adjacent violators (Ayer et al. 1955, from memory). */
function pool(values: readonly number[]): number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const value of values) {
    let last = { sum: value, count: 1 };
    while (pools.length > 0 && pools.at(-1)!.sum / pools.at(-1)!.count > last.sum / last.count) {
      const before = pools.pop()!;
      last = { sum: before.sum + last.sum, count: before.count + last.count };
    }
    pools.push(last);
  }
  return pools.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count));
}
