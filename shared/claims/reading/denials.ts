import type { Check } from '../../contract/check.ts';
import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

/** "not", "not a", "never", "isn't", "no longer": words that turn round what they stand beside. */
function denies(item: Item): boolean {
  if (keyOf(item, 'hedge') !== undefined || keyOf(item, 'comparator') !== undefined) return false;
  return /^(?:not|not an?|not any|never|no longer|cannot|n't|.+n't)$/.test(item.text);
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
  'misses',
  'missed',
  'lacks',
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
    (check.kind === 'observed' && (deniesLack(own) || deniesAfterNor(scene, own))) ||
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
      denies(item) &&
      (isDeniedBefore(scene, check, item, from, to) ||
        isDeniedOfHolder(scene, check, item, to) ||
        isDeniedBehind(scene, item, to) ||
        (item.index > from && item.index < to)) &&
      !own.includes(item) &&
      !isInAside(scene.sentence, item, own.findLast(({ number }) => number) ?? own.at(-1)!) &&
      !affirmsDenial(scene, item, own),
  );
  return unheard && `the check does not hear “${unheard.text}”`;
}

/** "A 24-month warranty is not included", "742 nits is not what it reaches": that there is so much is what is denied. */
function isDeniedBehind({ items }: Scene, denial: Item, to: number): boolean {
  const at = items.indexOf(denial);
  const next = items[at + 1];
  // "61 mm deep, feet not included": something else is not.
  return (
    denial.index > to &&
    denial.index <= to + 3 &&
    (isWord(items[at - 1], 'is', 'are', 'was', 'were') || !isWord(denial, 'not')) &&
    isWord(next, 'included', 'possible', 'available', 'there', 'what', 'supplied', 'offered', 'reached')
  );
}

function isPlace(check: Check): boolean {
  return check.kind === 'order' && (check.rank.type === 'best' || check.rank.type === 'position');
}

/** "Most accurate of all is not the Hearth": the set that has the place stands behind its denial. */
function isDeniedOfHolder({ items, units }: Scene, check: Check, denial: Item, to: number): boolean {
  if (!isPlace(check) || denial.index < to || denial.index > to + 6) return false;
  const behind = items.slice(items.indexOf(denial) + 1, items.indexOf(denial) + 3);
  return units.some(({ item }) => behind.includes(item));
}

/**
 * "It isn't the widest of the three", "that does not put it last of the three", "greys are not tinted green": denied right
 * before its words. What stands behind a colon is told anew: "we would not call black deep: 0.08 nits".
 */
function isDeniedBefore({ sentence }: Scene, check: Check, denial: Item, from: number, to: number): boolean {
  const between = sentence.slice(denial.index + 1, from);
  return (
    denial.index < from &&
    between.length <= (isPlace(check) ? 4 : 1) &&
    between.every((item) => item.type !== 'mark' && item.number === undefined) &&
    !sentence.slice(from, to).some((item) => isWord(item, ':', ';'))
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

/** "Nor was any banding not seen" */
function deniesAfterNor({ items }: Scene, own: readonly Item[]): boolean {
  const nor = own.find((item) => isWord(item, 'nor'));
  const last = own.at(-1)!.index;
  return (
    nor !== undefined &&
    items.some((item) => denies(item) && item.index > nor.index && item.index <= last + 2)
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
