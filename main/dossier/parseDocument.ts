import type { z } from 'zod';
import { type Fault, fail, type Result, succeed } from '../../shared/contract/fault.ts';
import { formatJson, type JsonNode, parseJson, placeOfPath, plainValue } from './jsonNode.ts';

/** A JSON file of a dossier: its canonical text (number texts and key order kept) and its typed value. */
export interface Document<T> {
  /** As an export writes it */
  text: string;
  /** As it came; the node's offsets count in it */
  source: string;
  node: JsonNode;
  value: T;
}

/**
 * Parses and checks one JSON file. Errors: `bad-input`, one fault a finding, each with file, line, column and
 * the path of the value.
 */
export function parseDocument<T>(text: string, file: string, schema: z.ZodType<T>): Result<Document<T>> {
  const parsed = parseJson(text, file);
  if (!parsed.ok) return parsed;
  const checked = checkValue(plainValue(parsed.value), schema);
  if (!checked.success)
    return fail(
      ...checked.error.issues.map(
        (issue): Fault => ({
          code: 'bad-input',
          sentence: issueSentence(issue.path, issue.message),
          place: placeOfPath(parsed.value, issue.path, text, file),
        }),
      ),
    );
  return succeed({ text: formatJson(parsed.value), source: text, node: parsed.value, value: checked.data });
}

/** The typed value of a JSON text that was checked on its way in, as the library holds it. */
export function documentValue<T>(text: string, schema: z.ZodType<T>): T {
  const checked = checkValue(JSON.parse(text), schema);
  if (!checked.success) throw checked.error;
  return checked.data;
}

/** A member that is null where a value is asked for counts as missing, as files of other hands often have it. */
function checkValue<T>(value: unknown, schema: z.ZodType<T>): z.ZodSafeParseResult<T> {
  const checked = schema.safeParse(value);
  if (checked.success) return checked;
  const again = schema.safeParse(withoutNulls(value));
  return again.success ? again : checked;
}

function withoutNulls(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutNulls);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, member]) => member !== null)
      .map(([key, member]) => [key, withoutNulls(member)]),
  );
}

function issueSentence(path: readonly PropertyKey[], message: string): string {
  const where = path.length > 0 ? `"${path.map(String).join('.')}": ` : '';
  return `${where}${message}.`;
}
