import { type Item, isWord, keyOf } from './items.ts';

/** Does this item make a claim of its own, whatever stands around it? */
export function isAnchor(item: Item): boolean {
  if (item.number) {
    const role = item.number.role;
    // "Of all sets under £1,100" names a cohort and goes with what follows.
    if (role === 'money') return item.number.comparator === undefined || item.number.comparator === 'upTo';
    return (
      (role === undefined || role === 'value') &&
      !(
        item.number.spelled &&
        item.number.dimension === '' &&
        item.number.x < 3 &&
        item.number.place === 1 &&
        item.number.comparator === undefined
      )
    );
  }
  const house = keyOf(item, 'house');
  if (house)
    return !/^(?:see|seen|be seen|show|shows|spot|notice|noticed|accuracy|detectable)$/.test(item.text);
  for (const meaning of item.meanings) {
    switch (meaning.kind) {
      case 'comparative':
      case 'superlative':
      case 'direction':
      case 'gotThere':
      case 'fellShort':
      case 'multiple':
        return true;
      case 'tint':
        return true;
      case 'severity':
        return !['no', 'none', 'never', 'free', 'clear'].includes(item.text);
      case 'topic':
        return false;
    }
  }
  return false;
}

/** "…, none on the Kasulind": what was spoken of, on another set. */
export function isNoneOn(all: readonly Item[]): boolean {
  if (!all.some((item) => item.text === 'none')) return false;
  const items = isWord(all[0], 'and', 'but') ? all.slice(1) : all;
  return (
    ((isWord(items[0], 'none') &&
      (isWord(items[1], 'on') || (isWord(items[1], 'at all') && isWord(items[2], 'on')))) ||
      items.some(
        (item, at) =>
          isWord(item, 'shows', 'show', 'has', 'had', 'showed', 'saw', 'found', 'noticed') &&
          isWord(items[at + 1], 'none') &&
          ((items[at + 2]?.type ?? 'mark') === 'mark' || isWord(items[at + 2], 'at', 'at all', 'whatever')),
      )) &&
    items.some((item) => keyOf(item, 'unit') ?? keyOf(item, 'maker'))
  );
}

/** "… which is exactly what Orrinvale promises": the maker's number, taken up. */
export function promisesWhat(items: readonly Item[]): boolean {
  const what = items.findIndex((item) => isWord(item, 'what'));
  return (
    what >= 0 &&
    isWord(items[0], 'which') &&
    items.slice(what).some((item) => keyOf(item, 'maker') ?? keyOf(item, 'makerWord')) &&
    items.slice(what).some((item) => keyOf(item, 'saying'))
  );
}

/** "…, though only two of them are HDMI 2.1": a part of what was counted. */
export function countsPart(items: readonly Item[]): boolean {
  return items.some(
    (item, at) =>
      item.number?.dimension === '' &&
      isWord(items[at + 1], 'of') &&
      isWord(items[at + 2], 'them', 'which', 'these', 'those') &&
      items.slice(at + 3).some(({ text }) => /^\d\.\d$/.test(text)),
  );
}

/** "… and the Kasulind's is faint on axis": how much of what was spoken of is seen on a set. */
export function seesItsOwn(items: readonly Item[]): boolean {
  // "…, where before adjustment only a trained eye would have found it"
  const whole = items.findIndex((item) => keyOf(item, 'severity')?.includes(' '));
  if (whole >= 0 && items.slice(whole + 1).some((item) => isWord(item, 'it', 'them'))) return true;
  const at = items.findIndex((item) => isWord(item, "'s"));
  return (
    at > 0 &&
    keyOf(items[at - 1], 'unit') !== undefined &&
    isWord(items[at + 1], 'is', 'was', 'looks', 'stays') &&
    items.slice(at + 2, at + 4).some((item) => keyOf(item, 'severity') !== undefined)
  );
}

/** "I saw a dirty screen": a topic that was seen */
export function seesTopic(items: readonly Item[]): boolean {
  return (
    items.some((item) => keyOf(item, 'topic') !== undefined) &&
    items.some((item) => isWord(item, 'saw', 'noticed', 'spotted'))
  );
}

/** "There is no banding": a topic with its denial is a statement. */
export function deniesTopic(items: readonly Item[]): boolean {
  return (
    items.some((item) => keyOf(item, 'topic') !== undefined) &&
    items.some(
      (item) =>
        ['none', 'never'].includes(keyOf(item, 'stat') ?? '') ||
        keyOf(item, 'negation') !== undefined ||
        isWord(item, 'free', 'absent'),
    )
  );
}

/** "…, but the maximum isn't": a statement whose rest stands before. */
export function deniesStatistic({
  items,
  joiner,
  mark,
}: {
  items: readonly Item[];
  joiner: string;
  mark: string;
}): boolean {
  return (
    (['but', 'though', 'although', 'while', 'yet', 'and'].includes(joiner) || mark === ';') &&
    /^(?:isn't|aren't|doesn't|don't|not)$/.test(
      items.filter((item) => item.type !== 'mark').at(-1)?.text ?? '',
    ) &&
    items.some((item) => ['average', 'max', 'min'].includes(keyOf(item, 'stat') ?? ''))
  );
}

/** "Second behind the Plain", "second only to the Umbra": a place in a ranking, and who is ahead. */
export function saysPlace(items: readonly Item[]): boolean {
  return placeBehind(items) >= 0 || placeOfAll(items) !== undefined;
}

/** Words around a place that say only that it is taken, or denied. */
const taking: readonly string[] = [
  ...['and', 'but', 'the', 'only', 'which', 'that', 'it', 'is', 'not', "isn't", 'does', "doesn't", 'never'],
  ...[
    'puts',
    'put',
    'makes',
    'make',
    'leaves',
    'leave',
    'places',
    'comes',
    'come',
    'came',
    'finishes',
    'finish',
  ],
];

/** "…, second of the three", "which does not put it second of the three": nothing but a place, of what was just stated. */
export function placeOfAll(items: readonly Item[]): Item | undefined {
  const words = items.filter((item) => item.type !== 'mark' && !isWord(item, ...taking));
  const [place, of, count, noun, more] = words;
  const isPlain = isWord(of, 'of') && count?.number?.dimension === '' && more === undefined;
  const isSets = noun === undefined || isWord(noun, 'sets', 'televisions', 'tvs', 'here');
  return isPlain && isSets && (keyOf(place, 'ordinal') !== undefined || isWord(place, 'last'))
    ? place
    : undefined;
}

/** "…, and the Hearth comes in second": a set, and its place in the ranking just spoken of. */
export function takesNextPlace(items: readonly Item[]): boolean {
  const words = items.filter((item) => item.type !== 'mark');
  const place = words.at(-1);
  return (
    words.length <= 7 &&
    words.slice(0, 3).some((item) => keyOf(item, 'unit') !== undefined) &&
    words.some((item) => isWord(item, 'comes', 'came', 'finishes', 'finished', 'ranks', 'ranked', 'takes')) &&
    (keyOf(place, 'ordinal') !== undefined || isWord(place, 'last'))
  );
}

/** Where the place stands of which the words say who is ahead; −1 where there is none. */
export function placeBehind(items: readonly Item[]): number {
  return items.findIndex(
    (item, at) =>
      keyOf(item, 'ordinal') !== undefined &&
      (isWord(items[at + 1], 'behind') ||
        keyOf(items[at + 1], 'standing') === 'behind' ||
        (isWord(items[at + 1], 'only') && isWord(items[at + 2], 'to'))),
  );
}

/** "It leans to blue": a lean with its hue. */
export function leans(items: readonly Item[]): boolean {
  return items.some(
    (item, at) =>
      keyOf(item, 'lean') !== undefined &&
      // "Leans slightly to blue"
      items.slice(at + 1, at + 4).some((next) => keyOf(next, 'hue') !== undefined),
  );
}

/** "While cyan leans towards blue": a hue, and which way it errs. */
export function hueLeans(items: readonly Item[]): boolean {
  const at = items.findIndex((item) => keyOf(item, 'lean') !== undefined);
  return (
    at > 0 &&
    items.slice(Math.max(0, at - 3), at).some((item) => keyOf(item, 'hue') !== undefined) &&
    items.slice(at + 1, at + 4).some((item) => keyOf(item, 'hue') !== undefined)
  );
}

/** "… and the Hearth to blue": a set, and where its greys lean, behind another of which that was said. */
export function leansAsBefore(items: readonly Item[]): boolean {
  if (!items.some((item) => keyOf(item, 'hue') !== undefined)) return false;
  const words = items.filter(
    (item) =>
      item.type !== 'mark' &&
      !isWord(item, 'and', 'but', 'the', 'a', 'an', 'while', 'whereas', 'errs', 'on') &&
      // "The Plain errs the other way, towards red"
      keyOf(item, 'idiom') === undefined,
  );
  const isOwner = isWord(words[1], "'s");
  const [set, to, ...rest] = isOwner ? words.filter((_, at) => at !== 1) : words;
  if ((keyOf(set, 'unit') ?? keyOf(set, 'maker') ?? keyOf(set, 'pronoun')) === undefined) return false;
  const leansTo = isWord(to, 'to', 'towards', 'toward', 'into');
  // "… while the Umbra is obviously blue"
  const size = keyOf(rest[0], 'intensity') !== undefined;
  const looks = isWord(to, 'is', 'looks', 'turns', 'goes', 'are', 'look', 'turn', 'go') && (size || isOwner);
  // "…, the Linnet's an obvious blue one"
  const owned = isOwner && keyOf(to, 'intensity') !== undefined && isWord(rest[1], 'one');
  if (owned) return keyOf(rest[0], 'hue') !== undefined && rest.length === 2;
  const [hue, next] = looks && size ? rest.slice(1) : rest;
  // What stands behind a bracket or a comma is said beside it.
  const ends = next === undefined || (hue !== undefined && next.index > hue.index + 1);
  return (leansTo || looks) && keyOf(hue, 'hue') !== undefined && ends;
}

/** "The Kasulind leans to red where the Veltrane leans to green": each side has its set and its lean. */
export function leansToo(items: readonly Item[]): boolean {
  return (
    leans(items) &&
    items.some((item) => keyOf(item, 'unit') ?? keyOf(item, 'maker') ?? keyOf(item, 'pronoun'))
  );
}
