import { probability as shareOfDraws } from '../../certainty/index.ts';
import type { Verdict } from '../../contract/claim.ts';
import type { OperandValue } from './operandValue.ts';

/** Numbers nearer than this to a limit stand on the side that makes the statement hold. */
export const onTheLimit = 1e-9;

export type Decision = { verdict: Verdict | 'working'; probability: number | null; reported: boolean };

/**
 * A statement that asks what was reported and whether a perfect instrument would agree (JCGM 106: probability of
 * conformity). What the found values say needs to be certain at `level` either way; else it is too close to call.
 * @param holds the statement on one world: `undefined` for the found values, else the index of a draw
 */
export function decide(
  values: readonly OperandValue[],
  holds: (draw: number | undefined) => boolean,
  level: number,
): Decision {
  const reported = holds(undefined);
  if (values.some((value) => value.pending)) return { verdict: 'working', probability: null, reported };
  const counts = values.filter((value) => value.draw !== null).map((value) => value.drawCount);
  // Single values and facts carry no uncertainty: judged as reported.
  if (counts.length === 0) return { verdict: reported ? 'holds' : 'breaks', probability: null, reported };
  const probability = shareOfDraws(Math.min(...counts), holds);
  return { verdict: verdictAt(reported, probability, level), probability, reported };
}

/** What is reported is certain at `level` (0.5 to 1), of `probability` that the statement is true, or too close to call. */
function verdictAt(reported: boolean, probability: number, level: number): Verdict {
  if (reported) return probability >= level ? 'holds' : 'close';
  return probability <= 1 - level + 1e-12 ? 'breaks' : 'close';
}

/** The operand in one world: its found value, or a draw. */
export function valueIn(value: OperandValue, draw: number | undefined): number {
  return draw === undefined || value.draw === null ? value.value : value.draw(draw);
}

/** `a op b`, with a number on the limit counted on the holding side. */
export function compare(a: number, op: '<' | '<=' | '>' | '>=', b: number): boolean {
  switch (op) {
    case '<':
    case '<=':
      return a <= b + onTheLimit;
    case '>':
    case '>=':
      return a >= b - onTheLimit;
  }
}
