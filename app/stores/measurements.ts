import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { RunMeasurements } from '../../shared/contract/measurement.ts';
import { measureRun } from '../../shared/measure/index.ts';

const kept = new WeakMap<UnitEvidence, Map<RunEvidence, RunMeasurements>>();

/** Every quantity of a run, computed once for as long as the unit stays the same object in the evidence store. */
export function measurementsOf(unit: UnitEvidence, run: RunEvidence): RunMeasurements {
  const runs = kept.get(unit) ?? new Map<RunEvidence, RunMeasurements>();
  kept.set(unit, runs);
  const before = runs.get(run);
  if (before) return before;
  const measured = measureRun(unit, run);
  runs.set(run, measured);
  return measured;
}
