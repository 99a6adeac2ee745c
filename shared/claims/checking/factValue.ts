import type { Operand, StatedConditions } from '../../contract/check.ts';
import type { UnitEvidence } from '../../contract/evidence.ts';
import type { FactStatement } from '../../contract/unit.ts';
import { fold } from './fold.ts';
import type { OperandReading } from './operandValue.ts';
import type { Sight } from './sight.ts';
import { nameOfFact, nameOfUnit } from './terms.ts';

/** The statements that a sentence about a fact is held against. */
export type FactReading =
  | {
      ok: true;
      unit: UnitEvidence;
      statements: readonly FactStatement[];
      evidence: readonly string[];
      notes: readonly string[];
    }
  | { ok: false; reason: string; asks?: boolean };

type Wanted = { key: string; by?: string; conditions: StatedConditions };

/**
 * What the maker says counts only where the sentence says so, or where nobody else has said anything. A run's
 * quantity outranks a statement `measured`. Another size answers with its own facts alone.
 */
export function readStatements(sight: Sight, { key, by, conditions }: Wanted): FactReading {
  const unit = sight.unit(conditions.unit ?? sight.own);
  if (!unit) return { ok: false, reason: `The library has no unit ${conditions.unit ?? sight.own}.` };
  const inches = conditions.variantInches;
  const isVariant = inches !== undefined && inches !== unit.unit.size?.diagonal_in;
  const name = isVariant ? `${inches}-inch size of the ${nameOfUnit(unit)}` : nameOfUnit(unit);
  const all = sight.facts(unit, key, inches);
  const evidence = [`${unit.id === sight.own ? '' : `unit/${unit.id}/`}fact/${key}`];
  const what = nameOfFact(key);
  if (by !== undefined) {
    const statements = all.filter((statement) => fold(statement.by ?? '') === fold(by));
    if (statements.length > 0) return { ok: true, unit, statements, evidence, notes: [] };
    return { ok: false, reason: `No statement by the ${by} on the ${what} of the ${name} is on file.` };
  }
  const outranking = isVariant ? undefined : runQuantity(sight, unit, key, conditions);
  const others = all.filter(({ by: who }) => who !== 'maker' && !(who === 'measured' && outranking));
  if (outranking && others.length === 0)
    return {
      ok: true,
      unit,
      statements: [{ value: outranking.value, unit: outranking.unit, by: 'measured' }],
      evidence: [`${unit.id === sight.own ? '' : `unit/${unit.id}/`}run/${outranking.run}#${outranking.row}`],
      notes: [],
    };
  if (others.length > 0) return { ok: true, unit, statements: others, evidence, notes: [] };
  if (all.length > 0) return { ok: true, unit, statements: all, evidence, notes: ['only the maker says so'] };
  return { ok: false, reason: `The ${what} of the ${name} is not on file.` };
}

/** A single value that a run gives under a fact's key (`lag.game` is the lag of the run in mode Game). */
function runQuantity(sight: Sight, unit: UnitEvidence, key: string, conditions: StatedConditions) {
  const [stem, mode] = /^lag\.(.+)$/.test(key) ? ['lag', key.slice(4)] : [key, undefined];
  const found = sight
    .runs(unit, stem)
    .filter(({ run }) => mode === undefined || fold(run.conditions.mode) === fold(mode))
    .filter(({ run }) => conditions.stage === undefined || run.conditions.stage === conditions.stage)
    .filter(({ measurement }) => measurement.state === 'measured' && measurement.values.length === 1);
  if (found.length !== 1) return undefined;
  const { run } = found[0]!;
  const measurement = sight.measurement(unit, run, stem);
  if (measurement?.state !== 'measured') return undefined;
  return {
    run: run.id,
    row: measurement.values[0]!.rows[0] ?? 1,
    value: measurement.values[0]!.value,
    unit: measurement.unit,
  };
}

/** A fact as a number, for comparisons and orders. Statements that disagree settle nothing. */
export function readFact(sight: Sight, operand: Extract<Operand, { type: 'fact' }>): OperandReading {
  const reading = readStatements(sight, operand);
  if (!reading.ok) return reading;
  const { unit, statements, evidence, notes } = reading;
  const values = [...new Set(statements.map(({ value }) => value))];
  if (values.length > 1)
    return {
      ok: false,
      asks: true,
      reason: `The statements on the ${nameOfFact(operand.key)} of the ${nameOfUnit(unit)} disagree (${statements
        .map(({ value, by }) => `${by ?? 'on file'}: ${String(value)}`)
        .join(', ')}).`,
    };
  const value = values[0];
  if (typeof value !== 'number')
    return {
      ok: false,
      reason: `The ${nameOfFact(operand.key)} of the ${nameOfUnit(unit)} is not a number.`,
    };
  return {
    ok: true,
    value: {
      id: `fact.${operand.key}`,
      unit,
      value,
      u: null,
      over: false,
      unitOfMeasure: statements[0]!.unit ?? '',
      stat: 'scalar',
      levels: [],
      draw: null,
      drawCount: 0,
      pending: false,
      evidence,
      notes,
    },
  };
}
