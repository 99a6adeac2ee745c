import type { Patch, PatchesFigure } from './figure.ts';
import { numberText } from './numberText.ts';
import { patchPairs } from './pairs.ts';
import { otherKey, spotsOf } from './pointText.ts';
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
  const pairs = patchPairs(figure);
  const texts = new Map(spotsOf(figure).map((spot) => [spot.key, spot.text]));
  const axis = linearAxis(
    'error',
    figure.unit,
    [
      ...pairs.flatMap(({ own, other }) =>
        [own, other].map((patch) => (patch ? patch.value + 2 * (patch.u ?? 0) : 0)),
      ),
      figure.limit?.value ?? 0,
    ],
    { fromZero: true },
  );
  const y = (value: number) => position(axis, value, box.bottom, box.top);
  const step = (box.right - box.left) / figure.patches.length;
  const x = (index: number) => box.left + (index + 0.5) * step;
  // A pair stands side by side, the leading run's stem to the left.
  const beside = figure.other ? Math.min(4, step / 4) : 0;
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
      {figure.other && (
        <g className="plot-line plot-plain">
          {pairs.map(({ other, otherIndex }, index) =>
            other ? (
              <SpotMark
                key={other.label}
                handling={spots}
                spotKey={otherKey(otherIndex)}
                text={texts.get(otherKey(otherIndex)) ?? ''}
                at={[x(index) + beside, y(other.value)]}
                tone="in"
                whisker={whiskerOf(other, y)}
              >
                <circle className="plot-other" r={3} />
              </SpotMark>
            ) : null,
          )}
        </g>
      )}
      <g className="plot-line plot-strong">
        {figure.patches.map((patch, index) => (
          <SpotMark
            key={patch.label}
            handling={spots}
            spotKey={`${index}`}
            text={texts.get(`${index}`) ?? ''}
            at={[x(index) - beside, y(patch.value)]}
            tone={patch.out ? 'out' : 'in'}
            whisker={whiskerOf(patch, y)}
          >
            <line className="plot-stem" y2={box.bottom - y(patch.value)} />
            <circle r={3.2} fill="currentColor" />
          </SpotMark>
        ))}
      </g>
    </>
  );
}

function whiskerOf({ value, u }: Patch, y: (value: number) => number): readonly [number, number] | null {
  return u === null ? null : [y(value - 2 * u), y(value + 2 * u)];
}
