import type { FactCheck } from '../../../contract/check.ts';
import { carriedConcept } from '../carry.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { accessoryAfter, pricedThing } from '../foreign.ts';
import { type Item, isOneOf, isWord, keyOf } from '../items.ts';
import { changeWords } from '../lexicon/grammar.ts';
import { priceTerms } from '../lexicon/settings.ts';
import { speaksOfThePast } from '../past.ts';
import { hasKey, type Scene } from '../scene.ts';
import { statedNumber } from '../stated.ts';
import { denialBefore, opOf } from './factCheck.ts';
import { factConditionsOf } from './owner.ts';
import { isLedByBy } from './ratioNumber.ts';
import { isAway } from './than.ts';

/**
 * "The 65-inch is nine hundred and ninety-nine", "it's seventeen ninety-nine": a price as it is said, in the currency that
 * the set is sold in. A number that could be of what the paragraph speaks of is none.
 */
function settleSaidPrice(scene: Scene): undefined {
  const words = scene.items.filter(({ type }) => type !== 'mark');
  const item = words.at(-1);
  const number = item?.number;
  const isSaid = number?.spelled === true || scene.context.spoken === true;
  const verb = words.at(-2);
  // "The Plain costs £629 and the Umbra, well, that's 1,799": of what was just spoken of.
  const before =
    scene.previous?.said?.some((check) => check.kind === 'fact' && check.key === 'price') ?? false;
  const isOfSize =
    isWord(verb, 'at', 'for') &&
    words.some((word) => word.number?.role === 'size') &&
    (number?.x ?? 0) >= 200;
  const isTakenUp =
    isOfSize || ((before || scene.carry.said?.id === 'fact:price') && (number?.x ?? 0) >= 200);
  if (number?.dimension !== '' || number.role !== undefined || number.x < 100 || !(isSaid || isTakenUp))
    return;
  const costs = words.some((word) => keyOf(word, 'verb') === 'cost' || keyOf(word, 'concept') === 'price');
  const is = isWord(verb, 'is', "'s", 'at', 'for', 'are');
  const other = words.some(
    (word) =>
      keyOf(word, 'concept') ??
      keyOf(word, 'hue') ??
      keyOf(word, 'fact') ??
      keyOf(word, 'signal') ??
      keyOf(word, 'stage'),
  );
  const spokenOf = carriedConcept(scene.carry) ?? scene.concept;
  const ofSize = words.some((word) => word.number?.role === 'size');
  const priced = costs || isTakenUp || (number.x % 10 === 9 && (ofSize || !spokenOf));
  if (is || costs)
    if (priced && (costs || !other)) Object.assign(number, { dimension: 'money', role: 'money' });
}

/** "Price per inch: £12.71", "£40 a year": so much for each of something. */
function isRate({ items }: Scene, amount: Item): boolean {
  const at = items.indexOf(amount);
  const each = isWord(items[at + 1], 'a', 'an', 'each', 'every');
  return (
    items.slice(0, at).some((item) => isWord(item, 'per')) ||
    isWord(items[at + 1], 'per') ||
    (each && isWord(items[at + 2], 'hour', 'day', 'week', 'month', 'year', 'inch'))
  );
}

/** "With the trade-in", "after cashback", "in the sale", "on offer": on which terms an amount is the price. */
function termOf({ items }: Scene): Item | undefined {
  return items.find(
    (item, at) =>
      priceTerms.has(item.text) &&
      items
        .slice(Math.max(0, at - 3), at)
        .some((word) =>
          isWord(word, 'with', 'after', 'less', 'minus', 'including', 'in', 'on', 'by', 'using'),
        ) &&
      !isWord(items[at - 1], 'any', 'no') &&
      // "It is on sale at £899"
      !(isWord(item, 'sale') && isWord(items[at - 1], 'on')),
  );
}

/** Why an amount that is said of a set is not what the set costs today, and the thing that it is the price of. */
function notItsPrice(scene: Scene, amount: Item): { why: string; thing?: Item } | undefined {
  const { items, sentence } = scene;
  const last = items[items.indexOf(amount) - 1];
  // "It was £799 when it came out and is £699 now"
  const wasOnce =
    isWord(last, 'was', 'originally') &&
    sentence.some(
      (item, at) =>
        isWord(item, 'now', 'today', 'originally', 'launched') ||
        (isWord(item, 'when') && isWord(sentence[at + 1], 'it', 'we', 'new')),
    );
  if (wasOnce || speaksOfThePast(scene, items)) return { why: 'what it cost before is not kept' };
  const place = items.indexOf(amount);
  const [next, afterNext] = items.slice(place + 1, place + 3);
  // "It launched at £1,199", "it cost £1,199 when new", "down from £1,199"
  const atFirst =
    (isWord(last, 'at') && isWord(items[place - 2], 'launched', 'debuted', 'arrived')) ||
    (isWord(next, 'when') && isWord(afterNext, 'new', 'launched')) ||
    (isWord(next, 'when') && isWord(items[place + 4], 'launched', 'new', 'released', 'introduced')) ||
    (isWord(last, 'from') && isWord(items[place - 2], 'down', 'up'));
  if (atFirst) return { why: 'what it cost before is not kept' };
  // "Outshines ones at £1,500", "beats sets that cost £1,500"
  const others = items
    .slice(Math.max(0, place - 4), place)
    .find((item) => isWord(item, 'ones', 'sets', 'televisions', 'tvs', 'tellies'));
  if (others) return { why: 'the price is of something else', thing: others };
  // "£1,399, £360 above that of ours"
  if (isWord(next, 'above', 'below') && isWord(afterNext, 'that', 'the', 'what', 'ours', 'its'))
    return { why: 'the number says how far two prices lie apart' };
  const term = scene.conditional ? undefined : termOf(scene);
  if (term) return { why: 'it is the price on terms, not what the set costs', thing: term };
  // "Nothing at £600 is"
  const at = items.indexOf(amount);
  const general = items
    .slice(Math.max(0, at - 3), at)
    .find((item) => isWord(item, 'nothing', 'anything', 'everything', 'something'));
  if (general) return { why: 'the words do not give the price of the set', thing: general };
  const thing = accessoryAfter(scene, amount);
  if (thing) return { why: 'the price is of something else', thing };
  // "You can find it for £649", "the larger model adds £300"
  const street = isWord(last, 'for') && items.some((item) => isWord(item, 'find', 'found', 'shop', 'haggle'));
  if (street || isWord(last, 'adds', 'add', 'adding'))
    return { why: 'the words do not give the price of the set' };
  return undefined;
}

/** "The Hearth, at £1,039, is cheaper than the Umbra, at £1,239": a second price, behind the set that is compared with. */
function isBesideOther(scene: Scene, { index }: Item): boolean {
  const { sentence } = scene;
  const isBehindSet =
    isWord(sentence[index - 1], 'at') &&
    isWord(sentence[index - 2], ',') &&
    keyOf(sentence[index - 3], 'unit') !== undefined;
  if (!isBehindSet) return false;
  for (let before = scene.previous; before; before = before.previous)
    if (before.said?.some((check) => check.kind === 'fact' && check.key === 'price')) return true;
  return scene.said?.some((check) => check.kind === 'fact' && check.key === 'price') ?? false;
}

/** A price that is stated, not a limit of a cohort. */
export function readPrice(scene: Scene, findings: Findings): undefined {
  settleSaidPrice(scene);
  for (const item of scene.items) {
    const number = item.number;
    if (number?.role !== 'money' || scene.used.has(item)) continue;
    if (pricedThing(scene, item)) {
      number.role = 'ignored';
      continue;
    }
    const superlative = scene.items.find(
      (entry) =>
        keyOf(entry, 'superlative') ||
        (keyOf(entry, 'stat') === 'none' && scene.items.some((other) => keyOf(other, 'comparative'))),
    );
    const comparative = scene.items.find(
      (entry) =>
        keyOf(entry, 'comparative') && entry.text !== 'undercuts' && Math.abs(entry.index - item.index) <= 2,
    );
    if (isRate(scene, item)) {
      refuse(findings, scene, 'fact', 'the number is a rate, not the price', [item]);
      continue;
    }
    const limit = number.comparator && number.comparator !== 'upTo';
    if (limit && superlative) continue;
    if (comparative && !number.comparator) continue;
    // "£70 below the Kasulind" is a distance, no price.
    if (isAway(scene, item)) continue;
    // "No set under £1,000 comes close": a limit on the others, in a quantity that is not named.
    const others = scene.items.find(
      (entry) =>
        entry.index < item.index &&
        keyOf(entry, 'stat') !== undefined &&
        isWord(
          scene.items[scene.items.indexOf(entry) + 1],
          'set',
          'sets',
          'other',
          'television',
          'tv',
          'rival',
          'screen',
          'model',
        ),
    );
    if (limit && others && !superlative) {
      refuse(findings, scene, 'fact', 'the words do not say in what the sets are compared', [others, item]);
      continue;
    }
    // "by £100", "a gap of £100": no price of a set.
    const lead = scene.items.slice(Math.max(0, scene.items.indexOf(item) - 3), scene.items.indexOf(item));
    if (
      isLedByBy(scene, item) ||
      isWord(scene.items[scene.items.indexOf(item) + 1], 'between') ||
      (isWord(lead.at(-1), 'not') && scene.previous?.said?.some(({ kind }) => kind === 'difference')) ||
      scene.items.some((entry) =>
        isWord(
          entry,
          'saves',
          'save',
          'saved',
          'separate',
          'separates',
          'gap',
          'difference',
          'premium',
          'saving',
          'savings',
          'discount',
          'surcharge',
          'extra',
        ),
      )
    )
      continue;
    const other = notItsPrice(scene, item);
    if (other) {
      refuse(findings, scene, 'fact', other.why, [item, other.thing]);
      continue;
    }
    const after = scene.items[scene.items.indexOf(item) + 1];
    if (number.comparator && keyOf(after, 'comparative')) continue;
    // "Has fallen from £1,349 to £1,149": what it costs is the second of the two.
    const moved =
      number.to !== undefined &&
      number.rangeWord === 'from' &&
      (hasKey(scene, 'verb', 'fall', 'rise', 'cut') ||
        scene.items.some((entry) => isWord(entry, 'fallen', 'risen') || isOneOf(entry, changeWords)));
    const stated = statedNumber(
      {
        x: moved ? number.to!.x : number.x,
        place: moved ? number.to!.place : number.place,
        unit: number.unit,
        ...(number.hedge && { hedge: number.hedge }),
        ...(number.hedgeText && { hedgeText: number.hedgeText }),
      },
      'price',
    );
    const priced =
      limit === undefined ||
      limit === false ||
      scene.items.some(
        (entry) =>
          keyOf(entry, 'verb') === 'cost' ||
          keyOf(entry, 'concept') === 'price' ||
          isWord(entry, 'is', 'comes'),
      );
    if (!priced) continue;
    const verb = scene.items.find(
      (entry) => keyOf(entry, 'verb') === 'cost' || keyOf(entry, 'concept') === 'price',
    );
    const by =
      scene.units.some((mention) => mention.role === 'maker') && hasKey(scene, 'saying')
        ? { by: 'maker' }
        : {};
    if (isBesideOther(scene, item)) {
      refuse(findings, scene, 'fact', 'the words do not say of which set the price is', [item]);
      continue;
    }
    const denial = denialBefore(scene, item);
    const check: FactCheck = {
      kind: 'fact',
      key: 'price',
      op: opOf(item) === '<=' && number.comparator === 'upTo' ? '=' : opOf(item),
      x: stated.x,
      stated,
      ...(number.unit && { unit: number.unit }),
      ...by,
      conditions: factConditionsOf(scene, item),
      ...(denial && { negated: true }),
    };
    number.role = 'value';
    const comparatorItem = scene.items[scene.items.indexOf(item) - 1];
    // "The price isn't high at £799": the denial amid these words is not of the amount.
    const parted =
      verb !== undefined &&
      scene.items.some(
        (entry) =>
          keyOf(entry, 'negation') !== undefined &&
          entry !== denial &&
          (entry.index - verb.index) * (entry.index - item.index) < 0,
      );
    // "For £899 you would expect …": the guess is about what it buys, not about the price.
    const buys = scene.conditional && isWord(comparatorItem, 'for', 'at') && scene.items.indexOf(item) <= 2;
    propose(findings, buys ? { ...scene, conditional: false } : scene, 'fact', check, [
      item,
      parted ? undefined : verb,
      keyOf(comparatorItem, 'comparator') ? comparatorItem : undefined,
      denial,
    ]);
  }
}
