import type { Figure, ReadingRef } from './figure.ts';
import { figureTable } from './figureTable.ts';
import { numberText } from './numberText.ts';
import { spotsOf } from './pointText.ts';

/** The figure's numbers as a table; a row with readings of its own can be pressed like its mark. */
export function FigureTableView({ figure, onPick }: { figure: Figure; onPick: (ref: ReadingRef) => void }) {
  const { columns, rows } = figureTable(figure);
  const spots = spotsOf(figure);
  const refs = figure.form === 'plane' ? [] : spots.map((spot) => spot.ref);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by key
    <section className="plot-table" tabIndex={0} aria-label={`Numbers: ${figure.title}`}>
      <table>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.label} scope="col">
                {column.label} {column.unit && <span className="quiet">{column.unit}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={row.join('|')}>
              {row.map((cell, column) => (
                <td key={columns[column]!.label}>
                  {column === row.length - 1 && refs[index] ? (
                    <button type="button" className="act" onClick={() => onPick(refs[index]!)}>
                      {cell}
                    </button>
                  ) : typeof cell === 'number' ? (
                    numberText(cell, cellDecimals(cell))
                  ) : (
                    cell
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function cellDecimals(value: number): number {
  if (Number.isInteger(value)) return 0;
  const size = Math.abs(value);
  return size >= 100 ? 1 : size >= 1 ? 2 : 4;
}
