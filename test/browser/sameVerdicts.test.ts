import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';

const root = join(import.meta.dirname, '..', '..');
let sitting: Sitting;
beforeAll(async () => {
  sitting = await sitDown();
});
afterAll(() => sitting?.close());

interface Report {
  articles: { sentences: { claims: { reason: string; verdict: string }[] }[] }[];
}

it('the window gives the verdicts and reasons of the command line, word for word', async () => {
  const run = spawnSync(
    process.execPath,
    [
      join(root, 'main/hosts/cli.ts'),
      'check',
      join(root, 'main/demo/dossier'),
      '--article',
      'vane-50',
      '--json',
    ],
    { encoding: 'utf8' },
  );
  const report = JSON.parse(run.stdout) as Report;
  const reasons = report.articles[0]!.sentences.flatMap(({ claims }) => claims.map(({ reason }) => reason));
  expect(reasons.length).toBeGreaterThan(40);
  const page = await sitting.openWindow({ path: '#/desk/vane-50' });
  await page.getByText('Too close to call', { exact: true }).first().waitFor();
  await expect.poll(() => page.getByText('Working', { exact: true }).count(), { timeout: 30_000 }).toBe(0);
  // Spaces and raised figures are typeset, not worded.
  const plain = (text: string) => text.replace(/\s+/g, '').replaceAll('²', '2');
  const shown = plain((await page.locator('main').textContent()) ?? '');
  expect(reasons.filter((reason) => !shown.includes(plain(reason)))).toEqual([]);
});
