import type { FigureLine, FigurePoint, LevelsFigure } from './figure.ts';
import { MarkShape } from './markShape.tsx';
import { numberText, withUnit } from './numberText.ts';
import { levelText } from './pointText.ts';
import { type SpotHandling, SpotMark } from './SpotMark.tsx';
import { position } from './scale.ts';
import { spreadLabels } from './spreadLabels.ts';

const dashes = { solid: undefined, dashed: '5 4', dotted: '1.5 3.5', none: undefined } as const;

/** Values along an axis as SVG; lengths are in CSS px at zoom 1 (see `PlotSvg`). */
export function LevelsPlot({
  figure,
  width,
  height,
  spots,
}: {
  figure: LevelsFigure;
  width: number;
  height: number;
  spots: SpotHandling;
}) {
  const labels = figure.lines.length > 1 ? figure.lines.map((line) => line.label) : [];
  const right = labels.length
    ? Math.min(120, 12 + 6.4 * Math.max(...labels.map((label) => label.length)))
    : 14;
  const box = { left: 38, right: width - right, top: 14, bottom: height - 22 };
  const x = (value: number) => position(figure.x, value, box.left + 4, box.right - 4);
  const y = (value: number) => position(figure.y, value, box.bottom, box.top);
  const inside = (value: number) => Math.min(Math.max(y(value), box.top - 6), box.bottom + 2);
  const ordered = figure.lines
    .map((line, index) => ({ line, index }))
    .sort((a, b) => rank(a.line) - rank(b.line));
  const ends = figure.lines.map((line) => inside(line.points.at(-1)?.y ?? figure.y.min));
  const labelAt = spreadLabels(ends, 13, box.top + 2, box.bottom);
  return (
    <>
      <Ticks figure={figure} x={x} y={y} box={box} />
      {figure.limits.map((limit) => (
        <g key={limit.value} className="plot-limit">
          <line x1={box.left} x2={box.right} y1={y(limit.value)} y2={y(limit.value)} />
          <text x={box.left + 4} y={y(limit.value) - 4}>
            {limit.label}
          </text>
        </g>
      ))}
      {ordered.map(({ line, index }) => (
        <g key={line.label || index} className={`plot-line plot-${line.weight}`}>
          {line.band && line.points.some((point) => point.u !== null) && (
            <path className="plot-band" d={bandPath(line.points, x, inside)} />
          )}
          {line.dash !== 'none' && line.points.length > 1 && (
            <path
              className="plot-stroke"
              strokeDasharray={dashes[line.dash]}
              d={`M${line.points.map((point) => `${px(x(point.x))} ${px(inside(point.y))}`).join('L')}`}
            />
          )}
          {line.points.map((point, p) => (
            <SpotMark
              key={point.x}
              handling={spots}
              spotKey={`${index}.${p}`}
              text={levelText(figure, line.label, point)}
              at={[x(point.x), inside(point.y)]}
              tone={point.out ? 'out' : point.counts ? 'in' : 'apart'}
              whisker={
                line.band || point.u === null
                  ? null
                  : [inside(point.y - 2 * point.u), inside(point.y + 2 * point.u)]
              }
            >
              <MarkShape mark={point.counts ? line.mark : 'ring'} size={point.out ? 3.6 : 3} />
            </SpotMark>
          ))}
          {labels.length > 0 && (
            <text className="plot-label" x={box.right + 5} y={labelAt[index]! + 3.5}>
              {line.label}
            </text>
          )}
        </g>
      ))}
    </>
  );
}

const rank = (line: FigureLine) => (line.weight === 'strong' ? 2 : line.weight === 'plain' ? 1 : 0);
const px = (value: number) => Number(value.toFixed(2));

function bandPath(
  points: readonly FigurePoint[],
  x: (v: number) => number,
  y: (v: number) => number,
): string {
  const upper = points.map((point) => `${px(x(point.x))} ${px(y(point.y + 2 * (point.u ?? 0)))}`);
  const lower = points.map((point) => `${px(x(point.x))} ${px(y(point.y - 2 * (point.u ?? 0)))}`).reverse();
  return `M${[...upper, ...lower].join('L')}Z`;
}

function Ticks({
  figure,
  x,
  y,
  box,
}: {
  figure: LevelsFigure;
  x: (value: number) => number;
  y: (value: number) => number;
  box: { left: number; right: number; top: number; bottom: number };
}) {
  const last = figure.x.ticks.at(-1);
  return (
    <g className="plot-ticks">
      <line className="plot-ground" x1={box.left} x2={box.right} y1={box.bottom} y2={box.bottom} />
      {figure.target && (
        <line
          className="plot-target"
          x1={box.left}
          x2={box.right}
          y1={y(figure.target.value)}
          y2={y(figure.target.value)}
        />
      )}
      {figure.y.ticks
        .filter((tick) => tick >= figure.y.min && tick <= figure.y.max)
        .map((tick) => (
          <text key={tick} x={box.left - 6} y={y(tick) + 3.5} textAnchor="end">
            {numberText(tick, figure.y.decimals)}
          </text>
        ))}
      {figure.x.ticks.map((tick) => (
        <text key={tick} x={x(tick)} y={box.bottom + 15} textAnchor="middle">
          {tick === last
            ? withUnit(tick, figure.x.unit, figure.x.decimals)
            : numberText(tick, figure.x.decimals)}
        </text>
      ))}
    </g>
  );
}
