import type { Data, Layout, Shape } from 'plotly.js-dist-min';
import type { Figure, FigureLine, LevelsFigure, Mark } from './figure.ts';
import type { InkColours } from './inkColours.ts';
import { numberText } from './numberText.ts';
import { levelText, spotsOf } from './pointText.ts';

const symbols = {
  disc: 'circle',
  ring: 'circle-open',
  square: 'square',
  diamond: 'diamond',
  triangle: 'triangle-up',
  cross: 'x-thin-open',
} as const satisfies Record<Mark, string>;
const dash = { solid: 'solid', dashed: 'dash', dotted: 'dot', none: 'solid' } as const;

/** A figure for the large plot: the same numbers, marks and titles, with `customdata` naming each mark's spot. */
export function largeTraces(figure: Figure, ink: InkColours): { data: Data[]; layout: Partial<Layout> } {
  if (figure.form === 'levels') return levels(figure, ink);
  const base = baseLayout(ink);
  if (figure.form === 'plane') {
    const data = figure.areas.map((area, index): Data => {
      const closed = [...area.corners, area.corners[0]!];
      return {
        type: 'scatter',
        mode: area.weight === 'calm' ? 'lines' : 'lines+markers',
        name: area.label,
        x: closed.map((corner) => corner.x),
        y: closed.map((corner) => corner.y),
        customdata: closed.map((_, c) => `${index}.${c % 3}`),
        hovertemplate: '%{x:.4f}, %{y:.4f}<extra>%{fullData.name}</extra>',
        line: {
          color: area.weight === 'strong' ? ink.accent : ink.rule,
          width: area.weight === 'strong' ? 2 : 1.2,
          dash: dash[area.dash],
        },
        marker: { size: 8 },
      };
    });
    return {
      data,
      layout: {
        ...base,
        showlegend: true,
        legend: { orientation: 'h', y: 1.08, font: { color: ink.ink } },
        xaxis: { ...base.xaxis, title: { text: figure.diagram === 'xy' ? 'x' : 'u′' } },
        yaxis: { ...base.yaxis, title: { text: figure.diagram === 'xy' ? 'y' : 'v′' }, scaleanchor: 'x' },
      },
    };
  }
  const spots = spotsOf(figure);
  if (figure.form === 'patches')
    return {
      data: [
        {
          type: 'bar',
          x: figure.patches.map((patch) => patch.label),
          y: figure.patches.map((patch) => patch.value),
          error_y: {
            type: 'data',
            array: figure.patches.map((patch) => 2 * (patch.u ?? 0)),
            color: ink.ink,
            thickness: 1,
          },
          marker: { color: figure.patches.map((patch) => (patch.out ? ink.breaks : ink.rule)) },
          customdata: spots.map((spot) => spot.key),
          hovertext: spots.map((spot) => spot.text),
          hoverinfo: 'text',
          width: 0.5,
        },
      ],
      layout: {
        ...base,
        xaxis: { ...base.xaxis, type: 'category' },
        shapes: figure.limit ? [limitShape(figure.limit.value, ink)] : [],
      },
    };
  return {
    data: [
      {
        type: 'heatmap',
        x: figure.cells.map((cell) => cell.column),
        y: figure.cells.map((cell) => cell.row),
        z: figure.cells.map((cell) => cell.value),
        text: figure.cells.map((cell) => numberText(cell.value, figure.decimals)),
        texttemplate: '%{text}',
        customdata: spots.map((spot) => spot.key),
        hovertext: spots.map((spot) => spot.text),
        hoverinfo: 'text',
        colorscale: [
          [0, ink.rule],
          [1, ink.paper],
        ],
        showscale: false,
        xgap: 1,
        ygap: 1,
      } as unknown as Data,
    ],
    layout: {
      ...base,
      xaxis: { ...base.xaxis, dtick: 1, title: { text: 'column' } },
      yaxis: {
        ...base.yaxis,
        dtick: 1,
        autorange: 'reversed',
        scaleanchor: 'x',
        scaleratio: 9 / 16,
        title: { text: 'row' },
      },
    },
  };
}

function levels(figure: LevelsFigure, ink: InkColours): { data: Data[]; layout: Partial<Layout> } {
  const base = baseLayout(ink);
  const colourOf = (line: FigureLine) => (line.weight === 'strong' ? ink.accent : ink.quiet);
  const data = figure.lines.map((line, index): Data => {
    return {
      type: 'scatter',
      mode: line.dash === 'none' ? 'markers' : 'lines+markers',
      name: line.label,
      x: line.points.map((point) => point.x),
      y: line.points.map((point) => point.y),
      error_y: {
        type: 'data',
        array: line.points.map((point) => 2 * (point.u ?? 0)),
        visible: line.points.some((point) => point.u !== null),
        color: colourOf(line),
        thickness: 1,
        width: 0,
      },
      line: { color: colourOf(line), width: line.weight === 'strong' ? 2 : 1.2, dash: dash[line.dash] },
      marker: {
        opacity: 1,
        line: { width: line.mark === 'ring' ? 1.6 : 0 },
        size: line.points.map((point) => (point.out ? 9 : 7)),
        symbol: line.points.map((point) =>
          point.counts ? symbols[line.mark] : 'circle-open',
        ) as unknown as 'circle',
        color: line.points.map((point) => (point.out ? ink.breaks : colourOf(line))),
      },
      customdata: line.points.map((_, p) => `${index}.${p}`),
      hovertext: line.points.map((point) => levelText(figure, line.label, point)),
      hoverinfo: 'text',
    };
  });
  const ends =
    figure.lines.length > 1
      ? figure.lines.flatMap((line) => {
          const last = line.points.at(-1);
          return last
            ? [
                {
                  x: figure.x.scale === 'log' ? Math.log10(last.x) : last.x,
                  y: last.y,
                  text: line.label,
                  xanchor: 'left' as const,
                  xshift: 10,
                  showarrow: false,
                  font: { color: colourOf(line) },
                },
              ]
            : [];
        })
      : [];
  return {
    data,
    layout: {
      ...base,
      margin: { ...base.margin, r: figure.lines.length > 1 ? 100 : 24 },
      annotations: [
        ...ends,
        ...figure.limits.map((limit) => ({
          xref: 'paper' as const,
          x: 0,
          y: limit.value,
          text: limit.label,
          xanchor: 'left' as const,
          yanchor: 'bottom' as const,
          showarrow: false,
          font: { color: ink.quiet },
        })),
      ],
      shapes: [
        ...figure.limits.map((limit) => limitShape(limit.value, ink)),
        ...(figure.target ? [limitShape(figure.target.value, ink, 'solid')] : []),
      ],
      xaxis: {
        ...base.xaxis,
        type: figure.x.scale,
        tickvals: [...figure.x.ticks],
        title: { text: `${figure.x.label}, ${figure.x.unit}` },
      },
      yaxis: {
        ...base.yaxis,
        range: [figure.y.min, figure.y.max],
        title: { text: [figure.y.label, figure.y.unit].filter(Boolean).join(', ') },
      },
    },
  };
}

function limitShape(y: number, ink: InkColours, style: 'dash' | 'solid' = 'dash'): Partial<Shape> {
  return {
    type: 'line',
    xref: 'paper',
    x0: 0,
    x1: 1,
    y0: y,
    y1: y,
    line: { color: style === 'solid' ? ink.rule : ink.quiet, width: 1, dash: style },
    layer: 'below',
  };
}

function baseLayout(ink: InkColours): Partial<Layout> {
  const axis = {
    color: ink.quiet,
    gridcolor: ink.hair,
    zeroline: false,
    showgrid: false,
    ticks: 'outside' as const,
    tickcolor: ink.hair,
    linecolor: ink.hair,
    automargin: true,
  };
  return {
    paper_bgcolor: ink.paper,
    plot_bgcolor: ink.paper,
    font: { family: ink.sans, size: 12, color: ink.ink },
    margin: { l: 56, r: 24, t: 16, b: 48 },
    showlegend: false,
    hovermode: 'closest',
    hoverlabel: { bgcolor: ink.paper, bordercolor: ink.rule, font: { family: ink.sans, color: ink.ink } },
    xaxis: { ...axis },
    yaxis: { ...axis },
  };
}
