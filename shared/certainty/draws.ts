import type { QuantityDraws } from '../contract/measurement.ts';
import type { Plan } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { ErrorModel } from './errorModel.ts';
import { drawCount, type Streams } from './streams.ts';

/**
 * Every draw of a quantity: x, y and Y of its points are perturbed as one world and the quantity is computed anew
 * (JCGM 101). Errors that cannot be negative are thereby drawn as vectors.
 */
export function drawsOf(run: PreparedRun, model: ErrorModel, streams: Streams, plan: Plan): QuantityDraws {
  const size = plan.axes.length;
  const values = new Float64Array(drawCount * size);
  const points = [...new Set(plan.inputs.flat())];
  const world = emptyWorld(run.points.count);
  const withLuminance = plan.uses !== 'chromaticity';
  const withColour = plan.uses !== 'luminance';
  const { found } = run.points;
  const places = points.map((point) => ({
    point,
    x: found.x[point]!,
    y: found.y[point]!,
    Y: found.Y[point]!,
    r: model.r[point]!,
    ex: model.ex[point]!,
    ey: model.ey[point]!,
    ax: model.ax[point]!,
    ay: model.ay[point]!,
    aStreamX: streams.ax[model.hueClass[point]!]!,
    aStreamY: streams.ay[model.hueClass[point]!]!,
    rOffset: streams.offset(3 * point),
    xOffset: streams.offset(3 * point + 1),
    yOffset: streams.offset(3 * point + 2),
  }));
  const { pool, mask } = streams;
  for (let draw = 0; draw < drawCount; draw += 1) {
    const gain = 1 + model.s * streams.s[draw]!;
    for (const place of places) {
      if (withLuminance)
        world.Y[place.point] = place.Y * gain + place.r * pool[(place.rOffset + draw) & mask]!;
      else world.Y[place.point] = place.Y;
      if (withColour) {
        world.x[place.point] =
          place.x + place.ax * place.aStreamX[draw]! + place.ex * pool[(place.xOffset + draw) & mask]!;
        world.y[place.point] =
          place.y + place.ay * place.aStreamY[draw]! + place.ey * pool[(place.yOffset + draw) & mask]!;
      }
    }
    const start = draw * size;
    for (let i = 0; i < size; i += 1) values[start + i] = plan.value(world, i);
  }
  return { count: drawCount, axes: plan.axes, counts: plan.counts, values };
}

function emptyWorld(count: number): World {
  return { x: new Float64Array(count), y: new Float64Array(count), Y: new Float64Array(count) };
}
