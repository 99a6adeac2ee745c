import { areaRatio, coverage } from '../colour/gamutCoverage.ts';
import { gamut } from '../colour/gamuts.ts';
import type { Primaries } from '../colour/rgb.ts';
import { amplitudeOf } from './amplitude.ts';
import { type Outcome, scalarPlan, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes, seriesPoints, usableXy } from './prepare.ts';

export const gamutReferences = { bt709: 'BT.709', p3: 'P3-D65', bt2020: 'BT.2020' } as const;
const hues = ['red', 'green', 'blue'] as const;

/** Coverage and area ratio of three reference gamuts in two diagrams, from the full-amplitude primaries. */
export function planGamutSize(run: PreparedRun): Outcome[] {
  const members = seriesPoints(run, 'primaries');
  if (members.length === 0) return [];
  const points = hues.map((hue) =>
    members.find((point) => {
      const reading = run.points.at[point]!;
      return reading.hue === hue && amplitudeOf(reading) === 100;
    }),
  );
  const missing = hues.filter((_, i) => points[i] === undefined || !usableXy(run, points[i]!));
  const [red, green, blue] = points;
  const notes = seriesNotes(run, 'primaries');
  return Object.entries(gamutReferences).flatMap(([name, reference]) =>
    (['xy', 'uv'] as const).flatMap((diagram) =>
      (['coverage', 'area'] as const).map((kind): Outcome => {
        const id = `${kind}.${name}.${diagram}`;
        if (missing.length > 0) return undefinedQuantity(id, `no chromaticity of full ${missing.join(', ')}`);
        const inputs = [red!, green!, blue!];
        const measured = (w: World): Primaries => ({
          red: [w.x[red!]!, w.y[red!]!],
          green: [w.x[green!]!, w.y[green!]!],
          blue: [w.x[blue!]!, w.y[blue!]!],
        });
        const { primaries } = gamut(reference);
        const compute = kind === 'coverage' ? coverage : areaRatio;
        return scalarPlan(run, {
          id,
          inputs,
          value: (w) => compute(measured(w), primaries, diagram),
          uses: 'chromaticity',
          // Coverage bends where a primary crosses the reference's edge; an area is as good as linear.
          law: kind === 'coverage' ? 'edged' : 'smooth',
          notes,
          otherwise: 'the primaries have no area',
        });
      }),
    ),
  );
}
