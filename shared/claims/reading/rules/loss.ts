import { type Item, isWord, keyOf } from '../items.ts';
import type { Quantity } from '../quantity.ts';
import { firstWith, type Scene } from '../scene.ts';
import { hasVerb } from '../verbs.ts';

/** "loses 40 %" speaks of what is gone: the quantity itself is what is left. */
export function complementOf(scene: Scene, quantity: Quantity, item: Item): Item | undefined {
  if (!/^(?:angle\..*luminance|peak\.hold)$/.test(quantity.id)) return undefined;
  // "58 % is what you are left with"
  if (scene.items.some((entry) => entry.index > item.index && isWord(entry, 'left', 'remains', 'survives')))
    return undefined;
  // "It hangs on to 92 % of its peak once it has had its sit down": what is kept, whatever is said behind it.
  const verb = scene.items.findLast(
    (entry) => entry.index < item.index && ['keep', 'lose', 'fall'].includes(keyOf(entry, 'verb') ?? ''),
  );
  if (keyOf(verb, 'verb') === 'keep') return undefined;
  const lose = firstWith(scene, 'verb', 'lose');
  if (lose) return lose;
  if (goesOnLosing(scene)) return item;
  const fall =
    firstWith(scene, 'verb', 'fall') ??
    // "The window dims by a fifth within two minutes"
    scene.items.find(
      (entry) =>
        entry.index < item.index &&
        /^(?:dim(?:s|med)|fade[sd]|darken(?:s|ed)|sag(?:s|ged))$/.test(entry.text),
    );
  const at = scene.items.indexOf(item);
  const towards = scene.items
    .slice(Math.max(0, at - 3), at)
    .some((entry) => isWord(entry, 'to', 'below', 'under', 'from'));
  const by = scene.items.slice(Math.max(0, at - 3), at).some((entry) => isWord(entry, 'by'));
  if (fall && (by || !towards)) return fall;
  return scene.items.find((entry) => isWord(entry, 'dimmer', 'darker'));
}

/** "At 30 degrees it loses a fifth of its light, at 60 degrees half": the verb stands in the clause before. */
function goesOnLosing({ items, previous }: Scene): boolean {
  if (!previous || hasVerb(items)) return false;
  const verb = previous.items.findLast((entry) =>
    ['keep', 'lose', 'fall', 'reach', 'stay'].includes(keyOf(entry, 'verb') ?? ''),
  );
  if (verb) return keyOf(verb, 'verb') === 'lose';
  return goesOnLosing(previous);
}

/** Is the number one of what is lost, without a word of what it is lost from? "The meter gives up: it is 3" loses none. */
export function lossProblem(scene: Scene, quantity: Quantity, number: Item): boolean {
  if (/^(?:angle\.|peak\.hold|fact:|uniformity\.)/.test(quantity.id)) return false;
  const lose = firstWith(scene, 'verb', 'lose');
  return (
    lose !== undefined &&
    lose.index < number.index &&
    !scene.items.some(
      (item) =>
        item.index > lose.index && item.index < number.index && isWord(item, "it's", 'is', 'are', 'was'),
    )
  );
}
