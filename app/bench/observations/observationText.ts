import { fold } from '../../../shared/claims/checking/fold.ts';
import type { Observation } from '../../../shared/contract/observation.ts';
import { numberText } from '../../plots/numberText.ts';
import { dimmingWords } from '../runText.ts';

/** The conditions under which something was or was not seen, in one clause. */
export function observationConditions(observation: Observation): string {
  const { mode, stage, signal, dimming, angle, room_lux: lux, pattern, content, timecode } = observation;
  const parts = [
    pattern,
    content && (timecode ? `${content} at ${timecode}` : content),
    mode,
    signal,
    stage === 'as-delivered' ? 'as delivered' : stage,
    dimming && (dimmingWords[dimming] ?? `dimming ${dimming}`),
    angle === undefined ? null : angle === 0 ? 'on axis' : `${numberText(Math.abs(angle), 0)}° off axis`,
    lux === undefined ? null : lux < 5 ? 'dark room' : `${numberText(lux, 0)} lux`,
  ];
  return parts.filter(Boolean).join(', ');
}

/** "dirty-screen" → "Dirty screen" */
export function topicText(topic: string): string {
  const words = topic.replaceAll(/[-_]/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A free id for a new observation on a topic: `banding-2`. */
export function freeObservationId(topic: string, taken: ReadonlySet<string>): string {
  const stem =
    topic
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, '-')
      .replaceAll(/^-|-$/g, '') || 'observation';
  if (!taken.has(stem)) return stem;
  let number = 2;
  while (taken.has(`${stem}-${number}`)) number++;
  return `${stem}-${number}`;
}

/**
 * The house's own topic for what a person wrote: "Halo" is `haloes`, so that a claim on haloes finds it. Words that the
 * house does not know stay as they were written.
 */
export function houseTopic(written: string, topics: Readonly<Record<string, readonly string[]>>): string {
  const wanted = fold(written);
  const known = Object.entries(topics).find(([topic, phrases]) =>
    [topic, ...phrases].some((words) => fold(words) === wanted),
  );
  return known?.[0] ?? written.trim();
}
