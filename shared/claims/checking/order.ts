import type { OrderCheck } from '../../contract/check.ts';
import { closeNote } from './bound.ts';
import { type Members, membersOf } from './cohort.ts';
import { decide, onTheLimit, valueIn } from './decide.ts';
import { rankingFigure } from './figures.ts';
import { inUnit, readOperand } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import { conditionsOf, foundOf, notesOf, type Outcome, unproven } from './outcome.ts';
import { numberWithPlace } from './phrases.ts';
import type { Sight } from './sight.ts';
import { amount, nameOfQuantity, nameOfUnit } from './terms.ts';

/** Two numbers within this share of the rival's are said to match. */
const matchingShare = 0.05;

/** Better or brighter than others: the joint probability of the claimed place among them. */
export function judgeOrder(check: OrderCheck, sight: Sight, signal?: string): Outcome {
  const { key, rank, direction, cohort } = check;
  const quantity = key.type === 'fact' ? `fact.${key.key}` : key.id;
  const stated = { key: quantity, direction, rank: rankWord(check), cohort: cohortWords(check) };
  const reading = readOperand(sight, key, signal === undefined ? {} : { signal });
  if (!reading.ok) return unproven(reading.reason, quantity, stated);
  const own = reading.value;
  const members = unify(membersOf(check, own, sight), own);
  const common = commonOf(check, own, members, stated, quantity);
  const lead = `It is ${numberWithPlace(own)}`;
  if (members.ownUnknown) return unproven(`${lead}, but ${members.ownUnknown}`, quantity, stated, common);
  if (members.ownOutside)
    return {
      ...common,
      verdict: check.negated ? 'holds' : 'breaks',
      probability: null,
      sentence: `${lead}, but ${members.ownOutside}`,
      notes: [],
    };
  const missing = members.excepted.find(({ value }) => value === undefined);
  if (missing)
    return unproven(
      `${lead}, but the ${missing.unit ? nameOfUnit(missing.unit) : missing.id}, said to be ahead, has no such number`,
      quantity,
      stated,
      common,
    );
  const excepted = members.excepted.map(({ value }) => value!);
  if (members.rivals.length === 0 && members.doubtful.length === 0 && excepted.length === 0)
    return unproven(
      `${lead}, but no other unit has this number under the same conditions${lackingWords(members)}`,
      quantity,
      stated,
      common,
    );
  const { level } = sight.bench.house;
  const judgeWith = (rivals: readonly OperandValue[]) =>
    decide(
      [own, ...rivals, ...excepted],
      (draw) => takesPlace(check, own, rivals, excepted, draw) !== (check.negated ?? false),
      level,
    );
  const decision = judgeWith(members.rivals);
  const sentence = `${lead}${againstWords(check, own, members, excepted)}`;
  const notes = [
    ...closeNote(decision.verdict, decision.probability),
    ...(check.sizeWord ? [`“${check.sizeWord}” has no definition, so only the order is judged`] : []),
    ...(members.lacking.length > 0
      ? [`without this number: ${members.lacking.map(({ unit }) => nameOfUnit(unit)).join(', ')}`]
      : []),
    ...notesOf(own),
  ];
  const outcome: Outcome = { ...common, ...decision, sentence, notes };
  if (
    members.doubtful.length > 0 &&
    judgeWith([...members.rivals, ...members.doubtful]).verdict !== decision.verdict
  )
    return {
      ...outcome,
      verdict: 'unproven',
      sentence: `${sentence}; whether the ${members.doubtful.map(({ unit }) => nameOfUnit(unit)).join(' and the ')} belongs to the comparison is not on file (price or date)`,
    };
  const lacks = members.lacking.length > 0;
  // Nobody knows where an unmeasured member stands; only a comparison of all time or of named sets claims to.
  // A price in another currency, or none, leaves the place among prices open in any case.
  const claimsAll =
    cohort.units !== undefined ||
    quantity === 'fact.price' ||
    (cohort.year === undefined && cohort.last === undefined);
  if (lacks && claimsAll && decision.verdict !== 'breaks' && rank.type !== 'behind')
    return {
      ...outcome,
      verdict: 'unproven',
      sentence: `${sentence}; not every unit has this number, so the place among all of them is not proven`,
    };
  if (lacks && cohort.units !== undefined && decision.verdict === 'holds')
    return { ...outcome, verdict: 'unproven' };
  return outcome;
}

/** Rivals in the own number's unit; one in another currency cannot be compared. */
function unify(members: Members, own: OperandValue): Members {
  const unit = own.unitOfMeasure || undefined;
  const convert = (values: OperandValue[]): OperandValue[] =>
    values.flatMap((value) => inUnit(value, unit) ?? []);
  const lost = [...members.rivals, ...members.doubtful].filter((value) => inUnit(value, unit) === null);
  return {
    ...members,
    rivals: convert(members.rivals),
    doubtful: convert(members.doubtful),
    lacking: [...members.lacking, ...lost.map(({ unit: who }) => ({ unit: who, why: 'another currency' }))],
  };
}

/** The claimed place in one world. */
function takesPlace(
  { rank, direction }: OrderCheck,
  own: OperandValue,
  rivals: readonly OperandValue[],
  excepted: readonly OperandValue[],
  draw: number | undefined,
): boolean {
  const sign = direction === 'higher' ? 1 : -1;
  const mine = sign * valueIn(own, draw);
  // A tie within rounding counts for the statement, so nobody is "ahead" by less than that.
  let before = 0;
  for (const value of rivals) if (sign * valueIn(value, draw) > mine + onTheLimit) before++;
  let exceptionsAhead = true;
  for (const value of excepted)
    if (!(sign * valueIn(value, draw) >= mine - onTheLimit)) exceptionsAhead = false;
  switch (rank.type) {
    case 'best':
    case 'ahead':
      return before === 0 && exceptionsAhead;
    case 'position':
      return before === rank.n - 1 && exceptionsAhead;
    case 'among':
      return before < Math.max(1, Math.floor((rivals.length + 1) / 4)) && exceptionsAhead;
    case 'behind':
      return rivals.every((value) => sign * valueIn(value, draw) >= mine - onTheLimit);
    case 'matches':
      return rivals.every((value) => {
        const other = valueIn(value, draw);
        return Math.abs(valueIn(own, draw) - other) <= matchingShare * Math.abs(other) + onTheLimit;
      });
  }
}

function rankWord({ rank }: OrderCheck): string | number {
  return rank.type === 'position' ? rank.n : rank.type;
}

function cohortWords({ cohort }: OrderCheck): Record<string, unknown> {
  return Object.fromEntries(Object.entries(cohort).filter(([, value]) => value !== undefined));
}

function commonOf(
  check: OrderCheck,
  own: OperandValue,
  members: Members,
  stated: Record<string, unknown>,
  quantity: string,
) {
  const all = [...members.rivals, ...members.excepted.flatMap(({ value }) => value ?? [])];
  return {
    probability: null,
    stated,
    found: {
      ...foundOf(own),
      members: all.map((value) => ({
        unit: value.unit.id,
        value: value.value,
        ...(value.u === null ? {} : { u: value.u }),
      })),
      ...(members.lacking.length > 0 ? { lacking: members.lacking.map(({ unit }) => unit.id) } : {}),
    },
    conditions: conditionsOf(own),
    quantity,
    evidence: [...new Set([own, ...all].flatMap((value) => value.evidence))],
    figure: rankingFigure(capital(nameOfQuantity(quantity)), own, all, check.direction),
  };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function againstWords(
  check: OrderCheck,
  own: OperandValue,
  { rivals }: Members,
  excepted: readonly OperandValue[],
): string {
  const sign = check.direction === 'higher' ? -1 : 1;
  const ordered = [...rivals].sort((one, other) => sign * (one.value - other.value));
  const place = 1 + rivals.filter((value) => sign * (own.value - value.value) > onTheLimit).length;
  const number = (value: OperandValue) =>
    `${amount(value.value, value.u, value.unitOfMeasure, value.id)} (${nameOfUnit(value.unit)})`;
  const bar = excepted.length > 0 ? `, apart from ${excepted.map(number).join(' and ')}` : '';
  if (ordered.length === 0) return bar;
  if (['ahead', 'behind', 'matches'].includes(check.rank.type))
    return ` against ${ordered.slice(0, 3).map(number).join(' and ')}${bar}`;
  const near = place === 1 ? ordered[0]! : ordered[Math.max(0, place - 2)]!;
  return `, place ${place} of ${rivals.length + 1}${bar}; ${place === 1 ? 'the next is' : 'before it stands'} ${number(near)}`;
}

function lackingWords({ lacking }: Members): string {
  return lacking.length > 0 ? ` (without it: ${lacking.map(({ unit }) => nameOfUnit(unit)).join(', ')})` : '';
}
