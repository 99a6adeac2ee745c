import { describe, expect, test } from 'vitest';
import { coordinatesOf, moverOf } from '../../shared/certainty/coordinates.ts';
import { errorModelOf } from '../../shared/certainty/errorModel.ts';
import type { Run } from '../../shared/contract/run.ts';
import type { Unit } from '../../shared/contract/unit.ts';
import type { Plan } from '../../shared/measure/plan.ts';
import { hueClasses } from '../../shared/measure/points.ts';
import { prepareRun } from '../../shared/measure/prepare.ts';
import { type Draft, evidenceOf, readingsOf, sdrConditions } from '../measure/inventedUnit.ts';

const greys: Draft[] = [
  { series: 'greyscale', stimulus: 100, x: 0.312, y: 0.33, Y: 200 },
  { series: 'greyscale', stimulus: 50, x: 0.31, y: 0.326, Y: 45 },
  { series: 'primaries', hue: 'red', x: 0.64, y: 0.33, Y: 42 },
  { series: 'window', window: 10, Y: 600 },
];

function modelled(drafts = greys, conditions: Run = sdrConditions, changes: Partial<Unit> = {}, id = 'one') {
  const { unit, run } = evidenceOf(readingsOf(...drafts), conditions, changes);
  const prepared = prepareRun(unit, run);
  return { prepared, model: errorModelOf({ ...unit, id }, run, prepared) };
}
const instrument = (more: object): Run => ({
  ...sdrConditions,
  instrument: { ...sdrConditions.instrument, ...more },
});

describe('who shares the luminance error s', () => {
  const key = (conditions?: Run, changes?: Partial<Unit>, id?: string) =>
    modelled(greys, conditions, changes, id).model.sKey;

  test('units of one panel and backlight under one named instrument, however they are spelt', () => {
    const own = key();
    expect(key(undefined, {}, 'another')).toBe(own);
    expect(key(undefined, { panel: ' lcd  ips', backlight: 'Direct LED ' }, 'another')).toBe(own);
    expect(key(instrument({ name: 'Bench  Colorimeter' }), {}, 'another')).toBe(own);
  });

  test('no other panel, backlight, instrument or serial number', () => {
    const own = key();
    expect(key(undefined, { panel: 'LCD VA' })).not.toBe(own);
    expect(key(undefined, { backlight: 'edge LED' })).not.toBe(own);
    expect(key(instrument({ name: 'field colorimeter' }))).not.toBe(own);
    expect(key(instrument({ serial: '0002' }))).not.toBe(own);
  });

  test('one unit’s runs only, where the instrument has no name or the panel or backlight is not stated', () => {
    const nameless = instrument({ name: undefined });
    for (const [conditions, changes] of [
      [nameless, {}],
      [undefined, { panel: '' }],
      [undefined, { backlight: ' ' }],
    ] as const) {
      expect(key(conditions, changes, 'one')).toBe(key(conditions, changes, 'one'));
      expect(key(conditions, changes, 'one')).not.toBe(key(conditions, changes, 'another'));
    }
  });
});

describe('what the readings of a value may be wrong by', () => {
  const { prepared, model } = modelled();
  const { Y } = prepared.points.found;
  const [full, half, red, window] = [200, 45, 42, 600].map((value) => Y.indexOf(value)) as [
    number,
    number,
    number,
    number,
  ];
  const planOf = (uses: Plan['uses'], inputs: number[], lights: number[] = []) =>
    ({ uses, inputs: [inputs], lights: [lights] }) as unknown as Plan;
  const named = (made: ReturnType<typeof modelled>, plan: Plan) =>
    coordinatesOf(made.prepared, made.model, plan, 0).map(({ kind, of }) => `${kind}${of}`);
  const grey = hueClasses.indexOf('grey');

  test('of a lone reading of its class x and y altogether, of several their common a and each one’s e', () => {
    expect(named({ prepared, model }, planOf('both', [full, red]))).toEqual([
      `x${full}`,
      `y${full}`,
      `x${red}`,
      `y${red}`,
      `r${full}`,
      `r${red}`,
      's-1',
    ]);
    expect(named({ prepared, model }, planOf('chromaticity', [full, half]))).toEqual([
      `ax${grey}`,
      `ay${grey}`,
      `ex${full}`,
      `ey${full}`,
      `ex${half}`,
      `ey${half}`,
    ]);
  });

  test('of a light, or of a reading without chromaticity, its luminance only', () => {
    expect(named({ prepared, model }, planOf('chromaticity', [red], [full]))).toEqual([
      `x${red}`,
      `y${red}`,
      `r${full}`,
      's-1',
    ]);
    expect(named({ prepared, model }, planOf('both', [window]))).toEqual([`r${window}`, 's-1']);
    expect(named({ prepared, model }, planOf('luminance', [full, red]))).toEqual([
      `r${full}`,
      `r${red}`,
      's-1',
    ]);
  });

  test('nothing where the instrument errs by nothing', () => {
    const only = (more: object, plan: Plan) =>
      named(
        modelled(greys, instrument({ u_luminance_percent: 0, floor_cdm2: 0, u_x: 0, u_y: 0, ...more })),
        plan,
      );
    const both = planOf('both', [full, half, red]);
    expect(only({}, both)).toEqual([]);
    expect(only({ u_x: 0.001 }, both)).toEqual([`ax${grey}`, `ex${full}`, `ex${half}`, `x${red}`]);
    expect(only({ u_y: 0.001 }, both)).toEqual([`ay${grey}`, `ey${full}`, `ey${half}`, `y${red}`]);
    expect(only({ floor_cdm2: 0.01 }, both)).toEqual([`r${full}`, `r${half}`, `r${red}`]);
  });

  test('each is a move of the found world by its own size, and home is where it was', () => {
    const { found } = prepared.points;
    const world = { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() };
    const { move, home } = moverOf(prepared, model, planOf('both', [full, half, red], [window]), 0, world);
    const moved = (kind: Parameters<typeof move>[0]['kind'], of: number, amount = 2) => {
      move({ kind, of }, amount);
      const by = (['x', 'y', 'Y'] as const).flatMap((key) =>
        [...world[key]].flatMap((value, point) =>
          value === found[key][point] ? [] : [[key, point, value - found[key][point]!] as const],
        ),
      );
      home();
      expect(world).toEqual({ x: found.x, y: found.y, Y: found.Y });
      return by;
    };
    const near = (value: number) => expect.closeTo(value, 9);
    const byPoint = (one: readonly unknown[], other: readonly unknown[]) => Number(one[1]) - Number(other[1]);
    expect(moved('s', -1)).toEqual(
      [full, half, red, window].map((point) => ['Y', point, near(2 * model.s * Y[point]!)]).sort(byPoint),
    );
    expect(moved('r', half)).toEqual([['Y', half, near(2 * model.r[half]!)]]);
    expect(moved('x', red, -1)).toEqual([['x', red, near(-model.ux[red]!)]]);
    expect(moved('y', red)).toEqual([['y', red, near(2 * model.uy[red]!)]]);
    expect(moved('ex', full)).toEqual([['x', full, near(2 * model.ex[full]!)]]);
    expect(moved('ey', full)).toEqual([['y', full, near(2 * model.ey[full]!)]]);
    expect(moved('ax', grey)).toEqual(
      [full, half].map((point) => ['x', point, near(2 * model.ax[point]!)]).sort(byPoint),
    );
    expect(moved('ay', grey)).toEqual(
      [full, half].map((point) => ['y', point, near(2 * model.ay[point]!)]).sort(byPoint),
    );
  });
});
