import type { Bound, BoundCheck } from '../../contract/check.ts';
import { compare, decide, valueIn } from './decide.ts';
import { levelsFigure } from './figures.ts';
import { floorNote } from './floor.ts';
import { inUnit, readOperand } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import { conditionsOf, foundOf, notesOf, type Outcome, unproven } from './outcome.ts';
import { says, subject } from './phrases.ts';
import type { Sight } from './sight.ts';
import { tidy } from './stated.ts';
import { amount, placeOnAxis, plain } from './terms.ts';

type Read = { bound: Bound; value: OperandValue };

/** All inequalities hold together: the found values say so, and the joint draws are sure of it. */
export function judgeBound(check: BoundCheck, sight: Sight, signal?: string): Outcome {
  const first = check.bounds[0]!;
  const quantity = first.operand.type === 'fact' ? `fact.${first.operand.key}` : first.operand.id;
  const stated = statedOf(first);
  const reads: Read[] = [];
  for (const bound of check.bounds) {
    const side = bound.op.startsWith('<') ? 'upper' : 'lower';
    const reading = readOperand(sight, bound.operand, { side, ...(signal === undefined ? {} : { signal }) });
    if (!reading.ok) return unproven(reading.reason, quantity, stated);
    const value = inUnit(reading.value, bound.unit);
    if (!value)
      return unproven(`The limit is given in ${bound.unit}, which does not measure this`, quantity, stated);
    reads.push({ bound, value });
  }
  const lower = reads.find(({ value }) => value.over);
  if (lower) return judgeLowerBound(check, lower, reads, sight, stated, quantity);
  const { level } = sight.bench.house;
  const meets = (draw: number | undefined) => {
    let all = true;
    for (const { bound, value } of reads)
      if (!compare(valueIn(value, draw), bound.op, bound.x)) {
        all = false;
        break;
      }
    return all !== (check.negated ?? false);
  };
  const values = reads.map(({ value }) => value);
  const decision = decide(values, meets, level);
  const failing = reads.filter(({ bound, value }) => !compare(value.value, bound.op, bound.x));
  const shown = failing.length > 0 ? failing : check.negated ? reads : reads.slice(0, 2);
  const clauses = shown.map((read) => clauseOf(read, sight));
  const floors = reads.flatMap(({ bound, value }) =>
    decision.verdict === 'close' && bound.op.startsWith('<') && !check.negated
      ? (floorNote(sight, value, bound.x, level) ?? [])
      : [],
  );
  const main = shown[0]!;
  return {
    ...decision,
    sentence: clauses.join('; '),
    notes: [...closeNote(decision.verdict, decision.probability), ...floors, ...notesOf(...values)],
    stated,
    found: foundOfBounds(reads),
    conditions: conditionsOf(main.value),
    quantity,
    evidence: [...new Set(values.flatMap((value) => value.evidence))],
    ...figureOf(main),
    ...(decision.verdict === 'breaks' && !check.negated ? { suggestion: suggestionOf(main) } : {}),
  };
}

/** "too close to call: a perfect instrument would agree with probability 0.71" */
export function closeNote(verdict: string, probability: number | null): string[] {
  if (verdict === 'working') return ['its uncertainty is still being drawn'];
  if (verdict !== 'close' || probability === null) return [];
  return [`too close to call (probability ${probability.toFixed(2)})`];
}

function statedOf({ operand, op, x, unit }: Bound): Record<string, unknown> {
  const selector = operand.type === 'quantity' ? operand.selector : undefined;
  const at = selector?.at;
  return {
    op,
    x,
    stat: selector === undefined ? 'at' : statWord(selector.stat),
    ...(at === undefined ? {} : { axis: at }),
    ...(selector?.from === undefined ? {} : { from: selector.from }),
    ...(selector?.to === undefined ? {} : { to: selector.to }),
    ...(unit === undefined ? {} : { unit }),
  };
}

/** The five words of the report; a scalar is its own only level. */
function statWord(stat: string): string {
  return stat === 'scalar' ? 'at' : stat;
}

function clauseOf({ bound, value }: Read, sight: Sight): string {
  const unit = value.unitOfMeasure;
  const meets = compare(value.value, bound.op, bound.x);
  const upper = bound.op.startsWith('<');
  const gap = amount(tidy(Math.abs(value.value - bound.x)), null, unit, value.id);
  const limit = plain(bound.x, unit);
  if (Math.abs(value.value - bound.x) < 1e-9) return `${says(value, sight.own)}, at the limit of ${limit}`;
  const where = upper === meets ? 'under' : 'over';
  return `${says(value, sight.own)}, ${gap} ${where} ${meets ? '' : 'the limit of '}${limit}`;
}

/** A lower bound proves what lies under it and disproves nothing but what lies over it. */
function judgeLowerBound(
  check: BoundCheck,
  { bound, value }: Read,
  reads: readonly Read[],
  sight: Sight,
  stated: Record<string, unknown>,
  quantity: string,
): Outcome {
  const limit = plain(bound.x, value.unitOfMeasure);
  const upper = bound.op.startsWith('<');
  const settled = value.value >= bound.x;
  const others = reads.filter((read) => read.value !== value);
  const othersHold = others.every((read) => compare(read.value.value, read.bound.op, read.bound.x));
  const holds = settled && !upper && othersHold;
  const verdict = !settled || check.negated ? 'unproven' : holds ? 'holds' : 'breaks';
  return {
    verdict,
    probability: null,
    sentence: `${says(value, sight.own)}, a lower bound, which ${
      settled
        ? upper
          ? `lies over the limit of ${limit}`
          : `is enough for ${limit}`
        : `does not reach ${limit}`
    }`,
    notes: notesOf(value),
    stated,
    found: foundOf(value),
    conditions: conditionsOf(value),
    quantity,
    evidence: value.evidence,
  };
}

/** One bound: its value (a whole-series bound lists the levels too); several: the first, the others beside it. */
function foundOfBounds(reads: readonly Read[]): Outcome['found'] {
  const [first, ...others] = reads;
  const more = others.map(({ value }) => ({
    quantity: value.id,
    stat: value.stat,
    value: value.value,
    u: value.u,
  }));
  return { ...foundOf(first!.value), ...(more.length > 0 ? { also: more } : {}) };
}

function figureOf({ bound, value }: Read): Pick<Outcome, 'figure'> {
  const upper = bound.op.startsWith('<');
  const figure = levelsFigure(
    value,
    `${subject(value, true)}: ${amount(value.value, value.u, value.unitOfMeasure, value.id)}`,
    { value: bound.x, label: plain(bound.x) },
    (_, found) => (upper ? found > bound.x : found < bound.x),
  );
  return figure ? { figure } : {};
}

function suggestionOf({ bound, value }: Read): string {
  const upper = bound.op.startsWith('<');
  const number = amount(value.value, null, value.unitOfMeasure, value.id);
  const place = value.axis === undefined ? '' : ` at ${placeOnAxis(value.id, value.axis)}`;
  return `${upper ? 'up to' : 'down to'} ${number}${place}`;
}
