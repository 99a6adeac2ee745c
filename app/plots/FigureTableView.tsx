import type { Figure, ReadingRef } from './figure.ts';
import { figureTable, refText, type TableCell } from './figureTable.ts';
import { numberText } from './numberText.ts';

/** The figure's numbers as a table; a row with readings of its own can be pressed like its mark. */
export function FigureTableView({ figure, onPick }: { figure: Figure; onPick: (ref: ReadingRef) => void }) {
  const { columns, rows } = figureTable(figure);
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
          {rows.map((row) => {
            const texts = row.map(cellText);
            return (
              <tr key={texts.join('|')}>
                {row.map((cell, column) => (
                  <td key={columns[column]!.label}>
                    {typeof cell === 'object' && cell ? (
                      <button type="button" className="act" onClick={() => onPick(cell)}>
                        {texts[column]}
                      </button>
                    ) : (
                      texts[column]
                    )}
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

function cellText(cell: TableCell): string {
  if (typeof cell === 'number') return numberText(cell, cellDecimals(cell));
  return typeof cell === 'string' ? cell : cell === null ? '' : refText(cell);
}

function cellDecimals(value: number): number {
  if (Number.isInteger(value)) return 0;
  const size = Math.abs(value);
  return size >= 100 ? 1 : size >= 1 ? 2 : 4;
}
