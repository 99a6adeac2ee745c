import { rollOffOf } from './greyLevels.ts';
import { countsFromStimulus, excusedByTargetPeak, levelCounts, rollOffNotes } from './greyscale.ts';
import { type Outcome, planOf, scalarPlan, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes } from './prepare.ts';

type Level = { stimulus: number; V: number; logV: number; point: number };

/** Gamma, EOTF error and roll-off: luminance of the greyscale against its target. */
export function planToneCurve(run: PreparedRun): Outcome[] {
  const { greys, conditions } = run;
  if (greys.points.length === 0) return [];
  const levels = greys.points.map((point, i) => ({
    point,
    stimulus: greys.stimulus[i]!,
    V: greys.stimulus[i]! / 100,
    logV: Math.log(greys.stimulus[i]! / 100),
  }));
  const absolute = conditions.eotf.kind === 'PQ' || conditions.eotf.kind === 'HLG';
  return [
    ...(absolute ? [] : gammaPlans(run, levels)),
    eotfErrorPlan(run, levels),
    ...rollOffPlans(run, levels),
  ];
}

/** Luminance is trusted from twice the instrument's floor. */
function bright(run: PreparedRun, point: number): boolean {
  return run.points.found.Y[point]! >= 2 * run.conditions.instrument.floor;
}

function gammaPlans(run: PreparedRun, levels: readonly Level[]): Outcome[] {
  const { white } = run.greys;
  const ids = ['gamma', 'gamma.average', 'gamma.slope'];
  if (white === undefined) return ids.map((id) => undefinedQuantity(id, 'no 100 % level'));
  const { Y } = run.points.found;
  if (!(Y[white]! > 0)) return ids.map((id) => undefinedQuantity(id, 'the 100 % level has no luminance'));
  const inside = levels.filter(({ V, point }) => V > 0 && V < 1 && Y[point]! > 0);
  const notes = [...seriesNotes(run, 'greyscale'), ...run.greys.notes];
  const gammaAt = (w: World, { logV, point }: Level) =>
    Math.log(Math.max(w.Y[point]!, 1e-9) / w.Y[white]!) / logV;
  const middle = inside.filter(
    ({ stimulus, point }) => stimulus >= 10 && stimulus <= 90 && bright(run, point),
  );
  const inputs = [...middle.map(({ point }) => point), white];
  const common = { uses: 'luminance', law: 'smooth', notes } as const;
  const noMiddle = 'no level from 10 to 90 % above twice the instrument floor';
  return [
    planOf(run, {
      ...common,
      id: 'gamma',
      items: inside.map(({ stimulus, point }) => ({
        axis: stimulus,
        counts: stimulus >= countsFromStimulus && bright(run, point),
        inputs: [point, white],
      })),
      value: (w, i) => gammaAt(w, inside[i]!),
      otherwise: 'no level between 0 and 100 % with a luminance above 0',
    }),
    scalarPlan(run, {
      ...common,
      id: 'gamma.average',
      inputs,
      value: (w) => middle.reduce((sum, level) => sum + gammaAt(w, level), 0) / middle.length,
      otherwise: noMiddle,
    }),
    middle.length < 2
      ? undefinedQuantity('gamma.slope', middle.length === 0 ? noMiddle : 'one level has no slope')
      : scalarPlan(run, {
          ...common,
          id: 'gamma.slope',
          inputs: inputs.slice(0, -1),
          value: (w) => slopeOf(middle, w),
          otherwise: noMiddle,
        }),
  ];
}

/** Least squares of ln Y on ln V. */
function slopeOf(levels: readonly Level[], w: World): number {
  let meanV = 0;
  for (const { logV } of levels) meanV += logV / levels.length;
  let product = 0;
  let square = 0;
  for (const { logV, point } of levels) {
    // Deviations from the mean sum to 0, so that of ln Y need not be taken off.
    product += (logV - meanV) * Math.log(Math.max(w.Y[point]!, 1e-9));
    square += (logV - meanV) ** 2;
  }
  return product / square;
}

function eotfErrorPlan(run: PreparedRun, levels: readonly Level[]): Outcome {
  const { noTarget, white, black, notes } = run.greys;
  if (noTarget !== undefined) return undefinedQuantity('eotf.error', noTarget);
  const shared = [white, black].filter((point) => point !== undefined);
  const anchored = run.conditions.eotf.kind === 'PQ' ? [] : shared;
  return planOf(run, {
    id: 'eotf.error',
    items: levels.map(({ stimulus, point }) => ({
      axis: stimulus,
      counts: levelCounts(run, stimulus) && bright(run, point) && !excusedByTargetPeak(run, stimulus, point),
      inputs: [point, ...anchored.filter((other) => other !== point)],
    })),
    value: (w, i) => {
      const { stimulus, point } = levels[i]!;
      const Yt = run.greys.target(w, stimulus);
      if (!(Yt > 0)) return Number.NaN;
      const error = (100 * (w.Y[point]! - Yt)) / Yt;
      // White and black hit their own target but for rounding.
      return Math.abs(error) < 1e-9 ? 0 : error;
    },
    uses: 'luminance',
    law: 'smooth',
    notes: [...seriesNotes(run, 'greyscale'), ...notes, ...rollOffNotes(run)],
    otherwise: 'no level has a target luminance above 0',
  });
}

/** How far below the highest a level may stay for the set to count as clipping, %. */
export const clipsWithin = 2;

/**
 * `eotf.rolloff` is the stimulus where the curve leaves the target for good; `eotf.rolloff.spread` how far the
 * levels above it stay under the brightest, in %: within {@link clipsWithin} the set clips, beyond it rolls off.
 */
function rollOffPlans(run: PreparedRun, levels: readonly Level[]): Outcome[] {
  const { greys, conditions } = run;
  const ids = ['eotf.rolloff', 'eotf.rolloff.spread'];
  if (greys.noTarget !== undefined) return ids.map((id) => undefinedQuantity(id, greys.noTarget!));
  const { rollOff } = greys;
  if (rollOff === undefined)
    return ids.map((id) =>
      undefinedQuantity(id, 'no roll-off: the highest level is within 10 % of its target or above'),
    );
  const above = levels.filter(({ stimulus }) => stimulus > rollOff).map(({ point }) => point);
  const inputs = levels.filter(({ stimulus }) => stimulus >= rollOff).map(({ point }) => point);
  const highest = greys.highest!;
  const spread = (w: World) => Math.max(...above.map((point) => 100 * (1 - w.Y[point]! / w.Y[highest]!)));
  const notes = [...seriesNotes(run, 'greyscale'), ...greys.notes];
  if (above.length > 0)
    notes.push(
      spread(run.points.found) <= clipsWithin ? 'the set clips there' : 'the set rolls off from there',
    );
  const { targetPeak } = conditions;
  if (targetPeak !== undefined && greys.target(run.points.found, rollOff) > targetPeak)
    notes.push(`it begins above the target's peak of ${targetPeak} cd/m² and is no error`);
  return [
    scalarPlan(run, {
      id: 'eotf.rolloff',
      inputs: [...new Set([...inputs, ...levels.map(({ point }) => point)])],
      value: (w) => rollOffOf(greys, w) ?? Number.POSITIVE_INFINITY,
      uses: 'luminance',
      law: 'drawn',
      notes,
      otherwise: 'no roll-off',
    }),
    above.length === 0
      ? undefinedQuantity('eotf.rolloff.spread', 'no level above the roll-off was measured')
      : scalarPlan(run, {
          id: 'eotf.rolloff.spread',
          inputs: [...new Set([...above, highest])],
          value: spread,
          uses: 'luminance',
          law: 'drawn',
          notes,
          otherwise: 'no level above the roll-off was measured',
        }),
  ];
}
