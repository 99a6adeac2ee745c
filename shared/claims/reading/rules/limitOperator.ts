import type { BoundOp } from '../../../contract/check.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { plays } from '../parts.ts';
import type { Scene } from '../scene.ts';
import { opposite } from './levelCount.ts';

/** Words for one of the many that a series has; `levels` are a part of their own. */
export const membersOfSeries = [
  'patch',
  'hue',
  'error',
  'swatch',
  'grey',
  'gray',
  'colour',
  'color',
  'shade',
];

/** The inequality that the words around a number state; undefined when they state none. */
export function operatorOf(
  scene: Scene,
  item: Item,
): { op: BoundOp; scale: number; items: Item[] } | undefined {
  const number = item.number!;
  const at = scene.items.indexOf(item);
  const items: Item[] = [];
  let op: BoundOp | undefined;
  let scale = 1;
  const comparator = number.comparator;
  if (comparator === '<<') {
    op = '<';
    scale = 0.8;
  } else if (comparator === '>>') {
    op = '>';
    scale = 1.25;
  } else if (comparator && comparator !== 'upTo') op = comparator as BoundOp;
  if (op) {
    // "No longer passes ΔE2000 3": the words from the one that compares to the number.
    const from = scene.items.findLastIndex(
      (entry, place) =>
        place < at &&
        place >= at - 5 &&
        (keyOf(entry, 'comparator') !== undefined ||
          ['rise', 'fall', 'exceed'].includes(keyOf(entry, 'verb') ?? '')),
    );
    if (from >= 0) items.push(...scene.items.slice(from, at));
    const after = scene.items.slice(at + 1, at + 6).find((entry) => keyOf(entry, 'trailing'));
    if (after && !scene.items[at - 1]?.meanings.some((meaning) => meaning.kind === 'comparator'))
      items.push(after);
  }
  // "exceeds 3", "tops 98 %": the verb itself is the comparator.
  let left = at - 1;
  while (left >= 0 && isWord(scene.items[left], 'the', 'a', 'an', 'even', 'ever')) left -= 1;
  const before = scene.items[left];
  if (!op && keyOf(before, 'verb') === 'exceed') {
    op = '>';
    items.push(before!);
  }
  // "It just misses 750 nits" stays under them.
  const isMissed =
    isWord(before, 'misses', 'missed', 'miss') &&
    ['luminance', 'ratio'].includes(number.dimension) &&
    !scene.items.some(
      (entry) =>
        entry.index < before!.index && (keyOf(entry, 'negation') ?? keyOf(entry, 'stat')) !== undefined,
    );
  if (!op && isMissed) return { op: '<', scale: 1, items: [before!] };
  // "It does not reach 750 nits" says that it stays under.
  if (
    !op &&
    ['reach', 'cover'].includes(keyOf(before, 'verb') ?? '') &&
    /reach|hit|get|manage|achieve|top|peak|cover|fill|span/.test(before!.text)
  ) {
    // "It does not reach 750 nits", "none of its rivals reaches 700 nits"
    const negation = scene.items.find(
      (entry) =>
        entry.index < before!.index &&
        (keyOf(entry, 'negation') === 'not' ||
          (isWord(entry, 'none') && isWord(scene.items[scene.items.indexOf(entry) + 1], 'of')) ||
          isWord(entry, 'none of')),
    );
    if (negation && ['luminance', 'ratio', 'percent'].includes(number.dimension))
      return { op: '<', scale: 1, items: [before!, negation] };
    // "No patch gets to 3"
    const none = scene.items.find(
      (entry, place) =>
        place < left &&
        place >= left - 5 &&
        // Nothing is thrown in between.
        before!.index - entry.index === left - place &&
        (keyOf(entry, 'stat') === 'never' ||
          (keyOf(entry, 'stat') === 'none' &&
            (/of(?: the)?$|^nothing/.test(entry.text) ||
              isWord(scene.items[place + 1], 'of') ||
              plays(scene.items[place + 1], 'levels') ||
              isWord(scene.items[place + 1], ...membersOfSeries)))),
    );
    if (none && !negation) return { op: '<', scale: 1, items: [before!, none] };
  }
  if (!op) return undefined;
  // Negation that stands before the comparator turns it: "no error rises above 3", "does not exceed".
  const anchor = items.reduce((first, entry) => (entry.index < first.index ? entry : first), item);
  const negations = scene.items.filter(
    (entry) =>
      entry.index < anchor.index &&
      !scene.used.has(entry) &&
      (keyOf(entry, 'negation') !== undefined || ['none', 'never'].includes(keyOf(entry, 'stat') ?? '')) &&
      keyOf(entry, 'comparator') === undefined &&
      // "Never misses its target by more than 3 %": far from it, no denial.
      !(isWord(entry, 'misses', 'miss') && scene.items.some((word) => /target/.test(word.text))) &&
      // "Neither the average nor the maximum": one denial in two words.
      !(isWord(entry, 'nor') && isNeither(scene)) &&
      !isPartedByWith(scene, entry, anchor) &&
      // "Perfect it is not: the error passes 3"
      !scene.sentence.slice(entry.index, anchor.index).some((mark) => isWord(mark, ':', ';')),
  );
  // "Levels above 3: none"
  if (isWord(scene.items[at + 1], 'none')) negations.push(scene.items[at + 1]!);
  if (negations.length % 2 === 1) {
    op = opposite[op];
    items.push(...negations);
  }
  return { op, scale, items };
}

/** "It does not tire, with more than 99 % left": what stands behind "with" is not denied. */
function isPartedByWith(scene: Scene, denial: Item, anchor: Item): boolean {
  const joiner = scene.items[scene.items.indexOf(anchor) - 1];
  return isWord(joiner, 'with') && joiner!.index > denial.index + 1;
}

/** "Neither the average nor the maximum": one denial in two words. */
export function isNeither(scene: Scene): boolean {
  return scene.items.some((item) => isWord(item, 'neither'));
}
