import { deltaEItpOfXyz } from '../colour/ictcp.ts';
import { degreesOfDirection } from '../colour/lab.ts';
import { xyToUv } from '../colour/xyz.ts';
import { de2000OfGrey, labOf } from './colourDifference.ts';
import type { TargetColours } from './conditions.ts';
import { oldDifferencePlans } from './oldDifferences.ts';
import { type Item, type Law, type Outcome, planOf, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes, usableXy } from './prepare.ts';

/** Stimulus from which a level counts for average, max, all and onset. */
export const countsFromStimulus = 5;

/** One grey with chromaticity: its place in the scale and its point. */
type Grey = { stimulus: number; point: number; counts: boolean };

const differences = ['grey.de2000', 'grey.de2000.total', 'grey.de76', 'grey.de94'];
const channels = ['red', 'green', 'blue'] as const;
const coloured = [
  ...differences,
  'grey.deitp',
  ...channels.map((channel) => `grey.balance.${channel}`),
  ...['', '.u', '.v', '.angle'].map((part) => `grey.tint${part}`),
];

/** Colour error, channel balance and tint of the greyscale. */
export function planGreyscale(run: PreparedRun): Outcome[] {
  const { greys, conditions } = run;
  if (greys.points.length === 0) return [];
  const { colours } = conditions;
  if (!colours) {
    const reason = `the target white "${conditions.whiteName}" is not known`;
    return coloured.map((id) => undefinedQuantity(id, reason));
  }
  const all = colouredGreys(run);
  const notes = [...seriesNotes(run, 'greyscale'), ...greys.notes, ...leftOutNotes(run, all)];
  return [
    ...errorPlans(run, colours, all, notes),
    ...balancePlans(run, colours, all, notes),
    ...tintPlans(run, colours, all, notes),
  ];
}

const noColour = 'no grey has a chromaticity that can be used: not measured, or too dim';

function colouredGreys(run: PreparedRun): Grey[] {
  return run.greys.points
    .map((point, i) => ({ point, stimulus: run.greys.stimulus[i]! }))
    .filter(({ point }) => usableXy(run, point))
    .map(({ point, stimulus }) => ({ point, stimulus, counts: levelCounts(run, stimulus) }));
}

/** From 5 % up; in HDR below the roll-off. */
export function levelCounts(run: PreparedRun, stimulus: number): boolean {
  if (stimulus < countsFromStimulus) return false;
  const { rollOff } = run.greys;
  return !(run.conditions.hdr && rollOff !== undefined && stimulus >= rollOff);
}

/** Above `target.peak` a PQ signal need not be followed: such a level does not count where luminance is judged. */
export function excusedByTargetPeak(run: PreparedRun, stimulus: number, point: number): boolean {
  const { targetPeak, eotf } = run.conditions;
  if (targetPeak === undefined || eotf.kind !== 'PQ') return false;
  const Yt = run.greys.target(run.points.found, stimulus);
  return Yt > targetPeak && run.points.found.Y[point]! < Yt;
}

function leftOutNotes(run: PreparedRun, coloured: readonly Grey[]): string[] {
  const notes = rollOffNotes(run);
  const dim = run.greys.points.length - coloured.length;
  if (dim > 0)
    notes.push(
      `${dim} ${dim === 1 ? 'level' : 'levels'} without usable chromaticity (under ${run.conditions.instrument.xyFrom} cd/m² or not measured) left out`,
    );
  return notes;
}

/** What is said of levels that the roll-off of an HDR run leaves out (docs/decisions/0003); else nothing. */
export function rollOffNotes(run: PreparedRun): string[] {
  const { rollOff, stimulus } = run.greys;
  if (!run.conditions.hdr || rollOff === undefined) return [];
  const out = stimulus.filter((level) => level >= rollOff).length;
  return [`${out} ${out === 1 ? 'level' : 'levels'} from the roll-off at ${rollOff} % up left out`];
}

function itemsOf(greys: readonly Grey[], ...shared: (number | undefined)[]): Item[] {
  const others = shared.filter((point) => point !== undefined);
  return greys.map(({ stimulus, counts, point }) => ({
    axis: stimulus,
    counts,
    inputs: [point],
    lights: others.filter((other, i) => other !== point && others.indexOf(other) === i),
  }));
}

function errorPlans(
  run: PreparedRun,
  colours: TargetColours,
  greys: readonly Grey[],
  notes: string[],
): Outcome[] {
  const { reference, white, black, noTarget, highest } = run.greys;
  const noReference = run.conditions.hdr ? 'no grey was measured' : 'no 100 % level';
  const outcomes: Outcome[] = [];
  const dark = reference !== undefined && !(run.points.found.Y[reference]! > 0);
  if (reference === undefined || dark) {
    const reason = dark ? 'the reference white has no luminance' : noReference;
    outcomes.push(...differences.map((id) => undefinedQuantity(id, reason)));
  } else {
    const items = itemsOf(greys, reference);
    outcomes.push(
      planOf(run, {
        id: 'grey.de2000',
        items,
        value: (w, i) => {
          const p = greys[i]!.point;
          return de2000OfGrey(colours, w.Y[reference]!, w.x[p]!, w.y[p]!, w.Y[p]!, w.Y[p]!);
        },
        uses: 'both',
        law: 'magnitude',
        notes,
        otherwise: noColour,
      }),
    );
    outcomes.push(
      ...oldDifferencePlans(
        run,
        'grey',
        items,
        (w, i) => {
          const p = greys[i]!.point;
          const reading = labOf(colours, w.Y[reference]!, w.x[p]!, w.y[p]!, w.Y[p]!);
          return [reading, [reading[0], 0, 0]];
        },
        notes,
        noColour,
      ),
    );
    outcomes.push(
      noTarget === undefined
        ? planOf(run, {
            id: 'grey.de2000.total',
            items: withTarget(run, greys, reference, white, black),
            value: (w, i) => {
              const { point: p, stimulus } = greys[i]!;
              const Yt = run.greys.target(w, stimulus);
              return de2000OfGrey(colours, w.Y[reference]!, w.x[p]!, w.y[p]!, w.Y[p]!, Yt);
            },
            uses: 'both',
            law: 'magnitude',
            notes,
            otherwise: noColour,
          })
        : undefinedQuantity('grey.de2000.total', noTarget),
    );
  }
  if (noTarget !== undefined || highest === undefined)
    outcomes.push(undefinedQuantity('grey.deitp', noTarget ?? 'no grey was measured'));
  else
    outcomes.push(
      planOf(run, {
        id: 'grey.deitp',
        items: itemsOf(greys, white, black, highest),
        value: (w, i) => deItpOfGrey(run, colours, w, greys[i]!, highest),
        uses: 'both',
        law: 'magnitude',
        notes,
        otherwise: noColour,
      }),
    );
  return outcomes;
}

/** Items of a quantity that compares luminance: levels above `target.peak` that fall short do not count. */
function withTarget(run: PreparedRun, greys: readonly Grey[], ...shared: (number | undefined)[]): Item[] {
  return itemsOf(
    greys.map((grey) => ({
      ...grey,
      counts: grey.counts && !excusedByTargetPeak(run, grey.stimulus, grey.point),
    })),
    ...shared,
  );
}

function deItpOfGrey(
  run: PreparedRun,
  colours: TargetColours,
  w: World,
  grey: Grey,
  highest: number,
): number {
  const { point: p, stimulus } = grey;
  const Yt = Math.min(run.greys.target(w, stimulus), w.Y[highest]!);
  const x = w.x[p]!;
  const Y = w.Y[p]!;
  const scale = Y / w.y[p]!;
  const Z = (1 - x - w.y[p]!) * scale;
  return deltaEItpOfXyz(x * scale, Y, Z, colours.whiteX * Yt, Yt, colours.whiteZ * Yt);
}

/** 100·M⁻¹·(x/y, 1, (1−x−y)/y)ᵀ: on target 100/100/100, luminance plays no part. */
function balancePlans(
  run: PreparedRun,
  colours: TargetColours,
  greys: readonly Grey[],
  notes: string[],
): Outcome[] {
  const items = itemsOf(greys);
  return channels.map((channel, row) => {
    const [X, Y, Z] = colours.toRgb[row]!;
    return planOf(run, {
      id: `grey.balance.${channel}`,
      items,
      value: (w, i) => {
        const x = w.x[greys[i]!.point]!;
        const y = w.y[greys[i]!.point]!;
        return 100 * (X * (x / y) + Y + Z * ((1 - x - y) / y));
      },
      uses: 'chromaticity',
      law: 'smooth',
      notes,
      otherwise: noColour,
    });
  });
}

/** Under this Δu′v′, which is rounding, a shift has no direction. */
const leastShift = 1e-9;

/** Shift (Δu′, Δv′) of each grey from the target white: its size, its direction and its two components. */
function tintPlans(
  run: PreparedRun,
  colours: TargetColours,
  greys: readonly Grey[],
  notes: string[],
): Outcome[] {
  const [uWhite, vWhite] = xyToUv(...colours.white);
  const shift = (w: World, i: number): [number, number] => {
    const [u, v] = xyToUv(w.x[greys[i]!.point]!, w.y[greys[i]!.point]!);
    return [u - uWhite, v - vWhite];
  };
  const common = { items: itemsOf(greys), uses: 'chromaticity', notes, otherwise: noColour } as const;
  const plan = (id: string, value: (w: World, i: number) => number, law: Law) =>
    planOf(run, { ...common, id, value, law });
  // Draws are counted from the found direction, so that those past 0° do not jump to 360°.
  const found = greys.map((_, i) => shift(run.points.found, i));
  const directions = found.map((direction) => degreesOfDirection(...direction));
  return [
    plan('grey.tint', (w, i) => length(shift(w, i)), 'magnitude'),
    plan('grey.tint.u', (w, i) => shift(w, i)[0], 'smooth'),
    plan('grey.tint.v', (w, i) => shift(w, i)[1], 'smooth'),
    planOf(run, {
      ...common,
      id: 'grey.tint.angle',
      // No shift has no direction.
      value: (w, i) => {
        const drawn = shift(w, i);
        if (length(drawn) < leastShift) return Number.NaN;
        return directions[i]! + degreesBetween(found[i]!, drawn);
      },
      inWorlds: (at, i, out) => {
        const { x, y } = at(greys[i]!.point, 'xy');
        const [u, v] = found[i]!;
        for (let d = 0; d < out.length; d += 1) {
          const share = 1 / (-2 * x[d]! + 12 * y[d]! + 3);
          const du = 4 * x[d]! * share - uWhite;
          const dv = 9 * y[d]! * share - vWhite;
          const none = du * du + dv * dv < leastShift * leastShift;
          const turn = Math.atan2(u * dv - v * du, u * du + v * dv);
          out[d] = none ? Number.NaN : directions[i]! + (turn * 180) / Math.PI;
        }
      },
      law: 'smooth',
      // Directions go round: 359° and 1° have no mean of 180°.
      isSeries: false,
      otherwise: greys.length > 0 ? 'every grey is on the target white' : noColour,
    }),
  ];
}

/** From one direction to another, −180 to 180°. */
function degreesBetween([u1, v1]: readonly [number, number], [u2, v2]: readonly [number, number]): number {
  return (Math.atan2(u1 * v2 - v1 * u2, u1 * u2 + v1 * v2) * 180) / Math.PI;
}

/** Plain root of squares: several times as fast as Math.hypot, whose care for overflow is not needed here. */
function length([one, other]: readonly [number, number]): number {
  return Math.sqrt(one * one + other * other);
}
