import { type Item, isWord, keyOf } from '../items.ts';
import { countsThings } from '../plainTalk.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { hasVerb } from '../verbs.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { namesOtherThing } from './saidBefore.ts';

export function negated(scene: Scene, item: Item): { negated?: true } {
  return scene.items.some(
    (other) =>
      other.index < item.index &&
      !isWord(other, 'barely', 'scarcely', 'hardly') &&
      (keyOf(other, 'negation') !== undefined ||
        keyOf(other, 'stat') === 'never' ||
        // "no brighter than the Veltrane"
        (isWord(other, 'no') && scene.items.indexOf(item) - scene.items.indexOf(other) === 1)),
  )
    ? { negated: true }
    : {};
}

/** "The Kasulind's is shorter": what that set has, against this review's own. */
export function isOwned(scene: Scene): boolean {
  const { units, items, unit, context } = scene;
  const [mention] = units;
  if (namesOtherThing(scene)) return false;
  return (
    units.length === 1 &&
    mention !== undefined &&
    unit !== undefined &&
    unit !== context.own &&
    isWord(items[items.indexOf(mention.item) + 1], "'s")
  );
}

export function concepts(scene: Scene): Item[] {
  return scene.items.filter((item) => keyOf(item, 'concept'));
}

/** "better": the side that is better for the quantity. */
export function betterDirection(
  entry: ComparativeEntry,
  key: string,
  quantity: Quantity,
): 'higher' | 'lower' | undefined {
  if (entry.concept !== '') return entry.direction;
  if (['better', 'best'].includes(key)) return quantity.better === 'target' ? undefined : quantity.better;
  if (['worse', 'worst'].includes(key))
    return quantity.better === 'target' ? undefined : quantity.better === 'higher' ? 'lower' : 'higher';
  return entry.direction;
}

const setNouns =
  /^(?:sets?|televisions?|tvs?|tellies|telly|screens?|models?|panels?|displays?|lcds?|oleds?|pictures?|images?|highlights|whites?|ones?|four|three|five|six|lot|bunch|group|trio|quartet|class|rivals?|competitors?|showings?|performances?|performers?|results?|figures?|shares?)$/;
const afterSuperlative =
  /^(?:we|i|you|of|in|on|at|here|there|yet|ever|under|over|below|above|by|for|and|or|but|to|that|which|this|so|with|among|bar|except|after|from|out|is|are|was|tested|measured|seen|reviewed|the|a|it|as|when|where|available|possible|around|money)$/;

/** "The brightest star in that film": the noun after a superlative is no set and no part of a picture. */
export function namesNoSet(items: readonly Item[], at: number): boolean {
  // "The brightest clouds lose their modelling"
  const noun = items[at + 1];
  // "It is the brightest this year"
  if (isWord(noun, 'this', 'last') && isWord(items[at + 2], 'year')) return false;
  if (noun && noun.index === items[at]!.index + 1 && countsThings(noun) && !setNouns.test(noun.text))
    return true;
  for (const [step, next] of items.slice(at + 1, at + 5).entries()) {
    // What stands behind a comma is no noun of this superlative.
    if (next.index > items[at + step]!.index + 1) return false;
    if (next.type !== 'word' || next.meanings.length > 0) return false;
    if (setNouns.test(next.text)) return false;
    if (afterSuperlative.test(next.text)) return next.index > items[at]!.index + 1;
  }
  return items[at + 1] !== undefined;
}

/** "isn't the brightest, the sharpest or the fastest": one denial serves the whole list. */
export function denialOfList(scene: Scene): Item | undefined {
  const first = scene.items.find((item) => item.type !== 'mark');
  if (!scene.previous || !isWord(first, 'or', 'nor', 'the') || hasVerb(scene.items)) return undefined;
  return (
    scene.previous.items.find((item) => keyOf(item, 'negation') === 'not') ?? denialOfList(scene.previous)
  );
}
