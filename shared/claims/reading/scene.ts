import type { ReadingContext } from '../../contract/articleText.ts';
import type { Check, StatedConditions } from '../../contract/check.ts';
import type { AxisSpan } from './axis.ts';
import type { Carry } from './carry.ts';
import { type Item, isWord, keyOf, type MeaningKind } from './items.ts';
import { type Signs, shows } from './needs.ts';

export interface UnitMention {
  item: Item;
  /** Unit id, with `@65` for another size of it; several joined by `|` when the name fits more than one */
  id: string;
  role: 'subject' | 'compared' | 'possessive' | 'barred' | 'maker';
}

/** One clause with everything that rules need: its items, axis phrases, conditions and units. */
export interface Scene {
  context: ReadingContext;
  carry: Carry;
  /** All items of the sentence; the clause is `items` */
  sentence: readonly Item[];
  items: readonly Item[];
  /** Words that the clause leaves out and takes from another part of the sentence; its own span has none of them */
  borrowed: ReadonlySet<Item> | undefined;
  index: number;
  /** What the clause, and its sentence, show by their words, as these were tagged */
  signs: Signs;
  sentenceSigns: Signs;
  previous: Scene | null;
  axes: AxisSpan[];
  conditions: StatedConditions;
  conditionItems: Set<Item>;
  /** A mode that the text names and no run knows */
  unknownMode: string | undefined;
  /** The signal is no more than what the tone curve that was named stands for. */
  isCurveSignal: boolean;
  units: UnitMention[];
  /** Unit the clause is about: id, `@` for a variant; undefined: the own one */
  unit?: string;
  /** Why the unit is not known */
  unitProblem?: string;
  /** Several sets that the clause is about, by name: what it says is said of each */
  group?: readonly string[];
  /** The set that "respectively" gives to the clause's number */
  share?: string;
  /** The clause names its subject unit or a pronoun for it */
  unitNamed: boolean;
  /** "if", "would": says nothing about what was measured */
  conditional: boolean;
  used: Set<Item>;
  /** Concept that the sentence's earlier clauses spoke of */
  concept?: string;
  hue?: string;
  gamut?: string;
  /** The number or word that a rule is reading: of several axis phrases the nearest is meant */
  focus?: Item;
  /** Checks that the rules have made of this clause, for one that leaves out what it repeats */
  said?: Check[];
  /** The conditions of the text where this clause speaks of the state before, for the clauses that follow */
  now?: StatedConditions;
  /** Statistic that "it" refers back to */
  stat?: string;
}

export function firstWith(scene: Scene, kind: MeaningKind, ...keys: string[]): Item | undefined {
  if (!shows(scene.signs, kind)) return undefined;
  for (const item of scene.items) {
    const key = keyOf(item, kind);
    if (key !== undefined && (keys.length === 0 || keys.includes(key))) return item;
  }
  return undefined;
}
export function hasKey(scene: Scene, kind: MeaningKind, ...keys: string[]): boolean {
  return firstWith(scene, kind, ...keys) !== undefined;
}

/** Of several axis phrases of one kind the one nearest to what is being read. */
export function nearestAxis(scene: Scene, kind: AxisSpan['kind']): AxisSpan | undefined {
  const ofKind = scene.axes.filter(
    (axis) => axis.kind === kind && !axis.items.some((item) => item.number?.role === 'value'),
  );
  // "At 10 % its shadows lie 19 % under target": of that level.
  const [level] = ofKind.filter((axis) => axis.at !== undefined && !axis.tone);
  const fitting = ofKind.filter((axis) => !level || !isToneAround(axis, level.at!));
  const { focus } = scene;
  if (fitting.length < 2 || !focus) return fitting[0];
  const distance = (axis: AxisSpan) =>
    Math.min(...axis.items.map((item) => Math.abs(item.index - focus.index))) +
    (axis.tone ? 0.5 : 0) -
    // "From 60 %, where it is 3.4, to 100 %"
    (isWord(axis.items[0], 'where') && axis.items[0]!.index < focus.index ? 3 : 0);
  return fitting.reduce((best, axis) => (distance(axis) < distance(best) ? axis : best));
}

/** "Shadows" around 10 % */
function isToneAround({ tone, at, from, to }: AxisSpan, level: number): boolean {
  return tone === true && at === undefined && (from ?? 0) <= level && level <= (to ?? 100);
}

/** Numbers of the clause that still stand for a value: no axis, window, date, name. */
export function valueNumbers(scene: Scene): Item[] {
  return scene.items.filter(
    (item) =>
      item.number !== undefined &&
      !scene.used.has(item) &&
      (item.number.role === undefined || item.number.role === 'value'),
  );
}
