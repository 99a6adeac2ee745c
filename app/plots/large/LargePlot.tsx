import type { PlotlyHTMLElement } from 'plotly.js-dist-min';
import { useEffect, useRef } from 'react';
import { useLook } from '../../theme/themeChoice.ts';
import type { Figure, ReadingRef } from '../figure.ts';
import { inkColours } from '../inkColours.ts';
import { spotsOf } from '../pointText.ts';
import { largeTraces } from './traces.ts';

/** The drawing library weighs megabytes, so it is fetched when the first large plot opens, and once. */
const loadPlotly = () => import('plotly.js-dist-min').then((module) => module.default);

/** The figure to look into: drag to enlarge, double-click to go back, press a mark to pick its readings. */
export default function LargePlot({ figure, onPick }: { figure: Figure; onPick: (ref: ReadingRef) => void }) {
  const host = useRef<HTMLDivElement>(null);
  const pick = useRef(onPick);
  pick.current = onPick;
  const theme = useLook((look) => look.theme);
  const contrast = useLook((look) => look.contrast);

  // biome-ignore lint/correctness/useExhaustiveDependencies: theme and contrast change what inkColours reads
  useEffect(() => {
    const element = host.current;
    if (!element) return;
    let gone = false;
    void loadPlotly().then(async (plotly) => {
      if (gone) return;
      const { data, layout } = largeTraces(figure, inkColours(element));
      const drawn = (await plotly.newPlot(element, data, layout, {
        displayModeBar: false,
        responsive: true,
        doubleClick: 'reset',
      })) as PlotlyHTMLElement;
      const refs = new Map(spotsOf(figure).map((spot) => [spot.key, spot.ref]));
      drawn.on('plotly_click', (event) => {
        const ref = refs.get(String(event.points[0]?.customdata));
        if (ref) pick.current(ref);
      });
    });
    return () => {
      gone = true;
      void loadPlotly().then((plotly) => plotly.purge(element));
    };
  }, [figure, theme, contrast]);

  return (
    <>
      <div ref={host} className="plot-large" role="img" aria-label={figure.title} />
      <p className="plot-note">Drag over a part to enlarge it, double-click to see the whole again.</p>
    </>
  );
}
