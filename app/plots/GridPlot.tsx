import type { GridFigure } from './figure.ts';
import { numberText, plusMinus, withUnit } from './numberText.ts';
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
  const most = Math.max(1, ...figure.cells.map((each) => Math.abs(each.value)));
  return (
    <>
      <rect className="plot-screen" x={left} y={top} width={wide} height={high} />
      <g className="plot-line plot-strong">
        {figure.cells.map((each, index) => {
          const at = [left + (each.column - 0.5) * cell.width, top + (each.row - 0.5) * cell.height] as const;
          return (
            <SpotMark
              key={`${each.row}.${each.column}`}
              handling={spots}
              spotKey={`${index}`}
              text={`row ${each.row}, column ${each.column}: ${plusMinus(each.value, each.u, figure.unit, figure.decimals)}${each.other === undefined ? '' : `; ${figure.other}: ${withUnit(each.other, figure.unit, figure.decimals)}`}`}
              at={at}
              tone={each.worst ? 'out' : 'in'}
              whisker={null}
            >
              <rect
                className="plot-cell"
                x={-cell.width / 2}
                y={-cell.height / 2}
                width={cell.width}
                height={cell.height}
                fillOpacity={(0.2 * Math.abs(each.value)) / most}
              />
              <text className="plot-cell-text" y={each.other === undefined ? 4 : -2} textAnchor="middle">
                {each.value > 0.5 ? '+' : ''}
                {numberText(each.value, figure.decimals)}
              </text>
              {each.other === undefined ? null : (
                <text className="plot-cell-other" y={11} textAnchor="middle">
                  {each.other > 0.5 ? '+' : ''}
                  {numberText(each.other, figure.decimals)}
                </text>
              )}
            </SpotMark>
          );
        })}
      </g>
    </>
  );
}
