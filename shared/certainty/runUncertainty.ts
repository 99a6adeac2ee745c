import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { QuantityDraws } from '../contract/measurement.ts';
import type { Outcome, Plan } from '../measure/plan.ts';
import { plansOf } from '../measure/plans.ts';
import { prepareRun } from '../measure/prepare.ts';
import { drawsOf } from './draws.ts';
import { errorModelOf } from './errorModel.ts';
import { firstOrderOf } from './firstOrder.ts';
import { type DrawnSpread, extremes, spreadOf } from './spread.ts';
import { type Streams, streamsOf } from './streams.ts';

/** A run with its quantities made ready and the means to say how sure they are; work is done when asked for. */
export interface RunUncertainty {
  outcomes: ReadonlyMap<string, Outcome>;
  uOf(plan: Plan): DrawnSpread;
  /** Null for what was only reported. */
  draws(plan: Plan): QuantityDraws | null;
}

const reportedOnly: DrawnSpread = { values: [], average: null, max: null, min: null };

export function uncertaintyOfRun(unit: UnitEvidence, run: RunEvidence): RunUncertainty {
  const prepared = prepareRun(unit, run);
  const outcomes = plansOf(prepared);
  const model = once(() => errorModelOf(unit, run, prepared));
  const streams = once((): Streams => streamsOf(run.digest, model().sKey));
  const known = new Map<string, DrawnSpread>();
  const draw = (plan: Plan) => drawsOf(prepared, model(), streams(), plan);

  const compute = (plan: Plan): DrawnSpread => {
    if (plan.law === 'none') return { ...reportedOnly, values: plan.axes.map(() => null) };
    if (plan.law === 'draws') return spreadOf(draw(plan));
    const { values, average } = firstOrderOf(prepared, model(), plan);
    const single = plan.axes.length === 1 ? values[0]! : undefined;
    // Max and min of several values are not linear: only they need draws, and only when somebody looks.
    const ends = once(() => (single === undefined ? extremes(draw(plan)) : { max: single, min: single }));
    return {
      values: [...values],
      average,
      get max() {
        return ends().max;
      },
      get min() {
        return ends().min;
      },
    };
  };
  return {
    outcomes,
    uOf(plan) {
      const spread = known.get(plan.id) ?? compute(plan);
      known.set(plan.id, spread);
      return spread;
    },
    draws: (plan) => (plan.law === 'none' ? null : draw(plan)),
  };
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
