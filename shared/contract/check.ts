import type { Axis } from './measurement.ts';

/**
 * The computable statements that a sentence can make. Reading (`shared/claims/reading`) turns words into
 * these; checking (`shared/claims/checking`) turns these and the evidence into a verdict. Neither knows the
 * other's vocabulary: everything that passes between them is in this file.
 */

/** A number as written, with the interval that its rounding and hedges allow. */
export interface StatedNumber {
  x: number;
  low: number;
  high: number;
  /** The end does not belong to the interval ("almost", "just over"). */
  lowOpen?: boolean;
  highOpen?: boolean;
  unit?: string;
  /** Value of one unit of the last written digit: 0.1 for "3.0", 10 for "3,260:1". */
  place?: number;
  /** The hedge that widened or turned the interval, as written. */
  hedge?: string;
  /** True for exact statements such as a price: compared with no rounding. */
  exact?: boolean;
}

/** Dimensions a sentence may state; each knows whether it was named here or carried over. */
export interface StatedConditions {
  /** Unit id; absent: the article's own unit. */
  unit?: string;
  /** Another size of the unit, by diagonal in inches: only that variant's facts apply. */
  variantInches?: number;
  stage?: string;
  mode?: string;
  signal?: string;
  dimming?: string;
  sample?: string;
  firmware?: string;
  /** Lux, or a word: dark (under 5 lx), lit. */
  room?: 'dark' | 'lit' | number;
  /** Degrees as written; unsigned means the worse side, `side` picks one. */
  angle?: number;
  side?: 'left' | 'right' | 'up' | 'down' | 'both';
  plane?: 'horizontal' | 'vertical';
  /** % of the screen area */
  window?: number;
  /** Pattern or panel level: `white`, `grey50`, `black` */
  level?: string;
  content?: string;
  /** For each dimension present: where it came from. */
  origin: Readonly<Record<string, 'named' | 'carried' | 'article'>>;
  /**
   * The state before a change that the words name ("down from 94 W"): of the run that the other conditions mean the one
   * as delivered where that one is adjusted, else the one taken earlier. `update`: before the firmware was another.
   */
  before?: true | 'update';
  /** A condition the words name but nothing maps to ("in Vivid mode" that no run has): makes the claim unproven. */
  unmatched?: string;
}

/** Which value(s) of a series the sentence speaks of. Ranges are on the series' axis. */
export interface Selector {
  stat: 'scalar' | 'at' | 'average' | 'max' | 'min' | 'all' | 'any';
  /** A level; beside `min` or `max` of a grid of cells, the cells among which it is: "corner", "edge" (corners too). */
  at?: Axis;
  from?: number;
  to?: number;
  /** Default true: the ends of the range belong to it. */
  fromIncluded?: boolean;
  toIncluded?: boolean;
  /** "all but one", "two of the levels": how many levels may stand outside (all) or must stand inside (any). */
  exceptions?: number;
}

/** A measured quantity, a fact or the other end of a comparison. */
export type Operand =
  | {
      type: 'quantity';
      /** Catalogue id as in `quantities.md` */
      id: string;
      /** Other definitions the words allow because they name none: `grey.de2000.total`, `coverage.p3.uv`. */
      others?: readonly string[];
      selector: Selector;
      conditions: StatedConditions;
    }
  | {
      type: 'fact';
      key: string;
      /** Only statements by this source count ("claims" → maker). */
      by?: string;
      conditions: StatedConditions;
    };

export type BoundOp = '<' | '<=' | '>' | '>=';

/** One inequality; a bound check holds when all of them do (negated: when not all do). */
export interface Bound {
  operand: Operand;
  op: BoundOp;
  x: number;
  unit?: string;
}

export interface ValueCheck {
  kind: 'value';
  operand: Operand;
  stated: StatedNumber;
  /** "a to b": the series' minimum and maximum (a scalar: between them). `stated` then repeats the first. */
  range?: { min: StatedNumber; max: StatedNumber };
  /** "Its hue is off by 4°": the words name no side of the target, so the number is of the distance from it. */
  eitherSide?: true;
  negated?: boolean;
}

export interface BoundCheck {
  kind: 'bound';
  bounds: readonly Bound[];
  negated?: boolean;
  /** The house word that stood for the limit, as written ("visible", "accurate", "reference"). */
  houseWord?: string;
}

export interface OnsetCheck {
  kind: 'onset';
  operand: Operand;
  limit: number;
  unit?: string;
  /** Past the limit means over it or under it. */
  side: 'over' | 'under';
  /** The stated side begins at `from` (upwards) or ends at `to` (downwards). */
  from?: number;
  to?: number;
  /** Does the stated edge belong to the stated side; `free`: nothing is asked of it ("until"). */
  edge: 'included' | 'excluded' | 'free';
  /** One level in five may be out. */
  mostly?: boolean;
  houseWord?: string;
}

export interface RatioCheck {
  kind: 'ratio';
  /** Claimed: a / b lies in the stated interval (1.3 for "30 % brighter"). */
  a: Operand;
  b: Operand;
  stated: StatedNumber;
  /** "more than twice": a limit on a / b; `stated.x` is the limit. */
  op?: BoundOp;
  /** "Higher after adjustment than before": an order of two runs, so that a perfect instrument has to agree, too. */
  certain?: true;
  /** "keeps 60 %" of a quantity that is itself a ratio is a value check; complement ("loses 40 %") already resolved. */
  negated?: boolean;
}

export interface DifferenceCheck {
  kind: 'difference';
  /** Claimed: a − b lies in the stated interval, in the quantity's unit (points for percentages). */
  a: Operand;
  b: Operand;
  stated: StatedNumber;
  /** "more than £200 dearer": a limit on a − b; `stated.x` is the limit. */
  op?: BoundOp;
  negated?: boolean;
}

/** Members of a comparison; dates come from the article's `date`, never from the clock. */
export interface Cohort {
  /** Explicit members by unit id (beside the own unit); absent: every unit with the quantity. */
  units?: readonly string[];
  /** "under £1,100": price below (or at) this amount. */
  priceUnder?: { amount: number; currency: string; included?: boolean };
  priceOver?: { amount: number; currency: string; included?: boolean };
  /** Calendar year, from "this year" or written out. */
  year?: number;
  /** "the last n sets" */
  last?: number;
  /** "bar the Nocthale": unit ids removed and claimed to be ahead. */
  except?: readonly string[];
  /** Restrict by size, panel or backlight words. */
  diagonalInches?: number;
  panel?: string;
}

export interface OrderCheck {
  kind: 'order';
  key: Operand;
  /** Which way is "more" in the sentence: brightest → higher, cheapest → lower. */
  direction: 'higher' | 'lower';
  rank:
    | { type: 'best' }
    | { type: 'position'; n: number }
    | { type: 'among' }
    | { type: 'ahead' }
    | { type: 'behind' }
    | { type: 'matches' };
  cohort: Cohort;
  /** "no other set has been brighter": not behind anyone. */
  negated?: boolean;
  /** "considerably", "slightly": the words of size as written; no definition, so only the order is judged. */
  sizeWord?: string;
}

export interface DirectionCheck {
  kind: 'direction';
  operand: Operand;
  /**
   * `grey.tint`: red yellow green cyan blue magenta, or `tinted`, or `none`;
   * saturation, luminance, gamma, eotf, hue: `over`, `under`, `on-target`; hue also a neighbour hue's name;
   * `eotf.rolloff`: `rolls-off`, `clips`, `neither`; white.cct: `warm`, `cool`, `on-target`.
   */
  name: string;
  size?: 'slight' | 'mild' | 'obvious';
  /** `eotf.rolloff`: the level at which the curve leaves its target, in % stimulus; compared by its rounding. */
  from?: StatedNumber;
  negated?: boolean;
}

export interface FactCheck {
  kind: 'fact';
  key: string;
  op: '=' | '>=' | '<=' | '>' | '<' | 'includes' | 'excludes';
  x: number | string | boolean | readonly (number | string)[];
  /** Interval for a hedged or rounded number ("about 71 mm"). */
  stated?: StatedNumber;
  unit?: string;
  by?: string;
  conditions: StatedConditions;
  negated?: boolean;
}

export interface ObservedCheck {
  kind: 'observed';
  topic: string;
  /** Closed range of severities that the words allow. */
  severity: readonly [number, number];
  conditions: StatedConditions;
  negated?: boolean;
}

export interface ScoreCheck {
  kind: 'score';
  /** `total`, `award` or a criterion's id. */
  criterion: string;
  x: number | string | boolean | null;
  max?: number;
  stated?: StatedNumber;
  op?: '=' | '>=' | '<=' | '>' | '<';
  negated?: boolean;
  conditions: StatedConditions;
}

export type Check =
  | ValueCheck
  | BoundCheck
  | OnsetCheck
  | RatioCheck
  | DifferenceCheck
  | OrderCheck
  | DirectionCheck
  | FactCheck
  | ObservedCheck
  | ScoreCheck;
