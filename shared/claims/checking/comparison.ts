import type { BoundOp, DifferenceCheck, Operand, RatioCheck } from '../../contract/check.ts';
import { closeNote } from './bound.ts';
import { compare, decide, onTheLimit, valueIn } from './decide.ts';
import { inUnit, readOperand } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import { conditionsOfBoth, notesOf, type Outcome, unproven } from './outcome.ts';
import { numberWithPlace } from './phrases.ts';
import type { Sight } from './sight.ts';
import { intervalWords, isInside, missBy, tidy } from './stated.ts';
import { amount, nameOfUnit, plain } from './terms.ts';

type Both = { ok: true; a: OperandValue; b: OperandValue } | { ok: false; reason: string };

/** A is half, twice, 30 % brighter than B: the quotient of what was measured, within its rounding. */
export function judgeRatio(check: RatioCheck, sight: Sight, signal?: string): Outcome {
  const stated = statedOf(check, sight);
  const quantity = quantityOf(measuredOf(check));
  const both = readBoth(check, sight, signal);
  if (!both.ok) return unproven(both.reason, quantity, stated);
  const { a } = both;
  const b = inUnit(both.b, a.unitOfMeasure || undefined);
  if (!b)
    return unproven(`${nameOfBoth(a, both.b)} are given in different units or currencies`, quantity, stated);
  if (b.value === 0)
    return unproven('The other number is 0, and nothing can be compared with it', quantity, stated);
  const ratio = a.value / b.value;
  const inside = agrees(ratio, check);
  const common = commonOf(check, a, b, stated, quantity, ratio);
  if (a.over || b.over) return lowerBoundRatio(check, a, b, ratio, common);
  if (check.certain && check.op !== undefined)
    return orderOfRuns(check as RatioCheck & { op: BoundOp }, a, b, sight, common);
  const holds = inside !== (check.negated ?? false);
  const shown = plain(Number(ratio.toPrecision(3)));
  const miss = missBy(ratio, check.stated);
  return {
    ...common,
    verdict: holds ? 'holds' : 'breaks',
    sentence: `${comparisonWords(a, b, sight)}, a ratio of ${shown}, ${
      inside ? 'inside' : 'outside'
    } the stated ${statedWords(check, '')}${inside ? '' : `, by ${plain(Number(miss.toPrecision(2)))}`}`,
    notes: [
      ...(holds && roundingOnly(ratio, check) ? [`only rounding saves ${plain(check.stated.x)}`] : []),
      ...notesOf(a, b),
    ],
    ...(holds || check.negated ? {} : { suggestion: `${shown} times` }),
  };
}

/** One run reads more than another: as found, and in all but few of the worlds that the readings allow. */
function orderOfRuns(
  { op, stated, negated }: RatioCheck & { op: BoundOp },
  a: OperandValue,
  b: OperandValue,
  sight: Sight,
  common: ReturnType<typeof commonOf>,
): Outcome {
  const decision = decide(
    [a, b],
    (draw) => compare(valueIn(a, draw) / valueIn(b, draw), op, stated.x) !== (negated ?? false),
    sight.bench.house.level,
  );
  return {
    ...common,
    ...decision,
    sentence: comparisonWords(a, b, sight),
    notes: [...closeNote(decision.verdict, decision.probability), ...notesOf(a, b)],
  };
}

/** A is x dearer or brighter than B: the difference, in the quantity's unit, or in points between percentages. */
export function judgeDifference(check: DifferenceCheck, sight: Sight, signal?: string): Outcome {
  const stated = statedOf(check, sight);
  const quantity = quantityOf(measuredOf(check));
  const both = readBoth(check, sight, signal);
  if (!both.ok) return unproven(both.reason, quantity, stated);
  const b = inUnit(both.b, both.a.unitOfMeasure || undefined);
  if (!b)
    return unproven(
      `${nameOfBoth(both.a, both.b)} are given in different units or currencies`,
      quantity,
      stated,
    );
  const { a } = both;
  const { unit } = check.stated;
  if (a.unitOfMeasure === '%' && !/point|pp/i.test(unit ?? ''))
    return unproven(
      'A difference of two percentages can mean points or a share, and the sentence does not say points',
      quantity,
      stated,
    );
  if (a.over || b.over)
    return unproven('Only a lower bound is known, so the difference is not', quantity, stated);
  const scaled = a.unitOfMeasure === '%' ? [a, b] : [inUnit(a, unit), inUnit(b, unit)];
  const [one, other] = scaled;
  if (!one || !other)
    return unproven(`The difference is given in ${unit}, which does not measure this`, quantity, stated);
  const difference = one.value - other.value;
  const inside = agrees(difference, check);
  const holds = inside !== (check.negated ?? false);
  const units = one.unitOfMeasure === '%' ? 'points' : one.unitOfMeasure;
  const miss = missBy(difference, check.stated);
  return {
    ...commonOf(check, a, b, stated, quantity, difference),
    verdict: holds ? 'holds' : 'breaks',
    sentence: `${comparisonWords(a, b, sight)}, a difference of ${amount(tidy(difference), null, units, '')}, ${
      inside ? 'inside' : 'outside'
    } the stated ${statedWords(check, units)}${inside ? '' : `, by ${amount(tidy(miss), null, units, '')}`}`,
    notes: notesOf(a, b),
    ...(holds || check.negated ? {} : { suggestion: amount(tidy(difference), null, units, '') }),
  };
}

function readBoth(check: RatioCheck | DifferenceCheck, sight: Sight, signal: string | undefined): Both {
  const options = signal === undefined ? {} : { signal };
  const a = readOperand(sight, check.a, options);
  if (!a.ok) return a;
  const b = readOperand(sight, check.b, options);
  if (!b.ok) return b;
  return { ok: true, a: a.value, b: b.value };
}

/** What the sentence says, as it leaves the house: a limit has one end only. */
function statedOf(check: RatioCheck | DifferenceCheck, sight: Sight) {
  const { low, high } = check.stated;
  const other = otherOf(check.b, check.a, sight);
  if (check.op === undefined) return { other, low, high };
  return check.op.startsWith('<') ? { other, high } : { other, low };
}

function agrees(value: number, { op, stated }: RatioCheck | DifferenceCheck): boolean {
  return op === undefined ? isInside(value, stated) : compare(value, op, stated.x);
}

function statedWords({ op, stated }: RatioCheck | DifferenceCheck, units: string): string {
  if (op === undefined) return intervalWords(stated, units);
  const words = { '<': 'limit, under', '<=': 'limit, at most', '>': 'limit, over', '>=': 'limit, at least' };
  return `${words[op]} ${plain(Number(stated.x.toPrecision(4)), units)}`;
}

function commonOf(
  check: RatioCheck | DifferenceCheck,
  a: OperandValue,
  b: OperandValue,
  stated: Record<string, unknown>,
  quantity: string,
  result: number,
) {
  return {
    probability: null,
    stated,
    found: {
      value: result,
      a: a.value,
      b: b.value,
      ...(a.u === null ? {} : { ua: a.u }),
      ...(b.u === null ? {} : { ub: b.u }),
    },
    conditions: conditionsOfBoth(a, b),
    quantity,
    evidence: [...new Set([...a.evidence, ...b.evidence])],
    figure: {
      form: 'interval' as const,
      title: `${nameOfUnit(a.unit)} against ${a.unit === b.unit ? b.id : nameOfUnit(b.unit)}`,
      unit: '',
      stated: [check.stated.low, check.stated.high] as const,
      found: result,
      u: null,
    },
  };
}

/** A lower bound above or below the line settles a side at most. */
function lowerBoundRatio(
  check: RatioCheck,
  a: OperandValue,
  b: OperandValue,
  ratio: number,
  common: ReturnType<typeof commonOf>,
): Outcome {
  if (check.op !== undefined) {
    // The true ratio lies further out than the one found.
    const side = a.over && !b.over ? 'over' : b.over && !a.over ? 'under' : undefined;
    const past = side === 'over' ? ratio >= check.stated.x : side === 'under' && ratio <= check.stated.x;
    const meets = past && (side === 'over') === check.op.startsWith('>');
    return {
      ...common,
      verdict: !past ? 'unproven' : meets !== (check.negated ?? false) ? 'holds' : 'breaks',
      sentence: boundSentence(a, b, ratio),
      notes: notesOf(a, b),
    };
  }
  const beyond =
    a.over && !b.over
      ? ratio > check.stated.high + onTheLimit
      : b.over && !a.over && ratio < check.stated.low - onTheLimit;
  const verdict = !beyond ? 'unproven' : check.negated ? 'holds' : 'breaks';
  return {
    ...common,
    verdict,
    sentence: boundSentence(a, b, ratio),
    notes: notesOf(a, b),
  };
}

function boundSentence(a: OperandValue, b: OperandValue, ratio: number): string {
  return `Only a lower bound is known of the ${nameOfUnit((a.over ? a : b).unit)} (${numberWithPlace(a.over ? a : b)}), so the ratio is ${
    a.over ? 'over' : 'under'
  } ${plain(Number(ratio.toPrecision(3)))}`;
}

/** "£1,039 against £779 of the Tamarick Plain": both numbers and whose they are. */
function comparisonWords(a: OperandValue, b: OperandValue, sight: Sight): string {
  const whose = (value: OperandValue) =>
    a.unit === b.unit && a.run === b.run && a.id === b.id
      ? ''
      : ` (${value.unit.id === sight.own && value.run && a.unit === b.unit ? value.run.id : nameOfUnit(value.unit)})`;
  return `It is ${numberWithPlace(a)}${whose(a)} against ${numberWithPlace(b)}${whose(b)}`;
}

function nameOfBoth(a: OperandValue, b: OperandValue): string {
  return `The numbers of the ${nameOfUnit(a.unit)} and the ${nameOfUnit(b.unit)}`;
}

/** Of a measurement and a maker's number the measurement is what the claim is about. */
function measuredOf({ a, b }: RatioCheck | DifferenceCheck): Operand {
  return a.type === 'fact' && b.type === 'quantity' ? b : a;
}

function quantityOf(operand: Operand): string {
  return operand.type === 'fact' ? `fact.${operand.key}` : operand.id;
}

/** What A is compared with: another unit, another quantity, or other conditions of the same. */
function otherOf(b: Operand, a: Operand, sight: Sight): string {
  const unit = b.conditions.unit ?? sight.own;
  if (unit !== (a.conditions.unit ?? sight.own)) return unit;
  if (quantityOf(b) !== quantityOf(a)) return quantityOf(b);
  const differing = (
    ['stage', 'mode', 'signal', 'dimming', 'sample', 'firmware', 'window', 'angle', 'level'] as const
  )
    .filter((key) => b.conditions[key] !== a.conditions[key])
    .map((key) => String(b.conditions[key] ?? 'other'));
  return differing.join(', ') || unit;
}

function roundingOnly(ratio: number, { stated, op }: RatioCheck): boolean {
  if (op !== undefined || stated.hedge || stated.exact || stated.place === undefined) return false;
  return Math.abs(ratio - stated.x) > 0.25 * (stated.high - stated.low);
}
