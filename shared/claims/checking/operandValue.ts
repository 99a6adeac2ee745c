import type { RunEvidence, UnitEvidence } from '../../contract/evidence.ts';
import type { Axis, MeasuredSeries } from '../../contract/measurement.ts';
import type { Level } from './levels.ts';

/** One number that a sentence speaks of, with where it came from and how it varies from draw to draw. */
export interface OperandValue {
  id: string;
  unit: UnitEvidence;
  run?: RunEvidence;
  value: number;
  u: number | null;
  /** Only a lower bound is known: the true value lies above `value`. */
  over: boolean;
  unitOfMeasure: string;
  /** Where an extreme stands, or the level that was named. */
  axis?: Axis;
  stat: Statistic['name'];
  /** Of an extreme: how many more beyond it are left out */
  rank?: number;
  /** Levels that took part, for lists and plots. */
  levels: readonly Level[];
  series?: MeasuredSeries;
  /** The value in a draw; null: it carries no uncertainty. */
  draw: ((index: number) => number) | null;
  /** One level of the series in every draw. */
  levelDraws?: (level: Level) => Float64Array;
  drawCount: number;
  pending: boolean;
  evidence: readonly string[];
  notes: readonly string[];
}

export type OperandReading =
  | { ok: true; value: OperandValue }
  | { ok: false; reason: string; asks?: boolean };

/** Average, or the extreme with `rank` more beyond it left out ("all but one"). */
export interface Statistic {
  name: 'scalar' | 'at' | 'average' | 'max' | 'min';
  rank: number;
}
