import type { Data } from 'plotly.js-dist-min';
import type { Patch, PatchesFigure } from '../figure.ts';
import type { InkColours } from '../inkColours.ts';
import { patchPairs } from '../pairs.ts';
import { otherKey, spotsOf } from '../pointText.ts';
import { baseLayout, type LargeDrawing, limitLabel, limitShape } from './layout.ts';

/** One bar for each patch; a run laid over stands beside it, hollow, so that the pair reads without colour. */
export function patchesTraces(figure: PatchesFigure, ink: InkColours): LargeDrawing {
  const base = baseLayout(ink);
  const texts = new Map(spotsOf(figure).map((spot) => [spot.key, spot.text]));
  const others = patchPairs(figure).flatMap(({ other, otherIndex }) =>
    other ? [{ patch: other, key: otherKey(otherIndex) }] : [],
  );
  const bars = (name: string, patches: readonly Patch[], keys: readonly string[], look: object): Data => ({
    ...look,
    type: 'bar',
    name,
    x: patches.map((patch) => patch.label),
    y: patches.map((patch) => patch.value),
    error_y: {
      type: 'data',
      array: patches.map((patch) => 2 * (patch.u ?? 0)),
      color: ink.ink,
      thickness: 1,
      width: 0,
    },
    customdata: [...keys],
    hovertext: keys.map((key) => texts.get(key) ?? ''),
    hoverinfo: 'text',
  });
  const lead = bars(
    figure.other?.lead ?? '',
    figure.patches,
    figure.patches.map((_, index) => `${index}`),
    {
      marker: { color: figure.patches.map((patch) => (patch.out ? ink.breaks : ink.rule)) },
      // The legend has a bar of its own: it would take the first one's colour, red where that one is over the limit.
      ...(figure.other ? { showlegend: false, legendgroup: 'lead', offsetgroup: 'lead' } : { width: 0.5 }),
    },
  );
  const legend: Data = {
    type: 'bar',
    name: figure.other?.lead ?? '',
    x: figure.patches.slice(0, 1).map((patch) => patch.label),
    y: [null],
    marker: { color: ink.rule },
    legendgroup: 'lead',
    offsetgroup: 'lead',
    hoverinfo: 'skip',
  };
  const second = bars(
    figure.other?.label ?? '',
    others.map(({ patch }) => patch),
    others.map(({ key }) => key),
    { marker: { color: ink.paper, line: { color: ink.quiet, width: 1.5 } }, offsetgroup: 'other' },
  );
  return {
    data: figure.other ? [lead, legend, second] : [lead],
    layout: {
      ...base,
      barmode: 'group',
      bargap: figure.other ? 0.3 : 0.5,
      showlegend: figure.other !== undefined,
      legend: { orientation: 'h', y: 1.08, font: { color: ink.ink } },
      xaxis: {
        ...base.xaxis,
        type: 'category',
        title: { text: 'patch' },
        // Every patch has its name; the order is the leading run's.
        tickmode: 'linear',
        categoryorder: 'array',
        categoryarray: figure.patches.map((patch) => patch.label),
      },
      yaxis: { ...base.yaxis, rangemode: 'tozero', title: { text: ['error', figure.unit].join(', ') } },
      shapes: figure.limit ? [limitShape(figure.limit.value, ink)] : [],
      annotations: figure.limit ? [limitLabel(figure.limit.value, figure.limit.label, ink, 'right')] : [],
    },
  };
}
