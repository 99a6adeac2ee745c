import type { PlaneFigure } from './figure.ts';
import { MarkShape } from './markShape.tsx';
import { numberText } from './numberText.ts';
import { type SpotHandling, SpotMark } from './SpotMark.tsx';
import { roundTicks, tickDecimals } from './scale.ts';

const dashes = { solid: undefined, dashed: '5 4', dotted: '1.5 3.5' } as const;

/** Triangles of primaries on a chromaticity diagram, both axes to one scale. */
export function PlanePlot({
  figure,
  width,
  height,
  spots,
}: {
  figure: PlaneFigure;
  width: number;
  height: number;
  spots: SpotHandling;
}) {
  const box = { left: 34, right: width - 12, top: 10, bottom: height - 20 };
  const corners = figure.areas.flatMap((area) => area.corners);
  const range = (values: number[]) => [Math.min(...values) - 0.03, Math.max(...values) + 0.03] as const;
  const [left, right] = range(corners.map((corner) => corner.x));
  const [low, high] = range(corners.map((corner) => corner.y));
  const scale = Math.min((box.right - box.left) / (right - left), (box.bottom - box.top) / (high - low));
  const shift = (box.right - box.left - scale * (right - left)) / 2;
  const x = (value: number) => box.left + shift + (value - left) * scale;
  const y = (value: number) => box.bottom - (value - low) * scale;
  const allAcross = roundTicks(left, right, 3);
  const allUp = roundTicks(low, high, 3);
  const across = allAcross.filter((tick) => x(tick) >= box.left && x(tick) <= box.right);
  const up = allUp.filter((tick) => y(tick) >= box.top && y(tick) <= box.bottom);
  return (
    <>
      <g className="plot-ticks">
        <line className="plot-ground" x1={box.left} x2={box.right} y1={box.bottom} y2={box.bottom} />
        {across.map((tick) => (
          <text key={tick} x={x(tick)} y={box.bottom + 14} textAnchor="middle">
            {numberText(tick, tickDecimals(allAcross))}
          </text>
        ))}
        {up.map((tick) => (
          <text key={tick} x={box.left - 6} y={y(tick) + 3.5} textAnchor="end">
            {numberText(tick, tickDecimals(allUp))}
          </text>
        ))}
      </g>
      {figure.marks.map((mark) => (
        <g
          key={mark.label}
          className="plot-target-mark"
          transform={`translate(${x(mark.at[0])} ${y(mark.at[1])})`}
        >
          <path d="M-4 0H4M0 -4V4" />
          <text x={7} y={3.5}>
            {mark.label}
          </text>
        </g>
      ))}
      {figure.areas.map((area, index) => (
        <g key={area.label} className={`plot-line plot-${area.weight}`}>
          <path
            className="plot-stroke"
            strokeDasharray={dashes[area.dash]}
            d={`M${area.corners.map((corner) => `${x(corner.x).toFixed(2)} ${y(corner.y).toFixed(2)}`).join('L')}Z`}
          />
          {area.corners.map((corner, c) =>
            corner.ref ? (
              <SpotMark
                key={corner.label}
                handling={spots}
                spotKey={`${index}.${c}`}
                text={`${area.label}, ${corner.label}: ${numberText(corner.x, 4)}, ${numberText(corner.y, 4)}`}
                at={[x(corner.x), y(corner.y)]}
                tone="in"
                whisker={null}
              >
                <MarkShape mark={area.weight === 'strong' ? 'disc' : 'ring'} size={3.2} />
              </SpotMark>
            ) : null,
          )}
          <AreaLabel area={area} x={x} y={y} index={index} />
        </g>
      ))}
    </>
  );
}

/** Names a triangle at one of its corners, each area at another, so that names never meet. */
function AreaLabel({
  area,
  x,
  y,
  index,
}: {
  area: PlaneFigure['areas'][number];
  x: (value: number) => number;
  y: (value: number) => number;
  index: number;
}) {
  const corner = area.corners[[2, 1, 0][index] ?? 0];
  if (!corner) return null;
  const [dx, dy] = [
    [10, 14],
    [10, -4],
    [10, 4],
  ][index] ?? [10, 0];
  return (
    <text className="plot-label" x={x(corner.x) + dx!} y={y(corner.y) + dy!}>
      {area.label}
    </text>
  );
}
