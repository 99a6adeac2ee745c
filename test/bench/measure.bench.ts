/**
 * How long a unit takes: found values with first-order uncertainty, then every draw that a non-linear quantity
 * needs. Run: node test/bench/measure.bench.ts
 */
import { type RunUncertainty, uncertaintyOfRun } from '../../shared/certainty/runUncertainty.ts';
import type { RunEvidence } from '../../shared/contract/evidence.ts';
import { catalogueEntry } from '../../shared/measure/catalogue.ts';
import { measurementsOf } from '../../shared/measure/measureRun.ts';
import type { Plan } from '../../shared/measure/plan.ts';
import { inventedUnit } from '../measure/inventedUnit.ts';

type Times = { least: number; median: number };

/** Processor time of this thread over some rounds: what else the machine does is hardly counted. */
function milliseconds(work: () => void, rounds: number): Times {
  const times: number[] = [];
  for (let i = 0; i < rounds; i += 1) {
    const start = process.threadCpuUsage();
    work();
    const { user, system } = process.threadCpuUsage(start);
    times.push((user + system) / 1000);
  }
  times.sort((one, other) => one - other);
  return { least: times[0]!, median: times[Math.floor(times.length / 2)]! };
}

/** Magnitudes and corners need draws; all others are first order throughout. */
const drawnIds =
  /de2000|deitp|tint|distance|coverage|uniformity\.[^.]+(\.colour)?$|rolloff|de76|de94|volume|\.at\d/;
const isSigned = (id: string) => !drawnIds.test(id);

function readU(run: RunUncertainty, plan: Plan, extremes: boolean): number {
  const u = run.uOf(plan);
  let read = 0;
  for (let i = 0; i < plan.axes.length; i += 1) if (u.of(i) !== null) read += 1;
  if (plan.isSeries && u.average() !== null) read += 1;
  if (plan.isSeries && extremes && u.max() !== null && u.min() !== null) read += 2;
  return read;
}

for (const size of [250, 500, 1000, 2000, 4000]) {
  const unit = inventedUnit(size);
  const readings = unit.runs.reduce((sum, run) => sum + run.readings.length, 0);
  const overRuns = (work: (run: RunEvidence) => void) => () => {
    for (const run of unit.runs) work(run);
  };
  let values = 0;
  const analytic = milliseconds(
    overRuns((run) => {
      const uncertain = uncertaintyOfRun(unit, run);
      measurementsOf(uncertain);
      for (const outcome of uncertain.outcomes.values())
        if (outcome.state === 'plan' && isSigned(outcome.id)) values += readU(uncertain, outcome, false);
    }),
    size <= 1000 ? 25 : 9,
  );
  // Every u that there is of each value, average and extreme: of what a review may mention, and of all quantities, the
  // formulas of older records and the parts of a difference too, which are drawn only when somebody asks for them.
  const drawnOf = (wanted: (id: string) => boolean) =>
    milliseconds(
      overRuns((run) => {
        const uncertain = uncertaintyOfRun(unit, run);
        for (const outcome of uncertain.outcomes.values())
          if (outcome.state === 'plan' && wanted(outcome.id)) values += readU(uncertain, outcome, true);
      }),
      size <= 1000 ? 9 : 5,
    );
  const usual = drawnOf((id) => (catalogueEntry(id)?.importance ?? 0) > 0);
  const all = drawnOf(() => true);
  const shown = ({ least, median }: Times, digits: number) =>
    `${least.toFixed(digits)} ms (median ${median.toFixed(digits)})`;
  console.log(
    `${String(readings).padStart(5)} readings in ${unit.runs.length} runs: found values and first-order u ${shown(analytic, 2)}, ${((1000 * analytic.least) / readings).toFixed(2)} µs a reading; with 2,000 draws where not linear: usual quantities ${shown(usual, 0)}, all ${shown(all, 0)}, ${((1000 * all.least) / readings).toFixed(0)} µs a reading`,
  );
  if (values === 0) throw new Error('nothing was measured');
}
