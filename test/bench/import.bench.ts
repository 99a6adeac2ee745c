/*
 * 100,000 readings from a file into the library and back, and how long the longest piece of it holds up typing.
 * Run: node test/bench/import.bench.ts
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { exportDossier } from '../../main/dossier/exportDossier.ts';
import { importDossier } from '../../main/dossier/importDossier.ts';
import { readReadings } from '../../main/intake/readReadings.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { createWorkbench } from '../../main/workbench.ts';

const count = 100_000;
const folder = mkdtempSync(join(tmpdir(), 'nitproof-bench-'));
const lines = ['series,stimulus,x,y,Y,note'];
for (let row = 0; row < count; row += 1)
  lines.push(
    `greyscale,${row % 101},0.${3100 + (row % 90)},0.3290,${(row * 0.01 + 0.05).toFixed(3)},n${row}`,
  );
const bytes = Buffer.from(`${lines.join('\n')}\n`);
const conditions = {
  mode: 'Calm',
  stage: 'as-delivered',
  signal: 'SDR',
  target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
};

async function timed<T>(what: string, work: () => T | Promise<T>): Promise<T> {
  let longest = 0;
  let last = performance.now();
  const pulse = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 1);
  const start = performance.now();
  const value = await work();
  const milliseconds = performance.now() - start;
  longest = Math.max(longest, performance.now() - last);
  clearInterval(pulse);
  console.log(
    `${what.padEnd(44)} ${milliseconds.toFixed(0).padStart(6)} ms, longest piece ${longest.toFixed(0)} ms`,
  );
  return value;
}

console.log(`${count} readings, ${(bytes.length / 1e6).toFixed(1)} MB`);
await timed('papaparse alone', () => Papa.parse(bytes.toString('utf8'), { delimiter: ',' }).data.length);
const pause = async (): Promise<boolean> => {
  await new Promise((resolve) => setImmediate(resolve));
  return true;
};
await timed('read and type the file', () => readReadings(bytes, 'long.csv', { progress: pause }));

const opened = await openLibrary(join(folder, 'a.sqlite'));
if (!opened.ok) throw new Error(opened.faults[0]!.sentence);
const workbench = createWorkbench(opened.value);
await workbench.answer('unit.save', { unit: 'hearth', content: { maker: 'Orrinvale', model: 'Hearth 55' } });
await timed('readings.bring through the door', () =>
  workbench.answer('readings.bring', {
    unit: 'hearth',
    run: 'sdr',
    conditions,
    fileName: 'long.csv',
    base64: bytes.toString('base64'),
    job: 'bench',
  }),
);
await timed('evidence.read, first', () => workbench.answer('evidence.read', {}));
await timed('evidence.read, again', () => workbench.answer('evidence.read', {}));
await timed('shelf.list', () => workbench.answer('shelf.list', {}));
await timed('export as a dossier', () => exportDossier(opened.value, join(folder, 'dossier')));
const second = await openLibrary(join(folder, 'b.sqlite'));
if (!second.ok) throw new Error(second.faults[0]!.sentence);
await timed('import the dossier', () =>
  importDossier(join(folder, 'dossier'), second.value, { progress: pause }),
);
await second.value.close();
await workbench.close();
rmSync(folder, { recursive: true, force: true });
