import type { Instrument, Run, Source } from '../../shared/contract/run.ts';
import type { Fields } from './forms/readFields.ts';
import { takenText } from './takenTime.ts';

/**
 * A run's conditions as its form says. What the form does not show stays as `before` has it; a blank field is left
 * out, so that the house default stands in and verdicts say so.
 */
export function runOf(fields: Fields, before: Partial<Run> | undefined): object {
  return {
    ...before,
    taken: takenText(fields.text('taken'), before?.taken),
    firmware: fields.text('firmware'),
    sample: fields.text('sample'),
    mode: fields.text('mode') ?? '',
    stage: fields.text('stage'),
    signal: fields.text('signal'),
    target: {
      ...before?.target,
      gamut: fields.text('gamut'),
      white: fields.text('white') ?? 'D65',
      eotf: fields.text('eotf'),
      peak: fields.number('peak'),
    },
    dimming: fields.text('dimming'),
    room_lux: fields.number('room_lux'),
    warm_up_min: fields.number('warm_up_min'),
    supersedes: fields.text('supersedes') ?? (before?.supersedes === null ? null : undefined),
    instrument: orNothing(instrumentOf(fields, before?.instrument)),
    source: orNothing(sourceOf(fields, before?.source)),
  };
}

/** The instrument that the fields describe; u in the spelling of the file, expanded with `coverage_k`. */
export function instrumentOf(fields: Fields, before: Instrument | undefined): Instrument {
  return {
    ...before,
    name: fields.text('instrument'),
    serial: fields.text('serial'),
    calibrated: fields.text('calibrated'),
    matched_to: fields.text('matched_to'),
    drift_check: fields.text('drift_check'),
    u_luminance_percent: fields.number('u_luminance_percent'),
    u_x: fields.number('u_x'),
    u_y: fields.number('u_y'),
    coverage_k: fields.number('coverage_k'),
    floor_cdm2: fields.number('floor_cdm2'),
    xy_from_cdm2: fields.number('xy_from_cdm2'),
  };
}

export function sourceOf(fields: Fields, before: Source | undefined): Source {
  return {
    ...before,
    name: fields.text('source'),
    bits: fields.number('bits') as Source['bits'],
    range: fields.text('range') as Source['range'],
    max_cll: fields.number('max_cll'),
  };
}

function orNothing<T extends object>(value: T): T | undefined {
  return Object.values(value).some((each) => each !== undefined) ? value : undefined;
}

/** Do two statements name the same instrument: its name and its number? */
export function isSameInstrument(one: Instrument | undefined, other: Instrument | undefined): boolean {
  return one?.name !== undefined && one.name === other?.name && one.serial === other.serial;
}

/** Every instrument that runs were taken with, by its latest use first; one entry for a name and number. */
export function knownInstruments(runs: readonly Run[]): Instrument[] {
  const latestFirst = [...runs].sort((a, b) => (b.taken ?? '').localeCompare(a.taken ?? ''));
  const known: Instrument[] = [];
  for (const { instrument } of latestFirst) {
    if (instrument?.name && !known.some((each) => isSameInstrument(each, instrument))) known.push(instrument);
  }
  return known;
}

/** "bench colorimeter, no. 0001" */
export function instrumentName({ name, serial }: Instrument): string {
  return [name ?? 'instrument without a name', serial && `no. ${serial}`].filter(Boolean).join(', ');
}
