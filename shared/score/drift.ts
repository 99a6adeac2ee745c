/** One use of a word in an article, beside the number it stood for. */
export interface WordUse {
  word: string;
  article: string;
  unit: string;
  /** Calendar date of the article */
  date: string;
  value: number;
  u: number | null;
}

/** Two uses that cannot mean the same: one word for clearly different numbers, or an order of words turned round. */
export interface Drift {
  word: string;
  /** The opposite or stronger word, when two words clash */
  against?: string;
  one: WordUse;
  other: WordUse;
  /** How far apart the two numbers are, larger by smaller */
  ratio: number;
}

/** From this ratio two numbers under one word are clearly different (house value, to start). */
export const clearlyDifferent = 1.5;

/**
 * The same word for numbers whose ratio exceeds `limit` and that differ by more than their expanded uncertainty
 * (2·√(u₁² + u₂²)). One entry a word: the pair that is furthest apart. Positive numbers only.
 */
export function driftOfWords(uses: readonly WordUse[], limit = clearlyDifferent): Drift[] {
  const byWord = Map.groupBy(
    uses.filter(({ value }) => value > 0),
    ({ word }) => word.toLowerCase(),
  );
  const drifts: Drift[] = [];
  for (const [word, group] of byWord) {
    const ordered = [...group].sort(
      (one, other) => one.value - other.value || (one.article < other.article ? -1 : 1),
    );
    const [one, other] = [ordered[0]!, ordered.at(-1)!];
    const ratio = other.value / one.value;
    if (ratio > limit && areApart(one, other)) drifts.push({ word, one, other, ratio });
  }
  return drifts.sort((one, other) => other.ratio - one.ratio || (one.word < other.word ? -1 : 1));
}

/**
 * Opposite words whose numbers stand the wrong way round: 350 "punchy" while 420 is "dim".
 * @param opposites pairs [more, less]
 */
export function turnedWords(
  uses: readonly WordUse[],
  opposites: readonly (readonly [more: string, less: string])[],
): Drift[] {
  return opposites.flatMap(([more, less]) => {
    const low = uses.filter(({ word }) => word.toLowerCase() === more).sort((a, b) => a.value - b.value)[0];
    const high = uses.filter(({ word }) => word.toLowerCase() === less).sort((a, b) => b.value - a.value)[0];
    if (!low || !high || high.value <= low.value || !areApart(low, high)) return [];
    return [{ word: more, against: less, one: low, other: high, ratio: high.value / low.value }];
  });
}

function areApart(one: WordUse, other: WordUse): boolean {
  return Math.abs(one.value - other.value) > 2 * Math.hypot(one.u ?? 0, other.u ?? 0);
}
