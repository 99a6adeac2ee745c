import type { MeasuredSeries } from '../../shared/contract/measurement.ts';

const width = 84;
const height = 24;

/** A series in the height of a line: its points, the limit as a hairline, those past it in the one hue. */
export function TinyLevels({
  series,
  limit,
  label,
}: {
  series: MeasuredSeries;
  limit: number;
  label: string;
}) {
  const points = series.values.filter((value) => value.counts && typeof value.axis === 'number');
  const top = Math.max(limit * 2, ...points.map((point) => point.value)) * 1.08;
  const last = Math.max(100, ...points.map((point) => Number(point.axis)));
  const y = (value: number) => height - 2 - (value / top) * (height - 4);
  return (
    <svg className="tiny" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <line className="tiny-limit" x1={0} x2={width} y1={y(limit)} y2={y(limit)} />
      {points.map((point) => (
        <circle
          key={String(point.axis)}
          className={point.value > limit ? 'tiny-out' : 'tiny-in'}
          cx={3 + (Number(point.axis) / last) * (width - 6)}
          cy={y(point.value)}
          r={point.value > limit ? 1.9 : 1.5}
        />
      ))}
    </svg>
  );
}

/** Peak by window in the height of a line; windows stand evenly, as on their logarithmic axis. */
export function TinyWindows({ series, label }: { series: MeasuredSeries; label: string }) {
  const points = series.values.filter((value) => typeof value.axis === 'number');
  const top = Math.max(...points.map((point) => point.value)) * 1.08;
  const x = (axis: number) => 3 + (Math.log10(Math.max(1, axis)) / 2) * (width - 6);
  const y = (value: number) => height - 2 - (value / top) * (height - 4);
  return (
    <svg className="tiny" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <path
        className="tiny-line"
        d={`M${points.map((point) => `${x(Number(point.axis)).toFixed(1)} ${y(point.value).toFixed(1)}`).join('L')}`}
      />
      {points.map((point) => (
        <circle
          key={String(point.axis)}
          className="tiny-in"
          cx={x(Number(point.axis))}
          cy={y(point.value)}
          r={1.6}
        />
      ))}
    </svg>
  );
}
