import { isInAside } from '../denials.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { plays } from '../parts.ts';
import type { Scene } from '../scene.ts';
import { membersOfSeries } from './limitOperator.ts';

/** Words between a denial and its number that change nothing of what is denied. */
const linking =
  /^(?:an?|the|its|at|of|to|in|on|with|for|as|be|been|is|are|was|were|that|really|quite|even|exactly|actually|once|ever|anything|like|some|full|promised|usual|quoted|gets?|go|goes|comes?|costs?|has|have|draws?|weighs?)$/;

/** Denials of a degree, which say nothing of a number that does not stand right behind them. */
const loose = [
  ...['anything but', 'far from', 'short of being', 'rather than'],
  ...['hardly', 'barely', 'scarcely'],
];

/** The word before a number that denies something; `open` where the words do not say that it is the number. */
export function denialOfNumber(scene: Scene, number: Item): { negation?: Item; open: boolean } {
  const negation = scene.items.find(
    (entry) =>
      entry.index < number.index &&
      keyOf(entry, 'negation') === 'not' &&
      !scene.used.has(entry) &&
      !keyOf(entry, 'hedge') &&
      !isInAside(scene.sentence, entry, number) &&
      !isInLead(scene.sentence, entry, number) &&
      // "I would not call black deep: 0.08 nits" denies the word before the colon.
      !scene.sentence.slice(entry.index, number.index).some((mark) => isWord(mark, ':', ';')) &&
      // "That is not the whole story, for at 10 % it is 13 % too dark"
      !scene.sentence
        .slice(entry.index, number.index)
        .some(
          (word) =>
            isWord(word, 'for', 'because', 'since') && isWord(scene.sentence[word.index - 1], ',', '—', '–'),
        ) &&
      // "It misses BT.2020 by a wide margin, covering only 71 %": what is missed is not the number.
      !(isWord(entry, 'misses', 'lacks') && keyOf(scene.items[scene.items.indexOf(entry) + 1], 'gamut')) &&
      // "Green misses its hue by 6.3°": by so much.
      !(
        isWord(entry, 'misses', 'missed') &&
        isWord(scene.items[scene.items.indexOf(entry) + 1], 'its', 'their')
      ),
  );
  // "Not over by nearly 8 %": "not over" is no limit there.
  const turned = scene.items.find(
    (entry, at) =>
      entry.index < number.index &&
      /^(?:not|never|no) /.test(entry.text) &&
      keyOf(entry, 'comparator') !== undefined &&
      isWord(scene.items[at + 1], 'by'),
  );
  if (turned) return { negation: turned, open: true };
  // "It is not a 1,000-nit set", "a thousand nits it is not"
  const at = scene.items.indexOf(number);
  const before = scene.items[at - 1];
  if (!negation && isWord(before, 'not a', 'not an')) return { negation: before, open: false };
  // "The worst step is not just 1.2": more than that, and how much more nobody says.
  if (isWord(before, 'not just', 'not merely')) return { negation: before, open: true };
  const [it, is, not] = scene.items.slice(at + 1, at + 4);
  if (!negation && isWord(it, 'it') && (keyOf(is, 'negation') === 'not' || keyOf(not, 'negation') === 'not'))
    return { negation: keyOf(is, 'negation') === 'not' ? is! : not!, open: true };
  if (!negation && isOfNone(scene, number)) return { negation: number, open: true };
  if (!negation) return { open: false };
  // "anything but low at 12" denies the adjective, "far from perfect at 4" too.
  const isLoose =
    (isWord(negation, ...loose) && negation.index + 1 !== number.index) ||
    // "It lacks the 742 nits of the Kasulind", "does not come close to 742 nits"
    isWord(negation, 'lacks', 'lack', 'lacked') ||
    number.number?.hedge === 'about' ||
    scene.items.some(
      (item) => isWord(item, 'close', 'near') && item.index > negation.index && item.index < number.index,
    );
  return { negation, open: isLoose || !reaches(scene, negation, number) };
}

/** "No grey comes to 3", "not one patch measures 3": none of them has that number. */
function isOfNone({ items }: Scene, number: Item): boolean {
  return items.some((item, at) => {
    const next = items[at + 1];
    return (
      keyOf(item, 'stat') === 'none' &&
      item.index < number.index &&
      number.index - item.index === items.indexOf(number) - at &&
      items.slice(at, items.indexOf(number)).every(({ type, number: other }) => type !== 'mark' && !other) &&
      (!isWord(item, 'no') || plays(next, 'levels') || isWord(next, ...membersOfSeries))
    );
  });
}

/** "As it could not be measured, the lag is 9.6 ms": the denial stays in the clause that leads. */
function isInLead(sentence: readonly Item[], denial: Item, number: Item): boolean {
  return (
    isWord(sentence[0], 'although', 'though', 'while', 'since', 'because', 'as', 'whereas') &&
    sentence.slice(denial.index, number.index).some((item) => isWord(item, ','))
  );
}

/** Does the denial reach the number? "Not interested in the 5,240:1 contrast" denies the interest. */
function reaches({ items }: Scene, negation: Item, number: Item): boolean {
  return items
    .slice(items.indexOf(negation) + 1, items.indexOf(number))
    .every(
      ({ type, meanings, number: other, text }) =>
        type !== 'word' || meanings.length > 0 || other !== undefined || linking.test(text),
    );
}
