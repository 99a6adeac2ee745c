import { hueClasses, type World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { ErrorModel } from './errorModel.ts';
import { aComponent, ownComponent, sComponent } from './gradient.ts';
import { drawCount, type Streams } from './streams.ts';

/** The 2,000 imagined worlds of one run, made point by point as they are asked for. */
export interface DrawnWorlds {
  /** Drawn x, y, Y of a point, one number a draw */
  at(point: number): World;
  /** Adds `step` times the standard normal stream of an error component to a column */
  addStream(column: Float64Array, component: number, step: number): void;
}

const firstOwn = ownComponent(0, 0);

export function drawnWorldsOf(run: PreparedRun, model: ErrorModel, streams: Streams): DrawnWorlds {
  const { found } = run.points;
  const made: (World | undefined)[] = [];
  const { pool, mask } = streams;

  function make(point: number): World {
    const group = model.hueClass[point]!;
    const luminance = new Float64Array(drawCount);
    const Y = found.Y[point]!;
    const r = model.r[point]!;
    const from = streams.offset(3 * point);
    for (let d = 0; d < drawCount; d += 1)
      luminance[d] = Y * (1 + model.s * streams.s[d]!) + r * pool[(from + d) & mask]!;
    return {
      Y: luminance,
      x: chromatic(found.x[point]!, model.ax[point]!, streams.ax[group]!, model.ex[point]!, 3 * point + 1),
      y: chromatic(found.y[point]!, model.ay[point]!, streams.ay[group]!, model.ey[point]!, 3 * point + 2),
    };
  }

  function chromatic(at: number, a: number, common: Float64Array, e: number, stream: number): Float64Array {
    const column = new Float64Array(drawCount);
    const from = streams.offset(stream);
    for (let d = 0; d < drawCount; d += 1) column[d] = at + a * common[d]! + e * pool[(from + d) & mask]!;
    return column;
  }

  return {
    at(point) {
      made[point] ??= make(point);
      return made[point];
    },
    addStream(column, component, step) {
      if (component >= firstOwn) {
        const from = streams.offset(component - firstOwn);
        for (let d = 0; d < drawCount; d += 1) column[d]! += step * pool[(from + d) & mask]!;
        return;
      }
      const stream = commonStream(component);
      for (let d = 0; d < drawCount; d += 1) column[d]! += step * stream[d]!;
    },
  };

  function commonStream(component: number): Float64Array {
    if (component === sComponent) return streams.s;
    for (let group = 0; group < hueClasses.length; group += 1) {
      if (component === aComponent(group, 0)) return streams.ax[group]!;
      if (component === aComponent(group, 1)) return streams.ay[group]!;
    }
    throw new RangeError(`there is no error component ${component}`);
  }
}
