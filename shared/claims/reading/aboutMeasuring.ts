import { type Item, isWord } from './items.ts';

/** "Ask for 100 nits at half stimulus and you get 108", "2.38 where 2.4 is asked for": what is wanted, and no finding. */
function isAskedFor(items: readonly Item[], at: number): boolean {
  return (
    (at === 2 && isWord(items[0], 'ask', 'asked') && isWord(items[1], 'for')) ||
    (isWord(items[at - 1], 'where', 'when') &&
      isWord(items[at + 1], 'is', 'was') &&
      isWord(items[at + 2], 'asked', 'called', 'wanted'))
  );
}

/** "Our meter cannot go below 0.005 nits": of the instrument. */
function isFloor(items: readonly Item[], at: number): boolean {
  if (at > 9) return false;
  const meter = items
    .slice(0, Math.min(3, at))
    .findIndex((item) => isWord(item, 'metre', 'instrument', 'probe', 'colorimeter'));
  return (
    meter >= 0 &&
    at <= meter + 6 &&
    items.slice(meter + 1, meter + 3).some((item) => isWord(item, 'cannot', "can't", 'stops'))
  );
}

/** "We took 21 steps and 24 patches": how many. */
function isCounted(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at + 1], 'steps', 'patches', 'levels', 'readings', 'points', 'measurements') &&
    items.some(
      (item, place) => place < at && isWord(item, 'took', 'take') && isWord(items[place - 1], 'we', 'i'),
    )
  );
}

/** "Within the uncertainty of 3" */
function isUncertainty(items: readonly Item[], at: number): boolean {
  return isWord(items[at - 1], 'of', 'is') && isWord(items[at - 2], 'uncertainty');
}

/** "I wrote this down twice": of whoever did it. */
function isOfPerson(items: readonly Item[], at: number): boolean {
  return items.slice(Math.max(0, at - 6), at).some((item) => isWord(item, 'i', 'we'));
}

/** Passes over numbers that say how something was measured or what was wanted. */
export function ignoreMethod(items: readonly Item[]): undefined {
  for (let at = 0; at < items.length; at += 1) {
    const { number } = items[at]!;
    // "We measured it twice: …"
    if (isWord(items[at], 'twice') && items[at + 1]?.type === 'mark' && isOfPerson(items, at))
      items[at]!.meanings = [];
    if (!number) continue;
    if (isAskedFor(items, at) || isFloor(items, at) || isCounted(items, at) || isUncertainty(items, at))
      number.role = 'ignored';
  }
}
