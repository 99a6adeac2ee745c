import type { DirectionCheck, Operand } from '../../contract/check.ts';
import { clipsWithin } from '../../measure/toneCurve.ts';
import { closeNote } from './bound.ts';
import { decide, valueIn } from './decide.ts';
import { readOperand } from './operand.ts';
import { conditionsOf, foundOf, notesOf, type Outcome, unproven } from './outcome.ts';
import { resolveRun } from './resolve.ts';
import type { Sight } from './sight.ts';
import { isInside } from './stated.ts';
import { amount, plain } from './terms.ts';

/** Whether a tone curve rolls off, clips, or follows its target to the end. */
export function judgeRollOff(
  check: DirectionCheck,
  operand: Extract<Operand, { type: 'quantity' }>,
  sight: Sight,
  signal?: string,
): Outcome {
  const { from } = check;
  const stated = { name: check.name, ...(from && { x: from.x, low: from.low, high: from.high, unit: '%' }) };
  const quantity = 'eotf.rolloff';
  const options = signal === undefined ? {} : { signal };
  const scalar = { stat: 'scalar' } as const;
  const where = readOperand(sight, { ...operand, id: quantity, selector: scalar }, options);
  if (!where.ok) return followsToTheEnd(check, operand, sight, stated, where.reason, signal);
  const spread = readOperand(sight, { ...operand, id: 'eotf.rolloff.spread', selector: scalar }, options);
  if (check.name === 'neither') {
    const decision = decide(
      [where.value],
      (draw) => !Number.isFinite(valueIn(where.value, draw)) !== (check.negated ?? false),
      sight.bench.house.level,
    );
    return outcomeOf(
      decision,
      where.value,
      `The curve leaves its target at ${plain(where.value.value)} % stimulus`,
    );
  }
  if (!spread.ok) return unproven(spread.reason, quantity, stated);
  const wantsClip = check.name === 'clips';
  const decision = decide(
    [where.value, spread.value],
    (draw) => {
      const level = valueIn(where.value, draw);
      const leaves = Number.isFinite(level) && (from === undefined || isInside(level, from));
      const clips = valueIn(spread.value, draw) <= clipsWithin + 1e-9;
      return (leaves && clips === wantsClip) !== (check.negated ?? false);
    },
    sight.bench.house.level,
  );
  const clips = spread.value.value <= clipsWithin + 1e-9;
  return outcomeOf(
    decision,
    where.value,
    `The curve leaves its target at ${plain(where.value.value)} % stimulus and ${clips ? 'clips' : 'rolls off'}: the levels above it lie ${
      clips ? 'within' : 'up to'
    } ${amount(spread.value.value, null, '%', 'eotf.rolloff.spread')} ${clips ? 'of' : 'under'} the brightest (limit ${clipsWithin} %)${from ? `; the text says from ${plain(from.x)} %` : ''}`,
  );

  function outcomeOf(
    decision: { verdict: Outcome['verdict']; probability: number | null },
    value: Parameters<typeof foundOf>[0],
    sentence: string,
  ): Outcome {
    return {
      ...decision,
      sentence,
      notes: [...closeNote(decision.verdict, decision.probability), ...notesOf(value)],
      stated,
      found: { ...foundOf(value), ...(spread.ok ? { spread: spread.value.value } : {}) },
      conditions: conditionsOf(value),
      quantity,
      evidence: value.evidence,
    };
  }
}

/** No roll-off was found: the curve is on target to its end, or was not measured at all. */
function followsToTheEnd(
  check: DirectionCheck,
  operand: Extract<Operand, { type: 'quantity' }>,
  sight: Sight,
  stated: Record<string, unknown>,
  why: string,
  signal: string | undefined,
): Outcome {
  const resolved = resolveRun(sight, 'eotf.error', operand.conditions, signal ?? 'HDR');
  if (!resolved.ok) return unproven(why, 'eotf.rolloff', stated);
  const measurement = sight.measurement(resolved.unit, resolved.run, 'eotf.rolloff');
  if (measurement?.state !== 'undefined' || !measurement.undefined.startsWith('no roll-off'))
    return unproven(why, 'eotf.rolloff', stated);
  const holds = (check.name === 'neither') !== (check.negated ?? false);
  const { unit, run } = resolved;
  return {
    verdict: holds ? 'holds' : 'breaks',
    probability: null,
    sentence: 'The curve has no roll-off: its highest level is within 10 % of its target or above',
    notes: resolved.notes,
    stated,
    found: {},
    conditions: { unit: unit.id, run: run.id, signal: run.conditions.signal, mode: run.conditions.mode },
    quantity: 'eotf.rolloff',
    evidence: [`${unit.id === sight.own ? '' : `unit/${unit.id}/`}run/${run.id}`],
  };
}
