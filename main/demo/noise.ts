/** A source of standard normal deviates; the same seed gives the same sequence on every machine. */
export type Noise = () => number;

/**
 * Seeded noise: mulberry32 (public domain integer generator) through the polar-free Box–Muller transform.
 * The text is folded into the seed with FNV-1a, so that every run has its own sequence by its name.
 */
export function seededNoise(seed: string): Noise {
  let state = 0x811c9dc5;
  for (const letter of seed) state = Math.imul(state ^ letter.codePointAt(0)!, 0x01000193);
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}
