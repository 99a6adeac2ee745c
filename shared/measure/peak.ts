import { isFullWhite } from './amplitude.ts';
import { type Outcome, planOf, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes, seriesPoints } from './prepare.ts';

/** A peak is what shows within this many seconds; sustained is the mean from the other on. */
export const peakWithinSeconds = 10;
export const sustainedFromSeconds = 120;

type Window = { window: number | undefined; peak: number | undefined; sustained: number[] };

/** Peak, sustained luminance and how much of the peak is held, by window. */
export function planPeak(run: PreparedRun): Outcome[] {
  const members = seriesPoints(run, 'window');
  if (members.length === 0) return [];
  const windows = windowsOf(run, members);
  const notes = seriesNotes(run, 'window');
  const full = windows.filter(({ peak }) => peak !== undefined);
  const sustained = windows.filter((entry) => entry.sustained.length > 0);
  const both = sustained.filter(({ peak }) => peak !== undefined);
  const held = both.filter(({ peak }) => run.points.found.Y[peak!]! > 0);
  const axis = ({ window }: Window) => (window === undefined ? {} : { axis: window });
  const mean = (w: World, points: readonly number[]) =>
    points.reduce((sum, point) => sum + w.Y[point]!, 0) / points.length;
  const common = { uses: 'luminance', law: 'smooth', notes } as const;
  const outcomes: Outcome[] = [
    planOf(run, {
      ...common,
      id: 'peak',
      items: full.map((entry) => ({ ...axis(entry), inputs: [entry.peak!] })),
      value: (w, i) => w.Y[full[i]!.peak!]!,
      otherwise: `no full-signal window was read within ${peakWithinSeconds} s`,
    }),
  ];
  const brightest = brightestOf(run, full);
  if (full.length > 1)
    outcomes.push(
      brightest === undefined
        ? undefinedQuantity('peak.abl', 'no window has a luminance')
        : planOf(run, {
            ...common,
            id: 'peak.abl',
            items: full.map((entry) => ({
              ...axis(entry),
              inputs: entry.peak === brightest ? [brightest] : [entry.peak!, brightest],
            })),
            value: (w, i) => (100 * w.Y[full[i]!.peak!]!) / w.Y[brightest]!,
            otherwise: 'no window has a luminance',
          }),
    );
  if (!members.some((point) => run.points.at[point]!.seconds !== undefined)) return outcomes;
  outcomes.push(
    planOf(run, {
      ...common,
      id: 'peak.sustained',
      items: sustained.map((entry) => ({ ...axis(entry), inputs: entry.sustained })),
      value: (w, i) => mean(w, sustained[i]!.sustained),
      otherwise: `no window was read from ${sustainedFromSeconds} s on`,
    }),
    planOf(run, {
      ...common,
      id: 'peak.hold',
      items: held.map((entry) => ({ ...axis(entry), inputs: [...entry.sustained, entry.peak!] })),
      value: (w, i) => (100 * mean(w, held[i]!.sustained)) / w.Y[held[i]!.peak!]!,
      otherwise:
        both.length > 0
          ? 'the peak has no luminance'
          : `no window was read both within ${peakWithinSeconds} s and from ${sustainedFromSeconds} s on`,
    }),
  );
  return outcomes;
}

function brightestOf(run: PreparedRun, windows: readonly Window[]): number | undefined {
  const { Y } = run.points.found;
  let best: number | undefined;
  for (const { peak } of windows) if (best === undefined || Y[peak!]! > Y[best]!) best = peak;
  return best !== undefined && Y[best]! > 0 ? best : undefined;
}

/** Full-signal readings by window, ascending; the highest early reading is the peak. */
function windowsOf(run: PreparedRun, members: readonly number[]): Window[] {
  const { at, found } = run.points;
  const byWindow = new Map<number | undefined, Window>();
  for (const point of members) {
    const { window, seconds } = at[point]!;
    if (!isFullWhite(at[point]!)) continue;
    const entry = byWindow.get(window) ?? { window, peak: undefined, sustained: [] };
    byWindow.set(window, entry);
    if (seconds === undefined || seconds <= peakWithinSeconds) {
      if (entry.peak === undefined || found.Y[point]! > found.Y[entry.peak]!) entry.peak = point;
    }
    if (seconds !== undefined && seconds >= sustainedFromSeconds) entry.sustained.push(point);
  }
  return [...byWindow.values()].sort((one, other) => (one.window ?? -1) - (other.window ?? -1));
}
