import { brightestSpot, cellOf } from '../cell.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { operandOf } from '../operand.ts';
import { powerId } from '../powerName.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import { firstWith, hasKey, type Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { statedNumber } from '../stated.ts';
import { resolveMention } from '../units.ts';
import { type ComparativeEntry, entryOf } from './comparativeEntry.ts';
import { comparedQuantity, isOfLoss, subjectQuantity } from './compared.ts';
import {
  hasTimesOwn,
  isAttribute,
  isShareOfOther,
  isValueAfter,
  isValueBefore,
  isValueOfSubject,
  plainEquative,
  setBefore,
  setTakenUp,
  takeMoney,
  takeUnitBy,
} from './comparedWords.ts';
import { otherConditions, otherMention, otherOperand, timesOf } from './otherOperand.ts';
import {
  denialOf,
  hedgeBefore,
  isLedByBy,
  limitOn,
  limitOperator,
  multipleAt,
  ratioStated,
} from './ratioNumber.ts';
import { takeUpPlace } from './saidBefore.ts';
import { isShareOfOwn } from './share.ts';
import { awayFrom, setOfIt, thanConditions } from './than.ts';

const priceOthers = new Set(['fact:price']);

/** "half as bright as", "twice the Kasulind's", "30 % brighter", "£260 dearer", "1.9 times". */
export function readRatiosAndDifferences(scene: Scene, findings: Findings): undefined {
  // "The dimmest corner is 15 % darker than the brightest spot": of how evenly it is lit.
  if (isShareOfOwn(scene) || brightestSpot(scene.items)) return;
  takeMoney(scene);
  const away = awayFrom(scene);
  const comparative =
    away?.item ??
    scene.items.find(
      (item, at) => keyOf(item, 'comparative') && !scene.used.has(item) && !isAttribute(scene.items, at),
    );
  // "Two thirds of P3 is all that the Plain can show": a share of a gamut.
  const share = multipleAt(scene)?.item;
  if (share && keyOf(scene.items[scene.items.indexOf(share) + 1], 'gamut') && !comparative) return;
  takeUnitBy(scene, comparative);
  const multiple = multipleAt(scene);
  const equative =
    scene.items.find((item) => keyOf(item, 'equative') && !scene.conditionItems.has(item)) ??
    plainEquative(scene, multiple?.item);
  const given = (away ??
    meaningOf(comparative, 'comparative')?.data ??
    meaningOf(equative, 'equative')?.data ??
    (equative && { concept: '', direction: 'higher' })) as ComparativeEntry | undefined;
  const numbers = scene.items.filter(
    (item) =>
      item.number &&
      !(
        item.number.dimension === 'money' &&
        item.number.comparator !== undefined &&
        !isLedByBy(scene, item) &&
        !keyOf(scene.items[scene.items.indexOf(item) + 1], 'comparative')
      ) &&
      !scene.used.has(item) &&
      !(comparative?.text === 'undercuts' && !isLedByBy(scene, item)) &&
      !isValueOfSubject(scene, comparative, item) &&
      (['percent', 'times', 'points'].includes(item.number.dimension) ||
        // "1.5 lower than": a bare number beside the comparing word.
        (item.number.dimension === '' &&
          (!item.number.spelled || scene.items.some((entry) => meaningOf(entry, 'fact')?.data === 'count')) &&
          comparative !== undefined &&
          keyOf(comparative, 'comparative') !== undefined &&
          scene.items[scene.items.indexOf(item) + 1] === comparative) ||
        (away !== undefined && item.number.dimension === 'ratio') ||
        (comparative &&
          !isValueAfter(scene, comparative, item) &&
          !isValueBefore(scene, comparative, item) &&
          [
            'luminance',
            'money',
            'de',
            'temperature',
            'time',
            'power',
            'noise',
            'length',
            'mass',
            'months',
          ].includes(item.number.dimension))) &&
      !['axis', 'window', 'angle', 'ignored'].includes(item.number.role ?? ''),
  );
  // Of several numbers the one beside the comparing word is the difference.
  const number = comparative
    ? [...numbers].sort(
        (a, b) => Math.abs(a.index - comparative.index) - Math.abs(b.index - comparative.index),
      )[0]
    : numbers[0];
  if ((!multiple && !number) || (number?.number?.dimension === 'percent' && cellOf(scene))) return;
  const other0 = otherMention(scene);
  const times = multiple?.item ?? timesOf(number);
  const before = scene.items.some((item) => isWord(item, 'than', 'as'));
  if (
    !comparative &&
    !(
      other0 &&
      (multiple || number?.number?.dimension === 'times' || number?.number?.dimension === 'percent')
    ) &&
    !((multiple ?? (number?.number?.dimension === 'times' ? number : undefined)) && equative) &&
    !(times && hasTimesOwn(scene, times)) &&
    setTakenUp(scene, times) === undefined &&
    !((multiple ?? number) && thanConditions(scene))
  )
    return;
  if (!comparative && number && number.number!.dimension === 'percent' && !isShareOfOther(scene, number))
    return;
  if (
    comparative &&
    !other0 &&
    !before &&
    !thanConditions(scene) &&
    scene.unit === undefined &&
    scene.carry.askedAgainst === undefined &&
    !(away && setOfIt(scene, away.item)) &&
    setBefore(scene) === undefined &&
    !scene.previous?.units.some((mention) => mention.role === 'compared')
  ) {
    if (!(keyOf(comparative, 'comparative') && (number ?? multiple) && scene.carry.rival)) return;
  }
  const money = number?.number?.dimension === 'money';
  takeUpPlace(scene);
  const entry = given && entryOf(scene, (away?.item ?? comparative ?? equative)!, given);
  const quantity = money
    ? quantityById('fact:price')
    : entry
      ? number?.number?.dimension === 'length' && entry.concept === 'black'
        ? quantityById('fact:depth')
        : ofDimension(scene, comparedQuantity(scene, entry), number)
      : subjectQuantity(scene);
  const anchor = number ?? multiple!.item;
  const words: (Item | undefined)[] = [comparative ?? equative, anchor];
  if ('problem' in quantity) return refuse(findings, scene, 'ratio', quantity.problem, words);
  if (isOfLoss(scene, quantity) && hasKey(scene, 'verb', 'lose'))
    return refuse(findings, scene, 'ratio', 'what is lost is measured only as what is kept', words);
  const undercut = comparative?.text === 'undercuts' ? comparative : undefined;
  const unsure =
    undercut &&
    scene.items.find(
      (item) =>
        keyOf(item, 'negation') === 'not' &&
        item.index > undercut.index - 3 &&
        // "… by £10, which will not pay for the bus home"
        !scene.sentence.slice(undercut.index, item.index).some((word) => isWord(word, 'which')),
    );
  if (unsure)
    return refuse(findings, scene, 'difference', 'the words leave open what is denied', [...words, unsure]);
  let other = otherOperand(scene, quantity);
  if (!other) {
    const asked = scene.index === 0 ? scene.carry.askedAgainst : undefined;
    const id =
      asked ??
      (away && setOfIt(scene, away.item)) ??
      (scene.previous && previousOther(scene.previous)) ??
      setBefore(scene);
    if (id)
      other = {
        operand: operandOf(
          scene,
          quantity,
          selectorOf(scene, quantity, 'value'),
          otherConditions(scene, id, quantity),
        ),
        items: [],
        id,
      };
  }
  if (!other) return refuse(findings, scene, 'ratio', 'the words do not say what it is compared with', words);
  if ('problem' in other) return refuse(findings, scene, 'ratio', other.problem, [...words, ...other.items]);
  words.push(...other.items);
  const own = operandOf(scene, quantity, selectorOf(scene, quantity, 'value'));
  const isLessBetter = away?.byMerit === true && quantity.better === 'lower';
  const lower = (entry?.direction === 'lower') !== isLessBetter;
  // "Twice as fast": the other takes twice the time.
  const [a, b] = lower && !comparative ? [other.operand, own] : [own, other.operand];
  const concept = firstWith(scene, 'concept');
  if (concept) words.push(concept);
  const hedgeItem = hedgeBefore(scene, anchor);
  if (hedgeItem) words.push(hedgeItem);
  if (number && !['percent', 'times'].includes(number.number!.dimension)) {
    if (number.number!.dimension === 'points' && quantity.dimension !== 'percent')
      return refuse(findings, scene, 'difference', 'points are a difference of two percentages', words);
    const phrase = number.number!;
    const stated = statedNumber(
      {
        x: phrase.x,
        place: phrase.place,
        factor: phrase.factor,
        unit: phrase.unit,
        ...(phrase.hedge && { hedge: phrase.hedge }),
        ...(phrase.hedgeText && { hedgeText: phrase.hedgeText }),
      },
      priceOthers.has(quantity.id) ? 'price' : quantity.family,
    );
    const [first, second] = lower ? [b, a] : [a, b];
    const denial = undercut ? undefined : denialOf(scene, anchor);
    const limit = limitOperator(phrase.comparator, denial !== undefined);
    if (limit && limit.scale !== 1)
      return refuse(findings, scene, 'difference', 'the words give no limit that can be checked', words);
    return propose(
      findings,
      scene,
      'difference',
      {
        kind: 'difference',
        a: first,
        b: second,
        stated,
        ...(limit ? { op: limit.op } : denial && { negated: true }),
      },
      [...words, denial, limit && scene.items[scene.items.indexOf(anchor) - 1]],
    );
  }
  if (number?.number?.dimension === 'percent' && quantity.dimension === 'percent' && comparative)
    return refuse(
      findings,
      scene,
      'difference',
      'a difference of two percentages must say whether it means points',
      words,
    );
  const stated = ratioStated(number, multiple, hedgeItem, comparative !== undefined, lower);
  if (!stated) return;
  const denial = undercut ? undefined : denialOf(scene, anchor);
  // "Not half as bright" means less than half, "hardly twice" leaves it open.
  const isLoose = !number || number.number?.dimension === 'times';
  const hasLimit = limitOn(scene, number, multiple, { comparative: false, lower: false, denied: false });
  if (denial && !hasLimit && (isLoose || isWord(denial, 'hardly', 'barely', 'scarcely')))
    return refuse(findings, scene, 'ratio', 'the words leave open which side of the ratio is meant', words);
  words.push(denial);
  const limit = limitOn(scene, number, multiple, {
    comparative: comparative !== undefined,
    lower,
    denied: denial !== undefined,
  });
  if (limit) {
    const { x, op, item } = limit;
    const ratio = { kind: 'ratio' as const, a, b, op, stated: { x, low: x, high: x } };
    return propose(findings, scene, 'ratio', ratio, [...words, item]);
  }
  // "three times dearer" may mean three or four times: n times brighter = n by the house.
  propose(findings, scene, 'ratio', { kind: 'ratio', a, b, stated, ...(denial && { negated: true }) }, words);
}

function previousOther(scene: Scene): string | undefined {
  const mention = otherMention(scene);
  const id = mention && resolveMention(mention, scene.carry, scene.context);
  return id ?? (scene.previous ? previousOther(scene.previous) : undefined);
}

/** "The Kasulind is 100 cd/m² behind": the unit says what is compared, where no word does. */
function ofDimension<T>(scene: Scene, found: Quantity | T, number: Item | undefined): Quantity | T {
  if (!number?.number) return found;
  const { dimension } = number.number;
  // "The Plain drinks 12 W more", whatever the sentence before spoke of.
  const isOfOther =
    !('problem' in (found as object)) &&
    /^(?:power|noise|luminance)$/.test(dimension) &&
    !['', dimension].includes((found as Quantity).dimension);
  if (!('problem' in (found as object)) && !isOfOther) return found;
  if (dimension === 'ratio') return quantityById('contrast.native');
  if (dimension === 'power') return quantityById(powerId(scene));
  if (dimension === 'noise') return quantityById('noise');
  if (dimension === 'months') return quantityById('fact:warranty');
  if (dimension !== 'luminance' || isOffAxis(scene)) return found;
  return quantityById(scene.conditions.signal === 'SDR' ? 'white' : 'peak');
}
