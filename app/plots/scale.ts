import type { AxisSpec } from './figure.ts';

/** Maps a value on the axis to a length between `from` and `to` (px); values outside run on in a straight line. */
export function position(axis: AxisSpec, value: number, from: number, to: number): number {
  const at = axis.scale === 'log' ? Math.log(value) : value;
  const low = axis.scale === 'log' ? Math.log(axis.min) : axis.min;
  const high = axis.scale === 'log' ? Math.log(axis.max) : axis.max;
  return from + ((at - low) / (high - low)) * (to - from);
}

const steps = [1, 2, 2.5, 5, 10];

/** Round ticks that cover `low` to `high` in about `count` steps (from 1); the first and last enclose the range. */
export function roundTicks(low: number, high: number, count: number): number[] {
  if (!(high > low)) return [low - 0.5, low, low + 0.5];
  const raw = (high - low) / Math.max(1, count);
  const magnitude = 10 ** Math.floor(Math.log10(raw));
  const step = (steps.find((s) => s * magnitude >= raw * (1 - 1e-9)) ?? 10) * magnitude;
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

/** Digits after the decimal point that tell neighbouring ticks apart. */
export function tickDecimals(ticks: readonly number[]): number {
  const step = ticks.length > 1 ? Math.abs(ticks[1]! - ticks[0]!) : 1;
  for (let decimals = 0; decimals < 6; decimals++) {
    if (Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-6) return decimals;
  }
  return 6;
}

/** A linear axis that covers the values (and 0 when `fromZero`), with round ends. */
export function linearAxis(
  label: string,
  unit: string,
  values: readonly number[],
  options: { fromZero?: boolean; count?: number; atLeast?: readonly [number, number] } = {},
): AxisSpec {
  const wanted = [...values, ...(options.fromZero ? [0] : []), ...(options.atLeast ?? [])].filter(
    Number.isFinite,
  );
  const low = wanted.length ? Math.min(...wanted) : 0;
  const high = wanted.length ? Math.max(...wanted) : 1;
  const ticks = roundTicks(low, high, options.count ?? 4);
  return {
    label,
    unit,
    min: ticks[0]!,
    max: ticks.at(-1)!,
    ticks,
    scale: 'linear',
    decimals: tickDecimals(ticks),
  };
}

/** An axis with given ticks, a little wider than the values so that marks at the ends stay whole. */
export function fixedAxis(
  label: string,
  unit: string,
  ticks: readonly number[],
  scale: 'linear' | 'log' = 'linear',
): AxisSpec {
  return { label, unit, min: ticks[0]!, max: ticks.at(-1)!, ticks, scale, decimals: tickDecimals(ticks) };
}
