import type { GridFigure } from './figure.ts';
import { signedText } from './numberText.ts';
import { cellPairs } from './pairs.ts';
import { otherKey, spotsOf } from './pointText.ts';
import { type SpotHandling, SpotMark } from './SpotMark.tsx';

/** The screen, 16:9, each place with its number; a place's fill deepens with its distance from the centre's value. */
export function GridPlot({
  figure,
  width,
  height,
  spots,
}: {
  figure: GridFigure;
  width: number;
  height: number;
  spots: SpotHandling;
}) {
  const room = { width: width - 8, height: height - 12 };
  const wide = Math.min(room.width, (room.height * 16) / 9);
  const high = (wide * 9) / 16;
  const left = (width - wide) / 2;
  const top = (height - high) / 2;
  const cell = { width: wide / figure.columns, height: high / figure.rows };
  const texts = new Map(spotsOf(figure).map((spot) => [spot.key, spot.text]));
  const most = Math.max(1, ...figure.cells.map((each) => Math.abs(each.value)));
  return (
    <>
      <rect className="plot-screen" x={left} y={top} width={wide} height={high} />
      <g className="plot-line plot-strong">
        {cellPairs(figure).map(({ own, other, otherIndex }, index) => {
          const at = [left + (own.column - 0.5) * cell.width, top + (own.row - 0.5) * cell.height] as const;
          return (
            <g key={`${own.row}.${own.column}`}>
              <SpotMark
                handling={spots}
                spotKey={`${index}`}
                text={texts.get(`${index}`) ?? ''}
                at={at}
                tone={own.worst ? 'out' : 'in'}
                whisker={null}
              >
                <rect
                  className="plot-cell"
                  x={-cell.width / 2}
                  y={-cell.height / 2}
                  width={cell.width}
                  height={cell.height}
                  fillOpacity={(0.2 * Math.abs(own.value)) / most}
                />
                <text className="plot-cell-text" y={other ? -2 : 4} textAnchor="middle">
                  {signedText(own.value, figure.decimals)}
                </text>
              </SpotMark>
              {other && (
                <SpotMark
                  handling={spots}
                  spotKey={otherKey(otherIndex)}
                  text={texts.get(otherKey(otherIndex)) ?? ''}
                  at={[at[0], at[1] + 9]}
                  tone="in"
                  whisker={null}
                >
                  <text className="plot-cell-other" y={3} textAnchor="middle">
                    {signedText(other.value, figure.decimals)}
                  </text>
                </SpotMark>
              )}
            </g>
          );
        })}
      </g>
    </>
  );
}
