import type { MeasuredSeries, MeasuredValue } from '../../../shared/contract/measurement.ts';
import { catalogueEntry } from '../../../shared/measure/index.ts';
import type { FigurePoint, ReadingRef, Subject } from '../figure.ts';

/** The measured series of a quantity, or null when the run lacks it or it is undefined. */
export function seriesOf(subject: Subject, quantity: string): MeasuredSeries | null {
  const measurement = subject.measured.get(quantity);
  return measurement?.state === 'measured' && measurement.values.length > 0 ? measurement : null;
}

/** Decimals that the catalogue prints a quantity with. */
export function decimalsOf(quantity: string): number {
  return catalogueEntry(quantity)?.decimals ?? 1;
}

/** The single value of a scalar quantity. */
export function scalarOf(subject: Subject, quantity: string): MeasuredValue | null {
  return seriesOf(subject, quantity)?.values[0] ?? null;
}

export function refOf(subject: Subject, rows: readonly number[]): ReadingRef {
  return { unit: subject.unit.id, run: subject.run.id, rows };
}

/**
 * The readings that are a value's own. What every value of the series rests on (the run's white, its black) is left
 * out, except where nothing else remains: that reading is the value's own.
 */
export function ownRows(series: MeasuredSeries): (readonly number[])[] {
  const [first, ...others] = series.values;
  if (!first || others.length === 0) return series.values.map((value) => value.rows);
  const shared = new Set(first.rows.filter((row) => others.every((value) => value.rows.includes(row))));
  return series.values.map((value) => {
    const own = value.rows.filter((row) => !shared.has(row));
    return own.length > 0 ? own : value.rows;
  });
}

/** Points along a numeric axis; values at named places are left to other forms. */
export function pointsOf(
  subject: Subject,
  series: MeasuredSeries,
  isOut: (value: number) => boolean = () => false,
): FigurePoint[] {
  const own = ownRows(series);
  return series.values.flatMap((value, index) =>
    typeof value.axis === 'number'
      ? [
          {
            x: value.axis,
            y: value.value,
            u: value.u,
            counts: value.counts,
            out: value.counts && isOut(value.value),
            ref: refOf(subject, own[index]!),
          },
        ]
      : [],
  );
}

/** What the whiskers reach, so that an axis covers them. */
export function reach(points: readonly FigurePoint[]): number[] {
  return points.flatMap((point) => [point.y - 2 * (point.u ?? 0), point.y + 2 * (point.u ?? 0)]);
}

/** The point furthest from `target` among those that count. */
export function furthest(points: readonly FigurePoint[], target: number): FigurePoint | null {
  return points
    .filter((point) => point.counts)
    .reduce<FigurePoint | null>(
      (worst, point) =>
        worst === null || Math.abs(point.y - target) > Math.abs(worst.y - target) ? point : worst,
      null,
    );
}

/** Where the points that count are past their limit; `levels` lists them in order. */
export function whereOut(points: readonly FigurePoint[]): {
  where: 'nowhere' | 'everywhere' | 'from' | 'at';
  levels: readonly number[];
} {
  const counting = points.filter((point) => point.counts).sort((a, b) => a.x - b.x);
  const levels = counting.filter((point) => point.out).map((point) => point.x);
  if (levels.length === 0) return { where: 'nowhere', levels };
  if (levels.length === counting.length) return { where: 'everywhere', levels };
  const first = counting.findIndex((point) => point.out);
  return { where: counting.slice(first).every((point) => point.out) ? 'from' : 'at', levels };
}
