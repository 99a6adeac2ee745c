import type { QuantityDraws } from '../contract/measurement.ts';
import type { Derivation, Plan } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { DrawnWorlds } from './drawnWorlds.ts';
import type { ErrorModel } from './errorModel.ts';
import { expandedColumn, expansionOf } from './expansion.ts';
import type { Gradient } from './gradient.ts';
import { drawCount } from './streams.ts';

/** What drawing needs of a run. */
export interface Drawing {
  run: PreparedRun;
  model: ErrorModel;
  worlds: DrawnWorlds;
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
  const { run, model, worlds } = drawing;
  const column = new Float64Array(drawCount);
  if (plan.from) return derivedColumn(plan.from, i, columnsOf(plan.from.plan), column);
  if (gradient?.linear && plan.law !== 'magnitude') {
    column.fill(plan.found[i]!);
    gradient.components.forEach((component, k) => {
      worlds.addStream(column, component, gradient.steps[k]!);
    });
    return column;
  }
  const { found } = run.points;
  const world: World = { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() };
  if (plan.law === 'smooth' || plan.law === 'magnitude') {
    expandedColumn(expansionOf(run, model, plan, i, world), worlds.along, column);
    if (agrees(drawing, plan, i, world, column)) return column;
  }
  recompute(drawing, plan, i, world, column, 1);
  return column;
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

function agrees(drawing: Drawing, plan: Plan, i: number, world: World, column: Float64Array): boolean {
  const exact = new Float64Array(drawCount / checkEvery);
  recompute(drawing, plan, i, world, exact, checkEvery);
  let difference = 0;
  let spread = 0;
  const centre = plan.found[i]!;
  exact.forEach((value, n) => {
    difference += (value - column[n * checkEvery]!) ** 2;
    spread += (value - centre) ** 2;
  });
  const rounding = 1e-9 * Math.max(1, Math.abs(centre));
  return Math.sqrt(difference) <= mayDiffer * Math.sqrt(spread) + rounding;
}

/** Perturbs x, y and Y of the value's points and computes it anew, in every `every`th world: one number each. */
function recompute(
  { run, worlds }: Drawing,
  plan: Plan,
  i: number,
  world: World,
  column: Float64Array,
  every: number,
): void {
  const inputs = plan.inputs[i]!;
  const lights = plan.lights[i]!;
  const drawn = inputs.map((point) => worlds.at(point, every));
  const lit = lights.map((point) => worlds.at(point, every).Y);
  const withLuminance = plan.uses !== 'chromaticity';
  const withColour = plan.uses !== 'luminance';
  for (let d = 0, n = 0; d < drawCount; d += every, n += 1) {
    for (let k = 0; k < inputs.length; k += 1) {
      const point = inputs[k]!;
      const source = drawn[k]!;
      if (withLuminance) world.Y[point] = source.Y[n]!;
      if (withColour && run.points.hasXy[point] === 1) {
        world.x[point] = source.x[n]!;
        world.y[point] = source.y[n]!;
      }
    }
    for (let k = 0; k < lights.length; k += 1) world.Y[lights[k]!] = lit[k]![n]!;
    column[n] = plan.value(world, i);
  }
}

/** Columns side by side as the contract lays them out: draw by draw. */
export function quantityDraws(plan: Plan, columns: readonly Float64Array[]): QuantityDraws {
  const size = columns.length;
  const values = new Float64Array(drawCount * size);
  columns.forEach((column, i) => {
    for (let d = 0; d < drawCount; d += 1) values[d * size + i] = column[d]!;
  });
  return { count: drawCount, axes: plan.axes, counts: plan.counts, values };
}
