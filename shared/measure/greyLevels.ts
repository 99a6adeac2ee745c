import type { ResolvedConditions } from './conditions.ts';
import type { Points, World } from './points.ts';
import { needsBlack, needsWhite, targetLuminance } from './targetLuminance.ts';

/** The greyscale of a run in order, with the levels that others refer to. Empty when the run has none. */
export interface GreyLevels {
  points: readonly number[];
  /** % of each */
  stimulus: readonly number[];
  /** Point at 100 %, at 0 %, and of the greatest luminance */
  white: number | undefined;
  black: number | undefined;
  highest: number | undefined;
  /** Point whose luminance the reference white of L*a*b* has: 100 %, in HDR the highest grey. */
  reference: number | undefined;
  /** Why the target luminance of this run cannot be given, if so. */
  noTarget: string | undefined;
  /** Target luminance in cd/m² at a stimulus, by the greys of a world */
  target(world: World, stimulus: number): number;
  /** Lowest stimulus from which this and all higher levels are more than 10 % under target */
  rollOff: number | undefined;
  notes: readonly string[];
}

const sameLevel = 0.02;

/** The levels (% stimulus) of a run's greys, ascending, and which of them are white, black and the roll-off. */
export function greyLevelsOf(conditions: ResolvedConditions, points: Points): GreyLevels {
  const notes: string[] = [];
  const levels = levelsOf(points, notes);
  const stimulus = levels.map((level) => level.stimulus);
  const indices = levels.map((level) => level.point);
  const { Y } = points.found;
  const at = (percent: number) =>
    levels.find((level) => Math.abs(level.stimulus - percent) <= sameLevel)?.point;
  const white = at(100);
  const black = at(0);
  let highest: number | undefined;
  for (const point of indices) if (highest === undefined || Y[point]! > Y[highest]!) highest = point;
  const { eotf } = conditions;
  if (needsBlack(eotf) && black === undefined && levels.length > 0)
    notes.push('no 0 % level: the target takes black as 0');
  const noTarget = targetFault();
  // The signal that was sent defines the target where it differs from the level's name.
  const sent = new Map(
    levels.flatMap(({ stimulus, signal }) => (signal === stimulus ? [] : [[stimulus, signal]])),
  );
  const target = (world: World, percent: number) =>
    targetLuminance(
      eotf,
      (sent.size === 0 ? percent : (sent.get(percent) ?? percent)) / 100,
      white === undefined ? 0 : world.Y[white]!,
      black === undefined ? 0 : world.Y[black]!,
    );
  const greys = { points: indices, stimulus, white, black, highest, noTarget, target, notes };
  return {
    ...greys,
    reference: conditions.hdr ? highest : white,
    rollOff: noTarget === undefined ? rollOffOf(greys, points.found) : undefined,
  };

  function targetFault(): string | undefined {
    if (!needsWhite(eotf)) return undefined;
    if (white === undefined) return 'no 100 % level';
    if (!(Y[white]! > 0)) return 'the 100 % level has no luminance';
    if (needsBlack(eotf) && black !== undefined && Y[black]! >= Y[white]!)
      return 'the 0 % level is not darker than the 100 % level';
    return undefined;
  }
}

/** A level by its name in %, and the signal in % that was sent for it. */
type Level = { stimulus: number; signal: number; point: number };

/** Levels by stimulus. Where greys were measured in several windows, those of the window with most levels. */
function levelsOf(points: Points, notes: string[]): Level[] {
  const byWindow = new Map<number | undefined, Level[]>();
  for (const point of points.bySeries.get('greyscale') ?? []) {
    const reading = points.at[point]!;
    const neutral = neutralSignal(reading.signal);
    const stimulus = reading.stimulus ?? neutral;
    if (stimulus === undefined || !Number.isFinite(stimulus)) continue;
    const level = { stimulus, signal: neutral ?? stimulus, point };
    const members = byWindow.get(reading.window);
    if (members) members.push(level);
    else byWindow.set(reading.window, [level]);
  }
  const windows = [...byWindow].sort(
    (one, other) => other[1].length - one[1].length || (one[0] ?? 0) - (other[0] ?? 0),
  );
  if (windows.length > 1)
    notes.push(
      `greys were measured in ${windows.length} window sizes: those of ${windows[0]![0] === undefined ? 'no stated size' : `${windows[0]![0]} %`} are used`,
    );
  return (windows[0]?.[1] ?? []).sort((one, other) => one.stimulus - other.stimulus);
}

function neutralSignal(signal: readonly [number, number, number] | undefined): number | undefined {
  return signal && signal[0] === signal[1] && signal[1] === signal[2] ? signal[0] : undefined;
}

/** Walks down from the top while every level is more than 10 % under target. */
export function rollOffOf(
  greys: Pick<GreyLevels, 'points' | 'stimulus' | 'target'>,
  world: World,
): number | undefined {
  let lowest: number | undefined;
  for (let i = greys.points.length - 1; i >= 0; i -= 1) {
    const Yt = greys.target(world, greys.stimulus[i]!);
    if (!(world.Y[greys.points[i]!]! < 0.9 * Yt)) break;
    lowest = greys.stimulus[i]!;
  }
  return lowest;
}
