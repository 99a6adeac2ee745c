import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { exportDossier } from '../../main/dossier/exportDossier.ts';
import { readReadings } from '../../main/intake/readReadings.ts';
import type { Library } from '../../main/library/library.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';
import type { Run } from '../../shared/contract/run.ts';
import type { StoredClaim } from '../../shared/contract/storedClaim.ts';
import { filesBelow, freshFolder } from '../dossier/sampleDossier.ts';

const unit = { maker: 'Orrinvale', model: 'Hearth 55' };
const conditions: Run = {
  mode: 'Calm',
  stage: 'as-delivered',
  signal: 'SDR',
  target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
};
const meta = { title: 'Hearth 55', unit: 'hearth', state: 'draft' as const };

async function freshLibrary(clock?: () => Date): Promise<{ folder: string; file: string; library: Library }> {
  const folder = freshFolder();
  const file = join(folder, 'library.sqlite');
  const opened = await openLibrary(file, clock === undefined ? {} : { clock });
  if (!opened.ok) throw new Error(opened.faults[0]!.sentence);
  expect((await opened.value.saveUnit('hearth', unit)).ok).toBe(true);
  return { folder, file, library: opened.value };
}

async function readings(csv: string) {
  const read = await readReadings(Buffer.from(csv), 'test.csv');
  if (!read.ok) throw new Error(read.faults[0]!.sentence);
  return read.value;
}

test('a saved unit comes back, and its number texts survive an edit of another key', async () => {
  const { folder, library } = await freshLibrary();
  const saved = {
    ...unit,
    price: { amount: 1039.5, currency: 'GBP' },
    facts: { depth: { value: 71, unit: 'mm' } },
  };
  await library.saveUnit('hearth', saved);
  const read = await library.readUnit('hearth');
  expect(read.ok && read.value.unit).toEqual(saved);
  await exportDossier(library, join(folder, 'd'));
  expect(filesBelow(join(folder, 'd'))['units/hearth/unit.json']).toContain('"amount": 1039.5');
  await library.close();
});

test('new readings of a run leave the former ones as its superseded version', async () => {
  const { folder, library } = await freshLibrary();
  const first = await readings('series,stimulus,x,y,Y\ngreyscale,100,0.3127,0.3290,301.20\n');
  const second = await readings('series,stimulus,x,y,Y\ngreyscale,100,0.3127,0.3290,299\n');
  expect((await library.saveReadings('hearth', 'sdr', conditions, first)).ok).toBe(true);
  expect((await library.saveReadings('hearth', 'sdr', undefined, second)).ok).toBe(true);
  const evidence = await library.readUnit('hearth');
  expect(evidence.ok && evidence.value.runs.map((run) => run.readings.map(({ Y }) => Y))).toEqual([[299]]);
  await exportDossier(library, join(folder, 'd'));
  expect(filesBelow(join(folder, 'd'))['units/hearth/runs/sdr@1.csv']).toContain('301.20');
  expect((await library.verify()).findings).toEqual([]);
  await library.close();
});

test('a run whose conditions change is read again: codes under another range give other stimuli', async () => {
  const { library } = await freshLibrary();
  const file = await readings('series,code,x,y,Y\ngreyscale,940,0.3127,0.3290,300\n');
  await library.saveReadings('hearth', 'sdr', conditions, file);
  const stimulus = async (): Promise<number | undefined> => {
    const read = await library.readUnit('hearth');
    return read.ok ? read.value.runs[0]!.readings[0]!.stimulus : undefined;
  };
  expect(await stimulus()).toBe(100);
  expect(
    (await library.saveRun('hearth', 'sdr', { ...conditions, source: { bits: 10, range: 'full' } })).ok,
  ).toBe(true);
  expect(await stimulus()).toBeCloseTo((100 * 940) / 1023, 10);
  const refused = await library.saveRun('hearth', 'sdr', { ...conditions, source: { bits: 8 } });
  expect(refused.ok ? '' : refused.faults[0]!.sentence).toContain(
    '940 is not a code value of a 8-bit source',
  );
  await library.close();
});

test('the digest of a run follows what it says, not how it is written', async () => {
  const { library } = await freshLibrary();
  await library.saveReadings(
    'hearth',
    'a',
    conditions,
    await readings('series,stimulus,x,y,Y\ngreyscale,100,0.3,0.3,300\n'),
  );
  await library.saveReadings(
    'hearth',
    'b',
    { ...conditions },
    await readings('series,Y,stimulus,x,y\ngreyscale,300.00,100,0.30,0.30\n'),
  );
  await library.saveReadings(
    'hearth',
    'c',
    conditions,
    await readings('series,stimulus,x,y,Y\ngreyscale,100,0.3,0.3,301\n'),
  );
  const read = await library.readUnit('hearth');
  const [a, b, c] = read.ok ? read.value.runs.map(({ digest }) => digest) : [];
  expect(a).toMatch(/^[0-9a-f]{64}$/);
  expect(b).toBe(a);
  expect(c).not.toBe(a);
  await library.close();
});

test('an article saved by somebody else in between is not overwritten', async () => {
  const { library } = await freshLibrary();
  await library.createArticle('hearth-55', meta, 'One.');
  const change = { meta, claims: [], by: 'reviewer' };
  expect(await library.saveArticle('hearth-55', { ...change, markdown: 'Two.', revision: 1 })).toMatchObject({
    ok: true,
    value: { revision: 2 },
  });
  const stale = await library.saveArticle('hearth-55', { ...change, markdown: 'Three.', revision: 1 });
  expect(stale).toMatchObject({ ok: false, faults: [{ code: 'stale-revision' }] });
  expect(await library.readArticle('hearth-55')).toMatchObject({
    ok: true,
    value: { markdown: 'Two.', revision: 2 },
  });
  await library.close();
});

test('an article begins with the proofs that it is given', async () => {
  const { library } = await freshLibrary();
  const claim: StoredClaim = {
    id: 'c1',
    anchor: { exact: '742 cd/m²', prefix: 'It reaches ', suffix: '.', start: 11, end: 20 },
    origin: 'manual',
    check: null,
    opinion: true,
  };
  await library.createArticle('hearth-55', meta, 'It reaches 742 cd/m².', [claim]);
  expect(await library.readArticle('hearth-55')).toMatchObject({
    ok: true,
    value: { revision: 1, claims: [claim] },
  });
  await library.close();
});

test('claims come back as they were stored, and travel as a Web Annotation collection', async () => {
  const { folder, library } = await freshLibrary();
  const claim: StoredClaim = {
    id: 'c1',
    anchor: { exact: '742 cd/m²', prefix: 'we measured ', suffix: ' in a window', start: 12, end: 21 },
    origin: 'accepted',
    check: { kind: 'score', criterion: 'total', x: 7.5, conditions: { origin: {} } },
    proof: {
      verdict: 'holds',
      reason: 'It was 742.',
      digests: { sentence: 'a', check: 'b', house: 'c', evidence: 'd' },
      by: 'editor',
      at: '2026-10-02T10:00:00Z',
    },
  };
  const opinion: StoredClaim = { ...claim, id: 'c2', origin: 'manual', check: null, opinion: true };
  await library.createArticle('hearth-55', meta, 'Text.');
  await library.saveArticle('hearth-55', {
    meta,
    markdown: 'Text.',
    claims: [claim, opinion],
    revision: 1,
    by: 'editor',
  });
  const read = await library.readArticle('hearth-55');
  expect(read.ok && read.value.claims).toEqual([claim, opinion]);
  await exportDossier(library, join(folder, 'd'));
  const collection = JSON.parse(filesBelow(join(folder, 'd'))['articles/hearth-55.claims.jsonld']!);
  expect(collection).toMatchObject({
    type: 'AnnotationCollection',
    total: 2,
    first: {
      items: [
        {
          type: 'Annotation',
          target: {
            source: 'hearth-55.md',
            selector: [{ type: 'TextQuoteSelector' }, { type: 'TextPositionSelector', start: 12, end: 21 }],
          },
        },
        {},
      ],
    },
  });
  expect((await library.verify()).findings).toEqual([]);
  await library.close();
});

test('one client at a time holds the lease of an article; it lapses', async () => {
  let now = Date.parse('2026-10-02T10:00:00Z');
  const { library } = await freshLibrary(() => new Date(now));
  await library.createArticle('hearth-55', meta, '');
  const lease = async (client: string, release = false): Promise<boolean> => {
    const held = await library.leaseArticle('hearth-55', client, release);
    return held.ok && held.value;
  };
  expect([await lease('one'), await lease('two'), await lease('one')]).toEqual([true, false, true]);
  now += 16_000;
  expect(await lease('two')).toBe(true);
  expect(await lease('one')).toBe(false);
  await lease('two', true);
  expect(await lease('one')).toBe(true);
  await library.close();
});

test('the history is a chain that shows every change, and typing is told of once in ten minutes', async () => {
  let now = Date.parse('2026-10-02T10:00:00Z');
  const { file, library } = await freshLibrary(() => new Date(now));
  await library.createArticle('hearth-55', meta, '');
  let revision = 1;
  for (let minute = 0; minute < 12; minute += 1) {
    now += 60_000;
    await library.saveArticle('hearth-55', {
      meta,
      markdown: `Text ${minute}.`,
      claims: [],
      revision,
      by: 'reviewer',
    });
    revision += 1;
  }
  await library.saveArticle('hearth-55', {
    meta: { ...meta, state: 'with-editor' },
    markdown: 'Text 11.',
    claims: [],
    revision,
    by: 'reviewer',
  });
  expect((await library.listHistory()).map(({ what, by }) => `${what} by ${by}`)).toEqual([
    'unit-saved by bench',
    'article-created by bench',
    'text-changed by reviewer',
    'text-changed by reviewer',
    'state-changed by reviewer',
  ]);
  expect(await library.listHistory('articles/hearth-55')).toHaveLength(4);
  await library.close();
  const database = new Database(file);
  database.exec("UPDATE history SET line = replace(line, 'with-editor', 'released') WHERE number = 5");
  database.close();
  const reopened = await openLibrary(file);
  expect(reopened.ok && (await reopened.value.verify()).findings).toEqual([
    'History: line 5 was changed after it was written.',
  ]);
  if (reopened.ok) await reopened.value.close();
});

test('a reading or photo that was changed outside is found by verify', async () => {
  const { file, library } = await freshLibrary();
  await library.saveReadings(
    'hearth',
    'sdr',
    conditions,
    await readings('series,stimulus,x,y,Y\ngreyscale,100,0.3,0.3,300\n'),
  );
  await library.addPhoto('hearth', 'front.jpg', Buffer.from('photo'));
  await library.close();
  const database = new Database(file);
  database.exec("UPDATE reading SET cells = replace(cells, '300', '310')");
  database.exec("UPDATE photo SET content = x'00'");
  database.close();
  const reopened = await openLibrary(file);
  expect(reopened.ok && (await reopened.value.verify()).findings).toEqual([
    'units/hearth/runs/sdr: the readings or conditions were changed outside Nitproof.',
    'units/hearth/photos/front.jpg: the photo was changed outside Nitproof.',
  ]);
  if (reopened.ok) await reopened.value.close();
});

test('photos get a free name, a plain one, and come back byte for byte', async () => {
  const { library } = await freshLibrary();
  const bytes = Buffer.from([0xff, 0xd8, 0, 1]);
  const names = [];
  for (const name of ['front.jpg', 'front.jpg', '../../etc/evil.png']) {
    const added = await library.addPhoto('hearth', name, bytes);
    names.push(added.ok && added.value.name);
  }
  expect(names).toEqual(['front.jpg', 'front-2.jpg', 'evil.png']);
  const read = await library.readPhoto('hearth', 'front-2.jpg');
  expect(read.ok && Buffer.from(read.value.bytes).equals(bytes) && read.value.mime).toBe('image/jpeg');
  expect(await library.addPhoto('hearth', 'run.exe', bytes)).toMatchObject({ ok: false });
  await library.close();
});

test('an observation is added, changed and removed under its id', async () => {
  const { library } = await freshLibrary();
  await library.saveObservation('hearth', { id: 'b1', topic: 'blooming', severity: 1, note: 'subtitles' });
  await library.saveObservation('hearth', { id: 'b2', topic: 'banding', severity: 0, angle: -30 });
  await library.saveObservation('hearth', { id: 'b1', topic: 'blooming', severity: 2 });
  const read = await library.readUnit('hearth');
  expect(read.ok && read.value.observations).toEqual([
    { id: 'b1', topic: 'blooming', severity: 2 },
    { id: 'b2', topic: 'banding', severity: 0, angle: -30 },
  ]);
  expect((await library.removeObservation('hearth', 'b1')).ok).toBe(true);
  expect((await library.removeObservation('hearth', 'b1')).ok).toBe(false);
  await library.close();
});

test('the shelf counts what each unit has', async () => {
  const { library } = await freshLibrary();
  await library.saveRun('hearth', 'sdr', { ...conditions, taken: '2026-09-15T10:20:00+01:00' });
  await library.createArticle('hearth-55', meta, 'It reaches 742 cd/m² at once.');
  expect(await library.listShelf()).toMatchObject({
    units: [{ id: 'hearth', runs: 1, observations: 0, photos: 0, latestRun: '2026-09-15T10:20:00+01:00' }],
    articles: [{ id: 'hearth-55', state: 'draft', words: 7, revision: 1 }],
  });
  await library.close();
});

test('a backup of an open library holds everything that was acknowledged', async () => {
  const { folder, library } = await freshLibrary();
  await library.createArticle('hearth-55', meta, 'Kept.');
  expect(await library.backup(join(folder, 'copy'))).toMatchObject({ ok: true });
  await library.close();
  const copy = await openLibrary(join(folder, 'copy'), { readOnly: true });
  expect(copy.ok && (await copy.value.readArticle('hearth-55'))).toMatchObject({
    ok: true,
    value: { markdown: 'Kept.' },
  });
  if (copy.ok) await copy.value.close();
});
