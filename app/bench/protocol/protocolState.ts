import type { RunEvidence, UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { ProtocolReply, ProtocolStepReply as ProtocolStep } from '../../../shared/contract/protocol.ts';

export type StepState = 'done' | 'missing' | 'out of date';

export interface StepStanding {
  step: ProtocolStep;
  state: StepState;
  /** What was found, or why it is asked for */
  sentence: string;
  /** Run that settles it, newest first, for a link */
  run: string | null;
}

const byDay = (a: RunEvidence, b: RunEvidence) =>
  (b.conditions.taken ?? '').localeCompare(a.conditions.taken ?? '');

/** The firmware that the set runs now: that of its newest run, else as its unit says. */
export function currentFirmware(unit: UnitEvidence): string | null {
  const newest = [...unit.runs].filter((run) => run.conditions.firmware).sort(byDay)[0];
  return newest?.conditions.firmware ?? unit.unit.firmware ?? null;
}

/** How each step stands; readings of an older firmware than the set runs now are out of date. */
export function protocolState(unit: UnitEvidence, protocol: ProtocolReply): StepStanding[] {
  const firmware = currentFirmware(unit);
  return protocol.steps.map((step) => ({ step, ...standing(unit, step, firmware) }));
}

function standing(
  unit: UnitEvidence,
  step: ProtocolStep,
  firmware: string | null,
): Omit<StepStanding, 'step'> {
  if (step.topic !== undefined) {
    const count = step.foundIn.length;
    return count > 0
      ? { state: 'done', sentence: count === 1 ? 'noted once' : `noted ${count} times`, run: null }
      : { state: 'missing', sentence: step.why ?? '', run: null };
  }
  const ids = new Set(step.foundIn.map((place) => place.replace(/^run\//, '')));
  const runs = unit.runs.filter((run) => ids.has(run.id)).sort(byDay);
  const newest = runs[0];
  if (!newest) return { state: 'missing', sentence: step.why ?? '', run: null };
  const fresh = runs.find(
    (run) => !firmware || !run.conditions.firmware || run.conditions.firmware === firmware,
  );
  if (!fresh)
    return {
      state: 'out of date',
      sentence: `measured on firmware ${newest.conditions.firmware}; the set now runs ${firmware}`,
      run: newest.id,
    };
  const count = fresh.readings.filter(
    (reading) =>
      reading.series === step.series && (step.quantity === undefined || reading.quantity === step.quantity),
  ).length;
  return { state: 'done', sentence: count === 1 ? '1 reading' : `${count} readings`, run: fresh.id };
}

/** Runs begun before the set was warm, or without a note of it. */
export function coldRuns(unit: UnitEvidence, minutes: number): RunEvidence[] {
  return unit.runs.filter((run) => (run.conditions.warm_up_min ?? 0) < minutes);
}
