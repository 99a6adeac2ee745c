import { isOutBy } from '../besideNumber.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { accessoryBefore, lightGiverBefore } from '../foreign.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import { firstWith, hasKey, type Scene, valueNumbers } from '../scene.ts';
import { patchOf } from '../screenShare.ts';
import { selectorOf, statOf } from '../selector.ts';
import { isSettled, type Subject, settled } from '../settled.ts';
import { statedNumber, statedOf } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { readBothSets } from './bothSets.ts';
import { denialBefore, factConditions, opOf } from './factCheck.ts';
import { readFromTo } from './fromTo.ts';
import { groupNamed } from './group.ts';
import { complementOf, lossProblem } from './loss.ts';
import { valueProblem } from './notMeasured.ts';
import { denialOfNumber } from './numberDenied.ts';
import { conditionsOfOwner, ownedByOther } from './owner.ts';
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
    const giver = ['luminance', 'temperature'].includes(number.dimension) && lightGiverBefore(scene, item);
    if (giver) {
      refuse(findings, scene, 'value', 'the words speak of another thing that gives light', [giver, item]);
      continue;
    }
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
    // "The widest view of the three"
    if (number.spelled && groupNamed(scene)?.items.includes(item)) continue;
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
      !scene.said?.some(({ kind }) => kind === 'order') &&
      // "Kasulind quotes 12 ms of lag, and I got twelve point eight"
      !scene.previous?.said?.some((check) => check.kind === 'fact' && check.by)
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
    const { negation, open } = denialOfNumber(scene, item);
    if (open) {
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

/** "The Plain is slower, at 11.8": a bare number behind a ranking is of what was ranked. */
function ofRanking({ items, said }: Scene, { index, number }: Item): Subject | undefined {
  const ranked = said?.findLast((check) => check.kind === 'order');
  const key = ranked?.kind === 'order' && ranked.key.type === 'quantity' ? ranked.key : undefined;
  const lead = items.findLast((item) => item.index < index && keyOf(item, 'hedge') === undefined);
  if (!key || number?.dimension !== '' || number.spelled || !isWord(lead, 'at', 'with')) return undefined;
  return settled(key.id, '', []);
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
