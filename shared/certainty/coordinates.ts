import type { Plan } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { ErrorModel } from './errorModel.ts';

/**
 * The independent ways in which the worlds of a value differ, each in its own standard deviations: the instrument's
 * luminance error s, a point's own luminance error r, a point's x and y altogether; and where several points of a
 * hue class enter, apart from each other the error a that they share and the e of each.
 */
export interface Coordinate {
  kind: 's' | 'r' | 'x' | 'y' | 'ax' | 'ay' | 'ex' | 'ey';
  /** The point; for a the hue class; −1 for s */
  of: number;
}

/** Coordinates of value `i` that have any uncertainty. */
export function coordinatesOf(run: PreparedRun, model: ErrorModel, plan: Plan, i: number): Coordinate[] {
  const coordinates: Coordinate[] = [];
  const { hasXy } = run.points;
  const inputs = plan.inputs[i]!;
  const bright = [...(plan.uses === 'chromaticity' ? [] : inputs), ...plan.lights[i]!];
  const coloured = plan.uses === 'luminance' ? [] : inputs.filter((point) => hasXy[point] === 1);
  const classes = new Map<number, number[]>();
  for (const point of coloured) {
    const group = model.hueClass[point]!;
    classes.set(group, [...(classes.get(group) ?? []), point]);
  }
  for (const [group, members] of classes) {
    if (members.length > 1) {
      if (members.some((point) => model.ax[point]! > 0)) coordinates.push({ kind: 'ax', of: group });
      if (members.some((point) => model.ay[point]! > 0)) coordinates.push({ kind: 'ay', of: group });
    }
    const [x, y] = members.length > 1 ? (['ex', 'ey'] as const) : (['x', 'y'] as const);
    for (const of of members) {
      if (model[x === 'x' ? 'ux' : 'ex'][of]! > 0) coordinates.push({ kind: x, of });
      if (model[y === 'y' ? 'uy' : 'ey'][of]! > 0) coordinates.push({ kind: y, of });
    }
  }
  for (const of of bright) if (model.r[of]! > 0) coordinates.push({ kind: 'r', of });
  if (bright.length > 0 && model.s > 0) coordinates.push({ kind: 's', of: -1 });
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
    move({ kind, of }, amount) {
      switch (kind) {
        case 's':
          for (const point of points) world.Y[point]! += amount * model.s * found.Y[point]!;
          return;
        case 'r':
          world.Y[of]! += amount * model.r[of]!;
          return;
        case 'ax':
        case 'ay':
          for (const point of plan.inputs[i]!)
            if (model.hueClass[point] === of && run.points.hasXy[point] === 1)
              world[kind === 'ax' ? 'x' : 'y'][point]! += amount * model[kind][point]!;
          return;
        case 'x':
        case 'ex':
          world.x[of]! += amount * model[kind === 'x' ? 'ux' : 'ex'][of]!;
          return;
        default:
          world.y[of]! += amount * model[kind === 'y' ? 'uy' : 'ey'][of]!;
      }
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
