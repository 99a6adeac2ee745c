import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { orderCheck } from './cohort.ts';
import type { ComparativeEntry, ComparingWord } from './comparativeEntry.ts';
import { comparedQuantity } from './compared.ts';
import { betterDirection, concepts, negated } from './orderWords.ts';
import { otherMention } from './otherOperand.ts';
import { readBothAhead } from './standAlone.ts';

/** "The Vane has a higher average error": what is compared stands behind the comparing word. */
export function hasIt({ items, unitNamed }: Scene, at: number): boolean {
  const has = items
    .slice(0, at)
    .some((word) => isWord(word, 'has', 'had', 'shows', 'posts', 'offers', 'gets'));
  const phrase = items.slice(at + 1, at + 5);
  const end = phrase.findIndex((word) => word.type === 'mark' || isWord(word, 'of', 'in', 'at', 'for', 'on'));
  return (
    unitNamed &&
    has &&
    isWord(items[at - 1], 'a', 'an', 'the', 'slightly', 'much', 'far') &&
    phrase.slice(0, end < 0 ? undefined : end).some((word) => keyOf(word, 'concept') !== undefined)
  );
}

/** Another set is compared with this review's own; of the own one the words do not say with which. */
export function readHigher(
  scene: Scene,
  findings: Findings,
  item: Item,
  quantity: Quantity,
  direction: 'higher' | 'lower' | undefined,
): undefined {
  const words = [item, ...concepts(scene)];
  if (!direction) return;
  if (scene.unit === undefined || scene.unit === scene.context.own)
    return refuse(findings, scene, 'order', 'the words do not say what it is compared with', words);
  const check = orderCheck(
    scene,
    quantity,
    direction,
    { type: 'ahead' },
    { units: [scene.context.own] },
    negated(scene, item),
  );
  propose(findings, scene, 'order', check, words);
}

/** "More accurate than the Plain, and a good deal more so than the Umbra": the comparison before, with another set. */
export function readMoreSo(scene: Scene, findings: Findings, item: Item): undefined {
  let earlier = scene.previous;
  while (earlier && !earlier.said?.some((check) => check.kind === 'order')) earlier = earlier.previous;
  const before = earlier?.said?.findLast((check) => check.kind === 'order');
  const other = otherMention(scene);
  const id = other && resolveMention(other, scene.carry, scene.context);
  const again = isWord(item, 'more') && before?.kind === 'order' && before.cohort.units !== undefined;
  if (!again || id === undefined)
    return refuse(findings, scene, 'order', 'the words do not say what is compared', [item, other?.item]);
  const { sizeWord: _size, ...rest } = before;
  propose(findings, scene, 'order', { ...rest, cohort: { ...before.cohort, units: [id] } }, [
    item,
    other?.item,
  ]);
}

/** "Does better", "keeps more", "manages less": the deed is the one that was just spoken of. */
function doesMore(verb: Item | undefined, item: Item): boolean {
  if (isWord(item, 'longer')) return isWord(verb, 'takes', 'took', 'needs');
  if (isWord(item, 'worse', 'better')) return isWord(verb, 'does', 'did', 'do', 'fares', 'fare');
  return (
    isWord(item, 'more', 'less') &&
    isWord(
      verb,
      ...['keeps', 'keep', 'kept', 'retains', 'retain', 'holds', 'hold', 'manages', 'manage', 'reaches'],
      ...['reach', 'covers', 'cover', 'delivers', 'deliver'],
    )
  );
}

/** "The Umbra is worse, with an average of 4.0": in what was just spoken of, and than this review's own set. */
export function readWorse(scene: Scene, findings: Findings, { item, key, entry }: ComparingWord): boolean {
  const { items, unit, unitNamed, context, carry, previous } = scene;
  const at = items.indexOf(item);
  const next = items[at + 1];
  const before = isWord(items[at - 1], 'much', 'far', 'slightly', 'little', 'clearly', 'no')
    ? items[at - 2]
    : items[at - 1];
  const spoken = previous?.said?.length || carry.said !== undefined || carry.statement !== undefined;
  const isDone = doesMore(before, item);
  const ends =
    next === undefined ||
    next.index > item.index + 1 ||
    isWord(next, 'with', 'at', 'still', 'here', 'there') ||
    (isDone && (next.type === 'mark' || isWord(next, 'and', 'but', 'though', 'while'))) ||
    (isDone && isWord(next, 'than') && isWord(items[at + 2], 'that', 'this', 'it'));
  if (!ends || (!isDone && !(isWord(item, 'worse', 'better') && isWord(before, 'is', 'was')))) return false;
  if (!unitNamed || unit === undefined || unit === context.own || isWord(items[at - 1], 'no')) return false;
  if (!spoken && isDone && !items.some((word) => keyOf(word, 'concept'))) {
    refuse(findings, scene, 'order', 'the words do not say in what', [item]);
    return true;
  }
  if (!spoken) return false;
  const subjects = scene.units.filter(({ role }) => role === 'subject');
  if (subjects.length > 1) return readBothAhead(scene, findings, { item, key, entry }, subjects);
  const quantity = comparedQuantity(scene, entry);
  const direction = 'problem' in quantity ? undefined : betterDirection(entry, key, quantity);
  if ('problem' in quantity || !direction) return false;
  const check = orderCheck(
    scene,
    quantity,
    direction,
    { type: 'ahead' },
    { units: [context.own] },
    negated(scene, item),
  );
  const subject = isDone ? subjects[0]?.item : undefined;
  propose(findings, scene, 'order', check, [subject, item, ...concepts(scene)]);
  return true;
}

/** "The Plain covers more of P3": than this review's own set, where no other is named. */
export function readCoversMore(
  scene: Scene,
  findings: Findings,
  item: Item,
  entry: ComparativeEntry,
): boolean {
  const at = scene.items.indexOf(item);
  const gamut = scene.items.slice(at + 1, at + 4).find((word) => keyOf(word, 'gamut') !== undefined);
  const isOther = scene.unitNamed && scene.unit !== undefined && scene.unit !== scene.context.own;
  if (!gamut || !isOther || keyOf(scene.items[at - 1], 'verb') !== 'cover') return false;
  if (scene.items.some((word) => word.number ?? keyOf(word, 'multiple'))) return false;
  const quantity = quantityById(`coverage.${keyOf(gamut, 'gamut')}.xy`);
  readHigher(scene, findings, item, quantity, entry.direction);
  scene.used.add(gamut);
  return true;
}
