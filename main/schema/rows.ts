import { observationSchema } from '../../shared/contract/observation.ts';
import { observationColumns } from '../intake/observations.ts';
import { type ColumnKind, readingColumns } from '../intake/readingColumns.ts';

type JsonSchema = Record<string, unknown>;

/** One row of `runs/<run>.csv`, its cells typed; names are case-sensitive and unknown columns are kept as text. */
export function readingRowSchema(): JsonSchema {
  return {
    type: 'object',
    properties: Object.fromEntries([...readingColumns].map(([name, kind]) => [name, columnSchema(kind)])),
    required: ['series'],
    additionalProperties: { type: 'string' },
  };
}

/** One row of `observations.csv`, its cells typed. */
export function observationRowSchema(): JsonSchema {
  const { required } = observationSchema.toJSONSchema() as { required?: string[] };
  const { properties } = observationSchema.toJSONSchema() as { properties: Record<string, JsonSchema> };
  return {
    type: 'object',
    properties: Object.fromEntries(observationColumns.map((name) => [name, properties[name] ?? {}])),
    required: required ?? [],
    additionalProperties: { type: 'string' },
  };
}

function columnSchema(kind: ColumnKind): JsonSchema {
  switch (kind.holds) {
    case 'number':
      return {
        type: 'number',
        description: kind.what,
        ...(kind.low === undefined ? {} : { [kind.lowOpen ? 'exclusiveMinimum' : 'minimum']: kind.low }),
        ...(kind.high === undefined ? {} : { maximum: kind.high }),
      };
    case 'word':
      return { type: 'string', enum: kind.words };
    case 'place':
      return { type: 'string', pattern: '^r[1-9]c[1-9]$' };
    case 'time':
      return { type: 'string', description: 'time, RFC 3339' };
    case 'text':
      return { type: 'string' };
  }
}
