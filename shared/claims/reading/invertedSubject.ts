import { type Item, isWord, keyOf } from './items.ts';
import { isParted } from './subjectMention.ts';

/** Words that may stand before the comparison that a sentence begins with. */
const before = [
  'and',
  'but',
  'also',
  'far',
  'even',
  'much',
  'rather',
  'slightly',
  'a little',
  'a shade',
  'too',
  'still',
  'yet',
];
const being = ['is', 'are', 'was', 'were', 'comes', 'stands', 'remains'];

/** "Between them stands the Hearth, second of the three" */
function subjectBetween(items: readonly Item[]): number {
  const stands =
    isWord(items[0], 'between') &&
    isWord(items[1], 'them', 'these', 'the two') &&
    isWord(items[2], 'stands', 'sits', 'comes', 'is', 'lies');
  const at = isWord(items[3], 'the', 'our') ? 4 : 3;
  return stands && (keyOf(items[at], 'unit') ?? keyOf(items[at], 'maker')) !== undefined ? at : -1;
}

/**
 * "Warmer is the Kasulind", "faster than both is the Vane", "heaviest by far is the Umbra": where the set's name stands
 * that the verb puts behind what is said of it; −1 where the words do not stand in that order.
 */
export function invertedSubject(items: readonly Item[]): number {
  const between = subjectBetween(items);
  if (between >= 0) return between;
  const lead = items.findIndex((item) => !isWord(item, ...before) && keyOf(item, 'intensity') === undefined);
  const said = items[lead];
  if (lead < 0 || lead > 3 || (keyOf(said, 'comparative') ?? keyOf(said, 'superlative')) === undefined)
    return -1;
  const verb = items.findIndex((item, at) => at > lead && isWord(item, ...being));
  if (verb < 0 || verb > lead + 7) return -1;
  // "Dearer, and no better, is …" aside: what stands between says whom it is compared with, or by how much.
  if (
    items
      .slice(lead + 1, verb)
      .some(
        (item) => isWord(item, 'the', 'its') && !isWord(items[items.indexOf(item) - 1], 'than', 'of', 'the'),
      )
  )
    return -1;
  let at = verb + 1;
  while (isWord(items[at], 'the', 'our', 'its')) at += 1;
  // "… are the blacks of the Umbra"
  if (keyOf(items[at], 'concept') !== undefined && isWord(items[at + 1], 'of'))
    at += isWord(items[at + 2], 'the') ? 3 : 2;
  const named = (keyOf(items[at], 'unit') ?? keyOf(items[at], 'maker')) !== undefined;
  return named && !isParted(items, at) ? at : -1;
}
