import { cctAndDuv } from '../colour/cct.ts';
import { xyToUv } from '../colour/xyz.ts';
import { isFullWhite } from './amplitude.ts';
import { type Outcome, scalarPlan, undefinedQuantity } from './plan.ts';
import { type PreparedRun, seriesNotes, seriesPoints, usableXy } from './prepare.ts';

const ids = ['white.cct', 'white.duv', 'white.distance'] as const;

/** Colour of the 100 % level: correlated colour temperature, Duv and distance from the target white. */
export function planWhitePoint(run: PreparedRun): Outcome[] {
  const hasGreys = run.greys.points.length > 0;
  const point = hasGreys ? run.greys.white : primaryWhite(run);
  if (!hasGreys && point === undefined) return [];
  if (point === undefined) return ids.map((id) => undefinedQuantity(id, 'no 100 % level'));
  if (!usableXy(run, point))
    return ids.map((id) => undefinedQuantity(id, 'the 100 % level has no usable chromaticity'));
  const notes = seriesNotes(run, hasGreys ? 'greyscale' : 'primaries');
  if (!hasGreys) notes.push('white of the primaries, no greyscale was measured');
  const { x, y } = run.points.found;
  const found = cctAndDuv(x[point]!, y[point]!);
  const outcomes: Outcome[] =
    'undefined' in found
      ? [undefinedQuantity('white.cct', found.undefined), undefinedQuantity('white.duv', found.undefined)]
      : (['cct', 'duv'] as const).map((part) =>
          scalarPlan(run, {
            id: `white.${part}`,
            inputs: [point],
            value: (w) => {
              const drawn = cctAndDuv(w.x[point]!, w.y[point]!);
              return 'undefined' in drawn ? Number.NaN : drawn[part];
            },
            uses: 'chromaticity',
            law: 'smooth',
            notes,
            otherwise: 'the white has no correlated colour temperature',
          }),
        );
  const { colours, whiteName } = run.conditions;
  if (!colours)
    return [...outcomes, undefinedQuantity('white.distance', `the target white "${whiteName}" is not known`)];
  const [uWhite, vWhite] = xyToUv(...colours.white);
  outcomes.push(
    scalarPlan(run, {
      id: 'white.distance',
      inputs: [point],
      value: (w) => {
        const [u, v] = xyToUv(w.x[point]!, w.y[point]!);
        return Math.hypot(u - uWhite, v - vWhite);
      },
      uses: 'chromaticity',
      law: 'magnitude',
      notes,
      otherwise: 'the white has no chromaticity',
    }),
  );
  return outcomes;
}

function primaryWhite(run: PreparedRun): number | undefined {
  return seriesPoints(run, 'primaries').find((point) => {
    const reading = run.points.at[point]!;
    return reading.hue === 'white' && isFullWhite(reading);
  });
}
