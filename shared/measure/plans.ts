import { planChart } from './chart.ts';
import { planColourVolume } from './colourVolume.ts';
import { planContrast } from './contrast.ts';
import { planGamutSize } from './gamutSize.ts';
import { planGreyscale } from './greyscale.ts';
import { planPeak } from './peak.ts';
import type { Outcome } from './plan.ts';
import type { PreparedRun } from './prepare.ts';
import { planSingles } from './single.ts';
import { planSweeps } from './sweep.ts';
import { planToneCurve } from './toneCurve.ts';
import { planUniformity } from './uniformity.ts';
import { planViewingAngle } from './viewingAngle.ts';
import { planWhitePoint } from './whitePoint.ts';

/** Every series with what it gives, in the order in which quantities are listed. */
const planners = [
  planGreyscale,
  planWhitePoint,
  planToneCurve,
  planGamutSize,
  planColourVolume,
  planSweeps,
  planChart,
  planPeak,
  planContrast,
  planUniformity,
  planViewingAngle,
  planSingles,
] as const;

/** All quantities of a run, made ready; the first of equal ids stands. */
export function plansOf(run: PreparedRun): ReadonlyMap<string, Outcome> {
  const plans = new Map<string, Outcome>();
  for (const planner of planners)
    for (const outcome of planner(run)) if (!plans.has(outcome.id)) plans.set(outcome.id, outcome);
  return plans;
}
