import type { Plan } from '../measure/plan.ts';
import { hueClasses, type World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { Coordinate } from './coordinates.ts';
import type { ErrorModel } from './errorModel.ts';

/** Numbers of the error components: s, then a by class and coordinate, then r, ex, ey of each point. */
export const sComponent = 0;
export const aComponent = (group: number, coordinate: 0 | 1) => 1 + 2 * group + coordinate;
const ownFrom = 1 + 2 * hueClasses.length;
export const ownComponent = (point: number, part: 0 | 1 | 2) => ownFrom + 3 * point + part;
export const componentCount = (points: number) => ownFrom + 3 * points;

/**
 * The error of a whole reading that carries a component's share of a step, and the step along it: e stands for x and y
 * altogether, whose a is then already in it. Undefined for a itself.
 */
export function coordinateOf(
  model: ErrorModel,
  component: number,
  step: number,
): { coordinate: Coordinate; step: number } | undefined {
  if (component === sComponent) return { coordinate: { kind: 's', of: -1 }, step };
  if (component < ownFrom) return undefined;
  const of = Math.floor((component - ownFrom) / 3);
  switch ((component - ownFrom) % 3) {
    case 0:
      return { coordinate: { kind: 'r', of }, step };
    case 1:
      return { coordinate: { kind: 'x', of }, step: (step * model.ux[of]!) / model.ex[of]! };
    default:
      return { coordinate: { kind: 'y', of }, step: (step * model.uy[of]!) / model.ey[of]! };
  }
}

/** What one standard deviation of each component does to a value, at first order. */
export interface Gradient {
  components: readonly number[];
  /** Change of the value for one standard deviation of the component, signed */
  steps: readonly number[];
  u: number;
  /** False where the value bends within its uncertainty, so that only draws tell. */
  linear: boolean;
}

/** The bend that may be left to first order, in u: it makes an error of 1 % of u. */
const bendLimit = 0.1;

/** A magnitude nearer to 0 than this many u may reach its corner at 0, which steps of one u do not show. */
const awayFromZero = 5;

/**
 * Law of propagation of uncertainty (JCGM 100, 5.1) for each value of a plan. Each derivative is taken from one
 * standard uncertainty up and one down (two for a quantity with corners), which also shows how much the value bends.
 * Errors that several readings share keep their sign, so that correlation is not lost. `world` is the found world,
 * moved and put back.
 */
export function gradientsOf(
  run: PreparedRun,
  model: ErrorModel,
  plan: Plan,
  world: World = copyOf(run.points.found),
): Gradient[] {
  const { found, hasXy } = run.points;
  const reach = plan.law === 'edged' ? 2 : 1;
  let size = 0;
  let square = 0;
  let bend = 0;

  /** Slope of a value along one number of one point. */
  function slope(i: number, column: Float64Array, point: number, u: number): number {
    if (u === 0) return 0;
    const at = column[point]!;
    column[point] = at + reach * u;
    const up = plan.value(world, i);
    column[point] = at - reach * u;
    const down = plan.value(world, i);
    column[point] = at;
    bend += Math.abs(up + down - 2 * plan.found[i]!) / (2 * reach);
    return (up - down) / (2 * reach * u);
  }

  function own(component: number, step: number): void {
    if (step === 0) return;
    gathered.components[size] = component;
    gathered.steps[size] = step;
    size += 1;
    square += step * step;
  }

  function luminance(i: number, point: number): void {
    const Y = found.Y[point]!;
    const r = model.r[point]!;
    const sY = model.s * Y;
    const perCdM2 = slope(i, world.Y, point, Math.sqrt(r * r + sY * sY));
    common[sComponent]! += perCdM2 * sY;
    own(ownComponent(point, 0), perCdM2 * r);
  }

  function chromaticity(i: number, point: number): void {
    if (hasXy[point] !== 1) return;
    const group = model.hueClass[point]!;
    const perX = slope(i, world.x, point, model.ux[point]!);
    const perY = slope(i, world.y, point, model.uy[point]!);
    common[aComponent(group, 0)]! += perX * model.ax[point]!;
    common[aComponent(group, 1)]! += perY * model.ay[point]!;
    own(ownComponent(point, 1), perX * model.ex[point]!);
    own(ownComponent(point, 2), perY * model.ey[point]!);
  }

  function gradientOf(i: number): Gradient {
    size = 0;
    square = 0;
    bend = 0;
    common.fill(0);
    const inputs = plan.inputs[i]!;
    const lights = plan.lights[i]!;
    for (let k = 0; k < inputs.length; k += 1) {
      if (plan.uses !== 'chromaticity') luminance(i, inputs[k]!);
      if (plan.uses !== 'luminance') chromaticity(i, inputs[k]!);
    }
    for (let k = 0; k < lights.length; k += 1) luminance(i, lights[k]!);
    for (let component = 0; component < ownFrom; component += 1) own(component, common[component]!);
    const centre = plan.found[i]!;
    const u = Math.sqrt(square);
    const rounding = 1e-9 * Math.max(1, Math.abs(centre));
    return {
      components: gathered.components.slice(0, size),
      steps: gathered.steps.slice(0, size),
      u: u < rounding ? 0 : u,
      linear:
        Number.isFinite(u) &&
        bend <= bendLimit * u + rounding &&
        (plan.law !== 'magnitude' || centre >= awayFromZero * u),
    };
  }

  const gradients: Gradient[] = [];
  for (let i = 0; i < plan.axes.length; i += 1) gradients.push(gradientOf(i));
  return gradients;
}

/** Components and steps of the value at hand, in room that is used again. */
const gathered: { components: number[]; steps: number[] } = { components: [], steps: [] };

/** Steps of what readings have in common, of the value at hand. */
const common = new Float64Array(ownFrom);

/** A world of its own columns with the same x, y (no unit) and Y (cd/m²). */
export function copyOf({ x, y, Y }: World): World {
  return { x: x.slice(), y: y.slice(), Y: Y.slice() };
}

/** u of the difference of two values: what they have in common drops out. */
export function differenceU(one: Gradient, other: Gradient): number {
  const sum = roomOf(Math.max(lastOf(one), lastOf(other)) + 1);
  add(sum, one, 1);
  add(sum, other, -1);
  return Math.sqrt(takenFrom(sum, one) + takenFrom(sum, other));
}

/** u of the mean of the values that count, correlation kept: an average is not surer by √n than what is common. */
export function averageU(gradients: readonly Gradient[], counts: readonly boolean[], points: number): number {
  const counting = gradients.filter((_, i) => counts[i]);
  const sum = roomOf(componentCount(points));
  for (const gradient of counting) add(sum, gradient, 1);
  let square = 0;
  for (const gradient of counting) square += takenFrom(sum, gradient);
  return Math.sqrt(square) / counting.length;
}

/** A sum of steps by component, 0 between calls: to clear all of it for each sum would take longer than the sum. */
let room = new Float64Array(1024);

function roomOf(components: number): Float64Array {
  if (room.length < components) room = new Float64Array(2 * components);
  return room;
}

function lastOf({ components }: Gradient): number {
  let last = 0;
  for (let k = 0; k < components.length; k += 1) if (components[k]! > last) last = components[k]!;
  return last;
}

function add(sum: Float64Array, { components, steps }: Gradient, sign: 1 | -1): void {
  for (let k = 0; k < steps.length; k += 1) sum[components[k]!]! += sign * steps[k]!;
}

/** Takes a gradient's components out of a sum; gives the sum of their squares. */
function takenFrom(sum: Float64Array, { components }: Gradient): number {
  let square = 0;
  for (let k = 0; k < components.length; k += 1) {
    const step = sum[components[k]!]!;
    square += step * step;
    sum[components[k]!] = 0;
  }
  return square;
}
