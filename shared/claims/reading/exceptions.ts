import type { Check } from '../../contract/check.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { levelsListed, partOfLevels } from './levelsListed.ts';
import type { Problem } from './problem.ts';
import type { Scene } from './scene.ts';

const excepting = ['except', 'excepting', 'save', 'bar', 'barring', 'apart', 'aside', 'but'];
const particles = ['from', 'for', 'at', 'in', 'on', 'the', 'its', 'above', 'below', 'very'];

/** Kinds of statement that are made over a stretch of levels */
const ofLevels = new Set<Check['kind']>(['bound', 'onset', 'direction', 'value']);

/** Why a check would judge other levels, or another matter, than the words name: a part, a list, an exception. */
export function exceptionProblem(
  scene: Scene,
  check: Check,
  items: readonly (Item | undefined)[],
): Problem | undefined {
  if (ofLevels.has(check.kind)) {
    const levels = levelsListed(scene);
    if (levels.length > 0)
      return { why: 'several levels are named: say what was measured at each', words: levels };
    const share = check.kind === 'bound' && partOfLevels(scene);
    if (share) return { why: 'a share of the levels is no limit of all', words: [share] };
    const exception = exceptionSaid(scene);
    if (exception)
      return { why: 'the words leave some levels out, and the check would not', words: [exception] };
  } else if (check.kind === 'order' || check.kind === 'ratio' || check.kind === 'difference') {
    const leftOut = conceptLeftOut(scene, items);
    if (leftOut) return { why: 'the words leave that out, and name no other', words: [leftOut] };
  }
  return undefined;
}

/**
 * "Below 3 everywhere except at 100 %", "all errors but the last": the word that takes levels out of what is said.
 * A check is made of one stretch of levels, and to hear only the exception, or only the rest, would judge another
 * statement. Sets and picture modes that are left out are heard elsewhere.
 */
function exceptionSaid({ items, sentence }: Scene): Item | undefined {
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

/** "It beats the Plain in everything but price", "contrast apart, it is ahead": the matter that is taken out. */
function conceptLeftOut({ sentence }: Scene, words: readonly (Item | undefined)[]): Item | undefined {
  return words.find((word) => {
    if (!word || keyOf(word, 'concept') === undefined) return false;
    if (isWord(sentence[word.index + 1], 'apart', 'aside') && !isWord(sentence[word.index + 2], 'from'))
      return true;
    let at = word.index - 1;
    while (isWord(sentence[at], ...particles)) at -= 1;
    return isWord(sentence[at], 'all but') || (isWord(sentence[at], ...excepting) && takesOut(sentence, at));
  });
}

/** "No patch is over 3 but one": said behind, of how many it is not so. */
function sparesSome(sentence: readonly Item[], at: number): boolean {
  const [count, end] = sentence.slice(at + 1);
  return (
    count?.number?.spelled === true &&
    (end === undefined || end.type === 'mark') &&
    sentence.slice(0, at).some((word) => ['none', 'all'].includes(keyOf(word, 'stat') ?? ''))
  );
}

function takesOut(sentence: readonly Item[], at: number): boolean {
  const item = sentence[at];
  if (isWord(item, 'but', 'bar', 'save') && sparesSome(sentence, at)) return true;
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
  let start = at + 1;
  while (isWord(sentence[start], ...particles)) start += 1;
  const head = sentence[start];
  return (
    head !== undefined &&
    (sparesSome(sentence, at) ||
      head.number?.dimension === 'percent' ||
      keyOf(head, 'tone') !== undefined ||
      isWord(head, 'last', 'first', 'brightest', 'darkest', 'white', 'black', 'top', 'bottom') ||
      (isWord(head, 'one', 'those', 'that') && isWord(sentence[start + 1], 'at', 'near', 'above', 'below')))
  );
}
