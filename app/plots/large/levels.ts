import type { Data } from 'plotly.js-dist-min';
import type { FigureLine, LevelsFigure, Mark } from '../figure.ts';
import type { InkColours } from '../inkColours.ts';
import { levelText } from '../pointText.ts';
import { spreadLabels } from '../spreadLabels.ts';
import { baseLayout, dashes, type LargeDrawing, limitLabel, limitShape, see } from './layout.ts';

const symbols = {
  disc: 'circle',
  ring: 'circle-open',
  square: 'square',
  diamond: 'diamond',
  triangle: 'triangle-up',
  cross: 'x-thin-open',
} as const satisfies Record<Mark, string>;

/** Values along an axis, with a band or whiskers for the uncertainty and each line's name at its end. */
export function levelsTraces(figure: LevelsFigure, ink: InkColours): LargeDrawing {
  const base = baseLayout(ink);
  const colourOf = (line: FigureLine) => (line.weight === 'strong' ? ink.accent : ink.quiet);
  const bands = figure.lines.flatMap((line) => (hasBand(line) ? [bandTrace(line, colourOf(line))] : []));
  const lines = figure.lines.map((line, index): Data => {
    return {
      type: 'scatter',
      mode: line.dash === 'none' ? 'markers' : 'lines+markers',
      name: line.label,
      x: line.points.map((point) => point.x),
      y: line.points.map((point) => point.y),
      error_y: {
        type: 'data',
        array: line.points.map((point) => 2 * (point.u ?? 0)),
        visible: !hasBand(line) && line.points.some((point) => point.u !== null),
        color: colourOf(line),
        thickness: 1,
        width: 0,
      },
      line: { color: colourOf(line), width: line.weight === 'strong' ? 2 : 1.2, dash: dashes[line.dash] },
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
  const ends = figure.lines.length > 1 ? endLabels(figure, colourOf) : [];
  return {
    data: [...bands, ...lines],
    layout: {
      ...base,
      margin: { ...base.margin, r: figure.lines.length > 1 ? 120 : 24 },
      annotations: [...ends, ...figure.limits.map((limit) => limitLabel(limit.value, limit.label, ink))],
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

/** Height of the drawing area in CSS px, about: enough to keep names apart. */
const areaHeight = 360;

/** Each line's name beside its last point, moved up or down where two would meet. */
function endLabels(figure: LevelsFigure, colourOf: (line: FigureLine) => string) {
  const { min, max } = figure.y;
  const ended = figure.lines.flatMap((line) => {
    const last = line.points.at(-1);
    return last ? [{ line, last, down: (areaHeight * (max - last.y)) / (max - min) }] : [];
  });
  const placed = spreadLabels(
    ended.map(({ down }) => down),
    15,
    0,
    areaHeight,
  );
  return ended.map(({ line, last, down }, index) => ({
    x: figure.x.scale === 'log' ? Math.log10(last.x) : last.x,
    y: last.y,
    text: line.label,
    xanchor: 'left' as const,
    xshift: 10,
    yshift: down - placed[index]!,
    showarrow: false,
    font: { color: colourOf(line) },
  }));
}

function hasBand(line: FigureLine): boolean {
  return line.band === true && line.points.length > 1 && line.points.some((point) => point.u !== null);
}

/** ±2u as an area behind the line: along the upper edge and back along the lower. */
function bandTrace({ label, points }: FigureLine, colour: string): Data {
  const back = [...points].reverse();
  return {
    type: 'scatter',
    mode: 'lines',
    name: `${label} ±`,
    x: [...points, ...back].map((point) => point.x),
    y: [
      ...points.map((point) => point.y + 2 * (point.u ?? 0)),
      ...back.map((point) => point.y - 2 * (point.u ?? 0)),
    ],
    fill: 'toself',
    fillcolor: see(colour, 0.15),
    line: { width: 0 },
    hoverinfo: 'skip',
  };
}
