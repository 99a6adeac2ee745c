import type { Subject } from '../../../app/plots/figure.ts';
import type { MeasuredSeries, Measurement } from '../../../shared/contract/measurement.ts';
import type { Reading } from '../../../shared/contract/reading.ts';
import type { Run } from '../../../shared/contract/run.ts';

type Value = readonly [axis: number | string, value: number, u?: number, counts?: boolean];

/** A measured series with rows numbered from 1 in the order given. */
export function series(id: string, unit: string, values: readonly Value[]): MeasuredSeries {
  const counting = values.filter(([, , , counts]) => counts ?? true).map(([, value]) => value);
  return {
    state: 'measured',
    id,
    unit,
    values: values.map(([axis, value, u, counts], index) => ({
      axis,
      value,
      u: u ?? null,
      counts: counts ?? true,
      rows: [index + 1],
    })),
    average: { value: counting.reduce((sum, value) => sum + value, 0) / counting.length, u: 0.1 },
    notes: [],
  };
}

export function scalar(id: string, unit: string, value: number, u: number | null = null): MeasuredSeries {
  return { state: 'measured', id, unit, values: [{ value, u, counts: true, rows: [1] }], notes: [] };
}

/** A run of the invented Orrinvale Hearth 55 that has just these measurements. */
export function subject(
  measurements: readonly Measurement[],
  conditions: Partial<Run> = {},
  readings: readonly Reading[] = [],
): Subject {
  const run: Run = {
    mode: 'Calm',
    stage: 'as-delivered',
    signal: 'SDR',
    target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
    ...conditions,
  };
  const id = `${run.mode}-${run.stage}`.toLowerCase();
  const evidence = { id, conditions: run, readings, digest: id };
  return {
    unit: {
      id: 'orrinvale-hearth-55',
      unit: { maker: 'Orrinvale', model: 'Hearth 55' },
      runs: [evidence],
      observations: [],
    },
    run: evidence,
    measured: new Map(measurements.map((measurement) => [measurement.id, measurement])),
    label: '',
  };
}
