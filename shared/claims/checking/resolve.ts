import type { StatedConditions } from '../../contract/check.ts';
import type { RunEvidence, UnitEvidence } from '../../contract/evidence.ts';
import type { Measurement } from '../../contract/measurement.ts';
import { fold } from './fold.ts';
import type { Sight } from './sight.ts';
import { isSdr, isWide, signalDefault, signalMatches } from './signalOf.ts';
import { nameOfQuantity, nameOfUnit } from './terms.ts';

/** The run that a sentence speaks of, or why there is none: the claim is then unproven. */
export type Resolution =
  | { ok: true; unit: UnitEvidence; run: RunEvidence; notes: string[] }
  | { ok: false; reason: string; asks?: boolean };

type Candidate = { run: RunEvidence; measurement: Measurement };

/** Condition fields that pick a run. */
const dimensions = ['stage', 'mode', 'signal', 'dimming', 'sample', 'firmware'] as const;

/**
 * Chooses the run for a quantity: the conditions that the sentence names or carries are binding; then the signal
 * that the quantity means when none is named; then the article's conditions for that signal, then as delivered,
 * then the only run that fits. The measured number plays no part.
 * @param signal binds the signal of a sentence that names none, to compare what the signals would say
 */
export function resolveRun(
  sight: Sight,
  id: string,
  conditions: StatedConditions,
  signal?: string,
): Resolution {
  if (conditions.before) return resolveBefore(sight, id, conditions, signal);
  const unit = sight.unit(conditions.unit ?? sight.own);
  if (!unit) return { ok: false, reason: `The library has no unit ${conditions.unit ?? sight.own}.` };
  const name = nameOfUnit(unit);
  const what = nameOfQuantity(id);
  const inches = conditions.variantInches;
  if (inches !== undefined && inches !== unit.unit.size?.diagonal_in)
    return {
      ok: false,
      reason: `Nothing was measured on the ${inches}-inch size, and the readings of the ${name} do not transfer to it.`,
    };
  if (conditions.unmatched)
    return { ok: false, reason: `No run of the ${name} was taken ${conditions.unmatched}.` };
  // Only words that name a firmware may mean a run that a later one replaced.
  const hasFirmware = conditions.firmware !== undefined;
  const all = hasFirmware ? sight.runs(unit, id, 'replaced') : sight.runs(unit, id);
  const measured = all.filter(({ measurement }) => measurement.state !== 'undefined');
  if (measured.length === 0) {
    const undefinedOne = all[0]?.measurement;
    const why = undefinedOne?.state === 'undefined' ? ` (${undefinedOne.undefined})` : '';
    return { ok: false, reason: `No run of the ${name} gives its ${what}${why}.` };
  }
  const wanted = signal === undefined ? conditions : { ...conditions, signal };
  const named = withoutReplaced(measured.filter(({ run }) => meetsNamed(run, wanted)));
  if (named.length === 0)
    return {
      ok: false,
      reason: `No run of the ${name} ${describeConditions(wanted)} gives its ${what}.`,
    };
  const bySignal = filterBySignal(named, measured, id, wanted);
  if (bySignal.length === 0)
    return {
      ok: false,
      reason: `No ${signalWords(id)} run of the ${name} gives its ${what}, and the sentence names no signal.`,
    };
  return narrow(sight, unit, bySignal, wanted, what);
}

/**
 * The run that stands for the state before the one that the other conditions mean: where that one is adjusted the one as
 * delivered, else the one taken earlier. None or several leave nothing to judge.
 */
function resolveBefore(
  sight: Sight,
  id: string,
  { before, ...conditions }: StatedConditions,
  signal: string | undefined,
): Resolution {
  const now = resolveRun(sight, id, conditions, signal);
  if (!now.ok) return now;
  const { unit, run } = now;
  const { stage, taken, firmware } = run.conditions;
  const isUpdate = before === 'update';
  const others = sight
    .runs(unit, id, 'replaced')
    .filter(({ run: other, measurement }) => {
      if (other === run || measurement.state === 'undefined') return false;
      if (!isSameView(other, run)) return false;
      if (
        isUpdate &&
        (other.conditions.stage !== stage || !isOtherFirmware(firmware, other.conditions.firmware))
      )
        return false;
      return stage === 'as-delivered' || isUpdate
        ? taken !== undefined && other.conditions.taken !== undefined && other.conditions.taken < taken
        : other.conditions.stage === 'as-delivered';
    })
    .map(({ run: other }) => other);
  const earlier = isUpdate ? 'with an earlier firmware' : 'taken earlier';
  const state = stage === 'as-delivered' || isUpdate ? earlier : 'as delivered';
  const name = nameOfUnit(unit);
  const what = nameOfQuantity(id);
  const [only] = others;
  if (others.length === 1 && only)
    return {
      ok: true,
      unit,
      run: only,
      notes: [`what it was before is that of run ${only.id} (${describeRun(only)})`],
    };
  return {
    ok: false,
    reason:
      others.length === 0
        ? `No run of the ${name} ${state} gives its ${what}, so nothing says what it was before.`
        : `${others.length} runs of the ${name} ${state} give its ${what} (${others.map((other) => other.id).join(', ')}); the sentence does not say which it was before.`,
    ...(others.length > 1 && { asks: true }),
  };
}

/** A replaced run stands back where the one that replaces it is meant too. */
function withoutReplaced(candidates: Candidate[]): Candidate[] {
  const replaced = new Set(candidates.map(({ run }) => run.conditions.supersedes));
  return candidates.filter(({ run }) => !replaced.has(run.id));
}

function isOtherFirmware(one: string | undefined, other: string | undefined): boolean {
  return one !== undefined && other !== undefined && fold(one) !== fold(other);
}

/** "Firmware 3.1" is every 3.1.x. */
function isFirmware(given: string, wanted: string): boolean {
  return fold(given) === fold(wanted) || fold(given).startsWith(`${fold(wanted)}.`);
}

/** The same sample in the same mode, signal and dimming, so that only the state differs. */
function isSameView({ conditions: one }: RunEvidence, { conditions: other }: RunEvidence): boolean {
  return (
    one.signal === other.signal &&
    fold(one.mode) === fold(other.mode) &&
    one.target.gamut === other.target.gamut &&
    (one.sample === undefined || other.sample === undefined || one.sample === other.sample) &&
    (one.dimming ?? 'as-set') === (other.dimming ?? 'as-set')
  );
}

/** True for a condition that the words state; those filled in from the article only express a preference. */
function isBinding(conditions: StatedConditions, dimension: string): boolean {
  return conditions.origin?.[dimension] !== 'article';
}

function meetsNamed(run: RunEvidence, conditions: StatedConditions): boolean {
  for (const dimension of dimensions) {
    const wanted = conditions[dimension];
    if (wanted === undefined || !isBinding(conditions, dimension)) continue;
    const given = run.conditions[dimension];
    if (dimension === 'signal') {
      if (!signalMatches(wanted, run.conditions.signal)) return false;
    } else if (dimension === 'dimming') {
      if (!dimmingMatches(wanted, given ?? 'as-set')) return false;
    } else if (dimension === 'firmware') {
      if (given === undefined || !isFirmware(given, wanted)) return false;
    } else if (given === undefined || fold(given) !== fold(wanted)) return false;
  }
  return roomMatches(conditions.room, run.conditions.room_lux);
}

/** Off and none are both without dimming; "on" is any strength of it. */
function dimmingMatches(wanted: string, given: string): boolean {
  if (wanted === 'off' || wanted === 'none') return given === 'off' || given === 'none';
  if (wanted === 'on') return given !== 'off' && given !== 'none';
  return wanted === given;
}

/** Dark is under 5 lx; a number of lux allows a tenth of it. An unknown room meets no named room. */
export function roomMatches(wanted: StatedConditions['room'], lux: number | null | undefined): boolean {
  if (wanted === undefined) return true;
  if (lux === undefined || lux === null) return false;
  if (wanted === 'dark') return lux < 5;
  if (wanted === 'lit') return lux >= 5;
  return Math.abs(lux - wanted) <= Math.max(0.1 * wanted, 0.5);
}

function filterBySignal(
  named: Candidate[],
  measured: Candidate[],
  id: string,
  conditions: StatedConditions,
): Candidate[] {
  if (conditions.signal !== undefined && isBinding(conditions, 'signal')) return named;
  switch (signalDefault(id)) {
    case 'hdr':
      return named.filter(({ run }) => !isSdr(run.conditions.signal));
    case 'wide':
      return named.filter(({ run }) => isWide(run));
    case 'sdr-only':
      return named.filter(({ run }) => isSdr(run.conditions.signal));
    case 'sdr-first': {
      // A set measured with one signal only leaves nothing to confuse.
      const anySdr = measured.some(({ run }) => isSdr(run.conditions.signal));
      return anySdr ? named.filter(({ run }) => isSdr(run.conditions.signal)) : named;
    }
  }
}

function narrow(
  sight: Sight,
  unit: UnitEvidence,
  candidates: Candidate[],
  conditions: StatedConditions,
  what: string,
): Resolution {
  const preferred = preferredConditions(sight, unit);
  const notes: string[] = [];
  let fitting = candidates.filter(({ run }) => meetsPreference(run, preferred, conditions));
  if (fitting.length === 0) {
    if (preferred) notes.push('no run under the article’s own conditions has it');
    fitting = candidates;
  }
  if (fitting.length > 1) {
    const delivered = fitting.filter(({ run }) => run.conditions.stage === 'as-delivered');
    if (delivered.length > 0 && conditions.stage === undefined) fitting = delivered;
  }
  if (fitting.length > 1)
    return {
      ok: false,
      asks: true,
      reason: `${fitting.length} runs of the ${nameOfUnit(unit)} give its ${what} (${fitting
        .map(({ run }) => `${run.id}: ${describeRun(run)}`)
        .join('; ')}); the sentence does not say which.`,
    };
  const { run } = fitting[0]!;
  if (notes.length > 0) notes[0] = `${notes[0]}, so run ${run.id} was used (${describeRun(run)})`;
  return { ok: true, unit, run, notes };
}

type Preference = Record<string, { mode?: string; stage?: string; dimming?: string; sample?: string }>;

/** The conditions that the unit's article states: this one for the own unit, a rival's own article for a rival. */
function preferredConditions(sight: Sight, unit: UnitEvidence): Preference | undefined {
  if (unit.id === sight.own) return sight.bench.article.meta.conditions;
  return sight.articleOf(unit)?.meta.conditions;
}

function meetsPreference(
  run: RunEvidence,
  preferred: Preference | undefined,
  conditions: StatedConditions,
): boolean {
  if (!preferred) return true;
  const signal = run.conditions.signal;
  const key = Object.keys(preferred).find((name) => name.toUpperCase() === signal.toUpperCase());
  if (key === undefined) return Object.keys(preferred).every((name) => isSdr(name) !== isSdr(signal));
  const wanted = preferred[key]!;
  return (['mode', 'stage', 'dimming', 'sample'] as const).every((dimension) => {
    const value = wanted[dimension];
    if (value === undefined || (conditions[dimension] !== undefined && isBinding(conditions, dimension)))
      return true;
    const given = run.conditions[dimension];
    if (dimension === 'dimming') return dimmingMatches(value, given ?? 'as-set');
    return given !== undefined && fold(given) === fold(value);
  });
}

function signalWords(id: string): string {
  const words = { hdr: 'HDR', wide: 'wide-gamut', 'sdr-only': 'SDR', 'sdr-first': 'SDR' } as const;
  return words[signalDefault(id)];
}

/** "as delivered, Calm, SDR, dimming off" */
export function describeRun(run: RunEvidence): string {
  const { stage, mode, signal, dimming, sample } = run.conditions;
  return [
    stage === 'as-delivered' ? 'as delivered' : stage,
    mode,
    signal,
    dimming && dimming !== 'as-set' ? `dimming ${dimming}` : '',
    sample ? `sample ${sample}` : '',
  ]
    .filter(Boolean)
    .join(', ');
}

function describeConditions(conditions: StatedConditions): string {
  const words = dimensions.flatMap((dimension) => {
    const value = conditions[dimension];
    if (value === undefined || !isBinding(conditions, dimension)) return [];
    return [dimension === 'stage' && value === 'as-delivered' ? 'as delivered' : `${dimension} ${value}`];
  });
  if (conditions.room !== undefined)
    words.push(
      typeof conditions.room === 'number' ? `at ${conditions.room} lx` : `in a ${conditions.room} room`,
    );
  return words.length > 0 ? `with ${words.join(', ')}` : 'under these conditions';
}
