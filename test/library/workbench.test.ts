import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { createWorkbench } from '../../main/workbench.ts';
import { defaultHouse } from '../../shared/claims/house/defaults.ts';
import type { DoorEvent, Workbench } from '../../shared/contract/door.ts';
import { foreignFiles, freshFolder, writeFiles } from '../dossier/sampleDossier.ts';

async function freshWorkbench(): Promise<{ folder: string; workbench: Workbench; events: DoorEvent[] }> {
  const folder = freshFolder();
  const library = await openLibrary(join(folder, 'library.sqlite'));
  if (!library.ok) throw new Error('library');
  const workbench = createWorkbench(library.value);
  onTestFinished(() => workbench.close());
  const events: DoorEvent[] = [];
  workbench.subscribe((event) => events.push(event));
  await workbench.answer('unit.save', {
    unit: 'hearth',
    content: { maker: 'Orrinvale', model: 'Hearth 55' },
  });
  return { folder, workbench, events };
}

const conditions = {
  mode: 'Calm',
  stage: 'as-delivered',
  signal: 'SDR',
  target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
};

function manyReadings(count: number): string {
  const lines = ['series,stimulus,x,y,Y'];
  for (let row = 0; row < count; row += 1)
    lines.push(`greyscale,${row % 101},0.${3100 + (row % 90)},0.3290,${(row * 0.01 + 0.05).toFixed(3)}`);
  return Buffer.from(lines.join('\n')).toString('base64');
}

test('a request that is not in the contract, or not in its form, comes back as a fault', async () => {
  const { workbench } = await freshWorkbench();
  expect(await workbench.answer('unit.burn' as 'unit.read', {})).toMatchObject({
    ok: false,
    faults: [{ code: 'bad-input', sentence: 'There is no request "unit.burn".' }],
  });
  expect(await workbench.answer('unit.read', { unit: '../secret' })).toMatchObject({
    ok: false,
    faults: [{ code: 'bad-input' }],
  });
  expect(await workbench.answer('toString' as 'unit.read', {})).toMatchObject({ ok: false });
});

test('readings come in with notes, and every window hears of it', async () => {
  const { workbench, events } = await freshWorkbench();
  const csv =
    'series;stimulus;x;y;Y\ngreyscale;100;0,3127;0,3290;301,20\ngreyscale;100;0,3127;0,3290;301,20\n';
  const reply = await workbench.answer('readings.bring', {
    unit: 'hearth',
    run: 'sdr',
    conditions,
    fileName: 'ramp.csv',
    base64: Buffer.from(csv).toString('base64'),
    job: 'j1',
  });
  expect(reply).toMatchObject({
    ok: true,
    value: { rows: 2, notes: [expect.stringContaining('Identical')] },
  });
  expect(events.at(-1)).toMatchObject({ type: 'job', job: 'j1', state: 'done' });
  expect(events).toContainEqual({ type: 'changed', what: 'unit', id: 'hearth', revision: 2 });
  const unit = await workbench.answer('unit.read', { unit: 'hearth' });
  expect(unit.ok && unit.value.runs[0]!.readings[0]).toMatchObject({ x: 0.3127, Y: 301.2, stimulus: 100 });
});

test('a file without a series column is read as the series that the person names', async () => {
  const { workbench } = await freshWorkbench();
  const file = {
    unit: 'hearth',
    run: 'sdr',
    conditions,
    fileName: 'ramp.csv',
    base64: Buffer.from('stimulus,x,y,Y\n100,0.3127,0.3290,300\n').toString('base64'),
  };
  expect(await workbench.answer('readings.bring', { ...file, job: 'j1' })).toMatchObject({ ok: false });
  expect(await workbench.answer('readings.bring', { ...file, series: 'greyscale', job: 'j2' })).toMatchObject(
    {
      ok: true,
      value: { rows: 1 },
    },
  );
});

test('faulty readings leave the run as it was, and the job fails with the faults', async () => {
  const { workbench, events } = await freshWorkbench();
  const bring = (csv: string, job: string) =>
    workbench.answer('readings.bring', {
      unit: 'hearth',
      run: 'sdr',
      conditions,
      fileName: 'ramp.csv',
      base64: Buffer.from(csv).toString('base64'),
      job,
    });
  await bring('series,stimulus,x,y,Y\ngreyscale,100,0.3,0.3,300\n', 'good');
  const before = await workbench.answer('unit.read', { unit: 'hearth' });
  expect(await bring('series,stimulus,x,y,Y\ngreyscale,100,0.3,0.3,-1\n', 'bad')).toMatchObject({
    ok: false,
    faults: [{ place: { file: 'ramp.csv', line: 2, column: 23 } }],
  });
  expect(events.at(-1)).toMatchObject({
    type: 'job',
    job: 'bad',
    state: 'failed',
    faults: [{ code: 'bad-input' }],
  });
  expect(await workbench.answer('unit.read', { unit: 'hearth' })).toEqual(before);
});

test('a cancelled import says cancelled and leaves nothing behind', async () => {
  const { workbench, events } = await freshWorkbench();
  let cancelled: unknown;
  workbench.subscribe((event) => {
    if (event.type === 'job' && event.state === 'running' && event.done > 55 && cancelled === undefined)
      cancelled = workbench.answer('job.cancel', { job: 'j1' });
  });
  const reply = await workbench.answer('readings.bring', {
    unit: 'hearth',
    run: 'sdr',
    conditions,
    fileName: 'long.csv',
    base64: manyReadings(60_000),
    job: 'j1',
  });
  expect(reply).toMatchObject({ ok: false, faults: [{ code: 'cancelled' }] });
  expect(await cancelled).toEqual({ ok: true, value: { cancelled: true } });
  expect(events.at(-1)).toMatchObject({ type: 'job', state: 'cancelled' });
  const shelf = await workbench.answer('shelf.list', {});
  expect(shelf.ok && shelf.value.units[0]!.runs).toBe(0);
});

test('typing goes on while 60,000 readings come in', async () => {
  const { workbench } = await freshWorkbench();
  await workbench.answer('article.create', {
    article: 'hearth-55',
    meta: { title: 'T', unit: 'hearth', state: 'draft' },
    markdown: '',
  });
  let done = false;
  const bringing = workbench
    .answer('readings.bring', {
      unit: 'hearth',
      run: 'sdr',
      conditions,
      fileName: 'long.csv',
      base64: manyReadings(60_000),
      job: 'j1',
    })
    .finally(() => {
      done = true;
    });
  let revision = 1;
  while (!done) {
    const saved = await workbench.answer('article.save', {
      article: 'hearth-55',
      revision,
      meta: { title: 'T', unit: 'hearth', state: 'draft' },
      markdown: `Word ${revision}`,
      claims: [],
      by: 'reviewer',
    });
    if (!saved.ok) throw new Error(saved.faults[0]!.sentence);
    revision = saved.value.revision;
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  expect(await bringing).toMatchObject({ ok: true, value: { rows: 60_000 } });
  expect(revision).toBeGreaterThan(5);
});

test('the shipped house words apply until the house has its own', async () => {
  const { workbench } = await freshWorkbench();
  expect(await workbench.answer('house.read', {})).toEqual({
    ok: true,
    value: { house: defaultHouse, scoreSheet: null },
  });
  const house = { ...defaultHouse, version: 1, level: 0.9 };
  await workbench.answer('house.save', { house });
  expect(await workbench.answer('house.read', {})).toEqual({ ok: true, value: { house, scoreSheet: null } });
});

test('a dossier comes in and goes out through the door', async () => {
  const { folder, workbench } = await freshWorkbench();
  const from = writeFiles(join(folder, 'd'), foreignFiles);
  expect(await workbench.answer('dossier.import', { folder: from, job: 'in' })).toMatchObject({
    ok: true,
    value: {
      units: 1,
      articles: 1,
      notes: [
        'notes.txt is not part of the format and is kept as it is.',
        expect.stringContaining('comment'),
      ],
    },
  });
  expect(await workbench.answer('dossier.export', { folder: join(folder, 'out'), job: 'out' })).toMatchObject(
    { ok: true },
  );
  const evidence = await workbench.answer('evidence.read', {});
  expect(evidence.ok && evidence.value.units.map(({ id }) => id)).toEqual(['hearth', 'orrinvale-hearth-55']);
});

test('the protocol knows what is there, and warns where work can hurt', async () => {
  const { folder, workbench } = await freshWorkbench();
  await workbench.answer('dossier.import', {
    folder: writeFiles(join(folder, 'd'), foreignFiles),
    job: 'in',
  });
  const reply = await workbench.answer('protocol.read', { unit: 'orrinvale-hearth-55' });
  const protocol = (reply.ok ? reply.value : null) as {
    warmUpMinutes: number;
    cautions: string[];
    steps: { id: string; done: boolean; foundIn: string[]; cautions: string[] }[];
  };
  const step = (id: string) => protocol.steps.find((entry) => entry.id === id);
  expect(protocol.warmUpMinutes).toBe(45);
  expect(step('greyscale-sdr')).toMatchObject({ done: true, foundIn: ['run/sdr-calm'] });
  expect(step('blooming')).toMatchObject({ done: true, foundIn: ['observation/b1'] });
  expect(step('greyscale-hdr')).toMatchObject({ done: false, foundIn: [] });
  expect(step('flicker')!.cautions.join()).toContain('photosensitive epilepsy');
  expect(step('window-hdr')!.cautions.join()).toContain('leave an image');
  expect(step('near-black')).toBeUndefined();
  const handling = protocol.cautions.join('\n');
  for (const words of [
    'Two people',
    'tip',
    'wall mount',
    'licensed electrician',
    'local codes',
    'Do not open the set',
  ])
    expect(handling).toContain(words);
});

test('the protocol finds an observation whatever the spelling of its topic', async () => {
  const { workbench } = await freshWorkbench();
  await workbench.answer('unit.save', {
    unit: 'hearth',
    content: { maker: 'Orrinvale', model: 'Hearth 55', panel: 'LCD IPS' },
  });
  await workbench.answer('observation.save', {
    unit: 'hearth',
    observation: { id: 'o1', topic: 'Dirty screen', severity: 1 },
  });
  const reply = await workbench.answer('protocol.read', { unit: 'hearth' });
  const steps = reply.ok ? reply.value.steps : [];
  expect(steps.find(({ id }) => id === 'dirty-screen')).toMatchObject({
    done: true,
    foundIn: ['observation/o1'],
  });
});

test('the history of a run keeps what its conditions said before a change', async () => {
  const { workbench } = await freshWorkbench();
  const instrument = { name: 'bench colorimeter', u_luminance_percent: 2 };
  const save = (more: object) =>
    workbench.answer('run.save', { unit: 'hearth', run: 'sdr', conditions: { ...conditions, ...more } });
  await save({ instrument });
  await save({ instrument: { ...instrument, u_luminance_percent: 4 }, room_lux: 0.1 });
  const reply = await workbench.answer('history.list', { of: 'units/hearth/runs/sdr' });
  const events = reply.ok ? reply.value : [];
  expect(events.map(({ what, before }) => [what, before])).toEqual([
    ['run-saved', undefined],
    ['run-saved', { instrument, room_lux: null }],
  ]);
});
