import type { Check } from '../../contract/check.ts';
import { mapOperands, operandsOf } from './operands.ts';
import type { Outcome } from './outcome.ts';
import { amount, definitionOf, nameOfQuantity } from './terms.ts';

/**
 * Hears what the other definitions of a quantity would say where the words name none. For a colour difference, a
 * bound or an onset that the other definition flips is too close to call, and a value names the other; a gamut
 * whose diagrams differ in verdict is unproven and asks; a plain contrast is native and names the chequer.
 */
export function hearOtherDefinitions(check: Check, judgeOne: (check: Check) => Outcome): Outcome {
  const own = judgeOne(check);
  const others = otherIds(check);
  if (others.length === 0) return own;
  return others.reduce((outcome, [from, to]) => hearOne(check, outcome, from, to, judgeOne), own);
}

function otherIds(check: Check): [from: string, to: string][] {
  const pairs = operandsOf(check).flatMap((operand) =>
    operand.type === 'quantity'
      ? (operand.others ?? []).map((other) => [operand.id, other] as [string, string])
      : [],
  );
  return [...new Map(pairs.map((pair) => [pair.join(), pair])).values()];
}

function withDefinition(check: Check, from: string, to: string): Check {
  return mapOperands(check, (operand) => {
    if (operand.type !== 'quantity' || operand.id !== from) return operand;
    const { others: _others, ...rest } = operand;
    return { ...rest, id: to };
  });
}

const decided = new Set(['holds', 'breaks', 'close']);

function hearOne(
  check: Check,
  own: Outcome,
  from: string,
  to: string,
  judgeOne: (check: Check) => Outcome,
): Outcome {
  const variant = withDefinition(check, from, to);
  const other = judgeOne(variant);
  if (other.verdict === 'working' && decided.has(own.verdict))
    return { ...own, verdict: 'working', probability: null };
  if (!decided.has(own.verdict) || !decided.has(other.verdict)) return own;
  if (/^(coverage|area)\./.test(from)) {
    if (own.verdict === other.verdict) return own;
    return {
      ...own,
      verdict: 'unproven',
      sentence: `${own.sentence}; but in ${definitionOf(to)} it ${verdictWords(other)}: ${lowerFirst(other.sentence)}; the text does not say which diagram it means`,
      asks: [withNamedDefinition(check, from), variant],
    };
  }
  if (from.startsWith('contrast.')) return withNote(own, other, to);
  if (/de(2000|itp)/.test(from)) {
    if (check.kind === 'value') return withNote(own, other, to);
    if (check.kind !== 'bound' && check.kind !== 'onset') return own;
    if (reported(own) === reported(other)) return own;
    return {
      ...own,
      verdict: own.verdict === 'working' ? 'working' : 'close',
      notes: [
        `by the other definition it ${reported(other) ? 'would hold' : 'would break'}: ${lowerFirst(other.sentence)}`,
        ...own.notes,
      ],
      asks: [withNamedDefinition(check, from), variant],
    };
  }
  return own;
}

function withNamedDefinition(check: Check, from: string): Check {
  return withDefinition(check, from, from);
}

/** What the found values say, whatever the certainty. */
function reported(outcome: Outcome): boolean {
  return outcome.reported ?? outcome.verdict === 'holds';
}

function withNote(own: Outcome, other: Outcome, id: string): Outcome {
  const { value, u, unit } = other.found;
  if (typeof value !== 'number') return own;
  const definition = definitionOf(id);
  const name = definition || nameOfQuantity(id);
  return {
    ...own,
    notes: [
      ...own.notes,
      `${name}: ${amount(value, typeof u === 'number' ? u : null, String(unit ?? ''), id)}`,
    ],
  };
}

function verdictWords({ verdict }: Outcome): string {
  return verdict === 'holds' ? 'holds' : verdict === 'breaks' ? 'breaks' : 'is too close to call';
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
