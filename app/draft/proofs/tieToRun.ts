import type { Check, Operand } from '../../../shared/contract/check.ts';
import type { Run } from '../../../shared/contract/run.ts';

/** The operands of a check, whatever its kind. */
export function operandsOf(check: Check): Operand[] {
  if ('operand' in check) return [check.operand];
  if ('bounds' in check) return check.bounds.map((bound) => bound.operand);
  if ('a' in check) return [check.a, check.b];
  if ('key' in check && typeof check.key !== 'string') return [check.key];
  return [];
}

/** The same check with its first operand changed. */
export function withOperand(check: Check, change: (operand: Operand) => Operand): Check {
  if ('operand' in check) return { ...check, operand: change(check.operand) };
  if ('bounds' in check) {
    return { ...check, bounds: check.bounds.map((bound) => ({ ...bound, operand: change(bound.operand) })) };
  }
  if ('a' in check) return { ...check, a: change(check.a) };
  if (check.kind === 'order') return { ...check, key: change(check.key) };
  return check;
}

/** The same check on the runs of these conditions, as if the sentence had named them. */
export function tiedToRun(check: Check, { mode, stage, signal, dimming }: Run): Check {
  const named = { mode, stage, signal, ...(dimming ? { dimming } : {}) };
  const origin = Object.fromEntries(Object.keys(named).map((part) => [part, 'named' as const]));
  return withOperand(check, (operand) => ({
    ...operand,
    conditions: { ...operand.conditions, ...named, origin: { ...operand.conditions.origin, ...origin } },
  }));
}
