import type { Cohort, OrderCheck, StatedConditions } from '../../contract/check.ts';
import type { UnitEvidence } from '../../contract/evidence.ts';
import { foldedWords } from './fold.ts';
import { readOperand } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import type { Sight } from './sight.ts';
import { nameOfUnit } from './terms.ts';

/** Who takes part in a comparison. */
export interface Members {
  rivals: OperandValue[];
  /** Units that belong but cannot be compared, each with why ("Veltrane Plain 50: no price in GBP"). */
  lacking: { unit: UnitEvidence; why: string }[];
  /** Rivals whose belonging is unknown: they have the quantity, but no price in the stated currency or no date. */
  doubtful: OperandValue[];
  /** Units removed by name ("bar the Nocthale"), with their value or why there is none. */
  excepted: { unit: UnitEvidence | undefined; id: string; value: OperandValue | undefined }[];
  /** Why the own unit itself does not belong ("it costs £1,139"); null when it does. */
  ownOutside: string | null;
  /** The own unit's belonging cannot be told. */
  ownUnknown: string | null;
}

/**
 * Units with the quantity under the same signal, stage, definition and dimming as the own run, dated not after the
 * article. The clock plays no part.
 */
export function membersOf(check: OrderCheck, own: OperandValue, sight: Sight): Members {
  const { cohort } = check;
  const today = sight.bench.article.meta.date ?? null;
  const members: Members = {
    rivals: [],
    lacking: [],
    doubtful: [],
    excepted: [],
    ownOutside: null,
    ownUnknown: null,
  };
  const priceOfOwn = belongsByPrice(own.unit, cohort, sight);
  if (priceOfOwn === 'no') members.ownOutside = 'its own price lies outside the stated range';
  if (priceOfOwn === 'unknown') members.ownUnknown = 'it has no price in the stated currency on file';
  const named = cohort.units && new Set(cohort.units);
  const excepted = new Set(cohort.except ?? []);
  for (const id of named ?? []) if (!sight.unit(id)) members.ownUnknown = `the library has no unit ${id}`;
  let candidates = sight.rivals(own.unit.id).filter((unit) => !named || named.has(unit.id));
  if (cohort.last !== undefined) candidates = latest(candidates, cohort.last - 1, today, sight);
  for (const unit of candidates) {
    const value = readAlike(check, own, unit, sight);
    if (excepted.has(unit.id)) {
      members.excepted.push({ unit, id: unit.id, value: typeof value === 'string' ? undefined : value });
      continue;
    }
    const belongs = belongsTo(unit, cohort, today, sight, named !== undefined);
    if (belongs === 'no') continue;
    if (typeof value === 'string') members.lacking.push({ unit, why: value });
    else if (belongs === 'unknown') members.doubtful.push(value);
    else members.rivals.push(value);
  }
  for (const id of excepted)
    if (!members.excepted.some((one) => one.id === id)) {
      const unit = sight.unit(id);
      const value = unit && readAlike(check, own, unit, sight);
      members.excepted.push({ unit, id, value: typeof value === 'object' ? value : undefined });
    }
  return members;
}

type Belongs = 'yes' | 'no' | 'unknown';

function belongsTo(
  unit: UnitEvidence,
  cohort: Cohort,
  today: string | null,
  sight: Sight,
  isNamed: boolean,
): Belongs {
  const date = sight.dated(unit);
  if (!isNamed) {
    if (date !== null && today !== null && date > today) return 'no';
    if (cohort.year !== undefined && date !== null && Number(date.slice(0, 4)) !== cohort.year) return 'no';
  }
  const { diagonalInches, panel } = cohort;
  const diagonal = unit.unit.size?.diagonal_in;
  if (diagonalInches !== undefined && diagonal !== undefined && diagonal !== diagonalInches) return 'no';
  const kind = `${unit.unit.panel ?? ''} ${unit.unit.backlight ?? ''}`;
  if (
    panel !== undefined &&
    kind.trim() &&
    !foldedWords(panel).every((word) => foldedWords(kind).includes(word))
  )
    return 'no';
  const byPrice = belongsByPrice(unit, cohort, sight);
  if (byPrice === 'no') return 'no';
  const unknown =
    (!isNamed && date === null && (today !== null || cohort.year !== undefined)) ||
    (diagonalInches !== undefined && diagonal === undefined) ||
    (panel !== undefined && !kind.trim()) ||
    byPrice === 'unknown';
  return unknown ? 'unknown' : 'yes';
}

function belongsByPrice(unit: UnitEvidence, { priceUnder, priceOver }: Cohort, sight: Sight): Belongs {
  if (!priceUnder && !priceOver) return 'yes';
  const price = sight.facts(unit, 'price')[0];
  const currency = (priceUnder ?? priceOver)!.currency;
  if (typeof price?.value !== 'number' || price.unit !== currency) return 'unknown';
  const amount = price.value;
  if (priceUnder && !(amount < priceUnder.amount || (priceUnder.included && amount === priceUnder.amount)))
    return 'no';
  if (priceOver && !(amount > priceOver.amount || (priceOver.included && amount === priceOver.amount)))
    return 'no';
  return 'yes';
}

/** The n latest dated up to the article's date; "the last five" are the own unit and four of them. */
function latest(units: UnitEvidence[], n: number, today: string | null, sight: Sight): UnitEvidence[] {
  return units
    .map((unit) => ({ unit, date: sight.dated(unit) }))
    .filter(({ date }) => date !== null && (today === null || date <= today))
    .sort((one, other) => (one.date! < other.date! ? 1 : one.date! > other.date! ? -1 : 0))
    .slice(0, Math.max(0, n))
    .map(({ unit }) => unit);
}

/** The same quantity of another unit under the own run's signal, stage and dimming; a sentence when it has none. */
function readAlike(
  check: OrderCheck,
  own: OperandValue,
  unit: UnitEvidence,
  sight: Sight,
): OperandValue | string {
  const { key } = check;
  const run = own.run?.conditions;
  const { mode: _mode, sample: _sample, firmware: _firmware, ...stated } = key.conditions;
  const conditions: StatedConditions = {
    ...stated,
    unit: unit.id,
    ...(run ? { signal: run.signal, stage: run.stage, dimming: run.dimming ?? 'as-set' } : {}),
    origin: run ? { ...stated.origin, signal: 'named', stage: 'named', dimming: 'named' } : stated.origin,
  };
  const reading = readOperand(sight, { ...key, conditions });
  if (reading.ok) return reading.value;
  return `${nameOfUnit(unit)} has no such number`;
}
