import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import type { QuantityDraws } from '../contract/measurement.ts';
import type { Outcome, Plan } from '../measure/plan.ts';
import { plansOf } from '../measure/plans.ts';
import { type PreparedRun, prepareRun } from '../measure/prepare.ts';
import { drawnWorldsOf } from './drawnWorlds.ts';
import { columnOf, quantityDraws } from './draws.ts';
import { errorModelOf } from './errorModel.ts';
import { averageU, copyOf, differenceU, gradientsOf } from './gradient.ts';
import { contendersOf, deviationOf, deviationOfExtreme, extremeColumn, meanColumn } from './spread.ts';
import { streamsOf } from './streams.ts';
import { createWorkspace } from './workspace.ts';

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

/** With the draws of each value, made when they are first read and kept while the workspace lends them. */
interface Known extends PlanUncertainty {
  column(i: number): Float64Array;
  forget(): void;
}

/** Columns of the run that was asked last; runs take turns. */
const workspace = createWorkspace();

const none = () => null;
const reportedOnly: Known = {
  of: none,
  average: none,
  max: none,
  min: none,
  column: () => new Float64Array(0),
  forget: () => undefined,
};

/** Makes a run of a unit ready; every u is a standard uncertainty in the unit of its quantity. Pure but for the workspace. */
export function uncertaintyOfRun(unit: UnitEvidence, run: RunEvidence): RunUncertainty {
  const prepared = prepareRun(unit, run);
  const model = once(() => errorModelOf(unit, run, prepared));
  const world = once(() => copyOf(prepared.points.found));
  const drawing = once(() => ({
    run: prepared,
    model: model(),
    worlds: drawnWorldsOf(prepared, model(), streamsOf(run.digest, model().sKey), workspace.take),
    world: world(),
    take: workspace.take,
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
  const borrower = {
    forget() {
      drawing().worlds.forget();
      for (const each of known.values()) each.forget();
    },
  };
  /** Columns hold from here to the end of the work. */
  const drawn = <T>(work: () => T): T => {
    workspace.begin(borrower);
    return work();
  };

  const knownUncertainty = (plan: Plan): Known => {
    const gradients = once(() =>
      plan.law === 'drawn' ? undefined : gradientsOf(prepared, model(), plan, world()),
    );
    let columns: (Float64Array | undefined)[] = [];
    const column = (i: number) => {
      columns[i] ??= columnOf(drawing(), plan, gradients()?.[i], i, columnsOf);
      return columns[i];
    };
    const deviations: (number | null | undefined)[] = [];
    const uAt = (i: number) => {
      const gradient = gradients()?.[i];
      if (gradient?.linear) return gradient.u;
      if (deviations[i] === undefined) deviations[i] = deviationOf(column(i));
      return deviations[i];
    };
    const counting = once(() => [...plan.counts.keys()].filter((i) => plan.counts[i]));
    /** u of a difference; where only draws tell, no less than it can be. */
    const apart = (i: number, j: number) => {
      const [one, other] = [gradients()?.[i], gradients()?.[j]];
      if (one?.linear && other?.linear) return differenceU(one, other);
      return (uAt(i) ?? Number.POSITIVE_INFINITY) + (uAt(j) ?? Number.POSITIVE_INFINITY);
    };
    const extreme = (which: 'max' | 'min') =>
      once(() =>
        drawn(() => {
          const contenders = contendersOf(plan.found, counting(), which, apart);
          // The extreme of several values that may each be it is never linear.
          if (contenders.length === 1) return uAt(contenders[0]!);
          const among = contenders.map(column);
          return deviationOfExtreme(extremeColumn(among, which, workspace.take()), among);
        }),
      );
    return {
      of: (i) => {
        const known = deviations[i];
        return known === undefined && !gradients()?.[i]?.linear ? drawn(() => uAt(i)) : uAt(i);
      },
      column,
      forget() {
        columns = [];
      },
      average: once(() => {
        const linear = gradients();
        return linear?.every(({ linear: each }, i) => each || !plan.counts[i])
          ? averageU(linear, plan.counts, prepared.points.count)
          : drawn(() => deviationOf(meanColumn(counting().map(column), workspace.take())));
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
      return drawn(() => quantityDraws(plan, knownOf(plan).column));
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
