import type { PatchesFigure } from './figure.ts';
import { numberText, plusMinus } from './numberText.ts';
import { type SpotHandling, SpotMark } from './SpotMark.tsx';
import { linearAxis, position } from './scale.ts';

/** One stem for each patch, worst first, its name below where there is room. */
export function PatchesPlot({
  figure,
  width,
  height,
  spots,
}: {
  figure: PatchesFigure;
  width: number;
  height: number;
  spots: SpotHandling;
}) {
  const box = { left: 38, right: width - 12, top: 14, bottom: height - 22 };
  const axis = linearAxis(
    'error',
    figure.unit,
    [
      ...figure.patches.flatMap((patch) => [patch.value + 2 * (patch.u ?? 0), patch.other ?? 0]),
      figure.limit?.value ?? 0,
    ],
    { fromZero: true },
  );
  const y = (value: number) => position(axis, value, box.bottom, box.top);
  const step = (box.right - box.left) / figure.patches.length;
  const x = (index: number) => box.left + (index + 0.5) * step;
  const every = Math.max(1, Math.ceil(18 / step));
  return (
    <>
      <g className="plot-ticks">
        <line className="plot-ground" x1={box.left} x2={box.right} y1={box.bottom} y2={box.bottom} />
        {axis.ticks.map((tick) => (
          <text key={tick} x={box.left - 6} y={y(tick) + 3.5} textAnchor="end">
            {numberText(tick, axis.decimals)}
          </text>
        ))}
        {figure.patches.map((patch, index) =>
          index % every === 0 ? (
            <text key={patch.label} x={x(index)} y={box.bottom + 15} textAnchor="middle">
              {patch.label}
            </text>
          ) : null,
        )}
      </g>
      {figure.limit && (
        <g className="plot-limit">
          <line x1={box.left} x2={box.right} y1={y(figure.limit.value)} y2={y(figure.limit.value)} />
          <text x={box.right} y={y(figure.limit.value) - 4} textAnchor="end">
            {figure.limit.label}
          </text>
        </g>
      )}
      <g className="plot-line plot-strong">
        {figure.patches.map((patch, index) => (
          <SpotMark
            key={patch.label}
            handling={spots}
            spotKey={`${index}`}
            text={`${patch.label}: ${plusMinus(patch.value, patch.u, figure.unit, figure.decimals)}${patch.other === undefined ? '' : `; ${figure.other}: ${numberText(patch.other, figure.decimals)}`}`}
            at={[x(index), y(patch.value)]}
            tone={patch.out ? 'out' : 'in'}
            whisker={patch.u === null ? null : [y(patch.value - 2 * patch.u), y(patch.value + 2 * patch.u)]}
          >
            <line className="plot-stem" y2={box.bottom - y(patch.value)} />
            <circle r={3.2} fill="currentColor" />
            {patch.other === undefined ? null : (
              <circle className="plot-other" cy={y(patch.other) - y(patch.value)} r={3} />
            )}
          </SpotMark>
        ))}
      </g>
    </>
  );
}
