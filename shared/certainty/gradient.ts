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
 * standard uncertainty up and one down (two for a quantity with corners), which also shows how much the value
 * bends. Errors that several readings share keep their sign, so that correlation is not lost.
 */
export function gradientsOf(run: PreparedRun, model: ErrorModel, plan: Plan): Gradient[] {
  const { found } = run.points;
  const world: World = { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() };
  const reach = plan.law === 'edged' ? 2 : 1;
  const common = new Float64Array(ownFrom);
  return plan.axes.map((_, i) => gradientOf(run, model, plan, i, world, reach, common.fill(0)));
}

function gradientOf(
  run: PreparedRun,
  model: ErrorModel,
  plan: Plan,
  i: number,
  world: World,
  reach: number,
  common: Float64Array,
): Gradient {
  const { found, hasXy } = run.points;
  const centre = plan.found[i]!;
  const components: number[] = [];
  const steps: number[] = [];
  let square = 0;
  let bend = 0;

  /** Slope of the value along one coordinate of one point. */
  const slope = (column: Float64Array, point: number, u: number): number => {
    if (u === 0) return 0;
    const at = column[point]!;
    column[point] = at + reach * u;
    const up = plan.value(world, i);
    column[point] = at - reach * u;
    const down = plan.value(world, i);
    column[point] = at;
    bend += Math.abs(up + down - 2 * centre) / (2 * reach);
    return (up - down) / (2 * reach * u);
  };
  const own = (component: number, step: number) => {
    if (step === 0) return;
    components.push(component);
    steps.push(step);
    square += step * step;
  };
  const luminance = (point: number) => {
    const Y = found.Y[point]!;
    const r = model.r[point]!;
    const perCdM2 = slope(world.Y, point, Math.sqrt(r * r + (model.s * Y) ** 2));
    common[sComponent]! += perCdM2 * model.s * Y;
    own(ownComponent(point, 0), perCdM2 * r);
  };
  const chromaticity = (point: number) => {
    if (hasXy[point] !== 1) return;
    const group = model.hueClass[point]!;
    const perX = slope(world.x, point, model.ux[point]!);
    const perY = slope(world.y, point, model.uy[point]!);
    common[aComponent(group, 0)]! += perX * model.ax[point]!;
    common[aComponent(group, 1)]! += perY * model.ay[point]!;
    own(ownComponent(point, 1), perX * model.ex[point]!);
    own(ownComponent(point, 2), perY * model.ey[point]!);
  };

  for (const point of plan.inputs[i]!) {
    if (plan.uses !== 'chromaticity') luminance(point);
    if (plan.uses !== 'luminance') chromaticity(point);
  }
  for (const point of plan.lights[i]!) luminance(point);
  common.forEach((step, component) => {
    own(component, step);
  });
  const u = Math.sqrt(square);
  const rounding = 1e-9 * Math.max(1, Math.abs(centre));
  return {
    components,
    steps,
    u: u < rounding ? 0 : u,
    linear:
      Number.isFinite(u) &&
      bend <= bendLimit * u + rounding &&
      (plan.law !== 'magnitude' || centre >= awayFromZero * u),
  };
}

/** u of the difference of two values: what they have in common drops out. */
export function differenceU(one: Gradient, other: Gradient): number {
  const steps = new Map(one.components.map((component, k) => [component, one.steps[k]!]));
  other.components.forEach((component, k) => {
    steps.set(component, (steps.get(component) ?? 0) - other.steps[k]!);
  });
  let square = 0;
  for (const step of steps.values()) square += step * step;
  return Math.sqrt(square);
}

/** u of the mean of the values that count, correlation kept: an average is not surer by √n than what is common. */
export function averageU(gradients: readonly Gradient[], counts: readonly boolean[], points: number): number {
  const steps = new Float64Array(componentCount(points));
  let n = 0;
  gradients.forEach((gradient, i) => {
    if (!counts[i]) return;
    n += 1;
    gradient.components.forEach((component, k) => {
      steps[component]! += gradient.steps[k]!;
    });
  });
  let square = 0;
  for (const step of steps) square += step * step;
  return Math.sqrt(square) / n;
}
