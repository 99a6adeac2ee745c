import type { Axis, UndefinedQuantity } from '../contract/measurement.ts';
import type { World } from './points.ts';
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
  rows: readonly (readonly number[])[];
  /** Points that each value depends on */
  inputs: readonly (readonly number[])[];
  /** Which coordinates of its points it reads */
  uses: 'luminance' | 'chromaticity' | 'both';
  /** How u is found: first order where the quantity is as good as linear, seeded draws where not, none for what was only reported. */
  law: 'first-order' | 'draws' | 'none';
  /** True where average, max and min are meant; false for a scalar. */
  isSeries: boolean;
  /** The unit as read, for single values; others take the catalogue's. */
  unit?: string;
  notes: readonly string[];
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

/** One value to be: its axis, whether it counts, the points it rests on (the reading itself first). */
export interface Item {
  axis?: Axis;
  counts?: boolean;
  inputs: readonly number[];
}

export interface PlanDraft {
  id: string;
  items: readonly Item[];
  value(world: World, item: number): number;
  uses: Plan['uses'];
  law: Plan['law'];
  isSeries?: boolean;
  unit?: string;
  notes?: readonly string[];
  /** Why the quantity is undefined when no item has a value. */
  otherwise: string;
}

/** A luminance whose independent part is above this share of it makes logarithms and quotients bend: drawn instead. */
const bendFrom = 0.05;

/**
 * Completes a draft: evaluates it on the found world, leaves out items that have no value there, and falls back
 * from first order to draws where a luminance is so uncertain that the quantity bends.
 */
export function planOf(run: PreparedRun, draft: PlanDraft): Plan | UndefinedQuantity {
  const { found } = run.points;
  const kept: number[] = [];
  const values: number[] = [];
  draft.items.forEach((_, index) => {
    const value = draft.value(found, index);
    if (!Number.isFinite(value)) return;
    kept.push(index);
    values.push(value);
  });
  if (kept.length === 0) return undefinedQuantity(draft.id, draft.otherwise);
  const items = kept.map((index) => draft.items[index]!);
  const whole = kept.length === draft.items.length;
  return {
    state: 'plan',
    id: draft.id,
    value: whole ? draft.value : (world, i) => draft.value(world, kept[i]!),
    found: Float64Array.from(values),
    axes: items.map((item) => item.axis),
    counts: items.map((item) => item.counts ?? true),
    rows: items.map((item) => rowsOf(run, item.inputs)),
    inputs: items.map((item) => item.inputs),
    uses: draft.uses,
    law: draft.law === 'first-order' && bends(run, items, draft.uses) ? 'draws' : draft.law,
    isSeries: draft.isSeries ?? true,
    ...(draft.unit === undefined ? {} : { unit: draft.unit }),
    notes: draft.notes ?? [],
  };
}

/** A quantity with one value. */
export function scalarPlan(
  run: PreparedRun,
  draft: Omit<PlanDraft, 'items' | 'value' | 'isSeries'> & {
    inputs: readonly number[];
    value(world: World): number;
  },
): Plan | UndefinedQuantity {
  const { inputs, ...rest } = draft;
  return planOf(run, { ...rest, isSeries: false, items: [{ inputs }] });
}

export function undefinedQuantity(id: string, reason: string): UndefinedQuantity {
  return { state: 'undefined', id, undefined: reason };
}

/** Data rows of all points, ascending, each once. */
export function rowsOf(run: PreparedRun, inputs: readonly number[]): readonly number[] {
  const { rows } = run.points;
  if (inputs.length === 1) return rows[inputs[0]!]!;
  return [...new Set(inputs.flatMap((point) => rows[point]!))].sort((a, b) => a - b);
}

function bends(run: PreparedRun, items: readonly Item[], uses: Plan['uses']): boolean {
  if (uses === 'chromaticity') return false;
  const { floor } = run.conditions.instrument;
  const { Y } = run.points.found;
  const { Y: spread } = run.points.spread;
  return items.some((item) =>
    item.inputs.some((point) => Math.max(floor, spread[point]!) > bendFrom * Y[point]!),
  );
}
