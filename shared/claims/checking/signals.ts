import type { Check, Operand, StatedConditions } from '../../contract/check.ts';
import { mapOperands, operandsOf } from './operands.ts';
import type { Outcome } from './outcome.ts';
import type { Sight } from './sight.ts';
import { isWide, signalDefault } from './signalOf.ts';

/**
 * Hears what other signals would say where the sentence names none and the quantity does not mean one: when both
 * signals have it and the verdicts differ, the claim is unproven and a person is asked.
 */
export function hearOtherSignals(
  check: Check,
  sight: Sight,
  judgeOne: (check: Check, signal: string | undefined) => Outcome,
): Outcome {
  const own = judgeOne(check, undefined);
  if (!decided.has(own.verdict)) return own;
  const signals = signalsAtStake(check, sight, own);
  for (const signal of signals) {
    // A sentence that names some of its signals keeps them: only the open ones are bound.
    const variant = bindSignal(check, signal);
    const other = judgeOne(variant, check.kind === 'observed' ? signal : undefined);
    if (other.verdict === 'working') return { ...own, verdict: 'working', probability: null };
    if (!decided.has(other.verdict) || other.verdict === own.verdict) continue;
    const usual = String(own.conditions.signal ?? 'SDR');
    return {
      ...own,
      verdict: 'unproven',
      sentence: `In ${usual} it ${words(own)}: ${lowerFirst(own.sentence)}; in ${signal} it ${words(other)}: ${lowerFirst(other.sentence)}; the sentence names no signal`,
      asks: [bindSignal(check, usual), variant],
    };
  }
  return own;
}

const decided = new Set(['holds', 'breaks', 'close']);

function isOpen(conditions: StatedConditions): boolean {
  return conditions.signal === undefined || conditions.origin?.signal === 'article';
}

function isOpenOperand(operand: Operand): operand is Extract<Operand, { type: 'quantity' }> {
  if (operand.type !== 'quantity' || !isOpen(operand.conditions)) return false;
  const meant = signalDefault(operand.id);
  return meant === 'sdr-first' || meant === 'wide';
}

/** Signals other than the one judged that the runs (or observations) of the units in question have. */
function signalsAtStake(check: Check, sight: Sight, own: Outcome): string[] {
  const judged = own.conditions.signal;
  const found = new Set<string>();
  if (check.kind === 'observed') {
    const unit = sight.unit(check.conditions.unit ?? sight.own);
    if (unit && isOpen(check.conditions))
      for (const observation of sight.observations(unit, check.topic))
        if (observation.signal) found.add(observation.signal);
  }
  for (const operand of operandsOf(check)) {
    if (!isOpenOperand(operand)) continue;
    const unit = sight.unit(operand.conditions.unit ?? sight.own);
    if (!unit) continue;
    for (const { run, measurement } of sight.runs(unit, operand.id))
      if (measurement.state !== 'undefined' && (signalDefault(operand.id) !== 'wide' || isWide(run)))
        found.add(run.conditions.signal);
  }
  found.delete(String(judged));
  return [...found].sort();
}

function bindSignal(check: Check, signal: string): Check {
  const bind = (conditions: StatedConditions): StatedConditions => ({
    ...conditions,
    signal,
    origin: { ...conditions.origin, signal: 'named' },
  });
  if (check.kind === 'observed') return { ...check, conditions: bind(check.conditions) };
  return mapOperands(check, (operand) =>
    isOpenOperand(operand) ? { ...operand, conditions: bind(operand.conditions) } : operand,
  );
}

function words({ verdict }: Outcome): string {
  return verdict === 'close' ? 'is too close to call' : verdict;
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
