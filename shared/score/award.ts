import type { AwardRule } from '../contract/scoreSheet.ts';

/** The award that a total and its criteria earn: the one with the highest threshold; null for none. */
export function awardFor(
  rules: readonly AwardRule[],
  total: number,
  points: ReadonlyMap<string, number | null>,
): string | null {
  const earned = rules.filter(
    ({ from, minimums }) =>
      total >= from - 1e-9 &&
      Object.entries(minimums ?? {}).every(
        ([criterion, least]) => (points.get(criterion) ?? -Infinity) >= least - 1e-9,
      ),
  );
  return earned.sort((one, other) => other.from - one.from)[0]?.name ?? null;
}
