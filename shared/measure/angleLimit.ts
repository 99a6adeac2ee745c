import { crossingOf } from './monotoneCurve.ts';
import { type Outcome, type Plan, planOf } from './plan.ts';
import type { World } from './points.ts';
import type { PreparedRun } from './prepare.ts';

type Side = { name: string; members: readonly number[] };

/**
 * The angle at which an off-axis quantity first passes a limit, on each side: `angle.luminance.at50`,
 * `angle.de2000.at3`. Interpolated between directions, never beyond the last one.
 */
export function angleLimitPlan(run: PreparedRun, of: Plan, limit: number, vertical: boolean): Outcome {
  const angles = of.axes.map(Number);
  const side = (name: string, sign: 1 | -1): Side => ({
    name,
    members: angles
      .map((_, i) => i)
      .filter((i) => angles[i]! * sign >= 0)
      .sort((one, other) => Math.abs(angles[one]!) - Math.abs(angles[other]!)),
  });
  const sides = (vertical ? [side('down', -1), side('up', 1)] : [side('left', -1), side('right', 1)]).filter(
    ({ members }) => members.length > 1,
  );
  const points = (members: readonly number[], from: Plan['inputs']) => members.flatMap((i) => from[i]!);
  const places = sides.map(({ members }) => members.map((member) => Math.abs(angles[member]!)));
  const combine = (values: readonly number[], i: number) =>
    crossingOf(places[i]!, values, limit) ?? Number.NaN;
  const widest = angles.reduce((most, angle) => Math.max(most, Math.abs(angle)), 0);
  return planOf(run, {
    id: `${of.id}.at${limit}`,
    items: sides.map(({ name, members }) => {
      const inputs = [...new Set(points(members, of.inputs))];
      return {
        axis: name,
        inputs,
        lights: [...new Set(points(members, of.lights))].filter((point) => !inputs.includes(point)),
      };
    }),
    value: (w: World, i: number) =>
      combine(
        sides[i]!.members.map((member) => of.value(w, member)),
        i,
      ),
    from: { plan: of, members: (i) => sides[i]!.members, combine },
    uses: of.uses,
    law: 'drawn',
    notes: ['interpolated between the measured directions (monotone cubic)', ...of.notes],
    otherwise: `${limit}${of.id.endsWith('luminance') ? ' %' : ''} is not passed within ${widest}°`,
  });
}
