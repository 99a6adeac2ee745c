import { useEffect, useState } from 'react';
import type { Evidence, RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { RunMeasurements } from '../../shared/contract/measurement.ts';

/** The sets whose quantities are known, and where to ask for them. */
export interface MeasuredEvidence {
  evidence: Evidence;
  measurementsOf(unit: UnitEvidence, run: RunEvidence): RunMeasurements;
}

/** Milliseconds of measuring before the window may breathe. */
const slice = 24;

/** The sets measured when the Shelf was last on show, so that it comes back whole. */
let last: { of: Evidence; measured: MeasuredEvidence } | null = null;

/**
 * The evidence of those sets whose quantities are known by now. The lines stand at once, before the program that
 * measures is even fetched; their values follow set by set, so that a long shelf is there to be read and pressed while
 * it is still being measured.
 */
export function useMeasuredEvidence(evidence: Evidence | null): MeasuredEvidence | null {
  const [measured, setMeasured] = useState<MeasuredEvidence | null>(() => last?.measured ?? null);
  useEffect(() => {
    if (!evidence || last?.of === evidence) return;
    const known = last?.measured.evidence.units;
    const left: UnitEvidence[] = [];
    const done = new Map<string, UnitEvidence>();
    for (const [id, unit] of evidence.units) {
      if (known?.get(id) === unit) done.set(id, unit);
      else left.push(unit);
    }
    let gone = false;
    let frame = 0;
    let timer: ReturnType<typeof setTimeout>;
    // After each frame has been shown, so that what is known is seen before more is worked out.
    const soon = () => {
      frame = requestAnimationFrame(() => {
        timer = setTimeout(() => void measure());
      });
    };
    async function measure() {
      const { measurementsOf } = await import('../stores/measurements.ts');
      if (gone) return;
      const until = performance.now() + slice;
      do {
        const unit = left.shift();
        if (!unit) break;
        for (const run of unit.runs) measurementsOf(unit, run);
        done.set(unit.id, unit);
      } while (performance.now() < until);
      const sofar = { evidence: { ...evidence!, units: new Map(done) }, measurementsOf };
      if (left.length === 0) last = { of: evidence!, measured: sofar };
      else soon();
      setMeasured(sofar);
    }
    soon();
    return () => {
      gone = true;
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [evidence]);
  return measured;
}
