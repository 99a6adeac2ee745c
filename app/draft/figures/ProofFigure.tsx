import type { ProofFigure as FigureData } from '../../../shared/contract/claim.ts';
import { GamutFigure } from './GamutFigure.tsx';
import { IntervalFigure } from './IntervalFigure.tsx';
import { LevelsFigure } from './LevelsFigure.tsx';
import { RankingFigure } from './RankingFigure.tsx';
import { TintFigure } from './TintFigure.tsx';

/** The small picture beside a proof: one question, directly labelled, readable without colour. */
export function ProofFigure({ figure }: { figure: FigureData }) {
  switch (figure.form) {
    case 'levels':
      return <LevelsFigure figure={figure} />;
    case 'gamut':
      return <GamutFigure figure={figure} />;
    case 'tint':
      return <TintFigure figure={figure} />;
    case 'interval':
      return <IntervalFigure figure={figure} />;
    case 'ranking':
      return <RankingFigure figure={figure} />;
  }
}
