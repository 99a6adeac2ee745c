import type { RunEvidence, UnitEvidence } from '../contract/evidence.ts';
import { type HueClass, hueClasses } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';

/** Shares of a reading's u that are its own (r, e) and that it has in common with others (s, a): 0.2² + 0.96 = 1. */
const ownShare = 0.2;
const commonShare = Math.sqrt(0.96);

/**
 * Standard uncertainties of every point by origin: Y = Ytrue·(1 + s) + r, x = xtrue + a + e, y alike.
 * s is one number for the run; a is common to a hue class, scaled by each point's u; r and e are the point's own.
 */
export interface ErrorModel {
  /** Of s, relative */
  s: number;
  /** Of r in cd/m², the floor included */
  r: Float64Array;
  /** Of a and e, in x and in y */
  ax: Float64Array;
  ay: Float64Array;
  ex: Float64Array;
  ey: Float64Array;
  /** Of x and y altogether: √(a² + e²) */
  ux: Float64Array;
  uy: Float64Array;
  /** Index into {@link hueClasses} */
  hueClass: Uint8Array;
  /** What s is seeded from: runs with equal keys share it. */
  sKey: string;
}

/**
 * The Uncertainty section of the definitions. Repeats: r and e are the larger of 0.20·u and sd/√n. The floor is an
 * independent part of each luminance. From `xy_from_cdm2` to ten times that, u of x and y grows as 10·xy_from/Y.
 */
export function errorModelOf(unit: UnitEvidence, run: RunEvidence, prepared: PreparedRun): ErrorModel {
  const { points, conditions } = prepared;
  const { uLuminance, ux, uy, floor, xyFrom } = conditions.instrument;
  const room = new Float64Array(7 * points.count);
  let taken = 0;
  const column = () => {
    taken += points.count;
    return room.subarray(taken - points.count, taken);
  };
  const model: ErrorModel = {
    s: commonShare * uLuminance,
    r: column(),
    ax: column(),
    ay: column(),
    ex: column(),
    ey: column(),
    ux: column(),
    uy: column(),
    hueClass: Uint8Array.from(points.hueClass, (name: HueClass) => hueClasses.indexOf(name)),
    sKey: sharedKey(unit, run),
  };
  for (let point = 0; point < points.count; point += 1) {
    const Y = points.found.Y[point]!;
    const low = Y > 0 && Y < 10 * xyFrom ? (10 * xyFrom) / Y : 1;
    const own = Math.max(ownShare * uLuminance * Y, points.spread.Y[point]!);
    model.r[point] = Math.hypot(own, floor);
    model.ax[point] = commonShare * ux * low;
    model.ay[point] = commonShare * uy * low;
    model.ex[point] = Math.max(ownShare * ux * low, points.spread.x[point]!);
    model.ey[point] = Math.max(ownShare * uy * low, points.spread.y[point]!);
    model.ux[point] = Math.sqrt(model.ax[point]! ** 2 + model.ex[point]! ** 2);
    model.uy[point] = Math.sqrt(model.ay[point]! ** 2 + model.ey[point]! ** 2);
  }
  return model;
}

/**
 * s belongs to an instrument on a unit. It also holds on another unit of the same panel and backlight, where the
 * instrument is named and both are stated, because a filter instrument errs by the spectrum it looks at.
 */
function sharedKey(unit: UnitEvidence, run: RunEvidence): string {
  const { instrument } = run.conditions;
  const name = fold(instrument?.name);
  const panel = fold(unit.unit.panel);
  const backlight = fold(unit.unit.backlight);
  const named = name === '' ? '' : `${name}|${fold(instrument?.serial)}`;
  return named !== '' && panel !== '' && backlight !== ''
    ? `s|${named}|${panel}|${backlight}`
    : `s|${named}|unit ${unit.id}`;
}

function fold(text: string | undefined): string {
  return (text ?? '').trim().toLowerCase().replace(/\s+/g, ' ');
}
