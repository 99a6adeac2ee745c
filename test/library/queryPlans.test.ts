import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openDatabase } from '../../main/library/sqlite/openDatabase.ts';
import { freshFolder } from '../dossier/sampleDossier.ts';

test.each([
  'SELECT cells FROM reading WHERE run = 1 ORDER BY row',
  "SELECT key FROM run WHERE unit = 'u' AND id = 'r' AND version = 0",
  "SELECT key FROM run WHERE unit = 'u' AND version BETWEEN 0 AND 9 ORDER BY id, version",
  "SELECT digest FROM photo WHERE unit = 'u' AND name = 'n'",
  "SELECT line ->> '$.at' FROM history WHERE line ->> '$.of' = 'a' ORDER BY number DESC LIMIT 1",
])('%s searches an index and reads no whole table', async (sql) => {
  const opened = await openDatabase(join(freshFolder(), 'a.sqlite'));
  if (!opened.ok) throw new Error('library');
  const plan = opened.value.prepare(`EXPLAIN QUERY PLAN ${sql}`).all() as { detail: string }[];
  expect(plan.map(({ detail }) => detail).join('; ')).toMatch(/^SEARCH /);
  expect(plan.some(({ detail }) => detail.startsWith('SCAN'))).toBe(false);
  opened.value.close();
});
