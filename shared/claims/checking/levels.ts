import type { Selector, StatedConditions } from '../../contract/check.ts';
import type { Axis, MeasuredSeries } from '../../contract/measurement.ts';
import { directionOf } from './terms.ts';

/**
 * One level of a series as a sentence sees it. `members` are the places in the measurement (and its draws) that it
 * stands for: one, or the two sides of an unsigned angle, of which the worse counts.
 */
export interface Level {
  axis: Axis | undefined;
  members: readonly number[];
  counts: boolean;
  value: number;
  u: number | null;
  rows: readonly number[];
}

export interface Levels {
  levels: readonly Level[];
  /** How the members of a level make one value */
  fold: 'one' | 'min' | 'max';
  /** Value of a level, where `read` gives the value of a member: found values or one draw. */
  valueOf(level: Level, read: (member: number) => number): number;
}

const tolerance = 1e-9;

/** The levels of a series; a series over angles is folded to unsigned angles unless the sentence names a side. */
export function levelsOf(series: MeasuredSeries, conditions: StatedConditions, selector: Selector): Levels {
  const signed = typeof selector.at === 'number' && selector.at < 0;
  if (series.id.startsWith('angle.') && !signed) return foldedLevels(series, conditions);
  let known = plainLevels.get(series);
  if (!known) {
    const levels = series.values.map((value, i) => ({ ...value, axis: value.axis, members: [i] }));
    known = { levels, fold: 'one', valueOf: (level, read) => read(level.members[0]!) };
    plainLevels.set(series, known);
  }
  return known;
}

/** Series are never changed once measured. */
const plainLevels = new WeakMap<MeasuredSeries, Levels>();

function foldedLevels(series: MeasuredSeries, conditions: StatedConditions): Levels {
  const fold = directionOf(series.id) === 'higher' ? 'min' : 'max';
  const worst = Math[fold];
  const { side } = conditions;
  const sign = side === 'left' || side === 'down' ? -1 : side === 'right' || side === 'up' ? 1 : 0;
  const groups = new Map<number, number[]>();
  series.values.forEach(({ axis }, i) => {
    if (typeof axis !== 'number' || axis * sign < 0) return;
    groups.set(Math.abs(axis), [...(groups.get(Math.abs(axis)) ?? []), i]);
  });
  const levels = [...groups]
    .sort(([one], [other]) => one - other)
    .map(([axis, members]) => {
      const value = worst(...members.map((i) => series.values[i]!.value));
      const worse = series.values[members.find((i) => series.values[i]!.value === value)!]!;
      const counts = members.some((i) => series.values[i]!.counts);
      return { axis, members, counts, value, u: worse.u, rows: worse.rows };
    });
  return { levels, fold, valueOf: (level, read) => worst(...level.members.map(read)) };
}

export function sameAxis(one: Axis | undefined, other: Axis | undefined): boolean {
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) < tolerance;
  return (
    one !== undefined && other !== undefined && String(one).toLowerCase() === String(other).toLowerCase()
  );
}

/** True for an axis inside the range that a selector names; a selector without a range takes all. */
export function inRange(axis: Axis | undefined, selector: Selector): boolean {
  if (selector.from === undefined && selector.to === undefined) return true;
  if (typeof axis !== 'number') return false;
  const { from = Number.NEGATIVE_INFINITY, to = Number.POSITIVE_INFINITY } = selector;
  const overFrom = selector.fromIncluded === false ? axis > from + tolerance : axis >= from - tolerance;
  const underTo = selector.toIncluded === false ? axis < to - tolerance : axis <= to + tolerance;
  return overFrom && underTo;
}
