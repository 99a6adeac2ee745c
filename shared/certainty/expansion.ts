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

/**
 * Expands value `i` of a plan about the found values, by central differences of one standard deviation; what second
 * order adds is in JCGM 100, 5.1.2, note (from memory).
 * @param world room to move the points in; holds the found values again afterwards
 */
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
  // Few coordinates in one pass, which most values have; each further one in a pass with the first four.
  const start = { centre, slopes, bends, errors };
  const done = startWith(start, column);
  for (let row = done; row < errors.length; row += 1) {
    if (done === 4) addWithFour(start, row, column);
    else addAlone(start, row, column);
    for (let other = done; other < row; other += 1)
      addProduct(column, errors[row]!, errors[other]!, bends[row]![other]!);
  }
  if (squared) for (let d = 0; d < column.length; d += 1) column[d] = Math.sqrt(Math.max(column[d]!, 0));
  return column;
}

type Start = Pick<Expansion, 'centre' | 'slopes' | 'bends'> & { errors: readonly Float64Array[] };

/** Writes as many of the first coordinates as one pass takes; returns how many. */
function startWith(start: Start, column: Float64Array): number {
  if (start.errors.length >= 4) return startWithFour(start, column);
  if (start.errors.length === 3) return startWithThree(start, column);
  if (start.errors.length === 2) return startWithTwo(start, column);
  column.fill(start.centre);
  return 0;
}

function startWithTwo({ centre, slopes, bends, errors }: Start, column: Float64Array): number {
  const [A, B] = [errors[0]!, errors[1]!];
  const [sa, sb] = [slopes[0]!, slopes[1]!];
  const [aa, ab, bb] = [bends[0]![0]!, bends[1]![0]!, bends[1]![1]!];
  for (let d = 0; d < column.length; d += 1) {
    const a = A[d]!;
    const b = B[d]!;
    column[d] = centre + a * (sa + aa * a) + b * (sb + ab * a + bb * b);
  }
  return 2;
}

function startWithThree({ centre, slopes, bends, errors }: Start, column: Float64Array): number {
  const [A, B, C] = [errors[0]!, errors[1]!, errors[2]!];
  const [sa, sb, sc] = [slopes[0]!, slopes[1]!, slopes[2]!];
  const [aa, ab, bb] = [bends[0]![0]!, bends[1]![0]!, bends[1]![1]!];
  const [ac, bc, cc] = [bends[2]![0]!, bends[2]![1]!, bends[2]![2]!];
  for (let d = 0; d < column.length; d += 1) {
    const a = A[d]!;
    const b = B[d]!;
    const c = C[d]!;
    column[d] = centre + a * (sa + aa * a) + b * (sb + ab * a + bb * b) + c * (sc + ac * a + bc * b + cc * c);
  }
  return 3;
}

function startWithFour({ centre, slopes, bends, errors }: Start, column: Float64Array): number {
  const [A, B, C, E] = [errors[0]!, errors[1]!, errors[2]!, errors[3]!];
  const [sa, sb, sc, se] = [slopes[0]!, slopes[1]!, slopes[2]!, slopes[3]!];
  const [aa, ab, bb] = [bends[0]![0]!, bends[1]![0]!, bends[1]![1]!];
  const [ac, bc, cc] = [bends[2]![0]!, bends[2]![1]!, bends[2]![2]!];
  const [ae, be, ce, ee] = [bends[3]![0]!, bends[3]![1]!, bends[3]![2]!, bends[3]![3]!];
  for (let d = 0; d < column.length; d += 1) {
    const a = A[d]!;
    const b = B[d]!;
    const c = C[d]!;
    const e = E[d]!;
    const two = a * (sa + aa * a) + b * (sb + ab * a + bb * b);
    const others = c * (sc + ac * a + bc * b + cc * c) + e * (se + ae * a + be * b + ce * c + ee * e);
    column[d] = centre + two + others;
  }
  return 4;
}

function addAlone({ slopes, bends, errors }: Start, row: number, column: Float64Array): void {
  const error = errors[row]!;
  const slope = slopes[row]!;
  const bend = bends[row]![row]!;
  for (let d = 0; d < column.length; d += 1) column[d]! += error[d]! * (slope + bend * error[d]!);
}

function addWithFour({ slopes, bends, errors }: Start, row: number, column: Float64Array): void {
  const [A, B, C, E, error] = [errors[0]!, errors[1]!, errors[2]!, errors[3]!, errors[row]!];
  const slope = slopes[row]!;
  const bend = bends[row]!;
  const [a, b, c, e, own] = [bend[0]!, bend[1]!, bend[2]!, bend[3]!, bend[row]!];
  for (let d = 0; d < column.length; d += 1) {
    const z = error[d]!;
    column[d]! += z * (slope + own * z + (a * A[d]! + b * B[d]!) + (c * C[d]! + e * E[d]!));
  }
}

function addProduct(column: Float64Array, one: Float64Array, other: Float64Array, bend: number): void {
  for (let d = 0; d < column.length; d += 1) column[d]! += bend * one[d]! * other[d]!;
}
