import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { QuantityDraws, RunMeasurements } from '../contract/measurement.ts';
import { measurementsOf } from '../measure/measureRun.ts';
import { type RunUncertainty, uncertaintyOfRun } from './runUncertainty.ts';

/** Measurements and draws, each made once for a state of the evidence. */
export interface Measurer {
  measure(unit: UnitEvidence, run: RunEvidence): RunMeasurements;
  /** Null: no such quantity, undefined, a bound only, or one that carries no u. */
  draws(unit: UnitEvidence, run: RunEvidence, id: string): QuantityDraws | null;
}

/** Bytes of draws that are kept; the least recently used go first. */
const keptBytes = 128 * 1024 * 1024;

type Entry = { key: string; run: RunUncertainty; measurements?: RunMeasurements };

/** A {@link Measurer} that remembers by the run's digest and by what else of the unit a quantity reads. */
export function createMeasurer(limitBytes = keptBytes): Measurer {
  const entries = new Map<string, Entry>();
  const drawn = new Map<string, QuantityDraws | null>();
  let bytes = 0;
  /** Evidence is never changed in place: the same unit and run have the same entry. */
  const byUnit = new WeakMap<UnitEvidence, WeakMap<RunEvidence, Entry>>();
  const entryOf = (unit: UnitEvidence, run: RunEvidence): Entry => {
    let byRun = byUnit.get(unit);
    if (!byRun) {
      byRun = new WeakMap();
      byUnit.set(unit, byRun);
    }
    let entry = byRun.get(run);
    if (!entry) {
      const { panel, backlight, zones } = unit.unit;
      const key = JSON.stringify([unit.id, panel, backlight, zones, run.id, run.digest]);
      entry = entries.get(key) ?? { key, run: uncertaintyOfRun(unit, run) };
      entries.set(key, entry);
      byRun.set(run, entry);
    }
    return entry;
  };
  return {
    measure(unit, run) {
      const entry = entryOf(unit, run);
      entry.measurements ??= measurementsOf(entry.run);
      return entry.measurements;
    },
    draws(unit, run, id) {
      const entry = entryOf(unit, run);
      const key = `${entry.key}|${id}`;
      const remembered = drawn.get(key);
      if (remembered !== undefined) {
        drawn.delete(key);
        drawn.set(key, remembered);
        return remembered;
      }
      const outcome = entry.run.outcomes.get(id);
      const draws = outcome?.state === 'plan' ? entry.run.draws(outcome) : null;
      drawn.set(key, draws);
      bytes += draws?.values.byteLength ?? 0;
      for (const [oldest, old] of drawn) {
        if (bytes <= limitBytes || oldest === key) break;
        bytes -= old?.values.byteLength ?? 0;
        drawn.delete(oldest);
      }
      return draws;
    },
  };
}

/**
 * Joint draws of one quantity of one run, seeded from the run's digest: draw d of every quantity, run and unit is
 * the same imagined world. Null: no such quantity, undefined, a bound only, or one that carries no u.
 */
export function drawQuantity(unit: UnitEvidence, run: RunEvidence, id: string): QuantityDraws | null {
  const prepared = uncertaintyOfRun(unit, run);
  const outcome = prepared.outcomes.get(id);
  return outcome?.state === 'plan' ? prepared.draws(outcome) : null;
}
