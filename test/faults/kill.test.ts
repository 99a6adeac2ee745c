import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { freshFolder } from '../dossier/sampleDossier.ts';

const writer = join(import.meta.dirname, 'writer.ts');

/** Linear congruential generator (Numerical Recipes constants), so that every run kills at the same times. */
function seededDelays(seed: number, count: number, low: number, high: number): number[] {
  let state = seed;
  return Array.from({ length: count }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return low + (state / 2 ** 32) * (high - low);
  });
}

/** Runs the writer until `delay` ms after its first acknowledgement, kills it, and gives its lines. */
function writeUntilKilled(file: string, delay: number): Promise<string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [writer, file], { stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    let error = '';
    child.stdout.on('data', (chunk: Buffer) => {
      if (out === '') setTimeout(() => child.kill('SIGKILL'), delay);
      out += chunk.toString();
    });
    child.stderr.on('data', (chunk: Buffer) => {
      error += chunk.toString();
    });
    child.on('exit', (_code, signal) => {
      if (signal !== 'SIGKILL') reject(new Error(error));
      else
        resolve(
          out
            .slice(0, out.lastIndexOf('\n') + 1)
            .split('\n')
            .filter(Boolean),
        );
    });
  });
}

test('nothing that was acknowledged is lost when the process is killed in the middle of writing', async () => {
  const file = join(freshFolder(), 'library.sqlite');
  const begun = await openLibrary(file);
  if (!begun.ok) throw new Error('library');
  await begun.value.saveUnit('hearth', { maker: 'Orrinvale', model: 'Hearth 55' });
  await begun.value.createArticle('hearth-55', { title: 'T', unit: 'hearth', state: 'draft' }, '');
  await begun.value.close();

  const observations = new Set<string>();
  for (const delay of seededDelays(55, 8, 5, 400)) {
    const lines = await writeUntilKilled(file, delay);
    const opened = await openLibrary(file);
    if (!opened.ok) throw new Error(opened.faults[0]!.sentence);
    const library = opened.value;
    expect((await library.verify()).findings).toEqual([]);

    const last = lines.findLast((line) => line.startsWith('article '))!.split(' ');
    const article = await library.readArticle('hearth-55');
    const unit = await library.readUnit('hearth');
    if (!article.ok || !unit.ok) throw new Error('unreadable');
    const ahead = article.value.revision - Number(last[1]);
    expect(ahead === 0 || ahead === 1).toBe(true);
    if (ahead === 0) expect(article.value.markdown).toBe(last.slice(2).join(' '));

    for (const line of lines) if (line.startsWith('observation ')) observations.add(line.split(' ')[1]!);
    const kept = new Set(unit.value.observations.map(({ id }) => id));
    expect([...observations].filter((id) => !kept.has(id))).toEqual([]);

    const brought = lines.findLast((line) => line.startsWith('readings '));
    const run = unit.value.runs[0];
    if (brought !== undefined)
      expect(run!.readings[0]!.Y).toBeGreaterThanOrEqual(Number(brought.split(' ')[1]));
    if (run !== undefined) expect(new Set(run.readings.map(({ Y }) => Y)).size).toBe(1);
    if (run !== undefined) expect(run.readings).toHaveLength(1500);
    await library.close();
  }
  expect(observations.size).toBeGreaterThan(8);
});
