import type { AxisSpan } from './axis.ts';
import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

const onwards = ['on', 'onwards', 'onward', 'up', 'upwards', 'out', 'outwards', 'and'];

/** "From 45 degrees it keeps 70 % of its light", "blooming is obvious from 45 degrees": where one sits, in degrees off axis, and no stretch of angles. */
export function seatOf({ items }: Scene, { from, to, items: words }: AxisSpan): number | undefined {
  if (items.some((item) => keyOf(item, 'topic') !== undefined)) return from ?? seatTaken(items, words[0], to);
  const taken = seatTaken(items, words[0], to);
  if (taken !== undefined) return taken;
  const opens = items.indexOf(words[0]);
  const leads = opens >= 0 && opens <= 1 && isWord(words[0], 'from');
  const last = items.indexOf(words.at(-1)!);
  const goesOn = items.slice(1, last + 2).some((item) => isWord(item, ...onwards));
  const keeps = items.some((item) => ['keep', 'lose'].includes(keyOf(item, 'verb') ?? ''));
  return leads && to === undefined && keeps && !goesOn ? from : undefined;
}

/** "Shuffle round to 45 degrees and it shows no blooming", "walk to 45 degrees and half is left", "move out to 60 degrees": where one goes to sit, in degrees off axis. */
function seatTaken(
  items: readonly Item[],
  first: Item | undefined,
  to: number | undefined,
): number | undefined {
  const at = first ? items.indexOf(first) : -1;
  const lead = items.slice(0, at);
  const goes = lead.some((item) =>
    isWord(item, 'shuffle', 'move', 'walk', 'step', 'shift', 'slide', 'go', 'sit', 'swing', 'wander'),
  );
  const moves = at <= 2 || lead.some((item) => isWord(item, 'round', 'over', 'out', 'across'));
  return goes && at <= 4 && moves ? to : undefined;
}
