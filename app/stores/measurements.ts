import { createMeasurer } from '../../shared/certainty/index.ts';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { QuantityDraws, RunMeasurements } from '../../shared/contract/measurement.ts';

/** The window's one memory of quantities and draws, by the digest of each run. */
const measurer = createMeasurer();

/** Every quantity of a run; computed once for a state of its readings. */
export function measurementsOf(unit: UnitEvidence, run: RunEvidence): RunMeasurements {
  return measurer.measure(unit, run);
}

/** Joint draws of one quantity; null when it carries no uncertainty. */
export function drawsOf(unit: UnitEvidence, run: RunEvidence, id: string): QuantityDraws | null {
  return measurer.draws(unit, run, id);
}
