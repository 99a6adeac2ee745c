import { type RunUncertainty, uncertaintyOfRun } from '../certainty/runUncertainty.ts';
import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type {
  Axis,
  MeasuredSeries,
  MeasuredValue,
  Measurement,
  RunMeasurements,
} from '../contract/measurement.ts';
import { catalogueEntry } from './catalogue.ts';
import { type Outcome, type Plan, rowsOf } from './plan.ts';
import { extremesOf, meanOfCounting } from './statistics.ts';

/**
 * Every quantity of a run that its readings allow. Pure: equal evidence gives equal numbers, in any order of rows.
 * Found values are computed at once. Standard uncertainties are computed when they are first read: at first order
 * where the quantity is as good as linear, from the run's seeded draws where it is not.
 */
export function measureRun(unit: UnitEvidence, run: RunEvidence): RunMeasurements {
  return measurementsOf(uncertaintyOfRun(unit, run));
}

/** {@link measureRun} of a run that is already prepared, so that measurements and draws share their work. */
export function measurementsOf(run: RunUncertainty): RunMeasurements {
  const measurements = new Map<string, Measurement>();
  for (const [id, outcome] of run.outcomes) measurements.set(id, measurementOf(run, outcome));
  return measurements;
}

function measurementOf(run: RunUncertainty, outcome: Outcome): Measurement {
  switch (outcome.state) {
    case 'undefined':
      return outcome;
    case 'over':
      return { ...outcome, unit: unitOf(outcome.id) };
    case 'plan':
      return seriesOf(run, outcome);
  }
}

function unitOf(id: string): string {
  return catalogueEntry(id)?.unit ?? '';
}

/** What few readers ask for (a row of evidence, an uncertainty) is made when it is first read. */
function seriesOf(run: RunUncertainty, plan: Plan): MeasuredSeries {
  let values: readonly MeasuredValue[] | undefined;
  const series = {
    state: 'measured',
    id: plan.id,
    unit: plan.unit ?? unitOf(plan.id),
    get values() {
      values ??= valuesOf(run, plan);
      return values;
    },
    notes: plan.notes,
  } as const;
  if (!plan.isSeries) return series;
  const average = meanOfCounting(plan.found, plan.counts);
  return average === undefined ? series : withStatistics(run, plan, series, average);
}

function axisOf(plan: Plan, i: number): { axis?: Axis } {
  const axis = plan.axes[i];
  return axis === undefined ? {} : { axis };
}

function valuesOf(run: RunUncertainty, plan: Plan): MeasuredValue[] {
  const u = run.uOf(plan);
  return Array.from(plan.found, (value, i) => {
    let rows: readonly number[] | undefined;
    return {
      ...axisOf(plan, i),
      value,
      get u() {
        return u.of(i);
      },
      counts: plan.counts[i]!,
      get rows() {
        rows ??= rowsOf(run.prepared.points, plan.inputs[i]!, plan.lights[i]);
        return rows;
      },
    };
  });
}

/** Adds average, max and min in place: copying would read what is made on demand. */
function withStatistics(
  run: RunUncertainty,
  plan: Plan,
  series: MeasuredSeries,
  average: number,
): MeasuredSeries {
  const { max, min } = extremesOf(plan.found, plan.counts);
  const extreme = (name: 'max' | 'min', i: number) => ({
    ...axisOf(plan, i),
    value: plan.found[i]!,
    get u() {
      return run.uOf(plan)[name]();
    },
  });
  return Object.assign(series, {
    average: {
      value: average,
      get u() {
        return run.uOf(plan).average();
      },
    },
    max: extreme('max', max),
    min: extreme('min', min),
  });
}
