import type { Data } from 'plotly.js-dist-min';
import type { PlaneFigure } from '../figure.ts';
import type { InkColours } from '../inkColours.ts';
import { spotsOf } from '../pointText.ts';
import { baseLayout, dashes, type LargeDrawing } from './layout.ts';

/** Triangles on the chromaticity diagram, both axes to one scale. */
export function planeTraces(figure: PlaneFigure, ink: InkColours): LargeDrawing {
  const base = baseLayout(ink);
  const texts = new Map(spotsOf(figure).map((spot) => [spot.key, spot.text]));
  const data = figure.areas.map((area, index): Data => {
    const closed = [...area.corners, area.corners[0]!];
    const keys = closed.map((_, c) => `${index}.${c % 3}`);
    const colour = area.weight === 'strong' ? ink.accent : area.weight === 'plain' ? ink.quiet : ink.rule;
    return {
      type: 'scatter',
      mode: area.weight === 'calm' ? 'lines' : 'lines+markers',
      name: area.label,
      x: closed.map((corner) => corner.x),
      y: closed.map((corner) => corner.y),
      customdata: keys,
      hovertext: keys.map((key) => texts.get(key) ?? area.label),
      hoverinfo: 'text',
      line: { color: colour, width: area.weight === 'strong' ? 2 : 1.2, dash: dashes[area.dash] },
      marker: { size: 8, symbol: area.weight === 'strong' ? 'circle' : 'circle-open', color: colour },
    };
  });
  return {
    data,
    layout: {
      ...base,
      showlegend: true,
      legend: { orientation: 'h', y: 1.08, font: { color: ink.ink } },
      xaxis: {
        ...base.xaxis,
        constrain: 'domain',
        title: { text: figure.diagram === 'xy' ? 'x' : 'u′' },
      },
      yaxis: {
        ...base.yaxis,
        constrain: 'domain',
        title: { text: figure.diagram === 'xy' ? 'y' : 'v′' },
        scaleanchor: 'x',
      },
      annotations: figure.marks.map((mark) => ({
        x: mark.at[0],
        y: mark.at[1],
        text: `+ ${mark.label}`,
        xanchor: 'left' as const,
        xshift: -4,
        showarrow: false,
        font: { color: ink.quiet },
      })),
    },
  };
}
