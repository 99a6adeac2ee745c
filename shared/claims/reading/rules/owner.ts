import type { StatedConditions } from '../../../contract/check.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { conditionsFor } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { resolveMention, rivalOf } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { factConditions } from './factCheck.ts';

/** "the Kasulind's 731 nits": a number that belongs to another set. */
function possessorOf(scene: Scene, item: Item): UnitMention | undefined {
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

/** The other side of a number: "against 3,940:1", "to our 571", "versus 571 here". */
function isCounterpart(scene: Scene, item: Item): boolean {
  let at = scene.items.indexOf(item) - 1;
  const own = isWord(scene.items[at], 'our', 'my');
  while (
    isWord(scene.items[at], 'our', 'my', 'just', 'only', 'a', 'the', 'mere') ||
    keyOf(scene.items[at], 'hedge') === 'about'
  )
    at -= 1;
  const lead = scene.items[at];
  const opposes = isWord(lead, 'against', 'versus', 'vs') || (own && isWord(lead, 'to'));
  return (
    opposes &&
    // "Against 1,000 as claimed", "against 700 in SDR": no other set.
    !scene.items.some(
      (other) =>
        other.index > lead!.index &&
        (keyOf(other, 'saying') ??
          keyOf(other, 'makerWord') ??
          keyOf(other, 'stage') ??
          keyOf(other, 'signal') ??
          keyOf(other, 'mode') ??
          keyOf(other, 'dimming')) !== undefined,
    ) &&
    scene.items.some(
      (other) =>
        other.index < lead!.index &&
        other.number !== undefined &&
        (other.number.role === undefined || other.number.role === 'value' || other.number.role === 'money'),
    )
  );
}

/** "2.5 against 3.3 for the Plain and 3.6 for the Umbra": each number is of the set that it is given for. */
function setGiven({ items, units }: Scene, item: Item): UnitMention | undefined {
  const at = items.indexOf(item);
  const set = isWord(items[at + 2], 'the', 'its', 'our') ? items[at + 3] : items[at + 2];
  // "…, against 1,186 from the Nocthale"
  const opposed = isWord(items[at - 1], 'against', 'versus') && isWord(items[at + 1], 'from', 'by');
  return isWord(items[at + 1], 'for') || opposed ? units.find((mention) => mention.item === set) : undefined;
}

/** "Umbra (1.2), Hearth (2.4)": the number in brackets is of the set right before it. */
function setBeforeBracket({ sentence }: Scene, item: Item): string | undefined {
  if (!isWord(sentence[item.index - 1], '(')) return undefined;
  return keyOf(sentence[item.index - 2], 'unit');
}

/** "That beats the Nocthale, at 4,140:1": the number behind the comma is of the set that "that" is ahead of. */
export function setPassed({ items, sentence, units }: Scene, { index }: Item): UnitMention | undefined {
  // "It leaves the Cairn, with 28.7 % on white, eating dust"
  const left =
    isWord(sentence[index - 1], 'with') && isWord(sentence[index - 2], ',') ? sentence[index - 3] : undefined;
  if (
    left &&
    items.some(
      (item) =>
        item.index < left.index && item.index >= left.index - 3 && isWord(item, 'leaves', 'leave', 'left'),
    )
  )
    return units.find(({ item, role }) => item === left && role !== 'subject');
  const first = items.find((item) => item.type !== 'mark');
  if (!isWord(first, 'that', 'which', 'this') || !isWord(sentence[index - 1], 'at')) return undefined;
  const before = isWord(sentence[index - 2], ',') ? sentence[index - 3] : undefined;
  return units.find(({ item, role }) => item === before && role !== 'subject');
}

/** "… followed by the Plain with 571 and the Umbra with 468": in a row of sets each number is of the set before it. */
function setInRow({ items, units }: Scene, item: Item): UnitMention | undefined {
  const at = items.indexOf(item);
  const setAt = (place: number) =>
    isWord(items[place - 1], 'with', 'at', 'on')
      ? units.find((mention) => mention.item === items[place - 2])
      : undefined;
  const own = setAt(at);
  if (!own) return undefined;
  const pairs = items.filter((other, place) => other.number !== undefined && setAt(place) !== undefined);
  return pairs.length > 1 || items.some((word) => isWord(word, 'followed')) ? own : undefined;
}

/** Whose a number is that belongs to another set than the clause's own; its id is absent where nobody can tell. */
export function ownerOf(scene: Scene, item: Item): { id?: string } | undefined {
  const given = setGiven(scene, item) ?? setPassed(scene, item) ?? setInRow(scene, item);
  if (given) {
    const id = resolveMention(given, scene.carry, scene.context);
    return id === undefined ? {} : { id };
  }
  const bracketed = setBeforeBracket(scene, item);
  if (bracketed !== undefined) return bracketed.includes('|') ? {} : { id: bracketed };
  const possessor = possessorOf(scene, item);
  if (possessor) {
    const id = resolveMention(possessor, scene.carry, scene.context);
    return id === undefined ? {} : { id };
  }
  if (!isCounterpart(scene, item)) return undefined;
  const { own } = scene.context;
  if (scene.unit !== undefined && scene.unit !== own) return { id: own };
  const id = rivalBefore(scene, item) ?? rivalOf(scene.carry, scene.context);
  return id === undefined ? {} : { id };
}

/** "It is brighter than the Kasulind: 742 nits against 721": the other set that the sentence has named. */
function rivalBefore(scene: Scene, item: Item): string | undefined {
  const ids = new Set<string | undefined>();
  for (let at: Scene | null = scene; at; at = at.previous)
    for (const mention of at.units)
      if (mention.role !== 'maker' && mention.item.index < item.index)
        ids.add(resolveMention(mention, scene.carry, scene.context));
  ids.delete(scene.context.own);
  return ids.size === 1 ? [...ids][0] : undefined;
}

/** Does the number belong to another set than the one that the clause is about? */
export function ownedByOther(scene: Scene, item: Item): boolean {
  return (
    setGiven(scene, item) !== undefined ||
    setPassed(scene, item) !== undefined ||
    setInRow(scene, item) !== undefined ||
    setBeforeBracket(scene, item) !== undefined ||
    possessorOf(scene, item) !== undefined ||
    isCounterpart(scene, item)
  );
}

/** Conditions of a value that belongs to another set; undefined when it is the clause's own. */
export function conditionsOfOwner(
  scene: Scene,
  item: Item,
  quantity: Quantity,
): StatedConditions | undefined {
  const owner = ownerOf(scene, item);
  if (!owner) return undefined;
  const { unit: _unit, mode: _mode, ...rest } = conditionsFor(scene, quantity);
  if (owner.id === undefined) return { ...rest, unmatched: 'on a set that the words name' };
  if (owner.id === scene.context.own) return rest;
  return { ...rest, unit: splitVariant(owner.id).unit!, origin: { ...rest.origin, unit: 'named' } };
}

/** "The Kasulind's £949", "half the Kasulind's 120 Hz": a fact of that set, whatever the clause is about. */
export function factConditionsOf(scene: Scene, item: Item): StatedConditions {
  const owner = ownerOf(scene, item);
  if (!owner) return factConditions(scene);
  const { unit: _unit, variantInches: _inches, ...conditions } = factConditions(scene);
  const { id } = owner;
  if (id === undefined) return { ...conditions, unmatched: 'of a set that the words name' };
  return id === scene.context.own
    ? { ...conditions, origin: {} }
    : { ...conditions, unit: splitVariant(id).unit!, origin: { unit: 'named' } };
}
