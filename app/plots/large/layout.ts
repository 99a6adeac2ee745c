import type { Data, Layout, Shape } from 'plotly.js-dist-min';
import type { InkColours } from '../inkColours.ts';

/** What the drawing library is given. */
export interface LargeDrawing {
  data: Data[];
  layout: Partial<Layout>;
}

export const dashes = { solid: 'solid', dashed: 'dash', dotted: 'dot', none: 'solid' } as const;

/** What every large plot has in common: the theme's paper and type, axes as hairlines, no grid. */
export function baseLayout(ink: InkColours): Partial<Layout> {
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

/** A horizontal line over the whole width, behind the marks. */
export function limitShape(y: number, ink: InkColours, style: 'dash' | 'solid' = 'dash'): Partial<Shape> {
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

/** The word of a limit above one end of its line. */
export function limitLabel(y: number, text: string, ink: InkColours, end: 'left' | 'right' = 'left') {
  return {
    xref: 'paper' as const,
    x: end === 'left' ? 0 : 1,
    y,
    text,
    xanchor: end,
    yanchor: 'bottom' as const,
    showarrow: false,
    font: { color: ink.quiet },
  };
}

/** `rgb(r, g, b)` → the same with this share of opacity */
export function see(colour: string, opacity: number): string {
  return colour.replace(/^rgb\((.*)\)$/, `rgba($1, ${opacity})`);
}
