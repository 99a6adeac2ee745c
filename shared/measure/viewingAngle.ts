import { angleLimitPlan } from './angleLimit.ts';
import { de2000, de2000InWorlds } from './colourDifference.ts';
import { type Outcome, planOf, rowsOf, undefinedQuantity } from './plan.ts';
import { type PreparedRun, seriesNotes, seriesPoints, usableXy } from './prepare.ts';

type Direction = { angle: number; point: number };
type Plane = 'horizontal' | 'vertical';

/** `angle`, `angle.vertical`, `angle.grey50`, `angle.vertical.grey50`: white and horizontal go without saying. */
function stem(plane: Plane, level: string): string {
  return ['angle', plane === 'vertical' ? 'vertical' : '', level === 'white' ? '' : level]
    .filter(Boolean)
    .join('.');
}

/** Where the angle at a limit is given: half the luminance, a visible colour shift. */
const angleLimits: Readonly<Record<string, number>> = { luminance: 50, de2000: 3 };

/** Luminance, contrast and colour off axis, for each plane and level. */
export function planViewingAngle(run: PreparedRun): Outcome[] {
  const groups = new Map<string, Direction[]>();
  for (const point of seriesPoints(run, 'angle')) {
    const { angle, level = 'white', plane = 'horizontal' } = run.points.at[point]!;
    if (angle === undefined || !Number.isFinite(angle)) continue;
    const key = `${plane}|${level}`;
    groups.set(key, [...(groups.get(key) ?? []), { angle, point }]);
  }
  const zeroOf = (key: string) => groups.get(key)?.find(({ angle }) => angle === 0);
  const onAxis = (plane: Plane, level: string) =>
    [plane, 'horizontal', 'vertical'].map((each) => zeroOf(`${each}|${level}`)).find((zero) => zero)?.point;
  for (const [key, directions] of groups) {
    // 0° lies in both planes, so one reading serves both.
    const [, level] = key.split('|') as [Plane, string];
    const shared = zeroOf(`horizontal|${level}`) ?? zeroOf(`vertical|${level}`);
    if (shared && !zeroOf(key)) directions.push(shared);
    directions.sort((one, other) => one.angle - other.angle);
  }
  const outcomes: Outcome[] = [];
  for (const [key, directions] of [...groups].sort((one, other) => (one[0] < other[0] ? -1 : 1))) {
    const [plane, level] = key.split('|') as [Plane, string];
    const plans = plansOfLevel(
      run,
      stem(plane, level),
      directions,
      onAxis(plane, level),
      onAxis(plane, 'white'),
    );
    outcomes.push(...plans);
    if (level === 'white')
      for (const plan of plans) {
        const limit = angleLimits[plan.id.slice(plan.id.lastIndexOf('.') + 1)];
        if (limit === undefined) continue;
        if (plan.state === 'plan') outcomes.push(angleLimitPlan(run, plan, limit, plane === 'vertical'));
        else if (plan.state === 'undefined')
          outcomes.push(undefinedQuantity(`${plan.id}.at${limit}`, plan.undefined));
      }
    const black = groups.get(`${plane}|black`);
    if (level === 'white' && black) outcomes.push(contrastOf(run, plane, directions, black));
    else if (level === 'black' && !groups.has(`${plane}|white`))
      outcomes.push(contrastOf(run, plane, [], directions));
  }
  return outcomes;
}

function plansOfLevel(
  run: PreparedRun,
  id: string,
  directions: readonly Direction[],
  axis: number | undefined,
  whiteOnAxis: number | undefined,
): Outcome[] {
  const ids = ['luminance', 'de2000', 'de2000.total'].map((part) => `${id}.${part}`);
  const { Y } = run.points.found;
  const { floor } = run.conditions.instrument;
  if (axis === undefined) return ids.map((each) => undefinedQuantity(each, 'no reading at 0°'));
  if (!(Y[axis]! > 0) || Y[axis]! < 2 * floor)
    return ids.map((each) =>
      undefinedQuantity(each, "the reading at 0° is under twice the instrument's floor"),
    );
  const notes = seriesNotes(run, 'angle');
  const items = directions.map(({ angle, point }) => ({
    axis: angle,
    inputs: point === axis ? [point] : [point, axis],
  }));
  const luminance = planOf(run, {
    id: `${id}.luminance`,
    items,
    value: (w, i) => (100 * w.Y[directions[i]!.point]!) / Math.max(w.Y[axis]!, 1e-9),
    uses: 'luminance',
    law: 'smooth',
    notes,
    otherwise: 'no direction was measured',
  });
  return [luminance, ...colourPlans(run, id, directions, axis, whiteOnAxis, notes)];
}

function colourPlans(
  run: PreparedRun,
  id: string,
  directions: readonly Direction[],
  axis: number,
  whiteOnAxis: number | undefined,
  notes: readonly string[],
): Outcome[] {
  const ids = [`${id}.de2000`, `${id}.de2000.total`];
  const { colours, whiteName } = run.conditions;
  if (!colours)
    return ids.map((each) => undefinedQuantity(each, `the target white "${whiteName}" is not known`));
  const reference = run.greys.reference ?? whiteOnAxis;
  if (reference === undefined) return ids.map((each) => undefinedQuantity(each, 'no 100 % level'));
  if (!(run.points.found.Y[reference]! > 0))
    return ids.map((each) => undefinedQuantity(each, 'the reference white has no luminance'));
  if (!usableXy(run, axis)) return ids.map((each) => undefinedQuantity(each, 'no usable chromaticity at 0°'));
  const coloured = directions.filter(({ point }) => usableXy(run, point));
  // 0° against itself says nothing about the other directions.
  if (coloured.every(({ point }) => point === axis))
    return ids.map((each) => undefinedQuantity(each, 'no other direction has a usable chromaticity'));
  const more =
    coloured.length < directions.length
      ? [`${directions.length - coloured.length} without usable chromaticity left out`]
      : [];
  const common = {
    items: coloured.map(({ angle, point }) => ({
      axis: angle,
      inputs: [...new Set([point, axis])],
      lights: reference === point || reference === axis ? [] : [reference],
    })),
    uses: 'both',
    law: 'magnitude',
    notes: [...notes, ...more],
    otherwise: 'no direction has a usable chromaticity',
  } as const;
  return ([false, true] as const).map((total, n) =>
    planOf(run, {
      ...common,
      id: ids[n]!,
      value: (w, i) => {
        const p = coloured[i]!.point;
        const Y = total ? w.Y[p]! : w.Y[axis]!;
        return de2000(colours, w.Y[reference]!, w.x[p]!, w.y[p]!, Y, w.x[axis]!, w.y[axis]!, w.Y[axis]!);
      },
      inWorlds: (at, i, out) => {
        const seen = at(coloured[i]!.point, total ? 'xyY' : 'xy');
        const front = at(axis, 'xyY');
        de2000InWorlds(colours, at(reference, 'Y').Y, total ? seen : { ...seen, Y: front.Y }, front, out);
      },
    }),
  );
}

/** White over black in each direction; where the instrument cannot see any of the blacks, what all of them exceed. */
function contrastOf(
  run: PreparedRun,
  plane: Plane,
  white: readonly Direction[],
  black: readonly Direction[],
): Outcome {
  const { floor } = run.conditions.instrument;
  const { Y } = run.points.found;
  const pairs = white.flatMap(({ angle, point }) => {
    const dark = black.find((direction) => direction.angle === angle)?.point;
    return dark === undefined ? [] : [{ angle, point, dark }];
  });
  const id = `${stem(plane, 'white')}.contrast`;
  const sure = pairs.filter(({ dark }) => Y[dark]! > 0 && Y[dark]! >= 2 * floor);
  const notes = seriesNotes(run, 'angle');
  const lit = pairs.filter(({ point }) => Y[point]! > 0);
  if (sure.length === 0 && lit.length > 0 && floor > 0)
    return {
      state: 'over',
      id,
      over: Math.min(...lit.map(({ point }) => Y[point]!)) / (2 * floor),
      rows: rowsOf(
        run.points,
        lit.flatMap(({ point, dark }) => [point, dark]),
      ),
      notes: [...notes, `black is under twice the instrument's floor of ${floor} cd/m² in every direction`],
    };
  if (sure.length < pairs.length)
    notes.push(`${pairs.length - sure.length} with black under twice the instrument's floor left out`);
  return planOf(run, {
    id,
    items: sure.map(({ angle, point, dark }) => ({ axis: angle, inputs: [point, dark] })),
    value: (w, i) => w.Y[sure[i]!.point]! / Math.max(w.Y[sure[i]!.dark]!, 1e-9),
    uses: 'luminance',
    law: 'smooth',
    notes,
    otherwise:
      pairs.length === 0
        ? 'white and black share no direction'
        : 'white or black has no luminance in any shared direction',
  });
}
