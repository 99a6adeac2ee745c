import type { Check } from '../../contract/check.ts';
import type { Claim, Judgement } from '../../contract/claim.ts';
import type { JudgingBench } from './bench.ts';
import { judgeBound } from './bound.ts';
import { judgeDifference, judgeRatio } from './comparison.ts';
import { hearOtherDefinitions } from './definitions.ts';
import { judgeDirection } from './direction.ts';
import { judgeFact } from './fact.ts';
import { judgeObserved } from './observed.ts';
import { judgeOnset } from './onset.ts';
import { judgeOrder } from './order.ts';
import type { Outcome } from './outcome.ts';
import { judgeScore } from './score.ts';
import { createSight, type Sight } from './sight.ts';
import { hearOtherSignals } from './signals.ts';
import { judgeValue } from './value.ts';

/** A judgement with what it looked at and what it rests on. */
export interface Reasoned {
  judgement: Judgement;
  /** Path and content of the evidence used; its digest is kept with an accepted proof. */
  used: ReadonlyMap<string, string>;
  dependencies: Sight['dependencies'];
}

/**
 * The verdict on one claim, from its check and the evidence alone: pure, and the same on every host.
 * Without a check the claim is unproven (or an opinion), for the reason that its reader gave.
 */
export function judge(claim: Claim, bench: JudgingBench): Judgement {
  return judgeReasoned(claim, bench).judgement;
}

export function judgeReasoned(
  claim: Pick<Claim, 'check' | 'why' | 'opinion'>,
  bench: JudgingBench,
): Reasoned {
  const sight = createSight(bench);
  const { check } = claim;
  const judgement = check === null ? withoutCheck(claim) : judgementOf(check, judgeCheck(check, sight));
  return { judgement, used: sight.used, dependencies: sight.dependencies };
}

/** A check under every signal and definition that its words allow. */
export function judgeCheck(check: Check, sight: Sight): Outcome {
  return hearOtherSignals(check, sight, (one, signal) =>
    hearOtherDefinitions(one, (variant) => judgeKind(variant, sight, signal)),
  );
}

function judgeKind(check: Check, sight: Sight, signal: string | undefined): Outcome {
  switch (check.kind) {
    case 'value':
      return judgeValue(check, sight, signal);
    case 'bound':
      return judgeBound(check, sight, signal);
    case 'onset':
      return judgeOnset(check, sight, signal);
    case 'ratio':
      return judgeRatio(check, sight, signal);
    case 'difference':
      return judgeDifference(check, sight, signal);
    case 'order':
      return judgeOrder(check, sight, signal);
    case 'direction':
      return judgeDirection(check, sight, signal);
    case 'fact':
      return judgeFact(check, sight);
    case 'observed':
      return judgeObserved(check, sight, signal);
    case 'score':
      return judgeScore(check, sight);
  }
}

function withoutCheck({ why, opinion }: Pick<Claim, 'why' | 'opinion'>): Judgement {
  return {
    verdict: opinion ? 'opinion' : 'unproven',
    probability: null,
    reason: why ?? (opinion ? 'A matter of opinion: no number settles it.' : 'No check covers these words.'),
    stated: {},
    found: {},
    conditions: {},
    quantity: null,
    kind: null,
    evidence: [],
  };
}

function judgementOf(check: Check, outcome: Outcome): Judgement {
  const { sentence, notes, figure, suggestion, asks, reported: _reported, ...rest } = outcome;
  return {
    ...rest,
    kind: check.kind,
    reason: `${[sentence, ...notes].join('; ')}.`,
    ...(figure ? { figure } : {}),
    ...(suggestion ? { suggestion } : {}),
    ...(asks ? { asks } : {}),
  };
}
