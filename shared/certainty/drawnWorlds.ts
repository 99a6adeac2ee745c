import { hueClasses, type World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { Coordinate } from './coordinates.ts';
import type { ErrorModel } from './errorModel.ts';
import { aComponent, ownComponent, sComponent } from './gradient.ts';
import { drawCount, type Streams } from './streams.ts';

/** The 2,000 imagined worlds of one run, made point by point as they are asked for. */
export interface DrawnWorlds {
  /** Drawn x, y, Y of a point in every `every`th world, one number a draw */
  at(point: number, every: number): World;
  /** Error along a coordinate in standard deviations, one number a draw */
  along(coordinate: Coordinate): Float64Array;
  /** Adds `step` times the standard normal stream of an error component to a column */
  addStream(column: Float64Array, component: number, step: number): void;
}

const firstOwn = ownComponent(0, 0);

export function drawnWorldsOf(run: PreparedRun, model: ErrorModel, streams: Streams): DrawnWorlds {
  const { found } = run.points;
  const made = new Map<number, (World | undefined)[]>();
  const errors = new Map<string, Float64Array>();
  const windows: (Float64Array | undefined)[] = [];
  const { pool, mask } = streams;

  const along = (coordinate: Coordinate): Float64Array => {
    if (coordinate.kind === 's') return streams.s;
    const key = `${coordinate.kind}${coordinate.of}`;
    let error = errors.get(key);
    if (!error) {
      error = errorAlong(coordinate);
      errors.set(key, error);
    }
    return error;
  };

  function errorAlong({ kind, of: point }: Coordinate): Float64Array {
    if (kind === 'ax') return streams.ax[point]!;
    if (kind === 'ay') return streams.ay[point]!;
    if (kind === 'r') return own(3 * point);
    if (kind === 'ex') return own(3 * point + 1);
    if (kind === 'ey') return own(3 * point + 2);
    const group = model.hueClass[point]!;
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

  /** Independent errors of one reading and coordinate: its window of the pool, with mean 0 and deviation 1. */
  function own(stream: number): Float64Array {
    windows[stream] ??= standardised(pool, streams.offset(stream), mask);
    return windows[stream];
  }

  function mix(common: number, shared: Float64Array, share: number, ownStream: number): Float64Array {
    const column = new Float64Array(drawCount);
    const alone = own(ownStream);
    for (let d = 0; d < drawCount; d += 1) column[d] = common * shared[d]! + share * alone[d]!;
    return column;
  }

  function make(point: number, every: number): World {
    const size = Math.ceil(drawCount / every);
    const column = (from: number) => new Float64Array(size).fill(from);
    const world: World = {
      x: column(found.x[point]!),
      y: column(found.y[point]!),
      Y: column(found.Y[point]!),
    };
    const add = (to: Float64Array, error: Float64Array, u: number) => {
      for (let n = 0; n < size; n += 1) to[n]! += u * error[n * every]!;
    };
    add(world.Y, streams.s, model.s * found.Y[point]!);
    if (model.r[point]! > 0) add(world.Y, along({ kind: 'r', of: point }), model.r[point]!);
    if (run.points.hasXy[point] !== 1) return world;
    if (model.ux[point]! > 0) add(world.x, along({ kind: 'x', of: point }), model.ux[point]!);
    if (model.uy[point]! > 0) add(world.y, along({ kind: 'y', of: point }), model.uy[point]!);
    return world;
  }

  return {
    at(point, every) {
      const known = made.get(every) ?? [];
      made.set(every, known);
      known[point] ??= make(point, every);
      return known[point];
    },
    along,
    addStream(column, component, step) {
      const stream = component >= firstOwn ? own(component - firstOwn) : commonStream(component);
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

function standardised(pool: Float64Array, from: number, mask: number): Float64Array {
  const column = new Float64Array(drawCount);
  let sum = 0;
  let squares = 0;
  for (let d = 0; d < drawCount; d += 1) {
    const value = pool[(from + d) & mask]!;
    column[d] = value;
    sum += value;
    squares += value * value;
  }
  const mean = sum / drawCount;
  const scale = Math.sqrt((drawCount - 1) / (squares - drawCount * mean * mean));
  for (let d = 0; d < drawCount; d += 1) column[d] = (column[d]! - mean) * scale;
  return column;
}
