/** One member of a cohort with its value. */
export interface Ranked {
  id: string;
  value: number;
}

/**
 * Places in a cohort, 1 for the best; members within 1e-9 share a place and the next is counted on (1, 2, 2, 4).
 * Sorted by place, then id.
 */
export function cohortRanks(
  members: readonly Ranked[],
  direction: 'higher' | 'lower',
): (Ranked & { place: number })[] {
  const sign = direction === 'higher' ? 1 : -1;
  return members
    .map((member) => ({
      ...member,
      place: 1 + members.filter((other) => sign * (other.value - member.value) > 1e-9).length,
    }))
    .sort((one, other) => one.place - other.place || (one.id < other.id ? -1 : 1));
}
