import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { RunMeasurements } from '../../shared/contract/measurement.ts';

/**
 * A plot before it is drawn: what it says, its numbers and where each number comes from. One figure feeds the
 * small SVG, the large plot, the table for screen readers and every export, so that they cannot disagree.
 */

/** The readings that a mark stands on. */
export interface ReadingRef {
  unit: string;
  run: string;
  /** Data rows from 1 */
  rows: readonly number[];
}

/** A run as a figure's subject. `label` tells it from the other when two are overlaid. */
export interface Subject {
  unit: UnitEvidence;
  run: RunEvidence;
  measured: RunMeasurements;
  label: string;
}

export interface FigurePoint {
  x: number;
  y: number;
  /** Standard uncertainty of y; null when the quantity carries none */
  u: number | null;
  /** False for a level that is shown but does not count for average, maximum and onset */
  counts: boolean;
  /** Past the figure's limit */
  out: boolean;
  ref: ReadingRef | null;
}

/** `strong` is the one hue of the figure; `calm` is for what is only there to compare with. */
export type Weight = 'strong' | 'plain' | 'calm';
export type Mark = 'disc' | 'ring' | 'square' | 'diamond' | 'triangle' | 'cross';

export interface FigureLine {
  label: string;
  weight: Weight;
  mark: Mark;
  dash: 'solid' | 'dashed' | 'dotted' | 'none';
  points: readonly FigurePoint[];
  /** Uncertainty as a band between the points instead of a whisker at each */
  band?: boolean;
}

export interface AxisSpec {
  /** What stands along it, in words: "stimulus" */
  label: string;
  unit: string;
  min: number;
  max: number;
  ticks: readonly number[];
  scale: 'linear' | 'log';
  decimals: number;
}

interface FigureBase {
  /** The plot's own name, also its file name: `greyscale-error` */
  id: string;
  /** The finding, one line */
  title: string;
  /** The question that the plot answers, for the list of plots and for screen readers */
  question: string;
  /** Definition, in quiet type below */
  note: string;
  /** The set and the run or runs, for a picture that leaves the page */
  runs: string;
}

/** Values along a numeric axis. */
export interface LevelsFigure extends FigureBase {
  form: 'levels';
  x: AxisSpec;
  y: AxisSpec;
  /** Decimals in which its values are printed */
  valueDecimals: number;
  lines: readonly FigureLine[];
  /** Dashed lines; an empty label leaves one without a word */
  limits: readonly { value: number; label: string }[];
  /** The value on target: drawn as a hairline */
  target?: { value: number; label: string };
}

export interface PlanePoint {
  label: string;
  x: number;
  y: number;
  ref: ReadingRef | null;
}

/** Chromaticities on the 1931 xy or the 1976 u′v′ diagram. */
export interface PlaneFigure extends FigureBase {
  form: 'plane';
  diagram: 'xy' | 'uv';
  areas: readonly {
    label: string;
    weight: Weight;
    dash: 'solid' | 'dashed' | 'dotted';
    corners: readonly PlanePoint[];
  }[];
  marks: readonly { label: string; at: readonly [number, number] }[];
}

export interface Patch {
  label: string;
  value: number;
  u: number | null;
  out: boolean;
  ref: ReadingRef | null;
}

/** The run laid over a plot of named things, and the names that tell the two apart. */
interface LaidOver {
  label: string;
  /** The leading run's own name beside it */
  lead: string;
}

/** One value for each named thing, in order of size. */
export interface PatchesFigure extends FigureBase {
  form: 'patches';
  unit: string;
  decimals: number;
  patches: readonly Patch[];
  limit?: { value: number; label: string };
  other?: LaidOver & { patches: readonly Patch[] };
}

export interface GridCell {
  row: number;
  column: number;
  value: number;
  u: number | null;
  worst: boolean;
  ref: ReadingRef | null;
}

/** The screen as a grid of places. */
export interface GridFigure extends FigureBase {
  form: 'grid';
  unit: string;
  decimals: number;
  rows: number;
  columns: number;
  cells: readonly GridCell[];
  /** Its grid may be another one: then only the large plot shows both. */
  other?: LaidOver & { rows: number; columns: number; cells: readonly GridCell[] };
}

export type Figure = LevelsFigure | PlaneFigure | PatchesFigure | GridFigure;
