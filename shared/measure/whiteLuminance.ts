import { isFullWhite } from './amplitude.ts';
import { type PreparedRun, seriesPoints } from './prepare.ts';

/** A point that gives a white's luminance, and what it is called in a note. */
export type WhiteSource = { point: number; name: string };

/** White of the primaries, the greyscale's 100 % level, or a 0 % saturation row at full amplitude: the first there is. */
export function whiteOfRun(run: PreparedRun): WhiteSource | undefined {
  const { Y } = run.points.found;
  const primary = seriesPoints(run, 'primaries').find((point) => {
    const reading = run.points.at[point]!;
    return reading.hue === 'white' && isFullWhite(reading) && Y[point]! > 0;
  });
  if (primary !== undefined) return { point: primary, name: 'white of the primaries' };
  const { white } = run.greys;
  if (white !== undefined && Y[white]! > 0) return { point: white, name: '100 % grey' };
  const unsaturated = seriesPoints(run, 'saturation').find((point) => {
    const reading = run.points.at[point]!;
    return reading.saturation === 0 && isFullWhite(reading) && Y[point]! > 0;
  });
  return unsaturated === undefined ? undefined : { point: unsaturated, name: '0 % saturation' };
}

/**
 * White under which L*a*b* is taken: in SDR the given white of the run, in HDR the highest grey where greys were
 * measured.
 */
export function labWhiteOfRun(run: PreparedRun): WhiteSource | undefined {
  const { hdr } = run.conditions;
  const { highest } = run.greys;
  if (hdr && highest !== undefined && run.points.found.Y[highest]! > 0)
    return { point: highest, name: 'highest grey' };
  return whiteOfRun(run);
}

/** The brightest white pattern of any series: only a scale for L*, where the run has no white to anchor targets. */
export function highestWhite(run: PreparedRun): WhiteSource | undefined {
  const { at, found, bySeries } = run.points;
  let best: number | undefined;
  for (const series of [
    'greyscale',
    'primaries',
    'saturation',
    'window',
    'contrast',
    'uniformity',
    'angle',
  ] as const)
    for (const point of bySeries.get(series) ?? []) {
      const { hue, pattern, level, saturation } = at[point]!;
      const white =
        series === 'greyscale' ||
        series === 'window' ||
        (series === 'primaries' && hue === 'white') ||
        (series === 'saturation' && saturation === 0) ||
        (series === 'contrast' && pattern === 'full-white') ||
        ((series === 'uniformity' || series === 'angle') && (level ?? 'white') === 'white');
      if (white && found.Y[point]! > 0 && (best === undefined || found.Y[point]! > found.Y[best]!))
        best = point;
    }
  return best === undefined ? undefined : { point: best, name: 'highest white' };
}
