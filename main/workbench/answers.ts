import { resolve } from 'node:path';
import type { z } from 'zod';
import { defaultHouse } from '../../shared/claims/house/defaults.ts';
import type { DoorEvent, door, RequestName, RequestReply } from '../../shared/contract/door.ts';
import { fail, type Result, succeed } from '../../shared/contract/fault.ts';
import { exportDossier } from '../dossier/exportDossier.ts';
import { importDossier } from '../dossier/importDossier.ts';
import { readReadings } from '../intake/readReadings.ts';
import type { Library } from '../library/library.ts';
import { withoutLocation } from '../photos/withoutLocation.ts';
import type { Jobs } from './jobs.ts';
import { protocolFor } from './protocol.ts';

export type Answers = {
  [N in RequestName]: (input: z.output<(typeof door)[N]['input']>) => Promise<Result<RequestReply<N>>>;
};

/** One answer a request; the table is complete by type. Changes are told to every window after they are stored. */
export function createAnswers(library: Library, jobs: Jobs, publish: (event: DoorEvent) => void): Answers {
  type Changed = Extract<DoorEvent, { type: 'changed' }>;
  function tell<T extends { revision: number }>(
    result: Result<T>,
    what: Changed['what'],
    id: string,
    by?: string,
  ): Result<T> {
    if (result.ok)
      publish({
        type: 'changed',
        what,
        id,
        revision: result.value.revision,
        ...(by === undefined ? {} : { by }),
      });
    return result;
  }

  return {
    'shelf.list': async () => {
      const description = await library.describe();
      const lists = await library.listShelf();
      return succeed({ library: { ...description, demo: description.name === 'demo.sqlite' }, ...lists });
    },
    'evidence.read': async () => {
      const { units, articles } = await library.readEvidence();
      return succeed({ units: [...units.values()], articles: [...articles] });
    },
    'unit.read': ({ unit }) => library.readUnit(unit),
    'unit.save': async ({ unit, content }) => tell(await library.saveUnit(unit, content), 'unit', unit),
    'run.save': async ({ unit, run, conditions }) =>
      tell(await library.saveRun(unit, run, conditions), 'unit', unit),
    'readings.bring': async ({ unit, run, conditions, fileName, base64, series, job }) =>
      jobs.run(job, async ({ report }) => {
        const known = await library.readUnit(unit);
        if (!known.ok) return known;
        const source = (conditions ?? known.value.runs.find(({ id }) => id === run)?.conditions)?.source;
        const file = await readReadings(Buffer.from(base64, 'base64'), fileName, {
          source,
          ...(series === undefined ? {} : { assume: new Map([['series', series]]) }),
          progress: (share) => report(Math.round(50 * share), 100, `Reading ${fileName}`),
        });
        if (!file.ok) return file;
        if (file.value.faults.length > 0) return fail(...file.value.faults);
        const saved = await library.saveReadings(unit, run, conditions, file.value, {
          progress: (share) => report(50 + Math.round(50 * share), 100, `Keeping ${fileName}`),
        });
        if (!saved.ok) return saved;
        tell(saved, 'unit', unit);
        return succeed({
          rows: file.value.readings.length,
          notes: file.value.notes,
          revision: saved.value.revision,
        });
      }),
    'job.cancel': async ({ job }) => succeed({ cancelled: jobs.cancel(job) }),
    'observation.save': async ({ unit, observation }) =>
      tell(await library.saveObservation(unit, observation), 'unit', unit),
    'observation.remove': async ({ unit, id }) =>
      tell(await library.removeObservation(unit, id), 'unit', unit),
    'photo.list': async ({ unit }) => succeed(await library.listPhotos(unit)),
    'photo.add': async ({ unit, name, base64 }) =>
      tell(await library.addPhoto(unit, name, Buffer.from(base64, 'base64')), 'unit', unit),
    'photo.read': async ({ unit, name }) => {
      const photo = await library.readPhoto(unit, name);
      if (!photo.ok) return photo;
      // What a window is given can be saved or copied out of it.
      const bytes = withoutLocation(photo.value.bytes);
      return succeed({ mime: photo.value.mime, base64: Buffer.from(bytes).toString('base64') });
    },
    'article.read': ({ article }) => library.readArticle(article),
    'article.create': async ({ article, meta, markdown, claims }) =>
      tell(await library.createArticle(article, meta, markdown, claims), 'article', article),
    'article.save': async ({ article, by, ...change }) =>
      tell(await library.saveArticle(article, { ...change, by }), 'article', article, by),
    'article.lease': async ({ article, client, release }) => {
      const held = await library.leaseArticle(article, client, release ?? false);
      return held.ok ? succeed({ holder: held.value }) : held;
    },
    'house.read': async () =>
      succeed({
        house: (await library.readHouse()) ?? defaultHouse,
        scoreSheet: await library.readScoreSheet(),
      }),
    'house.save': async ({ house }) => tell(await library.saveHouse(house), 'house', 'house'),
    'scoresheet.save': async ({ scoreSheet }) =>
      tell(await library.saveScoreSheet(scoreSheet), 'house', 'scoresheet'),
    'protocol.read': async ({ unit }) => {
      const known = await library.readUnit(unit);
      if (!known.ok) return known;
      return protocolFor(known.value, await library.readDocument('protocol.json'));
    },
    'history.list': async ({ of }) => succeed(await library.listHistory(of)),
    'dossier.import': async ({ folder, prefer, job }) =>
      jobs.run(job, async ({ report }) => {
        const merged = await importDossier(resolve(folder), library, {
          ...(prefer === undefined ? {} : { prefer }),
          progress: (done, total) => report(done, total, `Reading ${done} of ${total} files`),
        });
        return tell(merged, 'library', 'library');
      }),
    'dossier.export': async ({ folder, job }) =>
      jobs.run(job, async ({ report }) => {
        const written = await exportDossier(library, resolve(folder), (done, total) =>
          report(done, total, `Writing ${done} of ${total} files`),
        );
        return written.ok ? succeed({ files: written.value.files }) : written;
      }),
  };
}
