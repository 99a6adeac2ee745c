import { weightedPart } from '../colour/deltaE2000Part.ts';
import { hueAngle, hueDifference, type Lab } from '../colour/lab.ts';
import { amplitudeOf } from './amplitude.ts';
import { de2000, labOf } from './colourDifference.ts';
import { type ColourTarget, type SaturationHue, targetOfSaturation, targetOfSignal } from './colourTarget.ts';
import type { TargetColours } from './conditions.ts';
import { oldDifferencePlans } from './oldDifferences.ts';
import { type Item, type Outcome, planOf, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes, seriesPoints, usableXy } from './prepare.ts';
import { highestWhite, labWhiteOfRun, whiteOfRun } from './whiteLuminance.ts';

export const sweepHues = ['red', 'green', 'blue', 'cyan', 'magenta', 'yellow'] as const;
/** Those that need luminance and a white to scale it, beside `de2000` itself. */
const anchoredParts = ['de2000.L', 'de2000.C', 'de2000.H', 'de76', 'de94'] as const;
const parts = ['de2000', 'de2000.colour', 'saturation', 'hue', 'luminance', ...anchoredParts] as const;

/** Below this chroma a hue angle means nothing. */
const hueFromChroma = 5;
/** Y/Yr of L* 50 */
const middleLightness = ((50 + 16) / 116) ** 3;

type Step = { saturation: number; point: number; target: ColourTarget };

/** Saturation sweeps: each measured hue's colour, chroma, hue and luminance against its target. */
export function planSweeps(run: PreparedRun): Outcome[] {
  const members = seriesPoints(run, 'saturation');
  if (members.length === 0) return [];
  const { colours, whiteName } = run.conditions;
  return sweepHues.flatMap((hue) => {
    const points = members.filter((point) => run.points.at[point]!.hue === hue);
    if (points.length === 0) return [];
    if (!colours)
      return parts.map((part) =>
        undefinedQuantity(`sweep.${hue}.${part}`, `the target white "${whiteName}" is not known`),
      );
    return plansOfHue(run, colours, hue, points);
  });
}

/** Steps of one hue, ascending; of several amplitudes at one saturation the commonest, then the largest, is used. */
function stepsOf(
  run: PreparedRun,
  colours: TargetColours,
  hue: SaturationHue,
  points: readonly number[],
  notes: string[],
): Step[] {
  const byAmplitude = new Map<number, number[]>();
  for (const point of points) {
    const amplitude = amplitudeOf(run.points.at[point]!);
    byAmplitude.set(amplitude, [...(byAmplitude.get(amplitude) ?? []), point]);
  }
  const groups = [...byAmplitude].sort((one, other) => other[1].length - one[1].length || other[0] - one[0]);
  if (groups.length > 1)
    notes.push(`measured at ${groups.length} amplitudes: steps of ${groups[0]![0]} % stimulus are used`);
  const steps: Step[] = [];
  let dim = 0;
  for (const point of groups[0]![1]) {
    const { saturation, signal, stimulus } = run.points.at[point]!;
    if (saturation === undefined || !Number.isFinite(saturation)) continue;
    const target =
      signal === undefined
        ? targetOfSaturation(run.conditions, colours, hue, saturation, stimulus ?? 100)
        : targetOfSignal(run.conditions, colours, signal);
    if (!target) continue;
    if (usableXy(run, point)) steps.push({ saturation, point, target });
    else dim += 1;
  }
  if (dim > 0) notes.push(`${dim} without usable chromaticity left out`);
  return steps.sort((one, other) => one.saturation - other.saturation);
}

function plansOfHue(
  run: PreparedRun,
  colours: TargetColours,
  hue: (typeof sweepHues)[number],
  points: readonly number[],
): Outcome[] {
  const id = (part: (typeof parts)[number]) => `sweep.${hue}.${part}`;
  const notes = seriesNotes(run, 'saturation');
  const steps = stepsOf(run, colours, hue, points, notes);
  const absolute = run.conditions.eotf.kind === 'PQ';
  const white = whiteOfRun(run);
  const labWhite = labWhiteOfRun(run);
  const hasLuminance = absolute || white !== undefined;
  const anchored = hasLuminance && labWhite !== undefined;
  const scale = labWhite ?? highestWhite(run);
  const whiteOf = (w: World) => (white ? w.Y[white.point]! : 0);
  const scaleOf = (w: World, point: number) => (scale ? w.Y[scale.point]! : w.Y[point]! / middleLightness);
  if (white && !absolute) notes.push(`Yw from the ${white.name}`);
  if (!anchored)
    notes.push(
      scale
        ? `no white in this run: chroma and hue at equal luminance, L* from the ${scale.name}`
        : 'no white in this run: chroma and hue at equal luminance, L* 50',
    );
  const otherwise =
    steps.length === 0 ? `no ${hue} step has a usable chromaticity` : `no ${hue} step has a luminance`;
  const lit = steps.some(({ point }) => run.points.found.Y[point]! > 0);
  const shared = [white?.point, scale?.point].filter((point) => point !== undefined);
  const items: Item[] = steps.map(({ saturation, point }) => ({
    axis: saturation,
    inputs: [point],
    lights: shared.filter((other, i) => other !== point && shared.indexOf(other) === i),
  }));
  const targets: { scale: number; Yt: number; lab: Lab }[] = [];
  /** Reading and target as L*a*b*: as they are, or both at the reading's luminance. */
  const labs = (w: World, i: number) => {
    const { point: p, target } = steps[i]!;
    const Yt = anchored ? target.luminance(whiteOf(w)) : w.Y[p]!;
    const scale = scaleOf(w, p);
    // The target stays while only the reading moves, which is half of the time.
    let known = targets[i];
    if (known?.scale !== scale || known.Yt !== Yt) {
      known = { scale, Yt, lab: labOf(colours, scale, target.x, target.y, Yt) };
      targets[i] = known;
    }
    return [labOf(colours, scale, w.x[p]!, w.y[p]!, w.Y[p]!), known.lab] as const;
  };
  const common = { items, uses: 'both', notes, otherwise } as const;
  const reasonWithout = hasLuminance ? 'no white in this run to scale L*' : 'no white in this run';
  return [
    anchored
      ? planOf(run, {
          ...common,
          id: id('de2000'),
          law: 'magnitude',
          value: (w, i) => {
            const { point: p, target } = steps[i]!;
            const Yt = target.luminance(whiteOf(w));
            return de2000(colours, scaleOf(w, p), w.x[p]!, w.y[p]!, w.Y[p]!, target.x, target.y, Yt);
          },
        })
      : undefinedQuantity(id('de2000'), reasonWithout),
    planOf(run, {
      ...common,
      id: id('de2000.colour'),
      law: 'magnitude',
      value: (w, i) => {
        const { point: p, target } = steps[i]!;
        return de2000(colours, scaleOf(w, p), w.x[p]!, w.y[p]!, w.Y[p]!, target.x, target.y, w.Y[p]!);
      },
    }),
    planOf(run, {
      ...common,
      id: id('saturation'),
      law: 'smooth',
      value: (w, i) => {
        const [reading, target] = labs(w, i);
        const Ct = chroma(target);
        return Ct > 1e-6 ? (100 * (chroma(reading) - Ct)) / Ct : Number.NaN;
      },
      otherwise: lit ? 'the target has no chroma' : otherwise,
    }),
    huePlan(),
    hasLuminance
      ? planOf(run, {
          ...common,
          id: id('luminance'),
          uses: 'luminance',
          law: 'smooth',
          items: luminanceItems(),
          value: (w, i) => {
            const Yt = steps[i]!.target.luminance(whiteOf(w));
            return (100 * (w.Y[steps[i]!.point]! - Yt)) / Yt;
          },
        })
      : undefinedQuantity(id('luminance'), 'no white in this run'),
    ...(anchored
      ? [...differenceParts(), ...oldDifferencePlans(run, `sweep.${hue}`, items, labs, notes, otherwise)]
      : anchoredParts.map((part) => undefinedQuantity(id(part), reasonWithout))),
  ];

  /** ΔL′/SL, ΔC′/SC and ΔH′/SH of CIEDE2000, reading minus target: what makes the error large. */
  function differenceParts(): Outcome[] {
    return (['L', 'C', 'H'] as const).map((part) =>
      planOf(run, {
        ...common,
        id: `${id('de2000')}.${part}`,
        law: 'smooth',
        value: (w, i) => {
          const [reading, target] = labs(w, i);
          return weightedPart(part, target, reading);
        },
      }),
    );
  }

  function luminanceItems(): Item[] {
    const anchor = absolute || !white ? [] : [white.point];
    return steps.map(({ saturation, point }) => ({
      axis: saturation,
      inputs: [...new Set([point, ...anchor])],
    }));
  }

  function huePlan(): Outcome {
    const hued = steps
      .map((_, i) => i)
      .filter((i) => labs(run.points.found, i).every((lab) => chroma(lab) >= hueFromChroma));
    return planOf(run, {
      ...common,
      id: id('hue'),
      items: hued.map((i) => items[i]!),
      law: 'smooth',
      value: (w, i) => {
        const [reading, target] = labs(w, hued[i]!);
        return hueDifference(hueAngle(target), hueAngle(reading));
      },
      otherwise: lit ? 'every step is under 5 C*' : otherwise,
    });
  }
}

/** C*ab; a plain root is several times as fast as Math.hypot. */
function chroma([, a, b]: Lab): number {
  return Math.sqrt(a * a + b * b);
}
