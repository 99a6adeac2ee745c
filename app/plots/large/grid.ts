import type { Data, Layout } from 'plotly.js-dist-min';
import type { GridCell, GridFigure } from '../figure.ts';
import type { InkColours } from '../inkColours.ts';
import { signedText } from '../numberText.ts';
import { cellPairs, sharesGrid } from '../pairs.ts';
import { otherKey, spotsOf } from '../pointText.ts';
import { baseLayout, type LargeDrawing } from './layout.ts';

interface Screen {
  title: string;
  cells: readonly { row: number; column: number; value: number }[];
  keys: readonly string[];
  texts: readonly string[];
  /** Depth of a cell's shade, 0 to 1 */
  depths: readonly number[];
}

/** The screen as a map; with a run laid over two maps side by side and, on the same grid, their difference. */
export function gridTraces(figure: GridFigure, ink: InkColours): LargeDrawing {
  const base = baseLayout(ink);
  const screens = screensOf(figure);
  const gap = 0.04;
  const share = (1 - gap * (screens.length - 1)) / screens.length;
  const left = (index: number) => index * (share + gap);
  const layout: Partial<Layout> & Record<string, unknown> = {
    ...base,
    margin: { l: 24, r: 24, t: screens.length > 1 ? 40 : 16, b: 24 },
    annotations: screens.flatMap(({ title }, index) =>
      title
        ? [
            {
              xref: 'paper' as const,
              yref: 'paper' as const,
              x: left(index) + share / 2,
              y: 1,
              yanchor: 'bottom' as const,
              text: title,
              showarrow: false,
              font: { color: ink.ink },
            },
          ]
        : [],
    ),
  };
  const data = screens.map((screen, index): Data => {
    const suffix = index === 0 ? '' : String(index + 1);
    layout[`xaxis${suffix}`] = {
      ...base.xaxis,
      visible: false,
      domain: [left(index), left(index) + share],
      anchor: `y${suffix}`,
    };
    layout[`yaxis${suffix}`] = {
      ...base.yaxis,
      visible: false,
      autorange: 'reversed',
      scaleanchor: `x${suffix}`,
      // A cell is as wide for its height as the screen, 16:9 whatever the grid.
      scaleratio: cellRatio(screen),
      constrain: 'domain',
      constraintoward: 'top',
      anchor: `x${suffix}`,
    };
    return {
      type: 'heatmap',
      xaxis: `x${suffix}`,
      yaxis: `y${suffix}`,
      x: screen.cells.map((cell) => cell.column),
      y: screen.cells.map((cell) => cell.row),
      z: [...screen.depths],
      zmin: 0,
      zmax: 1,
      text: screen.cells.map((cell) => signedText(cell.value, figure.decimals)),
      texttemplate: '%{text}',
      textfont: { color: ink.ink },
      customdata: [...screen.keys],
      hovertext: [...screen.texts],
      hoverinfo: 'text',
      colorscale: [
        [0, ink.paper],
        [1, ink.shade],
      ],
      showscale: false,
      xgap: 1,
      ygap: 1,
    } as unknown as Data;
  });
  return { data, layout };
}

function cellRatio({ cells }: Screen): number {
  const rows = Math.max(...cells.map((cell) => cell.row));
  const columns = Math.max(...cells.map((cell) => cell.column));
  return ((9 / 16) * columns) / rows;
}

function screensOf(figure: GridFigure): Screen[] {
  const { other } = figure;
  const texts = new Map(spotsOf(figure).map((spot) => [spot.key, spot.text]));
  const most = Math.max(1, ...[...figure.cells, ...(other?.cells ?? [])].map((cell) => Math.abs(cell.value)));
  const screen = (title: string, cells: readonly GridCell[], keyOf: (index: number) => string): Screen => ({
    title,
    cells,
    keys: cells.map((_, index) => keyOf(index)),
    texts: cells.map((_, index) => texts.get(keyOf(index)) ?? ''),
    depths: cells.map((cell) => Math.abs(cell.value) / most),
  });
  const lead = screen(other?.lead ?? '', figure.cells, (index) => `${index}`);
  if (!other) return [lead];
  const second = screen(other.label, other.cells, otherKey);
  if (!sharesGrid(figure)) return [lead, second];
  const differences = cellPairs(figure).flatMap(({ own, other: partner }, index) =>
    partner ? [{ row: own.row, column: own.column, value: partner.value - own.value, key: `${index}` }] : [],
  );
  const largest = Math.max(1, ...differences.map(({ value }) => Math.abs(value)));
  return [
    lead,
    second,
    {
      title: `${other.label} minus ${other.lead}`,
      cells: differences,
      keys: differences.map(({ key }) => key),
      texts: differences.map(
        ({ row, column, value }) =>
          `row ${row}, column ${column}: ${signedText(value, figure.decimals)} points from one to the other`,
      ),
      depths: differences.map(({ value }) => Math.abs(value) / largest),
    },
  ];
}
