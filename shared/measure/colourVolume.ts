import { gamut } from '../colour/gamuts.ts';
import type { Lab } from '../colour/lab.ts';
import { apply3, rgbToXyzMatrix } from '../colour/rgb.ts';
import { amplitudeOf } from './amplitude.ts';
import { labOf } from './colourDifference.ts';
import type { TargetColours } from './conditions.ts';
import { gamutReferences } from './gamutSize.ts';
import { type Outcome, scalarPlan, undefinedQuantity } from './plan.ts';
import { type PreparedRun, seriesNotes, seriesPoints, usableXy } from './prepare.ts';

/** The corners of the RGB cube, in the order of the bits blue, green, red. */
const corners = ['black', 'red', 'green', 'yellow', 'blue', 'magenta', 'cyan', 'white'] as const;

/** The cube's six faces as twelve triangles, all turning the same way seen from outside. */
const triangles = [
  [0, 2, 3],
  [0, 3, 1],
  [4, 5, 7],
  [4, 7, 6],
  [0, 1, 5],
  [0, 5, 4],
  [2, 6, 7],
  [2, 7, 3],
  [0, 4, 6],
  [0, 6, 2],
  [1, 3, 7],
  [1, 7, 5],
] as const;

/** Volume of the body whose corners are joined by planes. */
function volumeOf(labs: readonly Lab[]): number {
  let sixfold = 0;
  for (const [i, j, k] of triangles) {
    const [a, b, c] = [labs[i]!, labs[j]!, labs[k]!];
    sixfold +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) +
      a[1] * (b[2] * c[0] - b[0] * c[2]) +
      a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return Math.abs(sixfold) / 6;
}

/**
 * `volume.<gamut>`: volume in L*a*b* of the body of the eight full-amplitude corners, in % of the same body of the
 * reference gamut at the same white luminance. Needs all of red, green, blue, cyan, magenta, yellow and white; black
 * without usable chromaticity counts as neutral. Common practice, no source.
 */
export function planColourVolume(run: PreparedRun): Outcome[] {
  const members = seriesPoints(run, 'primaries');
  if (members.length === 0) return [];
  const { colours, whiteName } = run.conditions;
  const without = (reason: string) =>
    Object.keys(gamutReferences).map((name) => undefinedQuantity(`volume.${name}`, reason));
  if (!colours) return without(`the target white "${whiteName}" is not known`);
  const points = corners.map((corner) =>
    members.find((point) => {
      const reading = run.points.at[point]!;
      return reading.hue === corner && (corner === 'black' || amplitudeOf(reading) === 100);
    }),
  );
  const missing = corners.filter((_, i) => {
    const point = points[i];
    return point === undefined || (i > 0 && !usableXy(run, point));
  });
  if (missing.length > 0) return without(`no full-amplitude reading of ${missing.join(', ')}`);
  const [black, ...lit] = points as number[];
  const white = points[7]!;
  if (!(run.points.found.Y[white]! > 0)) return without('white has no luminance');
  return Object.entries(gamutReferences).map(([name, reference]) => {
    const whole = referenceVolume(colours, reference);
    return scalarPlan(run, {
      id: `volume.${name}`,
      inputs: [...lit],
      lights: [black!],
      value: (w) => {
        const Yr = w.Y[white]!;
        const dark = labOf(colours, Yr, colours.white[0], colours.white[1], Math.max(w.Y[black!]!, 0));
        const labs = lit.map((point) => labOf(colours, Yr, w.x[point]!, w.y[point]!, w.Y[point]!));
        return (100 * volumeOf([dark, ...labs])) / whole;
      },
      uses: 'both',
      law: 'smooth',
      notes: [...seriesNotes(run, 'primaries'), 'eight corners joined by planes in L*a*b*'],
      otherwise: 'the primaries have no volume',
    });
  });
}

function referenceVolume(
  colours: TargetColours,
  reference: (typeof gamutReferences)[keyof typeof gamutReferences],
): number {
  const matrix = rgbToXyzMatrix(gamut(reference).primaries, colours.white);
  return volumeOf(
    corners.map((_, bits) => {
      const [X, Y, Z] = apply3(matrix, [bits & 1, (bits >> 1) & 1, (bits >> 2) & 1]);
      const sum = X + Y + Z;
      return sum > 0 ? labOf(colours, 1, X / sum, Y / sum, Y) : [0, 0, 0];
    }),
  );
}
