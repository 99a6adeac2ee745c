import type { RunEvidence } from '../../shared/contract/evidence.ts';

const signals = ['SDR', 'HDR10', 'HLG'];

/** Runs without dimming lead: most quantities ask for it to be off. */
const dims = (run: RunEvidence) => (/^(off|none)$/.test(run.conditions.dimming ?? '') ? 0 : 1);

/** Id of the run that took this one's place, if any. */
export function supersededBy(run: RunEvidence, runs: readonly RunEvidence[]): RunEvidence | null {
  return runs.find((other) => other.conditions.supersedes === run.id) ?? null;
}

/** The adjusted run of a delivered one's mode and signal, or the other way round; the newest that stands. */
export function counterpart(run: RunEvidence, runs: readonly RunEvidence[]): RunEvidence | null {
  const fits = runs.filter(
    (other) =>
      other.conditions.mode === run.conditions.mode &&
      other.conditions.signal === run.conditions.signal &&
      other.conditions.stage !== run.conditions.stage &&
      !supersededBy(other, runs),
  );
  return fits.sort((a, b) => (b.conditions.taken ?? '').localeCompare(a.conditions.taken ?? ''))[0] ?? null;
}

/** SDR before HDR, runs that stand before those superseded, then as delivered before adjusted, by mode and day. */
export function entryOrder(runs: readonly RunEvidence[]): RunEvidence[] {
  const key = (run: RunEvidence) => {
    const signal = signals.indexOf(run.conditions.signal);
    return [
      supersededBy(run, runs) ? 1 : 0,
      signal < 0 ? signals.length : signal,
      run.conditions.taken ?? '',
      run.id,
    ] as const;
  };
  const modes = new Map<string, string>();
  for (const run of runs) {
    const first = modes.get(run.conditions.mode);
    const taken = run.conditions.taken ?? '';
    if (first === undefined || taken < first) modes.set(run.conditions.mode, taken);
  }
  return [...runs].sort((a, b) => {
    const [aOld, aSignal, aTaken, aId] = key(a);
    const [bOld, bSignal, bTaken, bId] = key(b);
    return (
      aOld - bOld ||
      aSignal - bSignal ||
      (modes.get(a.conditions.mode) ?? '').localeCompare(modes.get(b.conditions.mode) ?? '') ||
      a.conditions.mode.localeCompare(b.conditions.mode) ||
      b.conditions.stage.localeCompare(a.conditions.stage) ||
      dims(a) - dims(b) ||
      aTaken.localeCompare(bTaken) ||
      aId.localeCompare(bId)
    );
  });
}
