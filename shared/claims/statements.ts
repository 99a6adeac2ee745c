import type { Bound, Check, Operand, Selector, StatedNumber } from '../contract/check.ts';
import type { JudgedClaim } from '../contract/claim.ts';
import { canonicalJson } from './canonical.ts';

/** What a claim says of a number, as an interval: two claims contradict each other when none fits both. */
export interface Statement {
  /** Quantity under its conditions */
  subject: string;
  /** `average`, `max`, `min`, `at 60`, `scalar` … with the part of the axis it is limited to */
  stat: string;
  part: string;
  low: number;
  high: number;
  lowOpen: boolean;
  highOpen: boolean;
  unit: string;
}

type Interval = Pick<Statement, 'low' | 'high' | 'lowOpen' | 'highOpen'>;

/** Statements of a claim that can contradict another's; empty for negations, orders, sets and directions without a level. */
export function statementsOf({ check, judgement }: JudgedClaim): Statement[] {
  if (check === null || ('negated' in check && check.negated)) return [];
  const resolved = judgement.conditions;
  switch (check.kind) {
    case 'value':
      return valueStatements(check, resolved);
    case 'bound':
      return check.bounds.map((bound) => boundStatement(bound, resolved));
    case 'onset':
      return [onsetStatement(check, resolved)];
    case 'direction':
      return check.from
        ? [
            {
              ...placed(operandKey(check.operand, resolved), check.operand, '', '%'),
              ...intervalOf(check.from),
            },
          ]
        : [];
    case 'ratio':
    case 'difference': {
      const subject = `${check.kind}|${operandKey(check.a, resolved)}|${operandKey(check.b, {})}`;
      const interval = check.op ? half(check.op, check.stated.x) : intervalOf(check.stated);
      return [{ ...base(subject, check.stated.unit), ...interval }];
    }
    case 'fact': {
      if (check.op !== '=' || typeof check.x !== 'number') return [];
      const subject = `fact|${check.key}|${check.by ?? ''}|${conditionsKey(check.conditions, {})}`;
      const interval = check.stated ? intervalOf(check.stated) : point(check.x);
      return [{ ...base(subject, check.unit), ...interval }];
    }
    case 'observed': {
      const subject = `observed|${check.topic}|${conditionsKey(check.conditions, {})}`;
      const [low, high] = check.severity;
      return [{ ...base(subject, 'severity'), low, high, lowOpen: false, highOpen: false }];
    }
    case 'score': {
      if (typeof check.x !== 'number') return [];
      const subject = `score|${check.criterion}|${check.max ?? ''}|${conditionsKey(check.conditions, {})}`;
      const interval = check.op && check.op !== '=' ? half(check.op, check.x) : point(check.x);
      return [{ ...base(subject, 'points'), ...interval }];
    }
    default:
      return [];
  }
}

function valueStatements(
  check: Extract<Check, { kind: 'value' }>,
  resolved: Record<string, unknown>,
): Statement[] {
  const { operand, range } = check;
  // Where no side is named, all that may be meant lies between the two.
  const stated = check.eitherSide ? { ...check.stated, low: -check.stated.high } : check.stated;
  const subject = operandKey(operand, resolved);
  if (!range) return [{ ...placed(subject, operand, '', stated.unit), ...intervalOf(stated) }];
  const isSeries =
    operand.type === 'quantity' && ['all', 'max', 'min', 'any'].includes(operand.selector.stat);
  if (!isSeries)
    return [
      { ...placed(subject, operand, '', stated.unit), ...intervalOf({ ...range.min, high: range.max.high }) },
    ];
  return [
    { ...placed(subject, operand, 'min', stated.unit), ...intervalOf(range.min) },
    { ...placed(subject, operand, 'max', stated.unit), ...intervalOf(range.max) },
  ];
}

function boundStatement({ operand, op, x, unit }: Bound, resolved: Record<string, unknown>): Statement {
  const selector = operand.type === 'quantity' ? operand.selector : undefined;
  const isUpper = op.startsWith('<');
  // Every level under x is the maximum under x; some level over x is the maximum over x.
  const stat =
    selector?.stat === 'all'
      ? isUpper
        ? 'max'
        : 'min'
      : selector?.stat === 'any'
        ? isUpper
          ? 'min'
          : 'max'
        : '';
  return { ...placed(operandKey(operand, resolved), operand, stat, unit), ...half(op, x) };
}

/** An onset is a place on the axis: its stated edge with the reach within which it could be told apart. */
function onsetStatement(
  check: Extract<Check, { kind: 'onset' }>,
  resolved: Record<string, unknown>,
): Statement {
  const edge = check.from ?? check.to!;
  const reach = 2.5;
  const further = check.edge === 'included' ? 0 : 10;
  const subject = `onset|${check.side}|${check.limit}|${check.from === undefined ? 'to' : 'from'}|${operandKey(check.operand, resolved)}`;
  const isFree = check.edge === 'free';
  const isFrom = check.from !== undefined;
  return {
    ...base(subject, 'axis'),
    low: edge - reach - (isFree || !isFrom ? further : 0),
    high: edge + reach + (isFree || isFrom ? further : 0),
    lowOpen: false,
    highOpen: false,
  };
}

function half(op: string, x: number): Interval {
  return op.startsWith('<')
    ? { low: Number.NEGATIVE_INFINITY, high: x, lowOpen: false, highOpen: op === '<' }
    : { low: x, high: Number.POSITIVE_INFINITY, lowOpen: op === '>', highOpen: false };
}

function point(x: number): Interval {
  return { low: x, high: x, lowOpen: false, highOpen: false };
}

function intervalOf(stated: StatedNumber): Interval {
  return {
    low: stated.low,
    high: stated.high,
    lowOpen: stated.lowOpen ?? false,
    highOpen: stated.highOpen ?? false,
  };
}

function base(
  subject: string,
  unit: string | undefined,
): Pick<Statement, 'subject' | 'stat' | 'part' | 'unit'> {
  return { subject, stat: 'scalar', part: '', unit: unit ?? '' };
}

function placed(subject: string, operand: Operand, stat: string, unit: string | undefined) {
  if (operand.type === 'fact') return base(subject, unit);
  const { selector } = operand;
  return { subject, stat: stat || statKey(selector), part: partKey(selector), unit: unit ?? '' };
}

function statKey(selector: Selector): string {
  return selector.at === undefined ? selector.stat : `at ${selector.at}`;
}

function partKey({ from, to, fromIncluded, toIncluded, exceptions }: Selector): string {
  if (from === undefined && to === undefined && !exceptions) return '';
  return [from, fromIncluded, to, toIncluded, exceptions].join('|');
}

function operandKey(operand: Operand, resolved: Record<string, unknown>): string {
  const id = operand.type === 'fact' ? `fact.${operand.key}|${operand.by ?? ''}` : operand.id;
  const { conditions } = operand;
  const place = [conditions.angle, conditions.side, conditions.window].map((part) => part ?? '').join('|');
  return `${id}|${place}|${conditionsKey(conditions, resolved)}`;
}

/** The run that was found, or the conditions as stated where none was. */
function conditionsKey(conditions: Operand['conditions'], resolved: Record<string, unknown>): string {
  if (resolved.run !== undefined && resolved.other === undefined)
    return canonicalJson([resolved.unit, resolved.run]);
  const { origin: _origin, ...stated } = conditions;
  return canonicalJson(stated);
}
