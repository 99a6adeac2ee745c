import { type Outcome, rowsOf, scalarPlan, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes, seriesPoints } from './prepare.ts';

type Pattern = 'full-white' | 'full-black' | 'chequer-white' | 'chequer-black';

/** White and black luminance and their ratios. */
export function planContrast(run: PreparedRun): Outcome[] {
  const of = (pattern: Pattern) =>
    seriesPoints(run, 'contrast').filter((point) => run.points.at[point]!.pattern === pattern);
  const white = of('full-white');
  const black = of('full-black');
  const chequerWhite = of('chequer-white');
  const chequerBlack = of('chequer-black');
  const outcomes: Outcome[] = [...levelPlans(run, black)];
  if (white.length > 0 || black.length > 0)
    outcomes.push(nativeOf(run, white, black), ratio(run, 'contrast.sequential', white, black));
  if (chequerWhite.length > 0 || chequerBlack.length > 0)
    outcomes.push(ratio(run, 'contrast.chequer', chequerWhite, chequerBlack));
  return outcomes;
}

/** `white` is the 100 % grey of an SDR run, `black` the full black pattern or, without one, the 0 % grey. */
function levelPlans(run: PreparedRun, fullBlack: readonly number[]): Outcome[] {
  const { greys, conditions } = run;
  const outcomes: Outcome[] = [];
  const common = { uses: 'luminance', law: 'smooth' } as const;
  if (!conditions.hdr && greys.points.length > 0) {
    const { white } = greys;
    outcomes.push(
      white === undefined
        ? undefinedQuantity('white', 'no 100 % level')
        : scalarPlan(run, {
            ...common,
            id: 'white',
            inputs: [white],
            value: (w) => w.Y[white]!,
            notes: seriesNotes(run, 'greyscale'),
            otherwise: 'no 100 % level',
          }),
    );
  }
  const black = fullBlack.length > 0 ? fullBlack : greys.black === undefined ? [] : [greys.black];
  if (black.length === 0) {
    if (greys.points.length > 0 || seriesPoints(run, 'contrast').length > 0)
      outcomes.push(undefinedQuantity('black', 'no full black pattern and no 0 % level'));
    return outcomes;
  }
  const notes = seriesNotes(run, fullBlack.length > 0 ? 'contrast' : 'greyscale');
  if (fullBlack.length === 0) notes.push('0 % grey, no full black pattern was measured');
  if (meanOf(run.points.found, black) < 2 * conditions.instrument.floor)
    notes.push("under twice the instrument's floor");
  outcomes.push(
    scalarPlan(run, {
      ...common,
      id: 'black',
      law: 'smooth',
      inputs: black,
      value: (w) => meanOf(w, black),
      notes,
      otherwise: 'no black was measured',
    }),
  );
  return outcomes;
}

/** Native contrast asks for a set that cannot or must not dim: no zones, or dimming off. */
function nativeOf(run: PreparedRun, white: readonly number[], black: readonly number[]): Outcome {
  const { dimming } = run.conditions;
  const { zones } = run.unit;
  const id = 'contrast.native';
  if (dimming === 'off' || dimming === 'none' || zones === 0) return ratio(run, id, white, black);
  if (typeof zones === 'number' || dimming !== 'as-set')
    return undefinedQuantity(id, `dimming was ${dimming === 'as-set' ? 'as set' : dimming}, not off`);
  return ratio(run, id, white, black, ['the unit states no dimming zones: taken as none']);
}

function ratio(
  run: PreparedRun,
  id: string,
  white: readonly number[],
  black: readonly number[],
  more: readonly string[] = [],
): Outcome {
  if (white.length === 0) return undefinedQuantity(id, 'no white pattern');
  if (black.length === 0) return undefinedQuantity(id, 'no black pattern');
  const { floor } = run.conditions.instrument;
  const Lw = meanOf(run.points.found, white);
  const Lb = meanOf(run.points.found, black);
  if (!(Lw > 0)) return undefinedQuantity(id, 'the white pattern has no luminance');
  const inputs = [...white, ...black];
  const notes = [...seriesNotes(run, 'contrast'), ...more];
  if (Lb < 2 * floor)
    return {
      state: 'over',
      id,
      over: Lw / (2 * floor),
      rows: rowsOf(run.points, inputs),
      notes: [...notes, `black is under twice the instrument's floor of ${floor} cd/m²`],
    };
  if (!(Lb > 0)) return undefinedQuantity(id, 'black has no luminance and the instrument states no floor');
  return scalarPlan(run, {
    id,
    inputs,
    value: (w) => meanOf(w, white) / Math.max(meanOf(w, black), 1e-9),
    uses: 'luminance',
    law: 'smooth',
    notes,
    otherwise: 'no contrast',
  });
}

function meanOf(w: World, points: readonly number[]): number {
  let sum = 0;
  for (const point of points) sum += w.Y[point]!;
  return sum / points.length;
}
