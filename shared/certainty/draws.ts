import type { QuantityDraws } from '../contract/measurement.ts';
import type { Plan } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { DrawnWorlds } from './drawnWorlds.ts';
import type { Gradient } from './gradient.ts';
import { drawCount } from './streams.ts';

/**
 * One value in every imagined world. Where it is as good as linear, its first-order change by each error; else x, y
 * and Y of its points are perturbed and the quantity is computed anew (JCGM 101), so that errors that cannot be
 * negative are drawn as vectors. Both use the same streams: one world is one world.
 */
export function columnOf(
  run: PreparedRun,
  worlds: DrawnWorlds,
  plan: Plan,
  gradient: Gradient | undefined,
  i: number,
): Float64Array {
  const column = new Float64Array(drawCount);
  if (gradient?.linear) {
    column.fill(plan.found[i]!);
    gradient.components.forEach((component, k) => {
      worlds.addStream(column, component, gradient.steps[k]!);
    });
    return column;
  }
  const { found } = run.points;
  const world: World = { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() };
  const inputs = plan.inputs[i]!;
  const lights = plan.lights[i]!;
  const drawn = inputs.map((point) => worlds.at(point));
  const lit = lights.map((point) => worlds.at(point).Y);
  const withLuminance = plan.uses !== 'chromaticity';
  const withColour = plan.uses !== 'luminance';
  for (let d = 0; d < drawCount; d += 1) {
    for (let k = 0; k < inputs.length; k += 1) {
      const point = inputs[k]!;
      const source = drawn[k]!;
      if (withLuminance) world.Y[point] = source.Y[d]!;
      if (withColour && run.points.hasXy[point] === 1) {
        world.x[point] = source.x[d]!;
        world.y[point] = source.y[d]!;
      }
    }
    for (let k = 0; k < lights.length; k += 1) world.Y[lights[k]!] = lit[k]![d]!;
    column[d] = plan.value(world, i);
  }
  return column;
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
