import { stackNotes } from './stackNotes.ts';

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

/** Space between two proofs, px: notes stand apart, lines of a list stand close. */
export interface Spacing {
  notes: number;
  lines: number;
}

function between(before: ProofForm, after: ProofForm | undefined, gap: Spacing): number {
  return before === 'line' && after === 'line' ? gap.lines : gap.notes;
}

/** How far a proof may stand from its sentence before calm ones, then what else problems show, then all shrink, px. */
const patience = { calm: 36, actions: 90, figures: 130, all: 240 };

/**
 * Sidenotes on one column: nothing overlaps, order is the text's order, the proof in focus stands beside its
 * sentence and the others move as little as they can, up or down (`stackNotes`). Where
 * that is not enough room, calm ones shrink to one line, then problems give up what one can do, then their figure;
 * only where even their sentences do not fit does one after another become a line, the farthest off first. What
 * stands above the focus becomes lines where it would push the focus off its sentence.
 */
export function placeProofs(proofs: readonly Placeable[], focus: string | null, gap: Spacing): PlacedProof[] {
  const forms = proofs.map(
    (proof): ProofForm => (proof.key === focus ? 'open' : proof.calm ? 'brief' : 'open'),
  );
  let tops = arrange(proofs, forms, focus, gap);
  const shrinkWhere = (
    limit: number,
    whom: 'group' | 'farthest',
    shrink: (form: ProofForm, calm: boolean) => ProofForm,
  ) => {
    let shrunk = false;
    for (const index of crowded(proofs, forms, tops, focus, gap, limit, whom)) {
      const proof = proofs[index]!;
      const form = proof.key === focus ? 'open' : shrink(forms[index]!, proof.calm);
      shrunk ||= form !== forms[index];
      forms[index] = form;
    }
    if (shrunk) tops = arrange(proofs, forms, focus, gap);
    return shrunk;
  };
  shrinkWhere(patience.calm, 'group', (form, calm) => (calm ? 'line' : form));
  shrinkWhere(patience.actions, 'group', (form) => (form === 'open' ? 'full' : form));
  shrinkWhere(patience.figures, 'group', (form) => (form === 'full' ? 'brief' : form));
  for (let turn = 0; turn < proofs.length; turn += 1) {
    if (!shrinkWhere(patience.all, 'farthest', () => 'line')) break;
  }
  const pin = focus === null ? -1 : proofs.findIndex((proof) => proof.key === focus);
  for (const index of whatGivesWayAbove(proofs, forms, pin)) {
    if (tops[pin]! <= proofs[pin]!.ideal) break;
    forms[index] = 'line';
    tops = arrange(proofs, forms, focus, gap);
  }
  return proofs.map((proof, index) => ({ key: proof.key, top: tops[index]!, form: forms[index]! }));
}

/** Above the focus, in the order in which they become lines to make it room: what holds first, then from the top. */
function whatGivesWayAbove(proofs: readonly Placeable[], forms: readonly ProofForm[], pin: number): number[] {
  return Array.from({ length: Math.max(pin, 0) }, (_, index) => index)
    .filter((index) => forms[index] !== 'line')
    .sort((a, b) => Number(proofs[b]!.calm) - Number(proofs[a]!.calm) || a - b);
}

/** Proofs in groups that touch and in which somebody stands too far off; or in each the farthest that can shrink. */
function crowded(
  proofs: readonly Placeable[],
  forms: readonly ProofForm[],
  tops: readonly number[],
  focus: string | null,
  gap: Spacing,
  limit: number,
  whom: 'group' | 'farthest',
): number[] {
  const found: number[] = [];
  // A line of something that holds may stand farther off than a problem.
  const patienceOf = (at: number) => (proofs[at]!.calm && forms[at] === 'line' ? 0.4 : 1);
  const distance = (at: number) => Math.abs(tops[at]! - proofs[at]!.ideal) * patienceOf(at);
  let start = 0;
  for (let index = 1; index <= proofs.length; index += 1) {
    const foot = tops[index - 1]! + proofs[index - 1]!.heights[forms[index - 1]!];
    if (index < proofs.length && tops[index]! <= foot + between(forms[index - 1]!, forms[index], gap) + 0.5)
      continue;
    const group = Array.from({ length: index - start }, (_, offset) => start + offset);
    start = index;
    if (!group.some((at) => distance(at) > limit)) continue;
    if (whom === 'group') found.push(...group);
    else {
      const [farthest] = group
        .filter((at) => forms[at] !== 'line' && proofs[at]!.key !== focus)
        .sort((a, b) => distance(b) - distance(a));
      if (farthest !== undefined) found.push(farthest);
    }
  }
  return found;
}

/** What holds gives way to problems: they stand at their sentences first. */
const calmWeight = 0.2;

function arrange(
  proofs: readonly Placeable[],
  forms: readonly ProofForm[],
  focus: string | null,
  gap: Spacing,
): number[] {
  return stackNotes(
    proofs.map(({ ideal, calm, heights }, index) => ({
      ideal,
      height: heights[forms[index]!],
      gap: between(forms[index]!, forms[index + 1], gap),
      weight: calm ? calmWeight : 1,
    })),
    focus === null ? -1 : proofs.findIndex((proof) => proof.key === focus),
  );
}
