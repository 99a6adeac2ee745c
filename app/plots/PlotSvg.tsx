import type { Ref } from 'react';
import type { Figure } from './figure.ts';
import { GridPlot } from './GridPlot.tsx';
import { LevelsPlot } from './LevelsPlot.tsx';
import { PatchesPlot } from './PatchesPlot.tsx';
import { PlanePlot } from './PlanePlot.tsx';
import type { SpotHandling } from './SpotMark.tsx';

/** A figure as SVG, `width` × `height` CSS px at zoom 1; it grows with the window's type size. */
export function PlotSvg({
  figure,
  width,
  height,
  spots,
  svgRef,
}: {
  figure: Figure;
  width: number;
  height: number;
  spots: SpotHandling;
  svgRef?: Ref<SVGSVGElement>;
}) {
  const shared = { width, height, spots };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing cannot be a fieldset, and its marks can be pressed
    <svg
      ref={svgRef}
      className="plot-svg"
      viewBox={`0 0 ${width} ${height}`}
      style={{ width: `${width / 16}rem`, height: `${height / 16}rem` }}
      role="group"
      aria-label={figure.title}
    >
      {figure.form === 'levels' && <LevelsPlot figure={figure} {...shared} />}
      {figure.form === 'plane' && <PlanePlot figure={figure} {...shared} />}
      {figure.form === 'patches' && <PatchesPlot figure={figure} {...shared} />}
      {figure.form === 'grid' && <GridPlot figure={figure} {...shared} />}
    </svg>
  );
}
