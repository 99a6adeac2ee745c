import { type Item, isWord, keyOf } from './items.ts';
import { meets, needBits } from './needs.ts';
import { isAnchor } from './ownStatement.ts';
import type { Scene, UnitMention } from './scene.ts';
import { hasVerb } from './verbs.ts';

const pointing = ['that', 'this', "that's"];
const pointed = needBits([{ words: [...pointing, 'there'] }]);

/** "That is nearly twice the Hearth's lag", "and on that set no error …", "the shift there": of the set just named. */
export function takesUpSet({ items, previous, carry, signs }: Scene): boolean {
  if (!meets(signs, pointed)) return false;
  const first = items.find((item) => item.type !== 'mark');
  if (
    !previous &&
    carry.sets === undefined &&
    isWord(first, ...pointing) &&
    isWord(items[1], 'is', 'was', "'s")
  )
    return true;
  const thatSet = items.some(
    (item, at) =>
      isWord(item, 'that') && at <= 2 && isWord(items[at + 1], 'set', 'one', 'screen', 'model', 'television'),
  );
  // "On that set the error is visible": the one that the sentence before named.
  if (thatSet && !previous && carry.sets === undefined) return true;
  return (
    previous !== null &&
    items.some(
      (item, at) =>
        (isWord(item, 'that') && isWord(items[at + 1], 'set', 'one', 'screen', 'model')) ||
        // "The shift there is 1.8", not "and there is".
        (isWord(item, 'there') && at > 0 && !isWord(items[at - 1], 'and', 'but', 'that', 'so')),
    )
  );
}

const relative = needBits([{ words: ['which', 'who', 'whose'] }]);

/** "…, the Kasulind, which manages 731 nits": the set right before the relative clause. */
export function antecedentOf({ items, previous, units, signs }: Scene): UnitMention | undefined {
  if (!meets(signs, relative)) return undefined;
  const inside = units.find(
    ({ item, role }) => role !== 'maker' && isWord(items[items.indexOf(item) + 1], 'which'),
  );
  if (inside && !items.some((item) => item.index < inside.item.index && isAnchor(item))) {
    inside.role = 'subject';
    return inside;
  }
  // "The same is true of the Plain, whose error averages 3.1"
  const owner = units.find(
    ({ item, role }) => role !== 'maker' && isWord(items[items.indexOf(item) + 1], 'whose'),
  );
  if (
    owner &&
    !items.some((item) => item.index < owner.item.index && (item.number !== undefined || isAnchor(item)))
  ) {
    owner.role = 'subject';
    return owner;
  }
  const first = items[0];
  if (!isWord(first, 'which', 'who', 'whose') || !previous || units.some(({ role }) => role === 'subject'))
    return undefined;
  const last = previous.units.filter(({ role }) => role !== 'maker').at(-1);
  // "… is higher than the Sable's, which gives faces some gravity": of the whole statement.
  const owned = last && isWord(previous.items[previous.items.indexOf(last.item) + 1], "'s");
  return last && !owned && first!.index - last.item.index <= 3 ? last : undefined;
}

const siblingWords: ReadonlySet<string> = new Set([
  'sibling',
  'siblings',
  'brother',
  'brothers',
  'sister',
  'cousin',
  'stablemate',
  'predecessor',
  'successor',
]);

const setWords = ['set', 'television', 'tv', 'screen', 'model', 'display'];

/** "A good set reaches 1,000 nits", "last year's model cost …", "the 2025 model": any set, or one of another year. */
function setAtLarge(items: readonly Item[]): Item | undefined {
  const words = items.filter(({ type }) => type !== 'mark');
  // "Other sets reach 900 nits"
  const others =
    isWord(words[0], 'other', 'some', 'most', 'many', 'few') &&
    isWord(words[1], 'sets', 'televisions', 'tvs', 'screens');
  if (others) return words[1];
  const at = words.slice(0, 6).findIndex((item) => isWord(item, ...setWords));
  if (at < 0 || words.some((item) => keyOf(item, 'pronoun') === 'it')) return undefined;
  const lead = words.slice(0, at);
  const ofYear =
    isWord(words[at], 'set', 'model', 'television', 'tv') &&
    (/^20\d\d$/.test(lead.at(-1)?.text ?? '') ||
      (isWord(lead[0], 'last') && /year/.test(lead[1]?.text ?? '')));
  const isAny =
    isWord(words[0], 'a', 'an', 'any') &&
    !isWord(words[at + 1], 'of', 'that', 'with', 'for', 'to', 'which', 'at') &&
    lead.every((item) => item.number === undefined && keyOf(item, 'comparative') === undefined);
  return ofYear || isAny ? words[at] : undefined;
}

const unnamed = needBits([
  {
    kinds: ['comparative'],
    words: [
      ...setWords,
      ...siblingWords,
      ...[
        'rival',
        'competitor',
        'sets',
        'televisions',
        'tvs',
        'screens',
        'version',
        'versions',
        'models',
        'size',
        'sizes',
        'variant',
        'one',
        'ones',
      ],
    ],
  },
]);

/** "its bigger sibling peaks at …", "the larger version weighs …": another set or size, and none is named. */
export function unnamedRelative({ items, signs }: Scene): Item | undefined {
  if (!meets(signs, unnamed)) return undefined;
  const general = setAtLarge(items);
  if (general) return general;
  const verb = items.findIndex(
    (item) =>
      keyOf(item, 'verb') !== undefined || item.number !== undefined || isWord(item, 'is', 'has', 'weighs'),
  );
  return items.slice(0, verb < 0 ? items.length : verb).find(
    (item, at, before) =>
      (siblingWords.has(item.text) &&
        !isWord(before[at + 1], 'of') &&
        // "My brother-in-law"
        !isWord(before[at - 1], 'my', 'your', 'his', 'her', 'our')) ||
      // "A rival at £999 reaches 800 nits"
      (isWord(item, 'rival', 'competitor') && isWord(before[at - 1], 'a', 'one', 'another', 'some')) ||
      // "On the cheaper of its two rivals", "the dearer set"
      (keyOf(item, 'comparative') !== undefined &&
        isWord(before[at - 1], 'the') &&
        isWord(before[at + 1], 'of', 'set', 'one', 'model', 'television', 'rival')) ||
      (isWord(item, 'version', 'versions', 'model', 'models', 'size', 'sizes', 'variant', 'one', 'ones') &&
        !isWord(before[at - 2], 'no', 'any', 'every', 'all', 'the only') &&
        isWord(before[at - 1], 'bigger', 'larger', 'smaller', 'biggest', 'largest', 'smallest')),
  );
}

/** "… with an average of 2.5 and a white of 5,900 K": the list of what the set has goes on. */
export function isSamePredicate(items: readonly Item[]): boolean {
  return (
    isWord(items[0], 'and', 'with') && isWord(items[1], 'a', 'an', 'no') && !hasVerb(withoutOwner(items))
  );
}

/** Without the "'s" of a set that owns something, which is no verb. */
export function withoutOwner(items: readonly Item[]): Item[] {
  return items.filter((item, at) => !(isWord(item, "'s") && keyOf(items[at - 1], 'unit') !== undefined));
}

export function startsWithVerb(items: readonly Item[]): boolean {
  const first = items.find((item) => !isWord(item, 'and', 'but', 'also', 'yet', 'then', 'even', 'still'));
  return (
    first !== undefined &&
    (keyOf(first, 'verb') !== undefined ||
      isWord(
        first,
        ...(['is', 'has', 'draws', 'weighs', 'offers', 'supports', 'costs', 'keeps', 'scores'] as const),
        ...(['shows', 'brings', 'takes', 'lacks'] as const),
      ))
  );
}

/** Only a number with its conditions: "… and 160 nits full screen". */
export function isElliptic(items: readonly Item[]): boolean {
  return !items.some((item) => keyOf(item, 'concept') || keyOf(item, 'topic') || keyOf(item, 'hue'));
}
