/** Where a value of a series stands: stimulus %, saturation %, degrees, window %, seconds; or a patch or grid place. */
export type Axis = number | string;

export interface Estimate {
  value: number;
  /** Standard uncertainty in the quantity's unit; null for values that carry none (single values, facts). */
  u: number | null;
}

export interface MeasuredValue extends Estimate {
  axis?: Axis;
  /** False for a level that is shown but does not count for average, max, all and onset. */
  counts: boolean;
  /** Data rows of the run that this value rests on. */
  rows: readonly number[];
}

export interface Extreme extends Estimate {
  axis?: Axis;
}

/** A quantity with its value(s), sorted by axis; a scalar has one value without axis. */
export interface MeasuredSeries {
  state: 'measured';
  id: string;
  /** Unit of measure as printed: `ΔE2000`, `%`, `cd/m²`, `K` … */
  unit: string;
  values: readonly MeasuredValue[];
  average?: Estimate;
  max?: Extreme;
  min?: Extreme;
  /** What a reader must know: levels left out, defaults used, how a target was chosen. */
  notes: readonly string[];
}

/** Only a lower bound is known: the black was under what the instrument resolves. */
export interface LowerBound {
  state: 'over';
  id: string;
  unit: string;
  over: number;
  rows: readonly number[];
  notes: readonly string[];
}

/** A typed reason instead of a number; never NaN, never a silent 0. */
export interface UndefinedQuantity {
  state: 'undefined';
  id: string;
  undefined: string;
}

export type Measurement = MeasuredSeries | LowerBound | UndefinedQuantity;

/** Every quantity of one run that its series allow; a series that is absent is left out. */
export type RunMeasurements = ReadonlyMap<string, Measurement>;

/**
 * Seeded joint draws of one quantity of one run (JCGM 101). `values` is row-major: draw d of value i
 * stands at `values[d * axes.length + i]`; the order of `axes` is that of the measurement's values.
 * Draws of two quantities with the same index belong to the same imagined world, also across runs and units.
 */
export interface QuantityDraws {
  count: number;
  axes: readonly (Axis | undefined)[];
  counts: readonly boolean[];
  values: Float64Array;
}
