import type { Reads } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { Coordinate } from './coordinates.ts';
import type { ErrorModel } from './errorModel.ts';
import { drawCount, type Streams } from './streams.ts';

/** The 2,000 imagined worlds of one run, made point by point as they are asked for. */
export interface DrawnWorlds {
  /** Error along a coordinate in standard deviations, one number a draw */
  along(coordinate: Coordinate): Float64Array;
  /** Drawn x, y, Y of a point, one number a draw; what is not read is empty */
  at(point: number, reads: Reads): World;
  /** Puts a point of `world` where it is in one draw */
  place(world: World, point: number, reads: Reads, draw: number): void;
  /** Columns on loan are gone. */
  forget(): void;
}

const kinds = { r: 0, x: 1, y: 2, ex: 3, ey: 4 } as const;
const kindCount = 5;
const unread = new Float64Array(0);

/**
 * The worlds of a run under its errors.
 * @param take a column of one number a draw, not cleared
 */
export function drawnWorldsOf(
  run: PreparedRun,
  model: ErrorModel,
  streams: Streams,
  take: () => Float64Array,
): DrawnWorlds {
  const { found, hasXy } = run.points;
  const { pool } = streams;
  let errors: (Float64Array | undefined)[] = [];
  let drawn: (Float64Array | undefined)[] = [];

  const along = ({ kind, of }: Coordinate): Float64Array => {
    if (kind === 's') return streams.s;
    if (kind === 'ax') return streams.ax[of]!;
    if (kind === 'ay') return streams.ay[of]!;
    const place = of * kindCount + kinds[kind];
    errors[place] ??= fill(of, kind, take());
    return errors[place];
  };

  /** A reading's own error, a window of the pool, or that with what its hue class has in common. */
  function fill(point: number, kind: keyof typeof kinds, column: Float64Array): Float64Array {
    const stream = 3 * point + streamOf[kind];
    const from = streams.offset(stream);
    const { mean, scale } = streams.matching(stream);
    if (kind !== 'x' && kind !== 'y') {
      for (let d = 0; d < drawCount; d += 1) column[d] = (pool[from + d]! - mean) * scale;
      return column;
    }
    const { common, own, shared } = parts(point, kind);
    const share = own * scale;
    for (let d = 0; d < drawCount; d += 1) column[d] = common * shared[d]! + share * (pool[from + d]! - mean);
    return column;
  }

  function parts(point: number, kind: 'x' | 'y'): { common: number; own: number; shared: Float64Array } {
    const group = model.hueClass[point]!;
    return kind === 'x'
      ? {
          common: model.ax[point]! / model.ux[point]!,
          own: model.ex[point]! / model.ux[point]!,
          shared: streams.ax[group]!,
        }
      : {
          common: model.ay[point]! / model.uy[point]!,
          own: model.ey[point]! / model.uy[point]!,
          shared: streams.ay[group]!,
        };
  }

  /** The error in one draw, without the column where there is none yet. */
  function errorAt(kind: 'r' | 'x' | 'y', point: number, draw: number): number {
    const known = errors[point * kindCount + kinds[kind]];
    if (known) return known[draw]!;
    const stream = 3 * point + streamOf[kind];
    const { mean, scale } = streams.matching(stream);
    const alone = (pool[streams.offset(stream) + draw]! - mean) * scale;
    if (kind === 'r') return alone;
    const { common, own, shared } = parts(point, kind);
    return common * shared[draw]! + own * alone;
  }

  const luminance = (point: number) =>
    shifted(
      3 * point,
      found.Y[point]!,
      model.s * found.Y[point]!,
      streams.s,
      model.r[point]!,
      model.r[point]! > 0 ? along({ kind: 'r', of: point }) : streams.s,
    );
  const chromaticity = (point: number, kind: 'x' | 'y') => {
    const u = model[kind === 'x' ? 'ux' : 'uy'][point]!;
    const error = u > 0 && hasXy[point] === 1 ? along({ kind, of: point }) : streams.s;
    const step = hasXy[point] === 1 ? u : 0;
    return shifted(3 * point + streamOf[kind], found[kind][point]!, 0, error, step, error);
  };

  function shifted(
    place: number,
    from: number,
    step: number,
    error: Float64Array,
    otherStep: number,
    other: Float64Array,
  ): Float64Array {
    let column = drawn[place];
    if (column) return column;
    column = take();
    drawn[place] = column;
    for (let d = 0; d < drawCount; d += 1) column[d] = from + step * error[d]! + otherStep * other[d]!;
    return column;
  }

  return {
    along,
    at: (point, reads) => ({
      x: reads === 'Y' ? unread : chromaticity(point, 'x'),
      y: reads === 'Y' ? unread : chromaticity(point, 'y'),
      Y: reads === 'xy' ? unread : luminance(point),
    }),
    place(world, point, reads, draw) {
      if (reads !== 'xy') {
        const Y = found.Y[point]!;
        const r = model.r[point]!;
        world.Y[point] = Y + model.s * Y * streams.s[draw]! + (r > 0 ? r * errorAt('r', point, draw) : 0);
      }
      if (reads === 'Y' || hasXy[point] !== 1) return;
      const ux = model.ux[point]!;
      const uy = model.uy[point]!;
      if (ux > 0) world.x[point] = found.x[point]! + ux * errorAt('x', point, draw);
      if (uy > 0) world.y[point] = found.y[point]! + uy * errorAt('y', point, draw);
    },
    forget() {
      errors = [];
      drawn = [];
    },
  };
}

const streamOf = { r: 0, x: 1, ex: 1, y: 2, ey: 2 } as const;
