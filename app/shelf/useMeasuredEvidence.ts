import { useEffect, useState } from 'react';
import type { Evidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { measurementsOf } from '../stores/measurements.ts';

/** Milliseconds of measuring before the window may breathe. */
const slice = 24;

/** The sets measured when the Shelf was last on show, so that it comes back whole. */
let last: { of: Evidence; measured: Evidence } | null = null;

/**
 * The evidence of those sets whose quantities are known by now. The lines stand at once; their values follow set by
 * set, so that a long shelf is there to be read and pressed while it is still being measured.
 */
export function useMeasuredEvidence(evidence: Evidence | null): Evidence | null {
  const [measured, setMeasured] = useState<Evidence | null>(() => last?.measured ?? null);
  useEffect(() => {
    if (!evidence || last?.of === evidence) return;
    const known = last?.measured.units;
    const left: UnitEvidence[] = [];
    const done = new Map<string, UnitEvidence>();
    for (const [id, unit] of evidence.units) {
      if (known?.get(id) === unit) done.set(id, unit);
      else left.push(unit);
    }
    let frame = 0;
    let timer: ReturnType<typeof setTimeout>;
    // After each frame has been shown, so that what is known is seen before more is worked out.
    const soon = () => {
      frame = requestAnimationFrame(() => {
        timer = setTimeout(measure);
      });
    };
    function measure() {
      const until = performance.now() + slice;
      do {
        const unit = left.shift();
        if (!unit) break;
        for (const run of unit.runs) measurementsOf(unit, run);
        done.set(unit.id, unit);
      } while (performance.now() < until);
      const sofar: Evidence = { ...evidence!, units: new Map(done) };
      if (left.length === 0) last = { of: evidence!, measured: sofar };
      else soon();
      setMeasured(sofar);
    }
    soon();
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [evidence]);
  return measured;
}
