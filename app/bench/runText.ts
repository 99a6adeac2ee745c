import type { RunEvidence } from '../../shared/contract/evidence.ts';
import { listText, numberText } from '../plots/numberText.ts';
import { dateText } from './dateText.ts';

const seriesWords: Record<string, readonly [string, string]> = {
  greyscale: ['grey', 'greys'],
  primaries: ['primary', 'primaries'],
  saturation: ['step of the sweep', 'steps of the sweep'],
  chart: ['chart patch', 'chart patches'],
  window: ['window', 'windows'],
  contrast: ['contrast field', 'contrast fields'],
  uniformity: ['place on the screen', 'places on the screen'],
  angle: ['angle', 'angles'],
  single: ['single value', 'single values'],
};

export const dimmingWords: Readonly<Record<string, string>> = {
  off: 'dimming off',
  low: 'dimming low',
  medium: 'dimming medium',
  high: 'dimming high',
  none: 'no dimming to switch',
  'as-set': 'dimming as set',
};

/** "Calm, SDR as delivered" */
export function runTitle(run: RunEvidence): string {
  const { mode, signal, stage } = run.conditions;
  return `${mode}, ${signal} ${stage === 'as-delivered' ? 'as delivered' : 'adjusted'}`;
}

/** A run's title with what tells it from others of the same title: its dimming, firmware, sample or day. */
export function distinctRunTitle(run: RunEvidence, runs: readonly RunEvidence[]): string {
  const title = runTitle(run);
  const namesakes = runs.filter((other) => other !== run && runTitle(other) === title);
  if (namesakes.length === 0) return title;
  const spellings: readonly ((each: RunEvidence) => string | undefined)[] = [
    (each) => dimmingWords[each.conditions.dimming ?? 'as-set'],
    (each) => each.conditions.firmware && `firmware ${each.conditions.firmware}`,
    (each) => each.conditions.sample && `sample ${each.conditions.sample}`,
    (each) => each.conditions.taken && dateText(each.conditions.taken),
  ];
  const added: string[] = [];
  let left = namesakes;
  for (const tell of spellings) {
    const own = tell(run);
    const apart = left.filter((other) => tell(other) !== own);
    if (own && apart.length > 0) {
      added.push(own);
      left = left.filter((other) => tell(other) === own);
    }
    if (left.length === 0) break;
  }
  return [title, ...added].join(', ');
}

/** How a run was taken, in one or two sentences; what is not known is said. */
export function runSentence(run: RunEvidence): string {
  const { conditions } = run;
  const room =
    conditions.room_lux === undefined || conditions.room_lux === null
      ? null
      : conditions.room_lux < 5
        ? 'in the dark'
        : `in a room of ${numberText(conditions.room_lux, 0)} lux`;
  const warm = conditions.warm_up_min;
  const parts = [
    conditions.firmware ? `firmware ${conditions.firmware}` : 'firmware not noted',
    conditions.sample ? `sample ${conditions.sample}` : null,
    warm === undefined || warm === null
      ? 'warm-up not noted'
      : `warmed up for ${numberText(warm, 0)} minutes`,
    dimmingWords[conditions.dimming ?? 'as-set'] ?? `dimming ${conditions.dimming}`,
    room,
  ].filter((part) => part !== null);
  const target = conditions.target;
  const taken = conditions.taken ? `Taken on ${dateText(conditions.taken)}` : 'Taken on a day not noted';
  const peak = target.peak ? ` up to ${numberText(target.peak, 0)}\u00a0cd/m²` : '';
  return `${taken}: ${parts.join(', ')}. Measured against ${target.gamut}, ${target.white} and ${target.eotf}${peak}.`;
}

/** "11 greys, 8 primaries and 24 chart patches" */
export function seriesSentence(run: RunEvidence): string {
  const counts = new Map<string, number>();
  for (const reading of run.readings) counts.set(reading.series, (counts.get(reading.series) ?? 0) + 1);
  return listText(
    [...counts].map(([series, count]) => {
      const words = seriesWords[series];
      return `${numberText(count, 0)}\u00a0${words ? words[count === 1 ? 0 : 1] : series}`;
    }),
  );
}

/** "1 reading", "100,000 readings" */
export function readingCount(count: number): string {
  return `${numberText(count, 0)} ${count === 1 ? 'reading' : 'readings'}`;
}

/** "brightness 50, sharpness 10" */
export function settingsText(settings: Readonly<Record<string, unknown>>): string {
  return Object.entries(settings)
    .map(([name, value]) => `${name} ${String(value)}`)
    .join(', ');
}
