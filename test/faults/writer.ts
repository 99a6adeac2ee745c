import { writeSync } from 'node:fs';
import { readReadings } from '../../main/intake/readReadings.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';

/**
 * Writes into a library without end and tells on stdout what was acknowledged, a line each, until it is killed:
 * `article <revision> <text>`, `observation <id>`, `readings <luminance>`.
 */
const opened = await openLibrary(process.argv[2]!);
if (!opened.ok) throw new Error(opened.faults[0]!.sentence);
const library = opened.value;
const conditions = {
  mode: 'Calm',
  stage: 'as-delivered' as const,
  signal: 'SDR',
  target: { gamut: 'BT.709' as const, white: 'D65', eotf: 'BT.1886' },
};
const meta = { title: 'T', unit: 'hearth', state: 'draft' as const };

const article = await library.readArticle('hearth-55');
let revision = article.ok ? article.value.revision : 0;
for (let round = revision + 1; ; round += 1) {
  const text = `Words of round ${round}.`;
  const saved = await library.saveArticle('hearth-55', {
    meta,
    markdown: text,
    claims: [],
    revision,
    by: 'reviewer',
  });
  if (!saved.ok) throw new Error(saved.faults[0]!.sentence);
  revision = saved.value.revision;
  writeSync(1, `article ${revision} ${text}\n`);

  const id = `o${round}`;
  const seen = await library.saveObservation('hearth', { id, topic: 'banding', severity: round % 5 });
  if (seen.ok) writeSync(1, `observation ${id}\n`);

  const rows = Array.from({ length: 1500 }, (_, row) => `greyscale,${row % 101},0.3127,0.329,${round}`);
  const file = await readReadings(Buffer.from(`series,stimulus,x,y,Y\n${rows.join('\n')}\n`), 'ramp.csv');
  if (!file.ok) throw new Error(file.faults[0]!.sentence);
  const brought = await library.saveReadings('hearth', 'sdr', conditions, file.value);
  if (brought.ok) writeSync(1, `readings ${round}\n`);
}
