import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

const excepting = ['except', 'excepting', 'save', 'bar', 'barring', 'apart', 'aside', 'but'];

/**
 * "Below 3 everywhere except at 100 %", "all errors but the last": the word that takes levels out of what is said.
 * A check is made of one stretch of levels, and to hear only the exception, or only the rest, would judge another
 * statement. Sets and picture modes that are left out are heard elsewhere.
 */
export function exceptionSaid({ items, sentence }: Scene): Item | undefined {
  const first = items[0]?.index ?? 0;
  const last = items.at(-1)?.index ?? 0;
  return sentence.find(
    (item, at) =>
      isWord(item, ...excepting) &&
      takesOut(sentence, at) &&
      leavesOutLevels(sentence, at) &&
      !sentence
        .slice(Math.min(at, last + 1), Math.max(at, first))
        .some((word) => isWord(word, ';', ':', '.')),
  );
}

/**
 * "It beats the Plain in everything but price", "contrast apart, it is ahead": the word that takes out what a check was
 * about to be made of.
 */
export function conceptLeftOut({ sentence }: Scene, words: readonly (Item | undefined)[]): Item | undefined {
  return words.find((word) => {
    if (!word || keyOf(word, 'concept') === undefined) return false;
    const next = sentence[word.index + 1];
    if (isWord(next, 'apart', 'aside') && !isWord(sentence[word.index + 2], 'from')) return true;
    const lead = isWord(sentence[word.index - 1], 'the', 'its', 'for', 'from', 'on', 'in')
      ? word.index - 2
      : word.index - 1;
    const before = isWord(sentence[lead], 'from', 'for', 'in', 'on') ? lead - 1 : lead;
    return (
      isWord(sentence[before], 'all but') ||
      (isWord(sentence[before], ...excepting) &&
        (takesOut(sentence, before) || isWord(next, 'apart') || isWord(sentence[before + 1], 'from')))
    );
  });
}

function takesOut(sentence: readonly Item[], at: number): boolean {
  const item = sentence[at];
  if (isWord(item, 'apart', 'aside')) return isWord(sentence[at + 1], 'from');
  if (!isWord(item, 'but', 'bar', 'save')) return true;
  return sentence
    .slice(Math.max(0, at - 3), at)
    .some(
      (word) =>
        keyOf(word, 'stat') === 'all' || isWord(word, 'nowhere', 'none', 'nothing', 'everywhere', 'no level'),
    );
}

function leavesOutLevels(sentence: readonly Item[], at: number): boolean {
  const words = sentence.slice(at + 1, at + 6);
  const object = words.slice(
    words.findIndex(
      (word) => !isWord(word, 'from', 'for', 'at', 'in', 'the', 'above', 'below', 'very', 'on'),
    ),
  );
  const [head] = object;
  return (
    head !== undefined &&
    (head.number?.dimension === 'percent' ||
      keyOf(head, 'tone') !== undefined ||
      isWord(head, 'last', 'first', 'brightest', 'darkest', 'white', 'black', 'top', 'bottom') ||
      (isWord(head, 'one', 'those', 'that') && isWord(object[1], 'at', 'near', 'above', 'below')))
  );
}
