import { formatNumber } from '../../../shared/article/formatNumber.ts';

/** Width of every small figure, in its own units; it is drawn to the margin's width. */
export const figureWidth = 298;

/** A linear way from values to places; a domain of one value lies in the middle. */
export function linear(from: number, to: number, low: number, high: number): (value: number) => number {
  if (to === from) return () => (low + high) / 2;
  return (value) => low + ((value - from) / (to - from)) * (high - low);
}

/** Places rounded to a tenth: the same picture on every machine. */
export function place(value: number): number {
  return Math.round(value * 10) / 10;
}

/** A number beside a mark: at most `digits` significant, with a true minus. */
export function label(value: number, digits = 3): string {
  return formatNumber(value, { digits: Math.abs(value) >= 1000 ? 4 : digits })
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
}

/** Least and greatest of values with their expanded uncertainty U = 2u. */
export function extent(values: readonly { value: number; u: number | null }[]): [number, number] {
  return [
    Math.min(...values.map(({ value, u }) => value - 2 * (u ?? 0))),
    Math.max(...values.map(({ value, u }) => value + 2 * (u ?? 0))),
  ];
}
