import { lazy, Suspense, useRef, useState } from 'react';
import { type ExportKind, saveFigure } from './exportFigure.ts';
import { FigureTableView } from './FigureTableView.tsx';
import type { Figure, ReadingRef } from './figure.ts';
import { PlotSvg } from './PlotSvg.tsx';
import { rowsText } from './pointText.ts';
import { useSpots } from './useSpots.ts';
import './plots.css';

const LargePlot = lazy(() => import('./large/LargePlot.tsx'));

/**
 * A plot as a page prints it: the finding, the picture, then definition and run. Pointing at a mark puts its
 * value in the place of the definition; pressing it picks its readings.
 */
export function PlotFigure({
  figure,
  width,
  height,
  picked = null,
  onPick,
  fileStem,
}: {
  figure: Figure;
  width: number;
  height: number;
  picked?: ReadingRef | null;
  onPick: (ref: ReadingRef) => void;
  /** Start of an exported file's name: `orrinvale-hearth-55-calm-sdr` */
  fileStem: string;
}) {
  const { spots, pointed } = useSpots(figure, picked, onPick);
  const [shown, setShown] = useState<'picture' | 'table' | 'large'>('picture');
  const svg = useRef<SVGSVGElement>(null);
  const toggle = (view: 'table' | 'large') => setShown((now) => (now === view ? 'picture' : view));
  const save = (kind: ExportKind) => svg.current && void saveFigure(kind, figure, svg.current, fileStem);
  return (
    <figure className="plot" aria-label={figure.question} style={{ width: `${width / 16}rem` }}>
      <figcaption className="plot-title">{figure.title}</figcaption>
      <div hidden={shown !== 'picture'}>
        <PlotSvg figure={figure} width={width} height={height} spots={spots} svgRef={svg} />
      </div>
      {shown === 'table' && <FigureTableView figure={figure} onPick={onPick} />}
      {shown === 'large' && (
        <Suspense fallback={<p className="quiet plot-wait">Opening the large plot …</p>}>
          <LargePlot figure={figure} onPick={onPick} />
        </Suspense>
      )}
      <p className="plot-note" aria-live="polite">
        {pointed ? [pointed.text, rowsText(pointed.ref)].filter(Boolean).join(', ') : figure.note}
      </p>
      <div className="plot-do">
        <button
          type="button"
          className="act"
          aria-expanded={shown === 'large'}
          onClick={() => toggle('large')}
        >
          {shown === 'large' ? 'Smaller' : 'Larger'}
        </button>
        <button
          type="button"
          className="act"
          aria-expanded={shown === 'table'}
          onClick={() => toggle('table')}
        >
          {shown === 'table' ? 'Picture' : 'Numbers'}
        </button>
        <span className="plot-save">
          Save as
          {(['png', 'svg', 'csv'] as const).map((kind) => (
            <button key={kind} type="button" className="act" onClick={() => save(kind)}>
              {kind.toUpperCase()}
            </button>
          ))}
        </span>
      </div>
    </figure>
  );
}
