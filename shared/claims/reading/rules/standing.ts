import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, type MeaningKind, meaningOf } from '../items.ts';
import { quantityById } from '../quantity.ts';
import { saidOf } from '../retarget.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { comparedQuantity } from './compared.ts';
import { groupOf, pairAfter } from './group.ts';
import { placeNext } from './nextRank.ts';
import { concepts, negated } from './orderWords.ts';
import { otherMention } from './otherOperand.ts';
import { quantityOfCheck } from './saidBefore.ts';

/** "matches the Kasulind", "as bright as the Veltrane". */
export function readEquals(scene: Scene, findings: Findings): undefined {
  const other = otherMention(scene);
  if (readNeitherAs(scene, findings)) return;
  if (!other) return readSameAsSize(scene, findings);
  const costs = scene.items.some((item) => keyOf(item, 'verb') === 'cost');
  const same = scene.items.find(
    (item) => item.index < other.item.index && (isWord(item, 'same') || /^as much as$/.test(item.text)),
  );
  if (costs && same && !scene.items.some((item) => item.number ?? keyOf(item, 'multiple')))
    return readSamePrice(scene, findings, other, same);
  const at = scene.items.findIndex(
    (item) =>
      (isWord(item, 'matches', 'match', 'matching', 'equals') && !isGame(scene, item)) ||
      (isWord(item, 'rivals') && other.item.index > item.index && !isPlural(scene.items, item)) ||
      (isWord(item, 'same', 'identical') &&
        scene.items.some(
          (word) => word.index > item.index && word.index <= item.index + 2 && keyOf(word, 'concept'),
        ) &&
        scene.items.some((word) => word.index > item.index && isWord(word, 'as', 'to'))),
  );
  const id = resolveMention(other, scene.carry, scene.context);
  const equatives = scene.items.filter((item) => keyOf(item, 'equative') && !scene.used.has(item));
  // "It is a slim set, as slim as the Plain"
  const equative =
    equatives.find((item) => isWord(scene.items[scene.items.indexOf(item) - 1], 'as')) ?? equatives[0];
  const entry = equativeEntry(scene, equative);
  const asBefore = equative && isWord(scene.items[scene.items.indexOf(equative) - 1], 'as');
  const hasNumber = scene.items.some(
    (item) => keyOf(item, 'multiple') || (item.number && !item.number.role && item.number.dimension !== ''),
  );
  if (hasNumber) return;
  if (equative && asBefore && entry) {
    const quantity = comparedQuantity(scene, entry);
    if ('problem' in quantity || !id)
      return refuse(
        findings,
        scene,
        'order',
        'problem' in quantity ? quantity.problem : `“${other.item.text}” could be more than one set`,
        [equative, other.item],
      );
    const negation = scene.items.find(
      (item) =>
        item.index < equative.index &&
        (keyOf(item, 'negation') !== undefined ||
          item.text === 'not quite' ||
          // "Nowhere near as bright as the Plain"
          keyOf(item, 'hedge') === 'nowhereNear'),
    );
    // "At least as bright as the Plain": behind it by no means.
    const least = scene.items.find(
      (item) =>
        keyOf(item, 'comparator') === '>=' && item.index < equative.index && item.index > equative.index - 4,
    );
    const isBehind = negation !== undefined || least !== undefined;
    const rank = isBehind ? ({ type: 'behind' } as const) : ({ type: 'matches' } as const);
    if (negation && least)
      return refuse(findings, scene, 'order', 'the words leave open what is denied', [
        negation,
        least,
        equative,
      ]);
    return propose(
      findings,
      scene,
      'order',
      orderCheck(scene, quantity, entry.direction, rank, { units: [id] }, least ? { negated: true } : {}),
      [least, equative, negation, other.item],
    );
  }
  if (at < 0) return;
  const quantity = comparedQuantity(scene, {
    concept: scene.items.some((item) => keyOf(item, 'concept') === 'price' || isWord(item, 'price'))
      ? 'price'
      : '',
    direction: 'higher',
  });
  const verb = scene.items[at]!;
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [verb, other.item]);
  if (!id)
    return refuse(findings, scene, 'order', `“${other.item.text}” could be more than one set`, [
      verb,
      other.item,
    ]);
  const direction = quantity.better === 'lower' ? 'lower' : 'higher';
  propose(
    findings,
    scene,
    'order',
    orderCheck(scene, quantity, direction, { type: 'matches' }, { units: [id] }, negated(scene, verb)),
    [verb, other.item, ...concepts(scene)],
  );
}

/** "Neither rival is as bright": this review's own set is ahead of both. True where the words are taken. */
function readNeitherAs(scene: Scene, findings: Findings): boolean {
  const { items } = scene;
  const neither = items.find((item) => isWord(item, 'neither'));
  if (!neither) return false;
  // "Neither rival is as quick, or as cheap": each on its own.
  const equatives = items.filter(
    (item, at) => keyOf(item, 'equative') && isWord(items[at - 1], 'as') && item.index > neither.index,
  );
  let taken = readNeitherKeeps(scene, findings, neither);
  for (const equative of equatives) taken = readNeitherIs(scene, findings, neither, equative) || taken;
  return taken;
}

/** "It keeps 77 % at 45 degrees, and neither rival keeps as much": of what was stated just before. */
function readNeitherKeeps(scene: Scene, findings: Findings, neither: Item): boolean {
  const { items, context } = scene;
  const as = items.findIndex(
    (item, at) =>
      isWord(item, 'as') &&
      isWord(items[at + 1], 'much', 'many', 'well') &&
      item.index > neither.index &&
      ['keep', 'reach', 'cover'].includes(keyOf(items[at - 1], 'verb') ?? '') &&
      (items[at + 2]?.type ?? 'mark') === 'mark',
  );
  const rival = items.find(
    (item) => item.index > neither.index && /\b(?:rivals?|competitors?|others)$/.test(item.text),
  );
  if (as < 0 || !rival || context.against?.length !== 2) return false;
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  const direction = 'problem' in quantity || quantity.better === 'target' ? undefined : quantity.better;
  if ('problem' in quantity || !direction) return false;
  const { unit: _unit, ...conditions } = scene.conditions;
  const own = { ...scene, unit: undefined, unitProblem: undefined, group: undefined, conditions };
  const check = orderCheck(own, quantity, direction, { type: 'best' }, { units: context.against });
  propose(findings, own, 'order', check, [neither, rival, items[as - 1], items[as], items[as + 1]]);
  if (own.said) scene.said = own.said;
  return true;
}

function readNeitherIs(scene: Scene, findings: Findings, neither: Item, equative: Item): boolean {
  const { items, context } = scene;
  const [end, next, set] = items.slice(items.indexOf(equative) + 1);
  const asOwn =
    isWord(end, 'as') &&
    (keyOf(next, 'pronoun') === 'it' || keyOf(set, 'unit') === context.own || isWord(next, 'this'));
  const goesOn =
    end && end.type !== 'mark' && end.index === equative.index + 1 && !isWord(end, 'or', 'nor', 'and');
  if (goesOn && !asOwn) return false;
  const rival = items.find(
    (item) => item.index > neither.index && /\b(?:rivals?|competitors?|others)$/.test(item.text),
  );
  const entry = equativeEntry(scene, equative);
  if (!rival || !entry || context.against?.length !== 2) return false;
  const quantity = comparedQuantity(scene, entry);
  const words = [neither, rival, equative];
  if ('problem' in quantity) {
    refuse(findings, scene, 'order', quantity.problem, words);
    return true;
  }
  const { unit: _unit, ...conditions } = scene.conditions;
  const own = { ...scene, unit: undefined, unitProblem: undefined, group: undefined, conditions };
  const check = orderCheck(own, quantity, entry.direction, { type: 'best' }, { units: context.against });
  propose(findings, own, 'order', check, words);
  if (own.said) scene.said = own.said;
  return true;
}

/** "Its rivals are the Plain and the Umbra" */
function isPlural(items: readonly Item[], item: Item): boolean {
  const at = items.indexOf(item);
  return isWord(items[at + 1], 'are', 'were') || isWord(items[at - 1], 'the', 'its', 'both', 'two', 'our');
}

/** "It takes 120 Hz, the same as the Plain": of what was just stated. */
export function readSameAs(scene: Scene, findings: Findings): undefined {
  const at = scene.items.findIndex(
    (item, place) => isWord(item, 'same') && isWord(scene.items[place + 1], 'as') && !scene.used.has(item),
  );
  const other = otherMention(scene);
  const stated = (scene.said ?? scene.previous?.said)?.at(-1);
  const of =
    stated && (stated.kind === 'fact' || stated.kind === 'value') ? quantityOfCheck(stated) : undefined;
  if (at < 0 || !other || of === undefined) return;
  const gap = other.item.index - scene.items[at]!.index;
  if (gap < 0 || gap > 4) return;
  const id = resolveMention(other, scene.carry, scene.context);
  const words = [scene.items[at], scene.items[at + 1], other.item];
  if (!id) return refuse(findings, scene, 'order', `“${other.item.text}” could be more than one set`, words);
  const check = orderCheck(scene, quantityById(of), 'higher', { type: 'matches' }, { units: [id] });
  propose(findings, scene, 'order', check, words);
}

/** "During a match the Plain shows …": football. */
function isGame({ items }: Scene, item: Item): boolean {
  return (
    isWord(item, 'match') &&
    isWord(items[items.indexOf(item) - 1], 'a', 'the', 'football', 'cricket', 'every')
  );
}

function hasFact({ items }: Scene): boolean {
  return items.some((item) => keyOf(item, 'fact') !== undefined);
}

/** "It costs the same as the Kasulind", "as much as the Kasulind" */
function readSamePrice(scene: Scene, findings: Findings, other: UnitMention, same: Item): undefined {
  const id = resolveMention(other, scene.carry, scene.context);
  const words = [same, other.item, scene.items.find((item) => keyOf(item, 'verb') === 'cost')];
  if (!id) return refuse(findings, scene, 'order', `“${other.item.text}” could be more than one set`, words);
  const price = quantityById('fact:price');
  const check = orderCheck(
    scene,
    price,
    'higher',
    { type: 'matches' },
    { units: [id] },
    negated(scene, same),
  );
  propose(findings, scene, 'order', check, words);
}

/** "The 75-inch is as bright as the 55": what was measured of one size says nothing of another. */
function readSameAsSize(scene: Scene, findings: Findings): undefined {
  const isOther = splitVariant(scene.unit).inches !== undefined;
  const concept = scene.items.find((item) => keyOf(item, 'concept'));
  const same = scene.items.find((item) => isWord(item, 'same', 'identical', 'unchanged'));
  if (isOther && same && concept && !hasFact(scene))
    return refuse(findings, scene, 'order', 'another size was not measured', [concept, same]);
  const equative = scene.items.find((item) => keyOf(item, 'equative') && !scene.used.has(item));
  if (!equative) return;
  const compared = (meaningOf(equative, 'equative')?.data as ComparativeEntry | undefined)?.concept ?? '';
  if (
    isOther &&
    isWord(scene.items[scene.items.indexOf(equative) - 1], 'as') &&
    !compared.startsWith('fact:')
  )
    return refuse(findings, scene, 'order', 'another size was not measured', [equative]);
  const at = scene.items.indexOf(equative);
  const size = scene.items.slice(at + 2, at + 5).find(({ number }) => number?.role === 'size');
  if (size && isWord(scene.items[at - 1], 'as') && isWord(scene.items[at + 1], 'as'))
    refuse(findings, scene, 'order', 'another size was not measured', [equative, size]);
}

/** "Deep" and "wide" are sizes of the cabinet, but of blacks and of a gamut where the clause names these. */
function equativeEntry(scene: Scene, equative: Item | undefined): ComparativeEntry | undefined {
  const entry = meaningOf(equative, 'equative')?.data as ComparativeEntry | undefined;
  if (!entry?.concept.startsWith('fact:')) return entry;
  const concept = scene.items.find((item) => keyOf(item, 'concept') ?? keyOf(item, 'gamut'));
  const key = keyOf(concept, 'concept') ?? (concept && 'coverage');
  if (
    isWord(equative, 'deep') &&
    (key === 'black' || scene.items.some((item) => /^blacks?$/.test(item.text)))
  )
    return { concept: 'black', direction: 'lower' };
  if (isWord(equative, 'wide') && key === 'coverage') return { concept: 'coverage', direction: 'higher' };
  return key === undefined ? entry : undefined;
}

/** "It ranks third for peak luminance." */
export function readRanks(scene: Scene, findings: Findings): undefined {
  const verb =
    scene.items.find((item) =>
      isWord(item, 'ranks', 'rank', 'ranked', 'finishes', 'places', 'placed', 'comes', 'came'),
    ) ?? placeGiver(scene);
  const ordinal = scene.items.find((item) => keyOf(item, 'ordinal') !== undefined && !scene.used.has(item));
  if (
    !verb ||
    !ordinal ||
    ordinal.index < verb.index ||
    scene.items.some((item) => keyOf(item, 'superlative'))
  )
    return;
  // "Grey comes first, always": no set, and no ranking.
  const lead = scene.items.filter((item) => item.index < verb.index && item.type !== 'mark');
  const ofOther =
    lead.length > 0 &&
    lead.length <= 2 &&
    lead.every((item) =>
      ['unit', 'maker', 'pronoun', 'concept', 'fact', 'signal'].every(
        (kind) => keyOf(item, kind as MeaningKind) === undefined,
      ),
    ) &&
    !isWord(lead[0], 'and', 'but', 'that', 'which', 'this', 'so');
  if (isWord(verb, 'comes', 'came') && ofOther) return;
  // "On price the Hearth is the middle child of the three"
  const price = scene.items.find((item) => keyOf(item, 'concept') === 'price' || isWord(item, 'price'));
  const quantity = comparedQuantity(scene, { concept: price ? 'price' : '', direction: 'higher' });
  if ('problem' in quantity || quantity.better === 'target')
    return isWord(verb, 'comes', 'came')
      ? undefined
      : refuse(
          findings,
          scene,
          'order',
          'problem' in quantity ? quantity.problem : 'better has no direction for this quantity',
          [verb, ordinal],
        );
  const { cohort, items } = cohortOf(scene);
  const n = Number(keyOf(ordinal, 'ordinal'));
  const rank = n === 1 ? ({ type: 'best' } as const) : ({ type: 'position', n } as const);
  const check = orderCheck(scene, quantity, quantity.better, rank, cohort);
  propose(findings, scene, 'order', check, [verb, ordinal, ...items, ...concepts(scene)]);
  // "… comes first, the Plain second and the Umbra last"
  for (const mention of scene.units) {
    const place = scene.items[scene.items.indexOf(mention.item) + 1];
    const isPlace = place && (keyOf(place, 'ordinal') !== undefined || isWord(place, 'last'));
    if (isPlace && place.index > ordinal.index) placeNext(scene, findings, check, mention, place);
  }
}

const beforePlace = ['thus', 'therefore', 'only', 'so', 'now', 'still', 'then', 'the', 'hence', 'not'];

/** "It is second of the three in peak luminance": the verb right before a place among so many. */
function placeGiver({ items }: Scene): Item | undefined {
  return items.find((item, at) => {
    if (!isWord(item, 'is', 'was')) return false;
    let place = at + 1;
    while (isWord(items[place], ...beforePlace)) place += 1;
    return (
      keyOf(items[place], 'ordinal') !== undefined &&
      isWord(items[place + 1], 'of') &&
      isWord(items[place + 2], 'the', 'our', 'all')
    );
  });
}

/** "It loses that 10 % window to the Nocthale": behind it there. */
export function readWindowLost(scene: Scene, findings: Findings): undefined {
  const verb = scene.items.find((item) => keyOf(item, 'verb') === 'lose');
  const window = scene.items.find(({ number }) => number?.role === 'window');
  if (!verb || !window || window.index < verb.index) return;
  const other = scene.units.find(({ item }) => {
    let before = scene.items.indexOf(item) - 1;
    while (isWord(scene.items[before], 'the')) before -= 1;
    return item.index > window.index && isWord(scene.items[before], 'to');
  });
  const id = other && resolveMention(other, scene.carry, scene.context);
  if (!id) return;
  const check = orderCheck(scene, quantityById('peak'), 'higher', { type: 'behind' }, { units: [id] });
  // The set that the window is lost to is named as a subject is; who loses it is the review's own.
  const own =
    scene.unit === id ? saidOf({ ...check, cohort: {} }, scene.context.own, scene.context.own) : check;
  if (own?.kind === 'order')
    propose(findings, scene, 'order', { ...check, key: own.key }, [verb, window, other.item]);
}

/** "At £389 it sits between the Pith and the Sedge": second of three, whichever of the two is the dearer. */
export function readBetween(scene: Scene, findings: Findings): undefined {
  const word = scene.items.find((item) => isWord(item, 'between'));
  // "The gap between the Plain and the Umbra is £250" ranks nobody.
  const lead = word && scene.items[scene.items.indexOf(word) - 1];
  if (!word || isWord(lead, 'gap', 'difference', 'distance', 'step', 'choice', 'choose', 'choosing')) return;
  const pair = pairAfter(scene.items, scene.items.indexOf(word));
  const mentions = scene.units.filter(({ item }) => item.index > word.index && item.index <= word.index + 6);
  const ids = mentions.map((mention) => resolveMention(mention, scene.carry, scene.context));
  const named = ids.length === 2 && !ids.some((id) => id === undefined || id === scene.context.own);
  const cohort = pair ? groupOf(scene, 3) : named ? { units: ids as string[] } : undefined;
  if (pair && !cohort) {
    const words = [word, ...pair, ...concepts(scene)];
    return refuse(findings, scene, 'order', 'the words do not say which two sets are meant', words);
  }
  if (!cohort) return;
  const priced = scene.items.some(
    (item) =>
      item.number?.role === 'money' || keyOf(item, 'concept') === 'price' || item.number?.unit === 'GBP',
  );
  const quantity = comparedQuantity(scene, { concept: priced ? 'price' : '', direction: 'higher' });
  const gamut = scene.items.find((item) => keyOf(item, 'gamut'));
  const items = [word, ...(pair ?? mentions.map(({ item }) => item)), ...concepts(scene), gamut];
  if ('problem' in quantity && concepts(scene).length === 0) return;
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, items);
  for (const { number } of pair ?? []) if (number) number.role = 'cohort';
  propose(
    findings,
    scene,
    'order',
    orderCheck(scene, quantity, 'higher', { type: 'position', n: 2 }, cohort, negated(scene, word)),
    items,
  );
}
