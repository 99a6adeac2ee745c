import { xyToUv } from '../colour/xyz.ts';
import { type Outcome, planOf, scalarPlan, undefinedQuantity } from './plan.ts';
import type { World } from './points.ts';
import { type PreparedRun, seriesNotes, seriesPoints, usableXy } from './prepare.ts';

type Cell = { point: number; row: number; column: number; position: string };

/** Evenness of luminance and colour over the grid, for each measured level. */
export function planUniformity(run: PreparedRun): Outcome[] {
  const byLevel = new Map<string, Cell[]>();
  for (const point of seriesPoints(run, 'uniformity')) {
    const { level = 'white', position = '' } = run.points.at[point]!;
    const match = /^r(\d+)c(\d+)$/i.exec(position.trim());
    if (!match) continue;
    const cell = { point, row: Number(match[1]), column: Number(match[2]), position };
    byLevel.set(level, [...(byLevel.get(level) ?? []), cell]);
  }
  return [...byLevel]
    .sort((one, other) => (one[0] < other[0] ? -1 : 1))
    .flatMap(([level, cells]) => plansOfLevel(run, level, cells));
}

function plansOfLevel(run: PreparedRun, level: string, unsorted: readonly Cell[]): Outcome[] {
  const cells = [...unsorted].sort((one, other) => one.row - other.row || one.column - other.column);
  const id = `uniformity.${level}`;
  const { Y } = run.points.found;
  const { floor } = run.conditions.instrument;
  const size = gridSize(cells);
  const centre = cells.find(({ row, column }) => row === (size + 1) / 2 && column === (size + 1) / 2);
  const notes = seriesNotes(run, 'uniformity');
  if (cells.length < size * size) notes.push(`${cells.length} of ${size * size} cells were measured`);
  const points = cells.map(({ point }) => point);

  const dark = points.some((point) => Y[point]! < 2 * floor || !(Y[point]! > 0));
  const tooDark = "cells are under twice the instrument's floor";
  if (cells.length < 2)
    return [id, `${id}.cell`, `${id}.colour`].map((each) =>
      undefinedQuantity(each, 'one cell has no evenness'),
    );
  if (dark)
    return [
      undefinedQuantity(id, tooDark),
      undefinedQuantity(`${id}.cell`, tooDark),
      colourPlan(run, `${id}.colour`, cells, centre, notes),
    ];
  const worst = worstCell(run, cells, centre);
  const placed = `worst cell ${worst.position} (${placeOf(worst, size)})`;
  return [
    scalarPlan(run, {
      id,
      inputs: points,
      value: (w) => unevenness(w, points),
      inWorlds: (at, _, out) =>
        unevennessInWorlds(
          points.map((point) => at(point, 'Y').Y),
          out,
        ),
      uses: 'luminance',
      law: 'drawn',
      notes: [...notes, placed],
      otherwise: 'no cell has a luminance',
    }),
    centre
      ? planOf(run, {
          id: `${id}.cell`,
          items: cells.map(({ point, position }) => ({
            axis: position,
            inputs: point === centre.point ? [point] : [point, centre.point],
          })),
          value: (w, i) => 100 * (w.Y[cells[i]!.point]! / w.Y[centre.point]! - 1),
          uses: 'luminance',
          law: 'smooth',
          notes: [...notes, placed],
          otherwise: 'the centre has no luminance',
        })
      : undefinedQuantity(`${id}.cell`, 'no centre cell'),
    colourPlan(run, `${id}.colour`, cells, centre, notes),
  ];
}

function colourPlan(
  run: PreparedRun,
  id: string,
  cells: readonly Cell[],
  centre: Cell | undefined,
  notes: readonly string[],
): Outcome {
  if (!centre) return undefinedQuantity(id, 'no centre cell');
  if (!usableXy(run, centre.point)) return undefinedQuantity(id, 'the centre has no usable chromaticity');
  const others = cells
    .filter((cell) => cell !== centre && usableXy(run, cell.point))
    .map(({ point }) => point);
  if (others.length === 0) return undefinedQuantity(id, 'no cell but the centre has a usable chromaticity');
  return scalarPlan(run, {
    id,
    inputs: [centre.point, ...others],
    value: (w) => {
      const [u, v] = xyToUv(w.x[centre.point]!, w.y[centre.point]!);
      let greatest = 0;
      for (const point of others) {
        const [uCell, vCell] = xyToUv(w.x[point]!, w.y[point]!);
        greatest = Math.max(greatest, (uCell - u) ** 2 + (vCell - v) ** 2);
      }
      return Math.sqrt(greatest);
    },
    inWorlds: (at, _, out) =>
      colourUnevennessInWorlds(
        at(centre.point, 'xy'),
        others.map((point) => at(point, 'xy')),
        out,
      ),
    uses: 'chromaticity',
    law: 'drawn',
    notes,
    otherwise: 'no chromaticity',
  });
}

/** 100·(Lmax − Lmin)/Lmax */
function unevenness(w: World, points: readonly number[]): number {
  let highest = Number.NEGATIVE_INFINITY;
  let lowest = Number.POSITIVE_INFINITY;
  for (const point of points) {
    const Y = w.Y[point]!;
    if (Y > highest) highest = Y;
    if (Y < lowest) lowest = Y;
  }
  return (100 * (highest - lowest)) / highest;
}

function unevennessInWorlds(columns: readonly Float64Array[], out: Float64Array): void {
  const highest = columns[0]!.slice();
  out.set(highest);
  for (const Y of columns)
    for (let d = 0; d < out.length; d += 1) {
      if (Y[d]! > highest[d]!) highest[d] = Y[d]!;
      if (Y[d]! < out[d]!) out[d] = Y[d]!;
    }
  for (let d = 0; d < out.length; d += 1) out[d] = (100 * (highest[d]! - out[d]!)) / highest[d]!;
}

function colourUnevennessInWorlds(centre: World, others: readonly World[], out: Float64Array): void {
  const u = new Float64Array(out.length);
  const v = new Float64Array(out.length);
  for (let d = 0; d < out.length; d += 1) {
    const share = 1 / (-2 * centre.x[d]! + 12 * centre.y[d]! + 3);
    u[d] = 4 * centre.x[d]! * share;
    v[d] = 9 * centre.y[d]! * share;
  }
  out.fill(0);
  for (const { x, y } of others)
    for (let d = 0; d < out.length; d += 1) {
      const share = 1 / (-2 * x[d]! + 12 * y[d]! + 3);
      const du = 4 * x[d]! * share - u[d]!;
      const dv = 9 * y[d]! * share - v[d]!;
      const square = du * du + dv * dv;
      if (square > out[d]!) out[d] = square;
    }
  for (let d = 0; d < out.length; d += 1) out[d] = Math.sqrt(out[d]!);
}

/** The smallest of 3, 5 and 9 that holds every cell; larger grids as they are. */
function gridSize(cells: readonly Cell[]): number {
  const extent = cells.reduce((most, { row, column }) => Math.max(most, row, column), 1);
  return [3, 5, 9].find((size) => extent <= size) ?? extent;
}

/** The cell that departs most from the centre, or from the mean where the centre is missing. */
function worstCell(run: PreparedRun, cells: readonly Cell[], centre: Cell | undefined): Cell {
  const { Y } = run.points.found;
  const reference = centre
    ? Y[centre.point]!
    : cells.reduce((sum, { point }) => sum + Y[point]!, 0) / cells.length;
  const departure = (cell: Cell) => Math.abs(Y[cell.point]! - reference);
  return cells.reduce((worst, cell) => (departure(cell) > departure(worst) ? cell : worst));
}

/** Where a cell lies, in the words of a review. */
export function placeOf({ row, column }: { row: number; column: number }, size: number): string {
  const end = (n: number) => n === 1 || n === size;
  if (end(row) && end(column)) return 'corner';
  if (end(row) || end(column)) return 'edge';
  return row === (size + 1) / 2 && column === (size + 1) / 2 ? 'centre' : 'inner field';
}
