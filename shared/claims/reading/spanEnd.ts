import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

/** What a place is a part of: "a 10 % window", "the Game mode" */
const nouns = ['window', 'patch', 'mode', 'preset'];
const leading = ['in', 'at', 'on', 'with', 'from', 'a', 'an', 'the', 'of', 'its'];

/**
 * Where a claim that rests on words up to `last` ends: with the place, the set and the whole that are named right behind
 * it ("0.4 in a 50 % window", "2.36 on this one", "61 % of its white"), so that a reader sees what it is said of.
 */
export function spanEnd(scene: Scene, last: Item): number {
  const { items } = scene;
  let end = last.end;
  for (let at = items.indexOf(last) + 1; at > 0 && at < items.length; at += 1) {
    const item = items[at]!;
    if (item.index !== items[at - 1]!.index + 1) break;
    if (isWord(item, 'its') || (isWord(item, ...leading) && item.meanings.length === 0)) continue;
    const isWhole = isWord(items[at - 1], 'its', 'the') && isWord(items[at - 2], 'of') && !item.number;
    const isSet = isWord(items[at - 1], 'on', 'the') && saysWhose(scene, item);
    const isNoun = items[at - 1]!.end === end && isWord(item, ...nouns);
    const isPlace = scene.axes.some(({ items: place }) => place.includes(item));
    if (
      !isWhole &&
      !isSet &&
      !isNoun &&
      !isPlace &&
      !(scene.conditionItems.has(item) && item.number?.role !== 'value')
    )
      break;
    end = item.end;
  }
  return end;
}

function saysWhose({ units }: Scene, item: Item): boolean {
  return keyOf(item, 'pronoun') === 'it'
    ? item.text === 'this one'
    : units.some((mention) => mention.item === item && mention.role === 'subject');
}
