import type { ProofFigure } from '../../../shared/contract/claim.ts';
import { extent, figureWidth, label, linear, place } from './scale.ts';

type Levels = Extract<ProofFigure, { form: 'levels' }>;

const height = 84;

/** Values by level with the limit and the stated part of the axis; points past the limit are larger and coloured. */
export function LevelsFigure({ figure }: { figure: Levels }) {
  const { points, limit } = figure;
  if (points.length === 0) return null;
  const axes = points.map((point) => point.axis);
  const low = Math.min(...axes, figure.from ?? Infinity, figure.to ?? Infinity);
  const high = Math.max(...axes, figure.from ?? -Infinity, figure.to ?? -Infinity);
  const x = linear(low, high, 14, figureWidth - 14);
  const [least, most] = extent(points);
  const bottom = Math.min(
    least,
    limit?.value ?? least,
    0 >= least ? least : Math.max(0, least - (most - least)),
  );
  const top = Math.max(most, limit?.value ?? most);
  const y = linear(bottom, top, 62, 9);
  const from = figure.from === undefined ? undefined : place(x(figure.from) - 8);
  const to = figure.to === undefined ? figureWidth : place(x(figure.to) + 8);
  const shade = figure.from !== undefined || figure.to !== undefined;
  const marked = labelledLevels(axes, figure);
  const [symbol = ''] = figure.axisUnit.split(' ');
  const unit = symbol === '%' ? '\u202f%' : symbol === '°' ? '°' : `\u00a0${symbol}`;
  return (
    <svg className="proof-plot" viewBox={`0 0 ${figureWidth} ${height}`} role="img" aria-label={figure.title}>
      {shade ? (
        <rect className="figure-stated" x={from ?? 0} y="2" width={place(to - (from ?? 0))} height="66" />
      ) : null}
      {limit ? (
        <>
          <line
            className="figure-limit"
            x1="0"
            x2={figureWidth}
            y1={place(y(limit.value))}
            y2={place(y(limit.value))}
          />
          <text
            x={limitSide(points, limit.value) === 'left' ? 0 : figureWidth}
            y={place(y(limit.value) < 16 ? y(limit.value) + 11 : y(limit.value) - 4)}
            textAnchor={limitSide(points, limit.value) === 'left' ? 'start' : 'end'}
          >
            {limit.label}
          </text>
        </>
      ) : null}
      {points.map((point) => {
        const at = place(x(point.axis));
        const whisker = point.u === null ? 0 : 2 * point.u;
        return (
          <g
            key={point.axis}
            className={point.out ? 'figure-out' : point.counts ? 'figure-in' : 'figure-aside'}
          >
            {whisker > 0 ? (
              <line
                x1={at}
                x2={at}
                y1={place(y(point.value - whisker))}
                y2={place(y(point.value + whisker))}
              />
            ) : null}
            <circle cx={at} cy={place(y(point.value))} r={point.out ? 3.6 : 3} />
          </g>
        );
      })}
      {marked.map((axis, index) => (
        <text key={axis} x={place(x(axis))} y={height - 3} textAnchor="middle">
          {label(axis)}
          {index === marked.length - 1 ? unit : ''}
        </text>
      ))}
    </svg>
  );
}

/** The ends and the stated edges; never two labels on top of each other. */
function labelledLevels(axes: readonly number[], figure: Levels): number[] {
  const first = Math.min(...axes);
  const last = Math.max(...axes);
  const room = (last - first) * 0.14;
  const chosen = [first, last];
  for (const edge of [figure.from, figure.to]) {
    if (edge !== undefined && chosen.every((other) => Math.abs(other - edge) > room)) chosen.push(edge);
  }
  const middle = axes.find((axis) => Math.abs(axis - (first + last) / 2) < room);
  if (chosen.length === 2 && middle !== undefined) chosen.push(middle);
  return [...new Set(chosen)].sort((a, b) => a - b);
}

/** The limit's label goes where fewer points are near the line. */
function limitSide(points: Levels['points'], limit: number): 'left' | 'right' {
  const half = Math.ceil(points.length / 3);
  const near = (part: Levels['points']) => Math.min(...part.map((point) => Math.abs(point.value - limit)));
  return near(points.slice(0, half)) >= near(points.slice(-half)) ? 'left' : 'right';
}
