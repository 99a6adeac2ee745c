import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { QuantityDraws } from '../contract/measurement.ts';
import type { Outcome, Plan } from '../measure/plan.ts';
import { plansOf } from '../measure/plans.ts';
import { type PreparedRun, prepareRun } from '../measure/prepare.ts';
import { drawnWorldsOf } from './drawnWorlds.ts';
import { columnOf, quantityDraws } from './draws.ts';
import { errorModelOf } from './errorModel.ts';
import { averageU, differenceU, gradientsOf } from './gradient.ts';
import { contendersOf, deviationOf, extremeColumn, meanColumn } from './spread.ts';
import { streamsOf } from './streams.ts';

/** Standard uncertainties of one quantity, each computed when it is first read. Null: it carries none. */
export interface PlanUncertainty {
  of(i: number): number | null;
  average(): number | null;
  max(): number | null;
  min(): number | null;
}

/** A run with its quantities made ready and the means to say how sure they are; work is done when asked for. */
export interface RunUncertainty {
  prepared: PreparedRun;
  outcomes: ReadonlyMap<string, Outcome>;
  uOf(plan: Plan): PlanUncertainty;
  /** Null for what was only reported. */
  draws(plan: Plan): QuantityDraws | null;
}

/** With the draws of each value, made when they are first read. */
interface Known extends PlanUncertainty {
  column(i: number): Float64Array;
  /** The same without keeping them */
  passing(i: number): Float64Array;
}

const none = () => null;
const reportedOnly: Known = {
  of: none,
  average: none,
  max: none,
  min: none,
  column: () => new Float64Array(0),
  passing: () => new Float64Array(0),
};

export function uncertaintyOfRun(unit: UnitEvidence, run: RunEvidence): RunUncertainty {
  const prepared = prepareRun(unit, run);
  const model = once(() => errorModelOf(unit, run, prepared));
  const drawing = once(() => ({
    run: prepared,
    model: model(),
    worlds: drawnWorldsOf(prepared, model(), streamsOf(run.digest, model().sKey)),
  }));
  const known = new Map<Plan, Known>();
  const knownOf = (plan: Plan): Known => {
    let found = known.get(plan);
    if (!found) {
      found = plan.law === 'none' ? reportedOnly : knownUncertainty(plan);
      known.set(plan, found);
    }
    return found;
  };
  const columnsOf = (plan: Plan) => knownOf(plan).column;

  const knownUncertainty = (plan: Plan): Known => {
    const gradients = once(() => (plan.law === 'drawn' ? undefined : gradientsOf(prepared, model(), plan)));
    const columns: (Float64Array | undefined)[] = [];
    const passing = (i: number) => columns[i] ?? columnOf(drawing(), plan, gradients()?.[i], i, columnsOf);
    const column = (i: number) => {
      columns[i] ??= passing(i);
      return columns[i];
    };
    const drawn: (number | null | undefined)[] = [];
    const of = (i: number) => {
      const gradient = gradients()?.[i];
      if (gradient?.linear) return gradient.u;
      if (drawn[i] === undefined) drawn[i] = deviationOf(column(i));
      return drawn[i];
    };
    const counting = plan.counts.flatMap((counts, i) => (counts ? [i] : []));
    /** u of a difference; where only draws tell, no less than it can be. */
    const apart = (i: number, j: number) => {
      const [one, other] = [gradients()?.[i], gradients()?.[j]];
      if (one?.linear && other?.linear) return differenceU(one, other);
      return (of(i) ?? Number.POSITIVE_INFINITY) + (of(j) ?? Number.POSITIVE_INFINITY);
    };
    const extreme = (which: 'max' | 'min') =>
      once(() => {
        const contenders = contendersOf(plan.found, counting, which, apart);
        // The extreme of several values that may each be it is never linear.
        return contenders.length === 1
          ? of(contenders[0]!)
          : deviationOf(extremeColumn(contenders.map(column), which));
      });
    return {
      of,
      column,
      passing,
      average: once(() => {
        const linear = gradients();
        return linear && counting.every((i) => linear[i]!.linear)
          ? averageU(linear, plan.counts, prepared.points.count)
          : deviationOf(meanColumn(counting.map(column)));
      }),
      max: extreme('max'),
      min: extreme('min'),
    };
  };
  return {
    prepared,
    outcomes: plansOf(prepared),
    uOf: knownOf,
    draws(plan) {
      if (plan.law === 'none') return null;
      const { passing } = knownOf(plan);
      return quantityDraws(
        plan,
        plan.axes.map((_, i) => passing(i)),
      );
    },
  };
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
