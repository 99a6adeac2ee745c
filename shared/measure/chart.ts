import { adaptationMatrix } from '../colour/adaptation.ts';
import { labToXyz } from '../colour/lab.ts';
import { apply3 } from '../colour/rgb.ts';
import { whiteXy } from '../colour/whites.ts';
import { type Xyz, xyYToXyz } from '../colour/xyz.ts';
import type { Reading } from '../contract/reading.ts';
import { de2000, labOf } from './colourDifference.ts';
import { type ColourTarget, targetOfSignal } from './colourTarget.ts';
import type { TargetColours } from './conditions.ts';
import { oldDifferencePlans } from './oldDifferences.ts';
import { type Outcome, planOf, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes, seriesPoints, usableXy } from './prepare.ts';
import { labWhiteOfRun, whiteOfRun } from './whiteLuminance.ts';

const ids = ['chart.de2000', 'chart.de2000.colour', 'chart.de76', 'chart.de94'] as const;

/** Rounding of a printed reference must not push it out of the gamut that it was made in. */
const gamutSlack = 1e-3;

/** Colour error of each chart patch: total, and at equal luminance. */
export function planChart(run: PreparedRun): Outcome[] {
  const members = seriesPoints(run, 'chart');
  if (members.length === 0) return [];
  const { colours, whiteName } = run.conditions;
  if (!colours) return ids.map((id) => undefinedQuantity(id, `the target white "${whiteName}" is not known`));
  const white = whiteOfRun(run);
  const labWhite = labWhiteOfRun(run);
  if (!labWhite) return ids.map((id) => undefinedQuantity(id, 'no white in this run'));

  const notes = [...seriesNotes(run, 'chart'), ...(white ? [`Yw from the ${white.name}`] : [])];
  const patches: { patch: string; point: number; target: ColourTarget }[] = [];
  const left = { outside: [] as string[], unknown: [] as string[], dim: [] as string[] };
  for (const point of members) {
    const reading = run.points.at[point]!;
    const patch = reading.patch ?? `row ${Math.min(...run.points.rows[point]!)}`;
    const target = targetOfPatch(run, colours, reading);
    if (target === 'outside') left.outside.push(patch);
    else if (target === undefined || (target.needsWhite && !white)) left.unknown.push(patch);
    else if (!usableXy(run, point)) left.dim.push(patch);
    else patches.push({ patch, point, target });
  }
  patches.sort((one, other) => comparePatches(one.patch, other.patch));
  list(left.outside, 'outside the target gamut, left out');
  list(left.unknown, 'without a reference, left out');
  list(left.dim, 'without usable chromaticity, left out');

  const items = patches.map(({ patch, point }) => ({
    axis: patch,
    inputs: [point],
    lights: [...new Set([labWhite.point, white?.point ?? labWhite.point])],
  }));
  const common = {
    items,
    uses: 'both',
    law: 'magnitude',
    notes,
    otherwise: 'no patch has a reading and a target',
  } as const;
  const targetY = (w: World, i: number) => patches[i]!.target.luminance(white ? w.Y[white.point]! : 0);
  const error = (w: World, i: number, equal: boolean) => {
    const { point: p, target } = patches[i]!;
    const Yt = equal ? w.Y[p]! : targetY(w, i);
    return de2000(colours, w.Y[labWhite.point]!, w.x[p]!, w.y[p]!, w.Y[p]!, target.x, target.y, Yt);
  };
  return [
    planOf(run, { ...common, id: 'chart.de2000', value: (w, i) => error(w, i, false) }),
    planOf(run, { ...common, id: 'chart.de2000.colour', value: (w, i) => error(w, i, true) }),
    ...oldDifferencePlans(
      run,
      'chart',
      items,
      (w, i) => {
        const { point: p, target } = patches[i]!;
        const Yr = w.Y[labWhite.point]!;
        return [
          labOf(colours, Yr, w.x[p]!, w.y[p]!, w.Y[p]!),
          labOf(colours, Yr, target.x, target.y, targetY(w, i)),
        ];
      },
      notes,
      common.otherwise,
    ),
  ];

  function list(names: string[], what: string): void {
    if (names.length > 0)
      notes.push(
        `${names.length === 1 ? 'patch' : 'patches'} ${names.sort(comparePatches).join(', ')} ${what}`,
      );
  }
}

/** Numbers by size, so that 2 comes before 10, else by code unit. */
export function comparePatches(one: string, other: string): number {
  const difference = Number(one) - Number(other);
  if (difference !== 0 && !Number.isNaN(difference)) return difference;
  return one < other ? -1 : one > other ? 1 : 0;
}

/** The sent signal defines the target where it is given; else the reference, if the target gamut holds it. */
function targetOfPatch(
  run: PreparedRun,
  colours: TargetColours,
  reading: Reading,
): ColourTarget | 'outside' | undefined {
  if (reading.signal) return targetOfSignal(run.conditions, colours, reading.signal);
  const xyz = referenceXyz(colours, reading);
  if (!xyz || !(xyz[1] > 0)) return undefined;
  if (apply3(colours.toRgb, xyz).some((channel) => channel < -gamutSlack || channel > 1 + gamutSlack))
    return 'outside';
  const sum = xyz[0] + xyz[1] + xyz[2];
  return { x: xyz[0] / sum, y: xyz[1] / sum, needsWhite: true, luminance: (Yw) => xyz[1] * Yw };
}

/** Reference under the target white, white = 1. L*a*b* under D50 is adapted by Bradford; adaptation makes targets only. */
function referenceXyz(colours: TargetColours, reading: Reading): Xyz | undefined {
  if (reading.referencexyY) {
    const [x, y, Y] = reading.referencexyY;
    return y > 0 ? xyYToXyz(x, y, Y) : undefined;
  }
  if (!reading.referenceLab) return undefined;
  const d50 = xyYToXyz(...whiteXy('D50'), 1);
  const matrix = adaptationMatrix(d50, xyYToXyz(...colours.white, 1));
  return apply3(matrix, labToXyz(reading.referenceLab, d50));
}
