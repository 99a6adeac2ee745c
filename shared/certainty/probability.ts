/**
 * Share of the imagined worlds in which a statement holds (JCGM 106: the probability of conformity).
 * Ask about all parts of a statement in one call: a joint probability, never a product.
 */
export function probability(count: number, holdsAt: (draw: number) => boolean): number {
  let holding = 0;
  for (let draw = 0; draw < count; draw += 1) if (holdsAt(draw)) holding += 1;
  return holding / count;
}

/** Coverage factor of every ± in a text for people. */
export const coverageFactor = 2;

/** Expanded uncertainty U = 2u, as printed after ±. */
export function expanded(u: number): number {
  return coverageFactor * u;
}
