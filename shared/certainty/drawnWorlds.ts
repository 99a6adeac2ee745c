import { hueClasses, type World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { Coordinate } from './coordinates.ts';
import type { ErrorModel } from './errorModel.ts';
import { aComponent, ownComponent, sComponent } from './gradient.ts';
import { drawCount, type Streams } from './streams.ts';

/** The 2,000 imagined worlds of one run, made point by point as they are asked for. */
export interface DrawnWorlds {
  /** Drawn x, y, Y of a point, one number a draw */
  at(point: number): World;
  /** Error along a coordinate in standard deviations, one number a draw */
  along(coordinate: Coordinate): Float64Array;
  /** Adds `step` times the standard normal stream of an error component to a column */
  addStream(column: Float64Array, component: number, step: number): void;
}

const firstOwn = ownComponent(0, 0);

export function drawnWorldsOf(run: PreparedRun, model: ErrorModel, streams: Streams): DrawnWorlds {
  const { found } = run.points;
  const made: (World | undefined)[] = [];
  const errors = new Map<string, Float64Array>();
  const { pool, mask } = streams;

  const along = (coordinate: Coordinate): Float64Array => {
    if (coordinate.kind === 's') return streams.s;
    const key = `${coordinate.kind}${coordinate.point}`;
    let error = errors.get(key);
    if (!error) {
      error = errorAlong(coordinate);
      errors.set(key, error);
    }
    return error;
  };

  function errorAlong({ kind, point }: Coordinate): Float64Array {
    const group = model.hueClass[point]!;
    if (kind === 'r') return mix(0, streams.s, 1, 3 * point);
    if (kind === 'x')
      return mix(
        model.ax[point]! / model.ux[point]!,
        streams.ax[group]!,
        model.ex[point]! / model.ux[point]!,
        3 * point + 1,
      );
    return mix(
      model.ay[point]! / model.uy[point]!,
      streams.ay[group]!,
      model.ey[point]! / model.uy[point]!,
      3 * point + 2,
    );
  }

  function mix(common: number, stream: Float64Array, own: number, ownStream: number): Float64Array {
    const column = new Float64Array(drawCount);
    const from = streams.offset(ownStream);
    for (let d = 0; d < drawCount; d += 1) column[d] = common * stream[d]! + own * pool[(from + d) & mask]!;
    return column;
  }

  function make(point: number): World {
    const world: World = {
      x: new Float64Array(drawCount).fill(found.x[point]!),
      y: new Float64Array(drawCount).fill(found.y[point]!),
      Y: new Float64Array(drawCount).fill(found.Y[point]!),
    };
    const add = (column: Float64Array, error: Float64Array, u: number) => {
      for (let d = 0; d < drawCount; d += 1) column[d]! += u * error[d]!;
    };
    add(world.Y, streams.s, model.s * found.Y[point]!);
    if (model.r[point]! > 0) add(world.Y, along({ kind: 'r', point }), model.r[point]!);
    if (run.points.hasXy[point] !== 1) return world;
    if (model.ux[point]! > 0) add(world.x, along({ kind: 'x', point }), model.ux[point]!);
    if (model.uy[point]! > 0) add(world.y, along({ kind: 'y', point }), model.uy[point]!);
    return world;
  }

  return {
    at(point) {
      made[point] ??= make(point);
      return made[point];
    },
    along,
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
