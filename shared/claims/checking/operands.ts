import type { Check, Operand } from '../../contract/check.ts';

/** Operands of a check, in the order in which they stand. */
export function operandsOf(check: Check): Operand[] {
  switch (check.kind) {
    case 'value':
    case 'onset':
    case 'direction':
      return [check.operand];
    case 'bound':
      return check.bounds.map(({ operand }) => operand);
    case 'ratio':
    case 'difference':
      return [check.a, check.b];
    case 'order':
      return [check.key];
    default:
      return [];
  }
}

/** The same check with every operand replaced. */
export function mapOperands(check: Check, change: (operand: Operand) => Operand): Check {
  switch (check.kind) {
    case 'value':
    case 'onset':
    case 'direction':
      return { ...check, operand: change(check.operand) };
    case 'bound':
      return {
        ...check,
        bounds: check.bounds.map((bound) => ({ ...bound, operand: change(bound.operand) })),
      };
    case 'ratio':
    case 'difference':
      return { ...check, a: change(check.a), b: change(check.b) };
    case 'order':
      return { ...check, key: change(check.key) };
    default:
      return check;
  }
}
