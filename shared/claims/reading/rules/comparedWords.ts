import { sectionUnit } from '../carry.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { isLedByBy } from './ratioNumber.ts';
import { saidBefore } from './saidBefore.ts';

/** "on the cheaper of its two rivals", "the cheaper set": which set is meant, not what is said of one. */
export function isAttribute(items: readonly Item[], at: number): boolean {
  return isWord(items[at - 1], 'the') && isWord(items[at + 1], 'of') && !isWord(items[at - 2], 'is', 'was');
}

/** "last year's Hearth", "the old Hearth", "its predecessor" */
export function isFormer({ items }: Scene, { item }: UnitMention): boolean {
  const before = items.slice(Math.max(0, items.indexOf(item) - 4), items.indexOf(item));
  return before.some((word) =>
    isWord(word, 'year', 'old', 'older', 'previous', 'former', 'outgoing', 'earlier'),
  );
}

/** "Slower still at 24.6 ms", "slower than the Tessera's 5.4 ms": a value that stands behind what compares. */
export function isValueAfter(scene: Scene, comparative: Item, number: Item): boolean {
  if (number.index < comparative.index || isLedByBy(scene, number)) return false;
  const before = scene.items[scene.items.indexOf(number) - 1];
  return (
    isWord(before, 'at', "'s", "'", 'with') ||
    (keyOf(before, 'hedge') !== undefined && isWord(scene.items[scene.items.indexOf(number) - 2], 'at', "'s"))
  );
}

/** "The P3 coverage of 84 per cent is lower than the Plain's": the number is what is compared. */
export function isValueOfSubject({ items }: Scene, comparative: Item | undefined, number: Item): boolean {
  const at = items.indexOf(number);
  const end = comparative ? items.indexOf(comparative) : -1;
  return (
    end > at &&
    isWord(items[at - 1], 'of', 'at') &&
    items.slice(0, at).some((item) => keyOf(item, 'concept') !== undefined) &&
    items.slice(at + 1, end).some((item) => isWord(item, 'is', 'was'))
  );
}

/** "At 139 W the Plain draws more than the Kasulind": a value that leads the clause, and a comparison without a number. */
export function isValueBefore(scene: Scene, comparative: Item, number: Item): boolean {
  const at = scene.items.indexOf(number);
  return (
    isWord(scene.items[at - 1], 'at', 'with') &&
    number.index < comparative.index - 1 &&
    !isWord(scene.items[at + 1], 'more', 'less', 'fewer')
  );
}

/** "three times as long", "1.8 times as high as": an adjective that takes the clause's own quantity. */
export function plainEquative(scene: Scene, multiple: Item | undefined): Item | undefined {
  return scene.items.find((item, at) => {
    const before = scene.items[at - 1];
    if (/^as (?:high|much|many) as$/.test(item.text))
      return before === multiple || before?.number?.dimension === 'times';
    return (
      isWord(item, 'long', 'high', 'large', 'great', 'big', 'wide', 'strong', 'much') &&
      (isWord(before, 'as') || (before === multiple && before !== undefined && / as$/.test(before.text)))
    );
  });
}

/** "It costs £1,249. That's four hundred and twenty more than the Kasulind": after a price a bare number is money. */
export function takeMoney(scene: Scene): undefined {
  const at = scene.items.findIndex(
    ({ number }, place) =>
      number?.dimension === '' &&
      number.role === undefined &&
      number.x >= 20 &&
      (isWord(scene.items[place + 1], 'more', 'less', 'dearer', 'cheaper') ||
        isWord(scene.items[place - 1], 'another', 'extra', 'further')),
  );
  const number = scene.items[at]?.number;
  if (number && saidBefore(scene)?.id === 'fact:price')
    Object.assign(number, { dimension: 'money', role: 'money' });
}

/** "The Plain is thicker by 12": of what the clause before measured in its unit; the number takes that unit. */
export function takeUnitBy(scene: Scene, comparative: Item | undefined): undefined {
  const { previous } = scene;
  const number = scene.items.find((item) => item.number?.dimension === '' && isLedByBy(scene, item));
  const before = previous?.items.find((item) => item.number && isLedByBy(previous, item))?.number;
  if (!number || !comparative || !before || before.dimension === '') return;
  const { dimension, unit, factor, role } = before;
  Object.assign(number.number!, { dimension, unit, factor, ...(role === 'money' && { role }) });
}

/** "The Kasulind has four times the lag": of this review's own set. */
export function hasTimesOwn(scene: Scene, multiple: Item): boolean {
  if (scene.unit === undefined && setBefore(scene) === undefined) return false;
  const at = scene.items.indexOf(multiple);
  let left = at - 1;
  while (
    keyOf(scene.items[left], 'hedge') !== undefined ||
    keyOf(scene.items[left], 'comparator') !== undefined ||
    isWord(scene.items[left], 'just', 'only', 'you', 'us', 'some')
  )
    left -= 1;
  const verb = scene.items[left];
  const after = isWord(scene.items[at + 1], 'the', 'its') ? scene.items[at + 2] : scene.items[at + 1];
  const led = isWord(scene.items[at + 1], 'the', 'its') || / the$/.test(multiple.text);
  // "The Umbra is less than half the price"
  const priced =
    isWord(after, 'price', 'money', 'cost') &&
    isWord(verb, 'is', 'was', 'than', 'costs', 'at', 'under', 'over');
  if (led && priced) return true;
  return led && keyOf(after, 'concept') !== undefined && isGiving(verb);
}

function isGiving(verb: Item | undefined): boolean {
  return (
    isWord(verb, 'has', 'offers', 'shows', 'draws', 'provides', 'at', 'costs', 'needs', 'takes') ||
    keyOf(verb, 'verb') === 'reach'
  );
}

/**
 * The set whose number "that" takes up in "the Kasulind has about four times that", "the Nocthale manages it in half the
 * time"; undefined where the words take up none, or where it could be several.
 */
export function setTakenUp(scene: Scene, multiple: Item | undefined): string | undefined {
  if (!multiple) return undefined;
  const at = scene.items.indexOf(multiple);
  const led = / the$/.test(multiple.text);
  const word = scene.items[at + 1];
  const noun = isWord(word, 'the') ? scene.items[at + 2] : word;
  const inTime =
    (led || isWord(word, 'the')) &&
    isWord(noun, 'time') &&
    isWord(scene.items[at - 1], 'in') &&
    /^(?:lag|response)$/.test(saidBefore(scene)?.id ?? '');
  const figure = isWord(scene.items[at + 2], 'figure', 'number', 'value', 'amount') ? 1 : 0;
  const end = scene.items[at + 2 + figure];
  const isThat = isWord(word, 'that') && (!end || end.type === 'mark' || isWord(end, 'and', 'but'));
  if (!inTime && !(isThat && saidBefore(scene) !== undefined)) return undefined;
  const { previous, carry, context } = scene;
  if (previous?.said?.length) return previous.unit ?? context.own;
  const check = carry.statement?.asked ? undefined : carry.statement?.check;
  if (check?.kind !== 'value' && check?.kind !== 'bound') return undefined;
  const operand = check.kind === 'value' ? check.operand : check.bounds[0]!.operand;
  return operand.conditions.unit ?? context.own;
}

/** "The Kasulind does 1,200, so the Hearth has three times as much": as the set that was spoken of just before. */
export function setBefore({ unit, unitNamed, previous, context }: Scene): string | undefined {
  const isOwn = unitNamed && (unit === undefined || unit === context.own);
  const before = previous?.said?.length ? previous.unit : undefined;
  return isOwn && before !== context.own ? before : undefined;
}

/** "60 % of the Kasulind's contrast": the share is of another set's value. */
export function isShareOfOther(scene: Scene, number: Item): boolean {
  const at = scene.items.indexOf(number);
  if (!isWord(scene.items[at + 1], 'of')) return false;
  return scene.units.some(
    (mention) => mention.item.index > number.index && mention.item.index <= number.index + 5,
  );
}

/** "The Plain costs £90 less than this one": said of another set, the word for this review's own. */
export function thisOneBehind({ items, unit, context, carry }: Scene): Item | undefined {
  const section = sectionUnit(carry);
  // "The Plain looks dim. The Kasulind is 20 % brighter than this one": perhaps the one spoken of before.
  const isOpen =
    (section !== undefined && section !== context.own) || (carry.unit !== undefined && carry.unit !== unit);
  if (unit === undefined || unit === context.own || isOpen) return undefined;
  const than = items.findIndex((item) => isWord(item, 'than'));
  const behind = items[than + 1];
  return than >= 0 && isWord(behind, 'this one', 'this set', 'this television') ? behind : undefined;
}
