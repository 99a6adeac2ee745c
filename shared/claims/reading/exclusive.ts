import type { Check } from '../../contract/check.ts';
import { type Item, isWord } from './items.ts';
import { othersThan } from './knownGroup.ts';
import { denied, saidOf } from './retarget.ts';
import type { Scene } from './scene.ts';

/** "Only the Umbra covers …", "the Umbra alone stays …": the word that leaves out all other sets. */
export function onlyWord({ items, units }: Scene): { word: Item; set: Item } | undefined {
  // "It is the only set here to stay under 3"
  const alone = items.find(
    (item, at) =>
      isWord(item, 'only', 'the only') &&
      isWord(items[at + 1], 'set', 'one', 'television', 'tv', 'model', 'screen') &&
      // "Only one of them is a 2.1": so many of its ports.
      !(
        isWord(items[at + 1], 'one') &&
        items[at + 2] !== undefined &&
        !isWord(items[at + 2], 'here', 'to', 'that', 'with', 'in', 'which')
      ) &&
      !isWord(items[at - 1], 'not'),
  );
  if (alone) return { word: alone, set: alone };
  const mention = units.find(({ role }) => role === 'subject');
  if (!mention) return undefined;
  const at = items.indexOf(mention.item);
  const before = items.slice(Math.max(0, at - 2), at).find((item) => isWord(item, 'only', 'just'));
  const word = before ?? (isWord(items[at + 1], 'alone') ? items[at + 1] : undefined);
  return word && { word, set: mention.item };
}

/**
 * What "only" adds to a statement on one set: that it is not so of each other set that the review compares. Undefined
 * where nobody knows which sets these are, or where the statement cannot be turned round.
 */
export function deniedOfOthers(scene: Scene, check: Check): Check[] | undefined {
  if (scene.context.against === undefined || scene.context.against.length === 0) return undefined;
  const others = othersThan(scene, scene.unit ?? scene.context.own);
  const not = denied(check);
  if (!others || !not) return undefined;
  const said = others.map((id) => saidOf(not, id, scene.context.own));
  return said.every((one) => one !== undefined) ? said : undefined;
}
