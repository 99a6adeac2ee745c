import { type RunUncertainty, uncertaintyOfRun } from '../certainty/runUncertainty.ts';
import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type {
  Axis,
  Extreme,
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
  const series = new LazySeries(run, plan);
  if (!plan.isSeries) return series;
  const average = meanOfCounting(plan.found, plan.counts);
  if (average === undefined) return series;
  const { max, min } = extremesOf(plan.found, plan.counts);
  series.average = new LazyEstimate(run, plan, 'average', average, undefined);
  series.max = new LazyEstimate(run, plan, 'max', plan.found[max]!, plan.axes[max]);
  series.min = new LazyEstimate(run, plan, 'min', plan.found[min]!, plan.axes[min]);
  return series;
}

/*
 * Own properties, so that copies and messages carry them; and one getter for all objects of a kind, because an engine
 * keeps a layout of its own for each object with getters of its own.
 */

class LazySeries implements MeasuredSeries {
  readonly state = 'measured';
  declare readonly id: string;
  declare readonly unit: string;
  declare readonly values: readonly MeasuredValue[];
  declare readonly notes: readonly string[];
  declare average?: LazyEstimate;
  declare max?: LazyEstimate;
  declare min?: LazyEstimate;
  readonly #run: RunUncertainty;
  readonly #plan: Plan;
  #values: readonly MeasuredValue[] | undefined;

  constructor(run: RunUncertainty, plan: Plan) {
    this.#run = run;
    this.#plan = plan;
    this.id = plan.id;
    this.unit = plan.unit ?? unitOf(plan.id);
    Object.defineProperty(this, 'values', valuesProperty);
    this.notes = plan.notes;
  }

  static valuesOf(series: LazySeries): readonly MeasuredValue[] {
    series.#values ??= valuesOf(series.#run, series.#plan);
    return series.#values;
  }
}

const valuesProperty = {
  enumerable: true,
  configurable: true,
  get(this: LazySeries) {
    return LazySeries.valuesOf(this);
  },
};

class LazyEstimate implements Extreme {
  declare axis?: Axis;
  declare readonly value: number;
  declare readonly u: number | null;
  readonly #run: RunUncertainty;
  readonly #plan: Plan;
  readonly #name: 'average' | 'max' | 'min';

  constructor(
    run: RunUncertainty,
    plan: Plan,
    name: 'average' | 'max' | 'min',
    value: number,
    axis: Axis | undefined,
  ) {
    this.#run = run;
    this.#plan = plan;
    this.#name = name;
    if (axis !== undefined) this.axis = axis;
    this.value = value;
    Object.defineProperty(this, 'u', uProperty);
  }

  static uOf(estimate: LazyEstimate): number | null {
    return estimate.#run.uOf(estimate.#plan)[estimate.#name]();
  }
}

const uProperty = {
  enumerable: true,
  configurable: true,
  get(this: LazyEstimate) {
    return LazyEstimate.uOf(this);
  },
};

function valuesOf(run: RunUncertainty, plan: Plan): MeasuredValue[] {
  return Array.from(plan.found, (_, i) => new LazyValue(run, plan, i));
}

class LazyValue implements MeasuredValue {
  declare axis?: Axis;
  declare readonly value: number;
  declare readonly u: number | null;
  declare readonly counts: boolean;
  declare readonly rows: readonly number[];
  readonly #run: RunUncertainty;
  readonly #plan: Plan;
  readonly #i: number;
  #rows: readonly number[] | undefined;

  constructor(run: RunUncertainty, plan: Plan, i: number) {
    this.#run = run;
    this.#plan = plan;
    this.#i = i;
    const axis = plan.axes[i];
    if (axis !== undefined) this.axis = axis;
    this.value = plan.found[i]!;
    this.counts = plan.counts[i]!;
    Object.defineProperties(this, valueProperties);
  }

  static uOf(value: LazyValue): number | null {
    return value.#run.uOf(value.#plan).of(value.#i);
  }

  static rowsOf(value: LazyValue): readonly number[] {
    const { inputs, lights } = value.#plan;
    value.#rows ??= rowsOf(value.#run.prepared.points, inputs[value.#i]!, lights[value.#i]);
    return value.#rows;
  }
}

const valueProperties = {
  u: {
    enumerable: true,
    configurable: true,
    get(this: LazyValue) {
      return LazyValue.uOf(this);
    },
  },
  rows: {
    enumerable: true,
    configurable: true,
    get(this: LazyValue) {
      return LazyValue.rowsOf(this);
    },
  },
};
