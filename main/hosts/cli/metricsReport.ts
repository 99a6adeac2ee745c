import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { Estimate, Measurement } from '../../../shared/contract/measurement.ts';
import type { Facts } from '../../../shared/contract/unit.ts';

/** A number as it leaves: 6 significant digits, no negative zero, no residue of rounding, which differs between hosts. */
function leaving(value: number): number {
  return Math.abs(value) < 1e-11 ? 0 : Number(value.toPrecision(6));
}

type JsonEstimate = { value: number; u?: number };
type Reason = { undefined: string };
type JsonMeasurement =
  | Reason
  | { over: number }
  | {
      unit: string;
      values: (JsonEstimate & { axis?: number | string })[];
      average?: JsonEstimate | Reason;
      max?: JsonEstimate | Reason;
    };

export interface MetricsReport {
  format: 'nitproof-metrics';
  version: 1;
  unit: string;
  runs: Record<string, Record<string, JsonMeasurement>>;
  facts: Facts;
}

/** The `metrics --json` report as `formats.md` defines it. Runs and facts by id; quantities in the catalogue's order. */
export function metricsReport(
  { id, unit, runs }: UnitEvidence,
  measured: ReadonlyMap<string, ReadonlyMap<string, Measurement>>,
): MetricsReport {
  const facts: Facts = {};
  const { amount, currency, on } = unit.price ?? {};
  if (amount !== undefined)
    facts.price = { value: amount, unit: currency as string, ...(on === undefined ? {} : { on }) };
  for (const [key, statements] of Object.entries(unit.facts ?? {}).sort(([one], [other]) =>
    one < other ? -1 : 1,
  ))
    facts[key] = statements;
  return {
    format: 'nitproof-metrics',
    version: 1,
    unit: id,
    runs: Object.fromEntries(
      runs.map((run) => [
        run.id,
        Object.fromEntries([...(measured.get(run.id) ?? [])].map(([quantity, m]) => [quantity, jsonOf(m)])),
      ]),
    ),
    facts,
  };
}

const uncounted: Reason = { undefined: 'no level counts: all are too dark, too low or from the roll-off up' };
const noneCounts = { average: uncounted, max: uncounted };

function jsonOf(measurement: Measurement): JsonMeasurement {
  if (measurement.state === 'undefined') return { undefined: measurement.undefined };
  if (measurement.state === 'over') return { over: leaving(measurement.over) };
  const { unit, values } = measurement;
  const { average, max } = values.some(({ counts }) => counts) ? measurement : noneCounts;
  return {
    unit,
    values: values.map((value) => ({
      ...(value.axis === undefined
        ? {}
        : { axis: typeof value.axis === 'number' ? leaving(value.axis) : value.axis }),
      ...estimateOf(value),
    })),
    ...(average === undefined ? {} : { average: 'value' in average ? estimateOf(average) : average }),
    ...(max === undefined ? {} : { max: 'value' in max ? estimateOf(max) : max }),
  };
}

function estimateOf({ value, u }: Estimate): JsonEstimate {
  return { value: leaving(value), ...(u === null ? {} : { u: leaving(u) }) };
}
