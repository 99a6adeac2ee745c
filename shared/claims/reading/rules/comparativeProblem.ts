import { accessoryBefore } from '../foreign.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { countsThings } from '../plainTalk.ts';
import type { Problem } from '../problem.ts';
import type { Scene } from '../scene.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { concepts } from './orderWords.ts';
import { namesOtherThing } from './saidBefore.ts';

const whichSet = 'the words do not say which set that is';

/** "Better", "smaller": the word does not say in what. */
function entryIsOpen({ concept }: ComparativeEntry): boolean {
  return concept === '';
}

/** "A good deal more so than the Umbra" */
export function isMoreSo({ items }: Scene, item: Item): boolean {
  return isWord(item, 'more', 'less') && isWord(items[items.indexOf(item) + 1], 'so');
}

/** Why a comparing word orders no two sets: "no set" when it is said of other things, undefined when it may. */
export function comparativeProblem(
  scene: Scene,
  item: Item,
  given: ComparativeEntry,
): Problem | 'no set' | undefined {
  const { items, sentence } = scene;
  if (items.some((word) => isWord(word, 'hardly', 'scarcely')))
    return { why: 'the words leave open whether it is ahead', words: [item] };
  const at = items.indexOf(item);
  const last = items[at - 1];
  const next = items[at + 1];
  // "Judder is worse than on the Plain", which `observed.ts` reads.
  const isOfTopic = items.some((word) => word.index < item.index && keyOf(word, 'topic') !== undefined);
  if (entryIsOpen(given) && isOfTopic) return 'no set';
  // "One can live with that; less easily with the Plain": how it is borne, and nothing of the sets.
  if (entryIsOpen(given) && isWord(next, 'easily', 'readily', 'willingly', 'happily')) return 'no set';
  // "The rest of us have slower thumbs"
  if (/^(?:slower|faster|quicker)$/.test(item.text) && countsThings(next)) return 'no set';
  // "For smaller rooms the 65-inch costs …": what is smaller is no set.
  if (entryIsOpen(given) && countsThings(next) && !items.some((word) => isWord(word, 'than')))
    return 'no set';
  // "Its speakers are louder than the Plain's"
  const part = given.concept === 'noise' ? accessoryBefore(scene, item) : undefined;
  if (part) return { why: 'the words speak of a part for which no quantity stands', words: [part, item] };
  if (isMoreSo(scene, item)) return undefined;
  // "It beats its dearer rival, the Umbra": a word that tells which set is meant.
  if (isWord(next, 'rival', 'competitor', 'one', 'set') && isWord(last, 'its'))
    return { why: whichSet, words: [item, next] };
  // "Of the two cheaper sets, the Plain is the brighter": which they are, nobody has checked.
  const lead = sentence.slice(0, item.index);
  if (isWord(lead[0], 'of') && lead.some((word) => keyOf(word, 'comparative')))
    return { why: 'the words do not say among which sets', words: [item] };
  // "On the cheaper of its two rivals": which set is meant.
  if (isWord(last, 'the') && isWord(next, 'of') && !isWord(items[at - 2], 'is', 'was'))
    return { why: whichSet, words: [item] };
  const than = items.findIndex((other, index) => index > at && isWord(other, 'than'));
  // "The Plain manages 571 nits, so that the room is brighter"
  const namesNoSet = !scene.unitNamed && scene.units.length === 0 && concepts(scene).length === 0;
  if (than < 0 && namesNoSet && namesOtherThing(scene)) return 'no set';
  // "The Plain, unlike the Vane, is brighter": than which set, the words do not say.
  const unlike =
    than < 0 ? items.find((word) => isWord(word, 'unlike') && word.index < item.index) : undefined;
  if (unlike) return { why: 'the words do not say what it is compared with', words: [unlike, item] };
  const other = oneRival(items, item) ?? setLeftOut(items, item);
  if (other) return { why: whichSet, words: [other, item] };
  // "Two years, one more than Veltrane gives": by so much, and a mere order would say less.
  if (last?.number?.spelled && last.number.dimension === '' && than > at && !scene.used.has(last))
    return { why: 'the words do not say what so many are of', words: [last, item] };
  return undefined;
}

/** "One rival is brighter: the Umbra": said of that rival, and not of this set. */
function oneRival(items: readonly Item[], comparative: Item): Item | undefined {
  return items.find(
    (word, at) =>
      isWord(word, 'rival', 'competitor') &&
      isWord(items[at - 1], 'one', 'a', 'another') &&
      word.index < comparative.index,
  );
}

/** "Everything but the Umbra has less contrast": said of all those sets, and not of the one left out. */
function setLeftOut(items: readonly Item[], comparative: Item): Item | undefined {
  return items.find((word, at) => {
    if (word.index >= comparative.index) return false;
    if (isWord(word, 'all but'))
      return items.slice(at + 1, at + 3).some((next) => keyOf(next, 'unit') !== undefined);
    const before = items.slice(Math.max(0, at - 2), at);
    return isWord(word, 'but') && before.some((last) => keyOf(last, 'stat') === 'all');
  });
}
