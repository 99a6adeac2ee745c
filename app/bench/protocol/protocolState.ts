import type { RunEvidence, UnitEvidence } from '../../../shared/contract/evidence.ts';
import { factStatements } from '../../../shared/contract/unit.ts';
import type { ProtocolStep } from './steps.ts';

export type StepState = 'done' | 'part' | 'missing' | 'out of date';

export interface StepStanding {
  step: ProtocolStep;
  state: StepState;
  /** What was found, or what is still asked for */
  sentence: string;
  /** Run that settles it, newest first, for a link */
  run: string | null;
}

/** The firmware that the set runs now: as its unit says, else that of its newest run. */
export function currentFirmware(unit: UnitEvidence): string | null {
  const newest = [...unit.runs]
    .filter((run) => run.conditions.firmware)
    .sort((a, b) => (b.conditions.taken ?? '').localeCompare(a.conditions.taken ?? ''))[0];
  return newest?.conditions.firmware ?? unit.unit.firmware ?? null;
}

const tidy = (topic: string) => topic.toLowerCase().replaceAll(/[-_\s]+/g, ' ');

/** How each step that concerns this unit stands. */
export function protocolState(unit: UnitEvidence, steps: readonly ProtocolStep[]): StepStanding[] {
  const firmware = currentFirmware(unit);
  return steps
    .filter((step) => step.concerns?.(unit.unit) ?? true)
    .map((step) => ({ step, ...standing(unit, step, firmware) }));
}

function standing(
  unit: UnitEvidence,
  step: ProtocolStep,
  firmware: string | null,
): Omit<StepStanding, 'step'> {
  const { needs } = step;
  if (needs.kind === 'facts') {
    const lacking = needs.keys.filter((key) => factStatements(unit.unit.facts, key).length === 0);
    return lacking.length === 0
      ? { state: 'done', sentence: 'noted', run: null }
      : { state: lacking.length < needs.keys.length ? 'part' : 'missing', sentence: step.asks, run: null };
  }
  if (needs.kind === 'warm-up') {
    if (unit.runs.length === 0) return { state: 'missing', sentence: step.asks, run: null };
    const cold = unit.runs.filter((run) => (run.conditions.warm_up_min ?? 0) < needs.minutes);
    return cold.length === 0
      ? { state: 'done', sentence: `${needs.minutes} minutes or more before every run`, run: null }
      : {
          state: 'part',
          sentence: `${cold.length} of ${unit.runs.length} runs shorter or not noted`,
          run: cold[0]!.id,
        };
  }
  if (needs.kind === 'observation') {
    const seen = unit.observations.filter((each) => tidy(each.topic) === tidy(needs.topic));
    return seen.length > 0
      ? { state: 'done', sentence: seen.length === 1 ? 'noted' : `noted ${seen.length} times`, run: null }
      : { state: 'missing', sentence: step.asks, run: null };
  }
  const counted = unit.runs
    .map((run) => ({ run, count: countIn(run, needs) }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => (b.run.conditions.taken ?? '').localeCompare(a.run.conditions.taken ?? ''));
  const least = needs.kind === 'readings' ? needs.least : 1;
  const full = counted.filter(({ count }) => count >= least);
  if (counted.length === 0) return { state: 'missing', sentence: step.asks, run: null };
  if (full.length === 0) {
    const most = counted.reduce((best, each) => (each.count > best.count ? each : best));
    return { state: 'part', sentence: `${most.count} of ${least}: ${step.asks}`, run: most.run.id };
  }
  const fresh = full.find(
    ({ run }) => !firmware || !run.conditions.firmware || run.conditions.firmware === firmware,
  );
  const { run, count } = fresh ?? full[0]!;
  if (!fresh)
    return {
      state: 'out of date',
      sentence: `of firmware ${run.conditions.firmware}, it now runs ${firmware}`,
      run: run.id,
    };
  return { state: 'done', sentence: `${count} readings`.replace(/^1 readings/, '1 reading'), run: run.id };
}

function countIn(
  run: RunEvidence,
  needs: Extract<ProtocolStep['needs'], { kind: 'readings' | 'single' }>,
): number {
  if (needs.kind === 'single')
    return run.readings.filter(
      (reading) => reading.series === 'single' && reading.quantity === needs.quantity,
    ).length;
  const signalFits =
    needs.signal === 'SDR' ? run.conditions.signal === 'SDR' : run.conditions.signal !== 'SDR';
  if (!signalFits || (needs.stage && run.conditions.stage !== needs.stage)) return 0;
  return run.readings.filter(
    (reading) =>
      reading.series === needs.series && (needs.from === undefined || (reading.seconds ?? 0) >= needs.from),
  ).length;
}
