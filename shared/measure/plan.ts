import type { Axis, UndefinedQuantity } from '../contract/measurement.ts';
import type { Points, World } from './points.ts';
import type { PreparedRun } from './prepare.ts';

/**
 * A quantity made ready: which values it has, which points each rests on, and a pure function of a world.
 * The same function gives the found value and every draw. What is chosen by looking at the readings (which level
 * is white, which levels count) is chosen once, on the found values, and stands for every draw.
 */
export interface Plan {
  state: 'plan';
  id: string;
  /** The value of item `i` in a world. */
  value(world: World, i: number): number;
  found: Float64Array;
  axes: readonly (Axis | undefined)[];
  counts: readonly boolean[];
  /** Points that each value reads as `uses` says, and points of which it reads the luminance only */
  inputs: readonly (readonly number[])[];
  lights: readonly (readonly number[])[];
  /** Which coordinates of its points it reads */
  uses: 'luminance' | 'chromaticity' | 'both';
  law: Law;
  /** The same in many worlds at once, where that is much faster than one by one; equal but for rounding. */
  inWorlds?: InWorlds;
  /** Another plan of which it is a function, and that function of the other's values in one world */
  from?: Derivation;
  /** True where average, max and min are meant; false for a scalar. */
  isSeries: boolean;
  /** The unit as read, for single values; others take the catalogue's. */
  unit?: string;
  notes: readonly string[];
}

/** Which of a point's numbers a computation reads. */
export type Reads = 'Y' | 'xy' | 'xyY';

/** Writes item `i` of every world into `out`; `at` gives a point's x, y and Y, one number a world. */
export type InWorlds = (at: (point: number, reads: Reads) => World, i: number, out: Float64Array) => void;

/**
 * How u is found. `smooth`: at first order wherever a step of one u shows the quantity to be as good as linear there,
 * else by draws. `magnitude`: the same for an error that cannot be negative, the length of a vector. `edged`: the
 * same for a quantity with corners, looked at two u away. `drawn`: always by draws. `none`: it was only reported.
 */
export type Law = 'smooth' | 'magnitude' | 'edged' | 'drawn' | 'none';

/** Item `i` as a function of the values of another plan: draws of the other serve it too. */
export interface Derivation {
  plan: Plan;
  members(i: number): readonly number[];
  /** From the members' values in one world, in their order */
  combine(values: readonly number[], i: number): number;
}

/** Only a lower bound can be given. */
export interface BoundPlan {
  state: 'over';
  id: string;
  over: number;
  rows: readonly number[];
  notes: readonly string[];
}

export type Outcome = Plan | BoundPlan | UndefinedQuantity;

/** One value to be: its axis, whether it counts, the points it rests on. No point stands in both lists. */
export interface Item {
  axis?: Axis;
  counts?: boolean;
  inputs: readonly number[];
  lights?: readonly number[];
}

export interface PlanDraft {
  id: string;
  items: readonly Item[];
  value(world: World, item: number): number;
  uses: Plan['uses'];
  law: Plan['law'];
  inWorlds?: InWorlds;
  from?: Derivation;
  isSeries?: boolean;
  unit?: string;
  notes?: readonly string[];
  /** Why the quantity is undefined when no item has a value. */
  otherwise: string;
}

const noLights: readonly number[] = [];

/** Completes a draft: evaluates it on the found world and leaves out items that have no value there. */
export function planOf(run: PreparedRun, draft: PlanDraft): Plan | UndefinedQuantity {
  const { found } = run.points;
  const all = roomFor(draft.items.length);
  let finite = 0;
  for (let index = 0; index < all.length; index += 1) {
    all[index] = withoutResidue(draft.value(found, index));
    if (Number.isFinite(all[index])) finite += 1;
  }
  const whole = finite === all.length;
  const kept = whole ? [] : [...all.keys()].filter((index) => Number.isFinite(all[index]));
  if (finite === 0) return undefinedQuantity(draft.id, draft.otherwise);
  const { axes, counts, inputs, lights } = columnsOf(
    whole ? draft.items : kept.map((index) => draft.items[index]!),
  );
  const plan: Plan = {
    state: 'plan',
    id: draft.id,
    value: whole ? draft.value : (world, i) => draft.value(world, kept[i]!),
    found: whole ? all : all.filter(Number.isFinite),
    axes,
    counts,
    inputs,
    lights,
    uses: draft.uses,
    law: draft.law,
    isSeries: draft.isSeries ?? true,
    notes: draft.notes ?? [],
  };
  if (draft.inWorlds) plan.inWorlds = whole ? draft.inWorlds : keptWorlds(draft.inWorlds, kept);
  if (draft.from) plan.from = whole ? draft.from : keptOf(draft.from, kept);
  if (draft.unit !== undefined) plan.unit = draft.unit;
  return plan;
}

/** Values of many plans share one block: a block of memory for each would cost more than its values. */
let block = new Float64Array(0);
let free = 0;

function roomFor(count: number): Float64Array {
  if (free + count > block.length) {
    block = new Float64Array(Math.max(4096, count));
    free = 0;
  }
  free += count;
  return block.subarray(free - count, free);
}

/** What rounding leaves of a difference of equals is no difference: it would vary from host to host. */
function withoutResidue(value: number): number {
  return Math.abs(value) < 1e-11 ? 0 : value;
}

type ItemColumns = Pick<Plan, 'axes' | 'counts' | 'inputs' | 'lights'>;
const knownColumns = new WeakMap<readonly Item[], ItemColumns>();

/** Plans of one series are made from the same items, so their columns are made once. */
function columnsOf(items: readonly Item[]): ItemColumns {
  let columns = items.length > 1 ? knownColumns.get(items) : undefined;
  if (!columns) {
    columns = makeColumns(items);
    // A scalar's one item is its own; nothing else is made from it.
    if (items.length > 1) knownColumns.set(items, columns);
  }
  return columns;
}

function makeColumns(items: readonly Item[]): ItemColumns {
  const axes: (Axis | undefined)[] = [];
  const counts: boolean[] = [];
  const inputs: (readonly number[])[] = [];
  const lights: (readonly number[])[] = [];
  for (const item of items) {
    axes.push(item.axis);
    counts.push(item.counts ?? true);
    inputs.push(item.inputs);
    lights.push(item.lights ?? noLights);
  }
  return { axes, counts, inputs, lights };
}

function keptWorlds(inWorlds: InWorlds, kept: readonly number[]): InWorlds {
  return (at, i, out) => inWorlds(at, kept[i]!, out);
}

/** A derivation of those items only that have a value. */
function keptOf(from: Derivation, kept: readonly number[]): Derivation {
  return {
    plan: from.plan,
    members: (i) => from.members(kept[i]!),
    combine: (values, i) => from.combine(values, kept[i]!),
  };
}

/** A quantity with one value. */
export function scalarPlan(
  run: PreparedRun,
  draft: Omit<PlanDraft, 'items' | 'value' | 'isSeries'> & {
    inputs: readonly number[];
    lights?: readonly number[];
    value(world: World): number;
  },
): Plan | UndefinedQuantity {
  const { inputs, lights = noLights, ...rest } = draft;
  return planOf(run, { ...rest, isSeries: false, items: [{ inputs, lights }] });
}

/** A quantity that has no value, with the reason as words for people. */
export function undefinedQuantity(id: string, reason: string): UndefinedQuantity {
  return { state: 'undefined', id, undefined: reason };
}

/** Data rows of all points, ascending. Each row belongs to one point, so none comes twice. */
export function rowsOf(
  points: Points,
  inputs: readonly number[],
  lights: readonly number[] = noLights,
): number[] {
  const rows: number[] = [];
  for (const list of [inputs, lights]) for (const point of list) rows.push(...points.rows[point]!);
  return rows.length > 1 ? rows.sort((a, b) => a - b) : rows;
}
