import type { ObservedCheck, StatedConditions } from '../../contract/check.ts';
import type { UnitEvidence } from '../../contract/evidence.ts';
import type { Observation } from '../../contract/observation.ts';
import { fold } from './fold.ts';
import { type Outcome, unproven } from './outcome.ts';
import { roomMatches } from './resolve.ts';
import type { Sight } from './sight.ts';
import { isSdr, signalMatches } from './signalOf.ts';
import { nameOfUnit } from './terms.ts';

const severityWords = [
  'not seen',
  'just visible to a trained eye',
  'visible',
  'distracting',
  'unusable',
] as const;

/** Something was or was not seen, and how bad: the worst that was noted under the conditions of the sentence. */
export function judgeObserved(check: ObservedCheck, sight: Sight, signal?: string): Outcome {
  const [low, high] = check.severity;
  const stated = { severity: [low, high] };
  const quantity = `observation.${check.topic}`;
  const { conditions } = check;
  const unit = sight.unit(conditions.unit ?? sight.own);
  if (!unit) return unproven(`The library has no unit ${conditions.unit}`, quantity, stated);
  const inches = conditions.variantInches;
  const what = check.topic.replaceAll('-', ' ');
  if (inches !== undefined && inches !== unit.unit.size?.diagonal_in)
    return unproven(`Nobody has looked at the ${inches}-inch size for ${what}`, quantity, stated);
  if (conditions.unmatched)
    return unproven(`No observation of ${what} was made ${conditions.unmatched}`, quantity, stated);
  const issue = conditions.sample
    ? `sample ${conditions.sample}`
    : conditions.firmware && `firmware ${conditions.firmware}`;
  if (issue)
    return unproven(
      `What was seen of ${what} is not kept by sample or firmware, and the sentence names ${issue}`,
      quantity,
      stated,
    );
  const all = sight.observations(unit, check.topic);
  if (all.length === 0)
    return unproven(`No observation of ${what} on the ${nameOfUnit(unit)} is on file`, quantity, stated);
  const wanted = signal === undefined ? conditions : { ...conditions, signal };
  const named = all.filter((observation) => meetsNamed(observation, wanted));
  if (named.length === 0)
    return unproven(
      `No observation of ${what} on the ${nameOfUnit(unit)} was made under these conditions`,
      quantity,
      stated,
    );
  const chosen = narrow(sight, unit, named, wanted);
  const worst = chosen.reduce((most, observation) =>
    observation.severity > most.severity ? observation : most,
  );
  const inRange = worst.severity >= low && worst.severity <= high;
  const holds = inRange !== (check.negated ?? false);
  sight.used.set(`unit/${unit.id}/observations/${check.topic}`, JSON.stringify(chosen));
  const rooms = new Set(
    chosen.map(({ room_lux }) => (room_lux === undefined ? 'unknown' : room_lux < 5 ? 'dark' : 'lit')),
  );
  if (conditions.room === undefined && rooms.size > 1) {
    const differ = new Set(
      [...rooms].map((room) => {
        const there = chosen.filter(
          ({ room_lux }) => (room_lux === undefined ? 'unknown' : room_lux < 5 ? 'dark' : 'lit') === room,
        );
        const most = Math.max(...there.map(({ severity }) => severity));
        return most >= low && most <= high;
      }),
    );
    if (differ.size > 1)
      return unproven(
        `What was seen of ${what} differs between the dark and the lit room, and the sentence names neither`,
        quantity,
        stated,
        { evidence: pathsOf(sight, unit, chosen) },
      );
  }
  const range = low === high ? severityWords[low] : `${severityWords[low]} to ${severityWords[high]}`;
  return {
    verdict: holds ? 'holds' : 'breaks',
    probability: null,
    sentence: `${what.charAt(0).toUpperCase() + what.slice(1)} was noted with severity ${worst.severity}, ${severityWords[worst.severity]}${whereSeen(worst)}, and the text allows ${check.negated ? 'anything but ' : ''}${range}`,
    notes: chosen.length > 1 ? [`the worst of ${chosen.length} observations`] : [],
    stated,
    found: { value: worst.severity, severities: chosen.map(({ severity }) => severity) },
    conditions: conditionsOf(unit, worst),
    quantity,
    evidence: pathsOf(sight, unit, chosen),
    ...(holds || check.negated ? {} : { suggestion: severityWords[worst.severity]! }),
  };
}

function meetsNamed(observation: Observation, conditions: StatedConditions): boolean {
  for (const dimension of ['mode', 'stage', 'signal', 'dimming'] as const) {
    const wanted = conditions[dimension];
    if (wanted === undefined || conditions.origin?.[dimension] === 'article') continue;
    const given = observation[dimension];
    if (given === undefined) return false;
    if (dimension === 'signal' ? !signalMatches(wanted, given) : fold(given) !== fold(wanted)) return false;
  }
  if (conditions.angle !== undefined) {
    const angle = observation.angle ?? 0;
    const sign = conditions.side === 'left' || conditions.side === 'down' ? -1 : 1;
    const isSided = conditions.side === 'left' || conditions.side === 'right';
    const same = isSided ? angle === sign * conditions.angle : Math.abs(angle) === Math.abs(conditions.angle);
    if (!same) return false;
  }
  if (conditions.content !== undefined && !fold(observation.content ?? '').includes(fold(conditions.content)))
    return false;
  return roomMatches(conditions.room, observation.room_lux);
}

/**
 * Where the sentence names nothing: on axis, SDR before other signals, the article's conditions, as delivered. What
 * an observation leaves open stands in no one's way.
 */
function narrow(
  sight: Sight,
  unit: UnitEvidence,
  named: readonly Observation[],
  conditions: StatedConditions,
): Observation[] {
  let chosen = [...named];
  const prefer = (test: (observation: Observation) => boolean) => {
    const fitting = chosen.filter(test);
    if (fitting.length > 0) chosen = fitting;
  };
  if (conditions.angle === undefined) prefer(({ angle }) => angle === undefined || angle === 0);
  if (conditions.signal === undefined) prefer(({ signal }) => signal === undefined || isSdr(signal));
  const preferred = unit.id === sight.own ? sight.bench.article.meta.conditions : undefined;
  for (const dimension of ['mode', 'stage', 'dimming'] as const) {
    if (conditions[dimension] !== undefined) continue;
    prefer((observation) => {
      const given = observation[dimension];
      const wanted = preferred?.[observation.signal ?? 'SDR']?.[dimension];
      return given === undefined || wanted === undefined || fold(given) === fold(wanted);
    });
  }
  if (conditions.stage === undefined) prefer(({ stage }) => stage === undefined || stage === 'as-delivered');
  return chosen;
}

function whereSeen({ room_lux, angle, pattern, content }: Observation): string {
  const words = [
    room_lux === undefined ? '' : room_lux < 5 ? 'in a dark room' : `at ${room_lux} lx`,
    angle === undefined ? '' : angle === 0 ? 'on axis' : `at ${angle}°`,
    content ? `in ${content}` : pattern ? `on ${pattern}` : '',
  ].filter(Boolean);
  return words.length > 0 ? ` (${words.join(', ')})` : '';
}

function conditionsOf(unit: UnitEvidence, observation: Observation): Record<string, unknown> {
  const { mode, stage, signal, dimming, angle, room_lux } = observation;
  return Object.fromEntries(
    Object.entries({ unit: unit.id, mode, stage, signal, dimming, angle, room_lux }).filter(
      ([, value]) => value !== undefined,
    ),
  );
}

function pathsOf(sight: Sight, unit: UnitEvidence, observations: readonly Observation[]): string[] {
  const prefix = unit.id === sight.own ? '' : `unit/${unit.id}/`;
  return observations.map(({ id }) => `${prefix}observation/${id}`);
}
