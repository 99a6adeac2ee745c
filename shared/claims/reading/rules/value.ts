import { isOutBy } from '../besideNumber.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { accessoryBefore } from '../foreign.ts';
import { type Item, isOneOf, isWord, keyOf } from '../items.ts';
import { changeWords } from '../lexicon/grammar.ts';
import { isLimitItself } from '../limitSaid.ts';
import { operandOf } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import { firstWith, hasKey, nearestAxis, type Scene, valueNumbers } from '../scene.ts';
import { patchOf } from '../screenShare.ts';
import { selectorOf, statOf } from '../selector.ts';
import { isSettled, type Subject, settled } from '../settled.ts';
import { statedNumber, statedOf } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { readBothSets } from './bothSets.ts';
import { denialBefore, factConditions, opOf } from './factCheck.ts';
import { readFromTo } from './fromTo.ts';
import { complementOf, lossProblem } from './limit.ts';
import { conditionsOfOwner, ownedByOther } from './owner.ts';
import { isLedByBy } from './ratioNumber.ts';
import { complemented, readShares } from './share.ts';
import { hueSide, signOf } from './sign.ts';

/** "742 nits in a 10 % window": a plain number for a quantity. */
export function readValues(scene: Scene, findings: Findings): undefined {
  readBothSets(scene, findings);
  readFromTo(scene, findings, valueNumbers(scene));
  for (const item of valueNumbers(scene)) {
    const number = item.number!;
    if (number.outOf !== undefined) continue;
    scene.focus = item;
    // "The speakers put out 40 watts"
    if (['power', 'noise'].includes(number.dimension) && accessoryBefore(scene, item)) {
      refuse(findings, scene, 'value', 'the words speak of a part for which no quantity stands', [item]);
      continue;
    }
    if (
      ownedByOther(scene, item) &&
      number.dimension === '' &&
      !scene.items.some((entry) => keyOf(entry, 'concept') === 'error')
    ) {
      const model = scene.items.find(
        (entry) =>
          entry.number &&
          entry !== item &&
          ['luminance', 'ratio', 'percent', 'temperature', 'time', 'power', 'noise'].includes(
            entry.number.dimension,
          ),
      );
      if (model) {
        number.dimension = model.number!.dimension;
        number.unit = model.number!.unit;
        number.factor = model.number!.factor;
      }
    }
    const found = subjectOf(
      scene,
      number.dimension === '' && !hasNumberSubject(scene) ? '' : number.dimension,
      item,
    );
    const subject = isSettled(found) ? found : (ofRanking(scene, item) ?? found);
    if (!isSettled(subject)) continue;
    const { quantity } = subject;
    if (
      number.spelled &&
      number.dimension === '' &&
      (scene.items[scene.items.indexOf(item) + 1]?.type ?? 'mark') !== 'mark'
    )
      continue;
    // A lone number without unit needs a subject of its own clause, or a statistic.
    const inWindow = scene.conditions.origin.window === 'named' && number.x >= 20;
    if (
      number.dimension === '' &&
      number.spelled &&
      number.x < 100 &&
      subject.items.length === 0 &&
      !statOf(scene) &&
      !inWindow &&
      // "The Kasulind beats both, at two point four"
      !scene.said?.some(({ kind }) => kind === 'order')
    )
      continue;
    const words: (Item | undefined)[] = [
      item,
      ...subject.items.filter((word) => word && !isPartedBySubject(scene, word, item)),
    ];
    if (quantity.id.startsWith('fact:')) {
      if (quantity.id !== 'fact:price') readFactValue(scene, findings, quantity, item, words);
      continue;
    }
    const problem = valueProblem(scene, item, quantity);
    if (problem) {
      refuse(findings, scene, 'value', problem.why, problem.alone ? [item] : words);
      continue;
    }
    // The words name no side of the target: the distance from it is what they state.
    const eitherSide =
      number.x > 0 &&
      (/\.hue$/.test(quantity.id)
        ? hueSide(scene, quantity.id) === 0
        : quantity.signed && isOutBy(scene, item) && signOf(scene).item === undefined);
    if (/^(?:grey\.tint)$/.test(quantity.id) && number.dimension === '') continue;
    let stated = statedOf(number, quantity.family);
    if (!stated.unit && quantity.unit) stated.unit = quantity.unit;
    if (quantity.id.startsWith('grey.balance.') && number.x < 50) {
      const { sign, item: side } = signOf(scene);
      stated = {
        ...stated,
        x: 100 + sign * number.x,
        low: 100 + (sign > 0 ? stated.low : -stated.high),
        high: 100 + (sign > 0 ? stated.high : -stated.low),
      };
      words.push(side);
    }
    if (/\.hue$/.test(quantity.id) && hueSide(scene, quantity.id) < 0)
      stated = { ...stated, x: -stated.x, low: -stated.high, high: -stated.low };
    else if (quantity.signed && number.x > 0 && number.dimension !== '' && !/\.hue$/.test(quantity.id)) {
      const { sign, item: signItem } = signOf(scene);
      if (sign < 0)
        stated = {
          ...stated,
          x: -stated.x,
          low: -stated.high,
          high: -stated.low,
          ...(stated.highOpen && { lowOpen: true, highOpen: undefined }),
          ...(stated.lowOpen && { highOpen: true, lowOpen: undefined }),
        };
      words.push(signItem);
    }
    const complement = complementOf(scene, quantity, item);
    if (complement) {
      stated = complemented(stated);
      words.push(complement);
    } else if (lossProblem(scene, quantity, item)) {
      refuse(findings, scene, 'value', 'the words do not say what the loss is taken of', words);
      continue;
    }
    const at = scene.items.indexOf(item);
    if (number.comparator === 'upTo' && quantity.dimension === 'luminance') words.push(scene.items[at - 1]);
    const placed = atOwnWindow(scene, item);
    const selector = selectorOf(placed, quantity, 'value');
    if (number.comparator === 'upTo' && selector.stat === 'average') selector.stat = 'max';
    const stat = scene.items.find((entry) => ['average', 'max', 'min'].includes(keyOf(entry, 'stat') ?? ''));
    if (number.to && number.rangeWord === 'from' && stat && quantity.axis !== null) {
      refuse(
        findings,
        scene,
        'value',
        'one average is not a range, and the words do not say when each was measured',
        [...words, stat],
      );
      continue;
    }
    const negation = scene.items.find(
      (entry) =>
        entry.index < item.index &&
        keyOf(entry, 'negation') === 'not' &&
        !scene.used.has(entry) &&
        !keyOf(entry, 'hedge') &&
        // "I would not call black deep: 0.08 nits" denies the word before the colon.
        !scene.sentence.slice(entry.index, item.index).some((mark) => isWord(mark, ':', ';')) &&
        // "It misses BT.2020 by a wide margin, covering only 71 %": what is missed is not the number.
        !(isWord(entry, 'misses', 'lacks') && keyOf(scene.items[scene.items.indexOf(entry) + 1], 'gamut')),
    );
    // "anything but low at 12" denies the adjective, "far from perfect at 4" too.
    const loose =
      negation &&
      isWord(
        negation,
        'anything but',
        'far from',
        'short of being',
        'hardly',
        'barely',
        'scarcely',
        'rather than',
      ) &&
      negation.index + 1 !== item.index;
    if (loose || (negation && !deniesNumber(scene, negation, item))) {
      refuse(findings, scene, 'value', 'the words leave open what is denied', [...words, negation]);
      continue;
    }
    const window = scene.items.filter(
      (entry) =>
        scene.conditionItems.has(entry) &&
        (entry.number?.role === 'window' ||
          keyOf(entry, 'fullScreen') !== undefined ||
          keyOf(entry, 'stage') !== undefined ||
          (keyOf(entry, 'signal') !== undefined && entry.index === item.index + 1)) &&
        Math.abs(entry.index - item.index) < 8 &&
        !isPartedBySubject(scene, entry, item),
    );
    const axisItems = scene.axes
      .filter((axis) => quantity.axis !== null && !axis.tone)
      .flatMap((axis) => axis.items);
    const to = number.to;
    const toStated =
      to &&
      statedNumber(
        { x: to.x, place: to.place, factor: number.factor, ...(number.unit && { unit: number.unit }) },
        quantity.family,
      );
    propose(
      findings,
      scene,
      'value',
      {
        kind: 'value',
        operand: operandOf(placed, quantity, selector, conditionsOfOwner(placed, item, quantity)),
        stated,
        ...(toStated && {
          range: {
            min: toStated.x < stated.x ? toStated : stated,
            max: toStated.x < stated.x ? stated : toStated,
          },
        }),
        ...(eitherSide && { eitherSide: true as const }),
        ...(negation && { negated: true }),
      },
      // "Three times the Kasulind's 4,400:1": beside the ratio the other's number stands alone.
      ownedByOther(scene, item) && scene.said?.some(({ kind }) => kind === 'ratio')
        ? [item]
        : [...words, stat, negation, ...window, ...axisItems, firstWith(scene, 'verb')],
    );
  }
  readShares(scene, findings);
  refuseLongTimes(scene, findings);
}

/** "From 412 nits full screen to 1,190 in a 10 % window": each number in the patch that stands right behind it. */
function atOwnWindow(scene: Scene, number: Item): Scene {
  const windows = scene.items.filter((item) => item.number?.role === 'window' || patchOf(item) !== undefined);
  const numbers = valueNumbers(scene).filter((item) => item.number?.dimension === 'luminance');
  if (windows.length < 2 || numbers.length < 2) return scene;
  const following = numbers.find((item) => item.index > number.index);
  const own = windows.find(
    (item) => item.index > number.index && (following === undefined || item.index < following.index),
  );
  const window = own && (own.number?.x ?? patchOf(own));
  if (window === undefined) return scene;
  const origin = { ...scene.conditions.origin, window: 'named' as const };
  return { ...scene, conditions: { ...scene.conditions, window, origin } };
}

/** "With the whole screen white the figures are 548 nits": the span of the number begins behind its own subject. */
function isPartedBySubject(scene: Scene, condition: Item, number: Item): boolean {
  return scene.items.some(
    (item) =>
      item.index > condition.index &&
      item.index < number.index &&
      isWord(item, 'figures', 'numbers', 'readings', 'results', 'values', 'sets', 'three', 'two'),
  );
}

/** Why the number beside this quantity says nothing that was measured; `alone` when the quantity's words are not meant. */
function valueProblem(
  scene: Scene,
  item: Item,
  quantity: Quantity,
): { why: string; alone?: true } | undefined {
  const number = item.number!;
  if (scene.units.some((mention) => mention.role === 'maker') && !ownedByOther(scene, item))
    return { why: 'the words do not say whether the maker or the review measured it' };
  const at = scene.items.indexOf(item);
  const next = scene.items[at + 1];
  const last = scene.items[at - 1];
  const second = scene.items[at - 2];
  // No white is so dim: the number is of something that has no quantity, a halo or a black.
  if (
    /^(?:peak|white$)/.test(quantity.id) &&
    number.dimension === 'luminance' &&
    number.x * number.factor < 2
  )
    return { why: 'the words do not say which luminance is meant', alone: true };
  // "742, 738 and 745 nits on three days": several numbers of one thing.
  const listed = scene.sentence.slice(item.index - 3, item.index);
  if (
    listed.length === 3 &&
    isWord(listed[2], 'and') &&
    listed[1]?.number?.dimension === '' &&
    isWord(listed[0], ',') &&
    scene.sentence[item.index - 4]?.number !== undefined
  )
    return { why: 'the words give several numbers, and do not say how they differ', alone: true };
  if (isLimitItself(scene.sentence, item))
    return { why: 'the number is the limit, not what was measured', alone: true };
  // "White measures x 0.3127, y 0.3290"
  if (isWord(last, 'x', 'y', 'u', 'v', "u'", "v'"))
    return { why: 'a chromaticity is judged by its distance from the target', alone: true };
  // "A 10 % window holds 742 nits and then sags to 690": what it is after a while is the hold of the peak.
  if (
    quantity.dimension === 'luminance' &&
    isWord(last, 'to') &&
    scene.items.slice(0, at).some((word) => isFlagging(word) || isWhile(scene.sentence, word))
  )
    return { why: 'the words do not say when it is so', alone: true };
  // "Films are mastered at 4,000 nits", "it needs 742 nits to look good", "we set white to 120 nits"
  const need = scene.items
    .slice(0, at)
    .find((word) => isWord(word, 'mastered', 'graded', 'needs', 'requires', 'wants'));
  const setTo =
    isWord(last, 'to') &&
    scene.items
      .slice(0, at)
      .some((word, index, all) => isWord(word, 'set') && isWord(all[index - 1], 'we', 'i', 'is', 'was'));
  if (quantity.dimension === 'luminance' && (need ?? setTo))
    return { why: 'the number names what should be, not what was measured' };
  // "The set is rated for 1,000 nits": the maker's number, whoever says it.
  if (isWord(last, 'for', 'at') && isWord(second, 'rated', 'specified', 'specced'))
    return { why: 'the words do not say whether the maker or the review measured it' };
  if (quantity.id.startsWith('coverage.')) {
    const missing = scene.items.slice(at).some((word) => isWord(word, 'missing', 'lacking', 'absent'));
    if (missing) return { why: 'the number is what is missing, and the words do not say of how much' };
  }
  // "Within a tenth of 2.2": a distance from the number, and not the number.
  if (isWord(last, 'of') && keyOf(second, 'multiple'))
    return { why: 'the words give a distance from this number' };
  // "Within a tenth of 2.2" with the share and "of" as one phrase.
  if (/ of$/.test(last?.text ?? '') && keyOf(last, 'multiple'))
    return { why: 'the words give a distance from this number' };
  if (
    isWord(next, 'target', 'standard', 'ideal', 'reference') ||
    isWord(last, 'target') ||
    (isWord(last, 'is', 'was') && isWord(second, 'target', 'the target', 'standard', 'norm', 'ideal')) ||
    (isWord(last, 'of') && isWord(second, 'instead', 'target', 'ideal')) ||
    isWord(last, 'rather than')
  )
    return { why: 'the number names what should be, not what was measured', alone: true };
  // "HDR adds another 54 W": on top of what was said.
  if (isWord(last, 'another', 'extra', 'further', 'adds', 'add', 'saves', 'gains'))
    return { why: 'the number is a difference, and the words do not say of what', alone: true };
  // "Some 650 above the target", "650 over the standard"
  const isFromTarget = /target|standard/.test(next?.text ?? '') && keyOf(next, 'direction') !== undefined;
  if (
    !quantity.signed &&
    (isFromTarget ||
      (isWord(next, 'above', 'below', 'over', 'under', 'beyond', 'off', 'from') &&
        scene.items
          .slice(at + 2, at + 4)
          .some((entry) => isWord(entry, 'target', 'standard', 'ideal', 'reference', 'what'))))
  )
    return { why: 'the number says how far it lies from another, not what was measured', alone: true };
  // "The average is 0.3 lower", "costs 0.3 more": beside a comparing word the number is a distance.
  if (keyOf(next, 'comparative') !== undefined && number.dimension !== 'percent')
    return { why: 'the number is a difference, and the words do not say of what', alone: true };
  if (!quantity.signed && isWord(next, 'short', 'short of', 'shy', 'adrift'))
    return { why: 'the number says how far it lies from another, not what was measured', alone: true };
  if (
    (['luminance', 'de', 'temperature', 'time', 'power', 'noise'].includes(number.dimension) ||
      (quantity.id === 'grey.de2000' && changes(scene) && !isOutBy(scene, item))) &&
    isLedByBy(scene, item)
  )
    return { why: 'the number says by how much it changed, and the words do not say from what', alone: true };
  // "The colour temperature is 6,600 K in the shadows": that is measured of white alone.
  const tone = scene.axes.find((axis) => axis.kind === 'stimulus' && axis.tone && axis.to !== 100);
  if (
    quantity.axis === null &&
    quantity.id.startsWith('white.') &&
    tone &&
    nearestAxis({ ...scene, focus: item }, 'stimulus') === tone
  )
    return { why: 'the quantity is not measured along these levels' };
  // "Neither rival can match its 742 nits": whose number it is stands apart from who is compared with it.
  if (
    isWord(last, 'its', 'our') &&
    scene.items
      .slice(0, at)
      .some((word) =>
        isWord(
          word,
          'match',
          'matches',
          'equal',
          'equals',
          'approach',
          'approaches',
          'beat',
          'beats',
          'better',
          'top',
          'tops',
          'touch',
        ),
      )
  )
    return { why: 'the words compare with this number: say it of each set', alone: true };
  // "The difference in peak luminance between the two was 171 nits"
  const apart = scene.items
    .slice(0, at)
    .findLastIndex((word) => isWord(word, 'difference', 'gap', 'margin', 'distance', 'disparity'));
  if (
    apart >= 0 &&
    scene.items.slice(apart, at).some((word) => isWord(word, 'between', 'separating', 'over', 'to')) &&
    scene.items
      .slice(apart, at)
      .some((word) => keyOf(word, 'unit') ?? keyOf(word, 'maker') ?? isWord(word, 'two'))
  )
    return { why: 'the number says how far two sets lie apart, not what was measured', alone: true };
  if (isWord(last, 'of') && isWord(second, 'difference', 'gap', 'gain', 'drop', 'rise', 'margin', 'lead'))
    return { why: 'the number is a difference, and the words do not say of what', alone: true };
  if (number.dimension === 'luminance' && number.state === undefined && hasKey(scene, 'verb', 'cost'))
    return { why: 'the number is what is lost, and the words do not say of what', alone: true };
  if (number.to !== undefined && /^uniformity\..*cell$/.test(quantity.id))
    return { why: 'the words do not say of which cells each number is' };
  // "Detail is kept up to 1,000 nits": how bright the signal may be, not the screen.
  const detail = scene.items
    .slice(0, at)
    .find((word) => isWord(word, 'detail', 'details', 'texture', 'gradation'));
  if (number.comparator === 'upTo' && detail)
    return { why: 'the number names a level of the signal, not what was measured', alone: true };
  if (number.hedge === 'nowhereNear' || number.hedge === 'vague')
    return { why: 'the words give no number that can be checked' };
  if (quantity.id.startsWith('contrast.') && number.to !== undefined && number.to.x * 10 < number.x)
    return { why: 'a contrast is stated against 1' };
  if (quantity.id === 'white.cct' && number.x < 1500)
    return { why: 'a distance from the target in kelvin is no check' };
  return undefined;
}

const linking = new Set([
  ...[
    'a',
    'an',
    'the',
    'its',
    'at',
    'of',
    'to',
    'in',
    'on',
    'with',
    'for',
    'as',
    'be',
    'been',
    'is',
    'are',
    'was',
    'were',
    'that',
  ],
  ...[
    'really',
    'quite',
    'even',
    'exactly',
    'actually',
    'once',
    'ever',
    'anything',
    'like',
    'some',
    'full',
    'promised',
    'usual',
  ],
  ...[
    'get',
    'gets',
    'go',
    'goes',
    'come',
    'comes',
    'cost',
    'costs',
    'have',
    'has',
    'draw',
    'draws',
    'weigh',
    'weighs',
    'quoted',
  ],
]);

/** Does the denial reach the number? "Not interested in the 5,240:1 contrast" denies the interest. */
function deniesNumber({ items }: Scene, negation: Item, number: Item): boolean {
  return items
    .slice(items.indexOf(negation) + 1, items.indexOf(number))
    .every(
      (word) =>
        word.type !== 'word' ||
        word.meanings.length > 0 ||
        word.number !== undefined ||
        linking.has(word.text),
    );
}

/** "The Plain is slower, at 11.8": a bare number behind a ranking is of what was ranked. */
function ofRanking({ items, said }: Scene, { index, number }: Item): Subject | undefined {
  const ranked = said?.findLast((check) => check.kind === 'order');
  const key = ranked?.kind === 'order' && ranked.key.type === 'quantity' ? ranked.key : undefined;
  const lead = items.findLast((item) => item.index < index && keyOf(item, 'hedge') === undefined);
  if (!key || number?.dimension !== '' || number.spelled || !isWord(lead, 'at', 'with')) return undefined;
  return settled(key.id, '', []);
}

/** "The mean error decreased by 1.8" */
function changes(scene: Scene): boolean {
  return (
    hasKey(scene, 'verb', 'fall', 'rise', 'cut') || scene.items.some((word) => isOneOf(word, changeWords))
  );
}

/** "Leave that window up for a couple of minutes and the figure sinks to 976" */
function isWhile(sentence: readonly Item[], { index }: Item): boolean {
  return (
    isWord(sentence[index], 'sinks', 'sank', 'drops', 'falls') &&
    sentence.slice(0, index).some((word) => isWord(word, 'minutes', 'seconds', 'while'))
  );
}

/** "… and then sags to 690" */
function isFlagging(word: Item): boolean {
  return /^(?:sags?|sagging|wilts?|tires?|flags?|fades?|decays?|slips?|slides?)$/.test(word.text);
}

/** "In the game mode lag is 10.6 ms": a number that is kept as a fact of the mode. */
function readFactValue(
  scene: Scene,
  findings: Findings,
  quantity: Quantity,
  item: Item,
  words: (Item | undefined)[],
): undefined {
  const stated = statedOf(item.number!, quantity.family);
  const denial = denialBefore(scene, item);
  propose(
    findings,
    scene,
    'value',
    {
      kind: 'fact',
      key: quantity.id.slice(5),
      op: opOf(item),
      x: stated.x,
      stated,
      ...(stated.unit && { unit: stated.unit }),
      conditions: factConditions(scene),
      ...(denial && { negated: true }),
    },
    [...words, denial, ...scene.conditionItems].filter(
      (word) => word === undefined || scene.items.includes(word),
    ),
  );
}

function hasNumberSubject(scene: Scene): boolean {
  return hasKey(scene, 'concept');
}

/** "Lag is 12.4 seconds": a time of screen tests, not of lag; nothing is measured so. */
function refuseLongTimes(scene: Scene, findings: Findings): undefined {
  const concept = firstWith(scene, 'concept', 'lag', 'response');
  if (!concept) return;
  for (const item of scene.items) {
    if (item.number?.role !== 'seconds' || scene.used.has(item) || item.index < concept.index) continue;
    if (isWord(scene.items[scene.items.indexOf(item) - 1], 'after', 'for', 'within', 'in', 'every')) continue;
    refuse(findings, scene, 'value', 'lag and response are kept in milliseconds', [concept, item]);
  }
}
