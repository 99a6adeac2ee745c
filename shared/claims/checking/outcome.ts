import type { Check } from '../../contract/check.ts';
import type { Found, ProofFigure, Verdict } from '../../contract/claim.ts';
import { evidenceOfRows } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import type { Sight } from './sight.ts';

/** What judging a check by itself comes to, before other definitions and signals are heard. */
export interface Outcome {
  verdict: Verdict | 'working';
  probability: number | null;
  /** What the found values say by themselves, for kinds that also ask for certainty. */
  reported?: boolean;
  /** One sentence with the numbers, without its full stop. */
  sentence: string;
  /** What a reader must know besides; joined to the sentence by semicolons. */
  notes: readonly string[];
  stated: Record<string, unknown>;
  found: Found;
  conditions: Record<string, unknown>;
  quantity: string | null;
  evidence: readonly string[];
  figure?: ProofFigure;
  suggestion?: string;
  /** The checks that the words allow when a person has to choose. */
  asks?: readonly Check[];
}

/** An outcome without evidence: the claim stays unproven and the sentence says why. */
export function unproven(
  why: string,
  quantity: string | null,
  stated: Record<string, unknown>,
  more: Partial<Outcome> = {},
): Outcome {
  return {
    verdict: 'unproven',
    probability: null,
    sentence: why.replace(/\.$/, ''),
    notes: [],
    stated,
    found: {},
    conditions: {},
    quantity,
    evidence: [],
    ...more,
  };
}

/** Unit and run that a value came from, with the run's conditions. */
export function conditionsOf(value: OperandValue): Record<string, unknown> {
  const { unit, run } = value;
  if (!run) return { unit: unit.id };
  const { stage, mode, signal, dimming } = run.conditions;
  return {
    unit: unit.id,
    run: run.id,
    stage,
    mode,
    signal,
    ...(dimming === undefined ? {} : { dimming }),
  };
}

/** Conditions of a comparison: the first operand's, and the other's beside them where they differ. */
export function conditionsOfBoth(a: OperandValue, b: OperandValue): Record<string, unknown> {
  const own = conditionsOf(a);
  const other = conditionsOf(b);
  return JSON.stringify(own) === JSON.stringify(other) ? own : { ...own, other };
}

/** Notes of several operands, each once, in order. */
export function notesOf(...values: readonly OperandValue[]): string[] {
  return [...new Set(values.flatMap((value) => value.notes))];
}

/** Evidence paths of all rows that a series rests on. */
export function evidenceUnion(sight: Sight, value: OperandValue, rows: readonly number[]): string[] {
  return value.run ? evidenceOfRows(sight, value.unit, value.run, rows) : [...value.evidence];
}

/** Found value and u, with the axis where an extreme stands. */
export function foundOf(value: OperandValue): Found {
  return {
    value: value.value,
    u: value.u ?? undefined,
    unit: value.unitOfMeasure || undefined,
    ...(value.axis === undefined ? {} : { axis: value.axis }),
    ...(value.over ? { over: true } : {}),
  } as Found;
}
