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
  const checked = schema.safeParse(plainValue(parsed.value));
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

function issueSentence(path: readonly PropertyKey[], message: string): string {
  const where = path.length > 0 ? `"${path.map(String).join('.')}": ` : '';
  return `${where}${message}.`;
}
