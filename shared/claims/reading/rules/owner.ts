import type { StatedConditions } from '../../../contract/check.ts';
import { type Item, isWord } from '../items.ts';
import { conditionsFor } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { resolveMention, splitVariant } from '../units.ts';

/** "the Kasulind's 731 nits": a number that belongs to another set. */
export function ownedByOther(scene: Scene, item: Item): UnitMention | undefined {
  const at = scene.items.indexOf(item);
  return scene.units.find((mention) => {
    const place = scene.items.indexOf(mention.item);
    if (
      mention.role !== 'subject' &&
      place >= 0 &&
      place < at &&
      at - place <= 3 &&
      scene.items.some(
        (entry, index) =>
          index < place && isWord(entry, 'that', 'those') && isWord(scene.items[index + 1], 'of'),
      )
    )
      return true;
    return (
      mention.role !== 'subject' &&
      mention.role !== 'maker' &&
      place >= 0 &&
      place < at &&
      at - place <= 4 &&
      isWord(scene.items[place + 1], "'s", "'")
    );
  });
}

/** Conditions of a value that belongs to another set; undefined when it is the clause's own. */
export function conditionsOfOwner(
  scene: Scene,
  item: Item,
  quantity: Quantity,
): StatedConditions | undefined {
  const owner = ownedByOther(scene, item);
  if (!owner) return undefined;
  const id = resolveMention(owner, scene.carry, scene.context);
  const conditions = conditionsFor(scene, quantity);
  const { unit: _unit, mode: _mode, ...rest } = conditions;
  if (id === undefined) return { ...rest, unmatched: 'on a set that the words name' };
  if (id === scene.context.own) return rest;
  return { ...rest, unit: splitVariant(id).unit!, origin: { ...rest.origin, unit: 'named' } };
}
