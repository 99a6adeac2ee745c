import type { Check } from '../../contract/check.ts';
import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

/** "not", "not a", "never", "isn't", "no longer": words that turn round what they stand beside. */
function denies(item: Item): boolean {
  if (keyOf(item, 'hedge') !== undefined || keyOf(item, 'comparator') !== undefined) return false;
  return /^(?:not|not an?|never|no longer|cannot|n't|.+n't)$/.test(item.text);
}

const lacking = [
  'absent',
  'absence',
  'gone',
  'none',
  'free',
  'free of',
  'without',
  'nothing',
  'missing',
  'nowhere to be seen',
];

/** Words that deny by themselves, so that a "not" before them affirms. */
function lacks(item: Item): boolean {
  return (
    isWord(item, ...lacking) ||
    /^(?:all but|hardly|barely|scarcely|almost|nearly) /.test(item.text) ||
    keyOf(item, 'house') === 'invisible' ||
    denies(item)
  );
}

/** A check that itself says "not": its rule has heard the denial. */
function saysNot(check: Check): boolean {
  return 'negated' in check && check.negated === true;
}

/**
 * Why the denials of a clause keep a check from being made: one that stands amid its words without being among
 * them, or two in a row, whose sense no rule settles. In doubt a claim is unproven, never held.
 */
export function denialProblem(
  scene: Scene,
  check: Check,
  words: readonly (Item | undefined)[],
): string | undefined {
  const own = words.filter((item): item is Item => item !== undefined && scene.items.includes(item));
  if (own.length === 0) return undefined;
  const from = Math.min(...own.map(({ index }) => index));
  const to = Math.max(...own.map(({ index }) => index));
  const twice =
    (check.kind === 'observed' && deniesLack(own)) ||
    scene.items.some((item, at) => {
      const next = scene.items[at + 1];
      return (
        next !== undefined && denies(item) && lacks(next) && item.index >= from - 2 && next.index <= to + 2
      );
    });
  if (twice) return 'two denials in a row may mean either';
  if (saysNot(check))
    return deniesNearerNumber(scene, own) ? 'the words leave open which number is denied' : undefined;
  const unheard = scene.items.find(
    (item) =>
      (item.index > from || deniesPlace(scene, check, item, from)) &&
      item.index < to &&
      denies(item) &&
      !own.includes(item) &&
      !isInAside(scene.sentence, item, own.findLast(({ number }) => number) ?? own.at(-1)!) &&
      !affirmsDenial(scene, item, own),
  );
  return unheard && `the check does not hear “${unheard.text}”`;
}

/** "It isn't the widest of the three", "that does not put it last of the three": a place among sets, denied right before its words. */
function deniesPlace(scene: Scene, check: Check, denial: Item, from: number): boolean {
  if (check.kind !== 'order' || !['best', 'position'].includes(check.rank.type)) return false;
  const between = scene.sentence.slice(denial.index + 1, from);
  return (
    denial.index < from &&
    between.length <= 4 &&
    between.every((item) => item.type !== 'mark' && item.number === undefined)
  );
}

/** "Its lag, for reasons that were not explained to us, increases to 9.5 ms" */
export function isInAside(sentence: readonly Item[], denial: Item, number: Item): boolean {
  const lead = sentence.slice(0, denial.index);
  const opening = lead.findLastIndex((item) => isWord(item, ','));
  const ends = sentence.slice(denial.index, number.index).some((item) => isWord(item, ','));
  // "The Hearth, without so much as clearing its throat, manages 999"
  const manner = opening === denial.index - 1 && isWord(denial, 'without');
  return (
    opening >= 0 &&
    ends &&
    (manner || lead.slice(opening).some((item) => isWord(item, 'that', 'which', 'who')))
  );
}

/** "Never gets past 3, not even at 60 degrees": the same denial once more. */
function affirmsDenial({ items }: Scene, item: Item, own: readonly Item[]): boolean {
  return (
    isWord(item, 'not') &&
    isWord(items[items.indexOf(item) + 1], 'even') &&
    own.some((other) => other.index < item.index && (lacks(other) || keyOf(other, 'stat') === 'none'))
  );
}

/** "Was not conspicuous by its absence": a denial and a word of lack in one breath. */
function deniesLack(own: readonly Item[]): boolean {
  return own.some(
    (denial) =>
      denies(denial) &&
      own.some(
        (lack) => lacks(lack) && !denies(lack) && lack.index > denial.index && lack.index - denial.index <= 4,
      ),
  );
}

/** "P3 is not at 98 % in xy, BT.2020 at 77 %": a denial reaches the first number of its kind after it. */
function deniesNearerNumber({ items }: Scene, own: readonly Item[]): boolean {
  const denial = own.find(denies);
  const stated = own.find(({ number }) => number && number.role !== 'axis' && number.role !== 'window');
  return (
    denial !== undefined &&
    stated !== undefined &&
    items.some(
      (item) =>
        item.number?.dimension === stated.number!.dimension &&
        item.index > denial.index &&
        item.index < stated.index &&
        !own.includes(item),
    )
  );
}
