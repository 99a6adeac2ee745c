import { existsSync, readFileSync, rmSync, statSync } from 'node:fs';
import { canonicalJson } from '../../../shared/claims/canonical.ts';
import type { RunEvidence } from '../../../shared/contract/evidence.ts';
import { type Fault, fail, type Result, succeed } from '../../../shared/contract/fault.ts';
import { seriesNames } from '../../../shared/contract/reading.ts';
import { type Run, runSchema } from '../../../shared/contract/run.ts';
import { idSchema } from '../../../shared/contract/unit.ts';
import { fileFault } from '../../dossier/dossierFiles.ts';
import { importDossier } from '../../dossier/importDossier.ts';
import { parseDocument } from '../../dossier/parseDocument.ts';
import { decodeUtf8 } from '../../intake/decodeText.ts';
import { type ReadingsFile, readReadings } from '../../intake/readReadings.ts';
import type { Library } from '../../library/library.ts';
import { openLibrary } from '../../library/openLibrary.ts';
import { type Command, type CommandInput, report, required, text } from './command.ts';

export const importCommand: Command = {
  name: 'import',
  usage: 'import PATH --into LIBRARY [--prefer theirs|ours] | import FILE --into LIBRARY --unit U --run R',
  summary:
    'Brings a dossier, or one readings file, into a library: all of it or nothing. A missing library is created.',
  optionHelp: {
    '--into LIBRARY': 'the library file',
    '--prefer theirs|ours': 'on a conflict take the incoming content, or keep the library’s',
    '--unit U --run R': 'for one readings file: where it belongs',
    '--conditions FILE':
      'for a new run: its JSON file (default: the file of the same name ending in .json, if any)',
    '--series S': 'for a readings file without a column series',
  },
  options: {
    into: { type: 'string' },
    prefer: { type: 'string' },
    unit: { type: 'string' },
    run: { type: 'string' },
    conditions: { type: 'string' },
    series: { type: 'string' },
  },
  positionals: 1,
  async run(input, terminal) {
    const into = required(input, 'into', terminal);
    if (into === undefined) return 2;
    const wrong = wrongOptions(input);
    if (wrong !== null) return report([wrong], terminal);
    const path = input.positionals[0]!;
    if (!existsSync(path)) return report([fileFault({ code: 'ENOENT', path }, path)], terminal);
    const isNew = !existsSync(into);
    const opened = await openLibrary(into);
    if (!opened.ok) return report(opened.faults, terminal);
    const result = statSync(path).isDirectory()
      ? await bringDossier(path, opened.value, input)
      : await bringReadings(path, opened.value, input);
    await opened.value.close();
    if (!result.ok) {
      if (isNew) for (const ending of ['', '-wal', '-shm']) rmSync(into + ending, { force: true });
      return report(result.faults, terminal);
    }
    for (const note of result.value.notes) terminal.error(`Note: ${note}\n`);
    terminal.out(`${result.value.sentence}\n`);
    return 0;
  },
};

interface Brought {
  sentence: string;
  notes: readonly string[];
}

function wrongOptions(input: CommandInput): Fault | null {
  const prefer = text(input, 'prefer');
  if (prefer !== undefined && prefer !== 'theirs' && prefer !== 'ours')
    return { code: 'bad-input', sentence: `--prefer is theirs or ours, not "${prefer}".` };
  const series = text(input, 'series');
  if (series !== undefined && !(seriesNames as readonly string[]).includes(series))
    return { code: 'bad-input', sentence: `--series is one of ${seriesNames.join(', ')}, not "${series}".` };
  for (const name of ['unit', 'run']) {
    const id = text(input, name);
    if (id !== undefined && !idSchema.safeParse(id).success)
      return {
        code: 'bad-input',
        sentence: `--${name}: "${id}" is not an id.`,
        mend: 'Use 1 to 80 of a-z, 0-9 and -.',
      };
  }
  return null;
}

async function bringDossier(folder: string, library: Library, input: CommandInput): Promise<Result<Brought>> {
  const prefer = text(input, 'prefer') as 'theirs' | 'ours' | undefined;
  const merged = await importDossier(folder, library, prefer === undefined ? {} : { prefer });
  if (!merged.ok) return merged;
  const { units, articles, notes } = merged.value;
  return succeed({
    sentence: `Imported ${counted(units, 'unit')} and ${counted(articles, 'article')}.`,
    notes,
  });
}

async function bringReadings(file: string, library: Library, input: CommandInput): Promise<Result<Brought>> {
  const unit = text(input, 'unit');
  const run = text(input, 'run');
  if (unit === undefined || run === undefined)
    return fail({
      code: 'bad-input',
      sentence: 'One readings file needs --unit and --run.',
      mend: 'Name them, or import the whole dossier folder.',
      place: { file },
    });
  const known = await library.readUnit(unit);
  if (!known.ok) return known;
  const conditions = readConditions(file, text(input, 'conditions'));
  if (!conditions.ok) return conditions;
  const source = (conditions.value ?? known.value.runs.find(({ id }) => id === run)?.conditions)?.source;
  let bytes: Buffer;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    return fail(fileFault(error, file));
  }
  const series = text(input, 'series');
  const read = await readReadings(bytes, file, {
    source,
    ...(series === undefined ? {} : { assume: new Map([['series', series]]) }),
  });
  if (!read.ok) return read;
  if (read.value.faults.length > 0) return fail(...read.value.faults);
  const former = known.value.runs.find(({ id }) => id === run);
  const decision = decide(former, conditions.value, read.value, text(input, 'prefer'), `${unit}, run ${run}`);
  if (!decision.ok) return decision;
  if (!decision.value)
    return succeed({ sentence: `${unit}, run ${run}, stays as it is.`, notes: read.value.notes });
  const saved = await library.saveReadings(unit, run, conditions.value, read.value, { record: false });
  if (!saved.ok) return saved;
  return succeed({
    sentence: `Imported ${counted(read.value.readings.length, 'reading')} into ${unit}, run ${run}.`,
    notes: read.value.notes,
  });
}

/** Whether to write: readings that a run has already are a conflict like any other content under a known id. */
function decide(
  former: RunEvidence | undefined,
  conditions: Run | undefined,
  file: ReadingsFile,
  prefer: string | undefined,
  what: string,
): Result<boolean> {
  if (former === undefined || former.readings.length === 0) return succeed(true);
  const same =
    canonicalJson(former.readings) === canonicalJson(file.readings) &&
    (conditions === undefined || canonicalJson(former.conditions) === canonicalJson(conditions));
  if (same || prefer === 'ours') return succeed(false);
  if (prefer === 'theirs') return succeed(true);
  return fail({
    code: 'conflict',
    sentence: `${what}, has other readings already.`,
    mend: 'Choose with --prefer theirs (the old ones become a superseded version) or --prefer ours, or name another run.',
  });
}

function readConditions(readingsFile: string, named: string | undefined): Result<Run | undefined> {
  const beside = readingsFile.replace(/\.[^./\\]*$/, '.json');
  const file = named ?? (beside !== readingsFile && existsSync(beside) ? beside : undefined);
  if (file === undefined) return succeed(undefined);
  try {
    const decoded = decodeUtf8(readFileSync(file), file);
    if (!decoded.ok) return decoded;
    const parsed = parseDocument(decoded.value, file, runSchema);
    return parsed.ok ? succeed(parsed.value.value) : parsed;
  } catch (error) {
    return fail(fileFault(error, file));
  }
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
