import type { QuantityDraws } from '../contract/measurement.ts';
import type { Derivation, Plan, Reads } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { DrawnWorlds } from './drawnWorlds.ts';
import type { ErrorModel } from './errorModel.ts';
import { expandedColumn, expansionOf } from './expansion.ts';
import { coordinateOf, type Gradient } from './gradient.ts';
import { drawCount } from './streams.ts';
import { addTerms } from './terms.ts';

/** What drawing needs of a run. */
export interface Drawing {
  run: PreparedRun;
  model: ErrorModel;
  worlds: DrawnWorlds;
  /** The found world, to be moved and put back */
  world: World;
  take(): Float64Array;
}

/**
 * One value in every imagined world (JCGM 101). As good as linear: its first-order change by each error. Else: its
 * expansion to second order, checked against some worlds that are computed anew; where the two differ, every world
 * is computed anew. All three use the same streams: one world is one world.
 */
export function columnOf(
  drawing: Drawing,
  plan: Plan,
  gradient: Gradient | undefined,
  i: number,
  columnsOf: (plan: Plan) => (i: number) => Float64Array,
): Float64Array {
  const column = drawing.take();
  if (plan.from) return derivedColumn(plan.from, i, columnsOf(plan.from.plan), column);
  if (gradient?.linear && plan.law !== 'magnitude') return linearColumn(drawing, plan, gradient, i, column);
  const { run, model, worlds, world } = drawing;
  if (plan.law === 'smooth' || plan.law === 'magnitude') {
    expandedColumn(expansionOf(run, model, plan, i, world), worlds.along, column);
    if (agrees(drawing, plan, i, column)) return column;
  }
  recompute(drawing, plan, i, column);
  return column;
}

function linearColumn(
  { model, worlds }: Drawing,
  plan: Plan,
  { components, steps }: Gradient,
  i: number,
  column: Float64Array,
): Float64Array {
  const errors: Float64Array[] = [];
  const factors: number[] = [];
  for (let k = 0; k < components.length; k += 1) {
    const moved = coordinateOf(model, components[k]!, steps[k]!);
    if (!moved) continue;
    errors.push(worlds.along(moved.coordinate));
    factors.push(moved.step);
  }
  return addTerms(column.fill(plan.found[i]!), errors, factors);
}

/** From the draws of the plan that it derives from, world by world. */
function derivedColumn(
  from: Derivation,
  i: number,
  columnAt: (i: number) => Float64Array,
  column: Float64Array,
): Float64Array {
  const members = from.members(i).map(columnAt);
  const values = new Array<number>(members.length);
  for (let d = 0; d < drawCount; d += 1) {
    for (let k = 0; k < members.length; k += 1) values[k] = members[k]![d]!;
    column[d] = from.combine(values, i);
  }
  return column;
}

/** Every so many worlds are computed anew to check an expansion. */
const checkEvery = 125;
/** How far an expansion may be off, as a share of the spread over the checked worlds. */
const mayDiffer = 0.04;

const readsOf = { luminance: 'Y', chromaticity: 'xy', both: 'xyY' } as const satisfies Record<
  Plan['uses'],
  Reads
>;

function agrees({ run, worlds, world }: Drawing, plan: Plan, i: number, column: Float64Array): boolean {
  const inputs = plan.inputs[i]!;
  const lights = plan.lights[i]!;
  const reads = readsOf[plan.uses];
  const centre = plan.found[i]!;
  let difference = 0;
  let spread = 0;
  for (let draw = 0; draw < drawCount; draw += checkEvery) {
    for (const point of inputs) worlds.place(world, point, reads, draw);
    for (const point of lights) worlds.place(world, point, 'Y', draw);
    const exact = plan.value(world, i);
    difference += (exact - column[draw]!) ** 2;
    spread += (exact - centre) ** 2;
  }
  restore(run, world, inputs, lights);
  const rounding = 1e-9 * Math.max(1, Math.abs(centre));
  return Math.sqrt(difference) <= mayDiffer * Math.sqrt(spread) + rounding;
}

/** Perturbs x, y and Y of the value's points and computes it anew, in every world. */
function recompute({ run, worlds, world }: Drawing, plan: Plan, i: number, column: Float64Array): void {
  if (plan.inWorlds) {
    plan.inWorlds(worlds.at, i, column);
    return;
  }
  const inputs = plan.inputs[i]!;
  const lights = plan.lights[i]!;
  const reads = readsOf[plan.uses];
  const targets: Float64Array[] = [];
  const sources: Float64Array[] = [];
  const places: number[] = [];
  const add = (target: Float64Array, source: Float64Array, point: number) => {
    targets.push(target);
    sources.push(source);
    places.push(point);
  };
  for (const point of inputs) {
    const drawn = worlds.at(point, reads);
    if (reads !== 'xy') add(world.Y, drawn.Y, point);
    if (reads === 'Y') continue;
    add(world.x, drawn.x, point);
    add(world.y, drawn.y, point);
  }
  for (const point of lights) add(world.Y, worlds.at(point, 'Y').Y, point);
  for (let d = 0; d < drawCount; d += 1) {
    for (let k = 0; k < places.length; k += 1) targets[k]![places[k]!] = sources[k]![d]!;
    column[d] = plan.value(world, i);
  }
  restore(run, world, inputs, lights);
}

function restore(
  { points: { found } }: PreparedRun,
  world: World,
  inputs: readonly number[],
  lights: readonly number[],
): void {
  for (const points of [inputs, lights])
    for (const point of points) {
      world.x[point] = found.x[point]!;
      world.y[point] = found.y[point]!;
      world.Y[point] = found.Y[point]!;
    }
}

/** Columns side by side as the contract lays them out: draw by draw. */
export function quantityDraws(plan: Plan, columnAt: (i: number) => Float64Array): QuantityDraws {
  const size = plan.axes.length;
  const values = new Float64Array(drawCount * size);
  for (let i = 0; i < size; i += 1) {
    const column = columnAt(i);
    for (let d = 0; d < drawCount; d += 1) values[d * size + i] = column[d]!;
  }
  return { count: drawCount, axes: plan.axes, counts: plan.counts, values };
}
