import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { SeriesName } from '../contract/reading.ts';
import type { Unit } from '../contract/unit.ts';
import { type ResolvedConditions, resolveConditions } from './conditions.ts';
import { type GreyLevels, greyLevelsOf } from './greyLevels.ts';
import { type Points, pointsOf } from './points.ts';

/** A run made ready for its quantities: conditions resolved, repeats averaged, greys in order. */
export interface PreparedRun {
  unit: Unit;
  conditions: ResolvedConditions;
  points: Points;
  greys: GreyLevels;
}

export function prepareRun(unit: UnitEvidence, run: RunEvidence): PreparedRun {
  const conditions = resolveConditions(run.conditions);
  const points = pointsOf(run.readings);
  return { unit: unit.unit, conditions, points, greys: greyLevelsOf(conditions, points) };
}

/** Points of a series; empty when the run does not have it. */
export function seriesPoints(run: PreparedRun, series: SeriesName): readonly number[] {
  return run.points.bySeries.get(series) ?? [];
}

/**
 * Chromaticity is used only where it was measured and the light suffices for it; no light has none. Where no luminance
 * was read (NaN) the chromaticity stands as it was given.
 */
export function usableXy(run: PreparedRun, point: number): boolean {
  const Y = run.points.found.Y[point]!;
  return run.points.hasXy[point] === 1 && Y !== 0 && !(Y < run.conditions.instrument.xyFrom);
}

/** What a reader must know of a series whatever the quantity: rows left out, defaults used. */
export function seriesNotes(run: PreparedRun, ...series: SeriesName[]): string[] {
  return [...run.conditions.notes, ...series.flatMap((name) => run.points.notes.get(name) ?? [])];
}
