import type { Plan } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { ErrorModel } from './errorModel.ts';

/**
 * The independent ways in which the worlds of a value differ: the instrument's luminance error s, each point's own
 * luminance error r, and each point's x and y. Moving along one by `amount` standard deviations changes the world.
 */
export interface Coordinate {
  kind: 's' | 'r' | 'x' | 'y';
  /** The point; −1 for s */
  point: number;
}

/** Coordinates of value `i` that have any uncertainty. */
export function coordinatesOf(run: PreparedRun, model: ErrorModel, plan: Plan, i: number): Coordinate[] {
  const coordinates: Coordinate[] = [];
  const { hasXy } = run.points;
  const bright: number[] = [];
  for (const point of plan.inputs[i]!) {
    if (plan.uses !== 'chromaticity') bright.push(point);
    if (plan.uses === 'luminance' || hasXy[point] !== 1) continue;
    if (model.ux[point]! > 0) coordinates.push({ kind: 'x', point });
    if (model.uy[point]! > 0) coordinates.push({ kind: 'y', point });
  }
  bright.push(...plan.lights[i]!);
  for (const point of bright) if (model.r[point]! > 0) coordinates.push({ kind: 'r', point });
  if (bright.length > 0 && model.s > 0) coordinates.push({ kind: 's', point: -1 });
  return coordinates;
}

/** Moves a found world along coordinates, for one value; `home` puts it back. */
export interface Mover {
  world: World;
  move(coordinate: Coordinate, amount: number): void;
  home(): void;
}

export function moverOf(run: PreparedRun, model: ErrorModel, plan: Plan, i: number, world: World): Mover {
  const { found } = run.points;
  const points = [...plan.inputs[i]!, ...plan.lights[i]!];
  return {
    world,
    move({ kind, point }, amount) {
      if (kind === 's') for (const each of points) world.Y[each]! += amount * model.s * found.Y[each]!;
      else if (kind === 'r') world.Y[point]! += amount * model.r[point]!;
      else if (kind === 'x') world.x[point]! += amount * model.ux[point]!;
      else world.y[point]! += amount * model.uy[point]!;
    },
    home() {
      for (const point of points) {
        world.x[point] = found.x[point]!;
        world.y[point] = found.y[point]!;
        world.Y[point] = found.Y[point]!;
      }
    },
  };
}
