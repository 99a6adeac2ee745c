import type { JudgingBench } from '../../../shared/claims/index.ts';
import type { Check, StatedConditions } from '../../../shared/contract/check.ts';
import type { Claim } from '../../../shared/contract/claim.ts';
import { catalogueEntry } from '../../../shared/measure/index.ts';
import { operandsOf, tiedToRun, withOperand } from './tieToRun.ts';

export interface Alternative {
  /** For people: the definition, the run */
  name: string;
  check: Check;
}

function conditionsText({ stage, mode, signal }: StatedConditions): string {
  return [signal, stage?.replace('-', ' '), mode].filter(Boolean).join(', ');
}

/** What a check speaks of, in a few words: "Coverage of P3, CIE 1976 u′v′; HDR10, as delivered". */
function checkName(check: Check): string {
  const [operand] = operandsOf(check);
  if (!operand) return check.kind;
  const what = operand.type === 'fact' ? operand.key : (catalogueEntry(operand.id)?.label ?? operand.id);
  const where = conditionsText(operand.conditions);
  return where ? `${what}; ${where}` : what;
}

/**
 * Other checks that a person may choose: those that the words allow, other definitions of the quantity, other runs
 * of the same unit that have it.
 */
export function alternativesOf(claim: Claim, bench: JudgingBench): Alternative[] {
  const found: Alternative[] = [];
  const add = (check: Check, name = checkName(check)) => {
    if (found.every((other) => other.name !== name)) found.push({ name, check });
  };
  for (const ask of claim.asks ?? []) add(ask);
  const check = claim.check ?? claim.asks?.[0];
  const operand = check && operandsOf(check)[0];
  if (!check || operand?.type !== 'quantity') return found;
  for (const id of operand.others ?? []) {
    add(withOperand(check, (one) => (one.type === 'quantity' ? { ...one, id, others: [] } : one)));
  }
  const unit = bench.evidence.units.get(operand.conditions.unit ?? bench.article.meta.unit);
  for (const run of unit?.runs ?? []) {
    if (bench.measure(unit!, run).get(operand.id)?.state === undefined) continue;
    const { mode, stage, signal, dimming } = run.conditions;
    add(
      tiedToRun(check, run.conditions),
      `${signal}, ${stage.replace('-', ' ')}, ${mode}${dimming ? `, dimming ${dimming}` : ''}`,
    );
  }
  return found;
}
