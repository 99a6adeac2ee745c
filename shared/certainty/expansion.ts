import type { Plan } from '../measure/plan.ts';
import type { World } from '../measure/points.ts';
import type { PreparedRun } from '../measure/prepare.ts';
import { type Coordinate, coordinatesOf, moverOf } from './coordinates.ts';
import type { ErrorModel } from './errorModel.ts';

/**
 * A value to second order in the errors of its points, in standard deviations of each coordinate:
 * q = centre + Σ slope·z + Σ bend·z·z′. For a magnitude q is its square, which is smooth where the magnitude itself
 * has a corner: an error vector is drawn as a vector, and only its length is taken at the end.
 */
export interface Expansion {
  coordinates: readonly Coordinate[];
  centre: number;
  slopes: readonly number[];
  /** Lower triangle, row by row: bends[i][j], j ≤ i */
  bends: readonly (readonly number[])[];
  squared: boolean;
}

/** A coordinate that moves the value by less than this share of all is left out: under 0.1 % of u. */
const negligible = 0.03;

export function expansionOf(
  run: PreparedRun,
  model: ErrorModel,
  plan: Plan,
  i: number,
  world: World,
): Expansion {
  const squared = plan.law === 'magnitude';
  const { move, home } = moverOf(run, model, plan, i, world);
  const value = () => {
    const at = plan.value(world, i);
    return squared ? at * at : at;
  };
  home();
  const centre = value();
  const all = coordinatesOf(run, model, plan, i).map((coordinate) => {
    move(coordinate, 1);
    const up = value();
    home();
    move(coordinate, -1);
    const down = value();
    home();
    return { coordinate, up, down, slope: (up - down) / 2, bend: (up + down) / 2 - centre };
  });
  const total = Math.sqrt(all.reduce((sum, { slope, bend }) => sum + slope ** 2 + 2 * bend ** 2, 0));
  const kept = all.filter(
    ({ slope, bend }) => Math.sqrt(slope ** 2 + 2 * bend ** 2) >= negligible * total && total > 0,
  );
  const bends = kept.map((one, row) =>
    kept.slice(0, row + 1).map((other, column) => {
      if (row === column) return one.bend;
      move(one.coordinate, 1);
      move(other.coordinate, 1);
      const up = value();
      home();
      move(one.coordinate, -1);
      move(other.coordinate, -1);
      const down = value();
      home();
      return (up + down) / 2 - centre - one.bend - other.bend;
    }),
  );
  return {
    coordinates: kept.map(({ coordinate }) => coordinate),
    centre,
    slopes: kept.map(({ slope }) => slope),
    bends,
    squared,
  };
}

/** The expansion in every world; `z` gives a coordinate's error in each, in standard deviations. */
export function expandedColumn(
  { coordinates, centre, slopes, bends, squared }: Expansion,
  z: (coordinate: Coordinate) => Float64Array,
  column: Float64Array,
): Float64Array {
  const errors = coordinates.map(z);
  // Coordinates two by two, so that each pass over the worlds does as much as it can.
  let row = 0;
  for (; row + 1 < errors.length; row += 2) {
    const [one, other] = [errors[row]!, errors[row + 1]!];
    const [slope1, slope2] = [slopes[row]!, slopes[row + 1]!];
    const [bend1, bend2, both] = [bends[row]![row]!, bends[row + 1]![row + 1]!, bends[row + 1]![row]!];
    for (let d = 0; d < column.length; d += 1) {
      const a = one[d]!;
      const b = other[d]!;
      const change = a * (slope1 + bend1 * a) + b * (slope2 + bend2 * b + both * a);
      column[d] = (row === 0 ? centre : column[d]!) + change;
    }
    addProducts(column, errors, bends, row, row);
    addProducts(column, errors, bends, row + 1, row);
  }
  if (row === 0) column.fill(centre);
  if (row < errors.length) {
    const last = errors[row]!;
    const slope = slopes[row]!;
    const bend = bends[row]![row]!;
    for (let d = 0; d < column.length; d += 1) column[d]! += last[d]! * (slope + bend * last[d]!);
    addProducts(column, errors, bends, row, row);
  }
  if (squared) for (let d = 0; d < column.length; d += 1) column[d] = Math.sqrt(Math.max(column[d]!, 0));
  return column;
}

/** Adds bend·z·z′ of one coordinate with those before `until`. */
function addProducts(
  column: Float64Array,
  errors: readonly Float64Array[],
  bends: Expansion['bends'],
  row: number,
  until: number,
): void {
  const error = errors[row]!;
  for (let other = 0; other < until; other += 1) {
    const bend = bends[row]![other]!;
    const partner = errors[other]!;
    for (let d = 0; d < column.length; d += 1) column[d]! += bend * error[d]! * partner[d]!;
  }
}
