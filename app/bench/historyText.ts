import type { RequestReply } from '../../shared/contract/door.ts';
import type { Instrument, Source, Target } from '../../shared/contract/run.ts';
import { dateText } from './dateText.ts';
import { instrumentSentence, sourceSentence } from './instrumentText.ts';
import { readingCount } from './runText.ts';

export type HistoryEvent = RequestReply<'history.list'>[number];

const labels: Readonly<Record<string, string>> = {
  taken: 'taken',
  firmware: 'firmware',
  sample: 'sample',
  mode: 'mode',
  stage: 'stage',
  signal: 'signal',
  dimming: 'dimming',
  room_lux: 'room, lux',
  warm_up_min: 'warm-up, minutes',
  supersedes: 'takes the place of',
};

/** What happened to a run, newest first, one sentence an event; what stood before a change is said. */
export function historyLines(events: readonly HistoryEvent[]): { key: string; sentence: string }[] {
  return events
    .flatMap((event, index) => {
      const sentence = eventSentence(event);
      return sentence
        ? [{ key: `${event.at}#${index}`, sentence: `${dateText(event.at)}: ${sentence}` }]
        : [];
    })
    .reverse();
}

function eventSentence(event: HistoryEvent): string | null {
  if (event.what === 'readings-brought') {
    const { rows } = event as { rows?: unknown };
    return typeof rows === 'number' ? `${readingCount(rows)} brought in.` : 'readings brought in.';
  }
  if (event.what !== 'run-saved') return null;
  const { before } = event as { before?: unknown };
  if (typeof before !== 'object' || before === null) return 'begun.';
  const parts = Object.entries(before).map(([name, value]) => formerText(name, value));
  return parts.length === 0 ? null : `changed. Before: ${parts.join('; ')}.`;
}

function formerText(name: string, value: unknown): string {
  if (name === 'instrument')
    return value === null ? 'no instrument noted' : small(instrumentSentence(value as Instrument));
  if (name === 'source') return value === null ? 'no source noted' : small(sourceSentence(value as Source));
  if (name === 'target' && value !== null) {
    const { gamut, white, eotf } = value as Target;
    return `target ${gamut}, ${white}, ${eotf}`;
  }
  const text =
    value === null ? 'not noted' : typeof value === 'object' ? JSON.stringify(value) : String(value);
  return `${labels[name] ?? name} ${name === 'taken' && value !== null ? dateText(text) : text}`;
}

/** Inside a longer sentence: a small letter, no full stop. */
function small(sentence: string): string {
  return (sentence.charAt(0).toLowerCase() + sentence.slice(1)).replace(/\.$/, '');
}
