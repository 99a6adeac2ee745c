import { createHash } from 'node:crypto';
import type Database from 'better-sqlite3';
import { z } from 'zod';
import { canonicalJson } from '../../../shared/claims/canonical.ts';
import type { HistoryEvent } from '../library.ts';

/**
 * One line of `history.jsonl`. `hash` is SHA-256 (hex) over the line's other members in canonical JSON, `previous`
 * the hash of the line before (64 zeros for the first): no line can be changed, dropped or moved unnoticed.
 */
export const historyLineSchema = z.looseObject({
  at: z.string(),
  by: z.string(),
  what: z.string(),
  of: z.string(),
  previous: z.string().regex(/^[0-9a-f]{64}$/),
  hash: z.string().regex(/^[0-9a-f]{64}$/),
});

const origin = '0'.repeat(64);

export function appendHistory(database: Database.Database, event: HistoryEvent): void {
  const last = database.prepare('SELECT line FROM history ORDER BY number DESC LIMIT 1').pluck().get() as
    | string
    | undefined;
  const previous = last === undefined ? origin : (JSON.parse(last) as { hash: string }).hash;
  const line = { ...event, previous };
  database
    .prepare('INSERT INTO history (line) VALUES (?)')
    .run(JSON.stringify({ ...line, hash: hashOf(line) }));
}

/** What is wrong with a chain, by line number from 1; an empty list is a whole chain. */
export function checkHistory(lines: readonly string[]): { line: number; sentence: string }[] {
  const findings: { line: number; sentence: string }[] = [];
  let previous = origin;
  for (const [index, text] of lines.entries()) {
    const parsed = parseLine(text);
    if (parsed === null) {
      findings.push({ line: index + 1, sentence: 'is not a history event' });
      return findings;
    }
    const { hash, ...rest } = parsed;
    if (parsed.previous !== previous)
      findings.push({ line: index + 1, sentence: 'does not follow from the line before it' });
    if (hashOf(rest) !== hash)
      findings.push({ line: index + 1, sentence: 'was changed after it was written' });
    previous = hash;
  }
  return findings;
}

function parseLine(text: string): z.infer<typeof historyLineSchema> | null {
  try {
    const parsed = historyLineSchema.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

function hashOf(line: object): string {
  return createHash('sha256').update(canonicalJson(line)).digest('hex');
}
