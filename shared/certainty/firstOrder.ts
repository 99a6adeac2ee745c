import type { Plan } from '../measure/plan.ts';
import { hueClasses, type World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import type { ErrorModel } from './errorModel.ts';

/** u of each value and of the mean of those that count. */
export interface FirstOrder {
  values: Float64Array;
  average: number;
}

/**
 * Law of propagation of uncertainty (JCGM 100, 5.1), each derivative taken as half the difference between one
 * standard uncertainty up and one down (its note on numerical derivatives). A component that several readings share
 * moves them all at once, so correlation is kept: an average with a common error is not divided by √n.
 */
export function firstOrderOf(run: PreparedRun, model: ErrorModel, plan: Plan): FirstOrder {
  const { found, count } = run.points;
  const world: World = { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() };
  const classes = hueClasses.length;
  // Components: s, then a by class and coordinate, then r, ex, ey of each point.
  const ownFrom = 1 + 2 * classes;
  const onAverage = new Float64Array(ownFrom + 3 * count);
  const values = new Float64Array(plan.axes.length);
  const counting = plan.counts.filter(Boolean).length;
  const withLuminance = plan.uses !== 'chromaticity';
  const withColour = plan.uses !== 'luminance';

  plan.inputs.forEach((inputs, i) => {
    let square = 0;
    const add = (component: number, move: (sign: number) => void) => {
      move(1);
      const up = plan.value(world, i);
      move(-1);
      const down = plan.value(world, i);
      move(0);
      const half = (up - down) / 2;
      square += half * half;
      if (plan.counts[i]) onAverage[component]! += half / counting;
    };
    if (withLuminance) {
      add(0, (sign) => {
        for (const p of inputs) world.Y[p] = found.Y[p]! * (1 + sign * model.s);
      });
      for (const p of inputs)
        add(ownFrom + 3 * p, (sign) => {
          world.Y[p] = found.Y[p]! + sign * model.r[p]!;
        });
    }
    if (withColour) {
      for (let group = 0; group < classes; group += 1) {
        const members = inputs.filter((p) => model.hueClass[p] === group && run.points.hasXy[p] === 1);
        if (members.length === 0) continue;
        add(1 + 2 * group, (sign) => {
          for (const p of members) world.x[p] = found.x[p]! + sign * model.ax[p]!;
        });
        add(2 + 2 * group, (sign) => {
          for (const p of members) world.y[p] = found.y[p]! + sign * model.ay[p]!;
        });
      }
      for (const p of inputs) {
        if (run.points.hasXy[p] !== 1) continue;
        add(ownFrom + 3 * p + 1, (sign) => {
          world.x[p] = found.x[p]! + sign * model.ex[p]!;
        });
        add(ownFrom + 3 * p + 2, (sign) => {
          world.y[p] = found.y[p]! + sign * model.ey[p]!;
        });
      }
    }
    values[i] = Math.sqrt(square);
  });
  let square = 0;
  for (const half of onAverage) square += half * half;
  return { values, average: Math.sqrt(square) };
}
