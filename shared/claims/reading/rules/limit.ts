import type { Bound, BoundOp, Check, Operand, Selector } from '../../../contract/check.ts';
import type { AxisSpan } from '../axis.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { isPlainNumber } from '../plainTalk.ts';
import type { Quantity } from '../quantity.ts';
import { hasKey, nearestAxis, type Scene, valueNumbers } from '../scene.ts';
import { selectorOf, statOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { tidy } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { countCheck, countOfLevels } from './levelCount.ts';
import { isNeither, operatorOf } from './limitOperator.ts';
import { complementOf, lossProblem } from './loss.ts';
import { isShareMissing, shareMissing } from './notMeasured.ts';
import { onlyThere, saysOnly } from './onlyThere.ts';

function isNever(scene: Scene): boolean {
  return (
    ['none', 'never'].includes(statOf(scene) ?? '') ||
    scene.items.some((item) => ['none', 'never'].includes(keyOf(item, 'stat') ?? ''))
  );
}

/** Does the statement put the quantity on its bad side (an error over, a luminance under)? */
function isPast(quantity: Quantity, op: BoundOp): boolean {
  const over = op === '>' || op === '>=';
  return quantity.better === 'lower' ? over : quantity.better === 'higher' ? !over : over;
}

function seriesAxis(scene: Scene, quantity: Quantity): AxisSpan | undefined {
  const kind =
    quantity.axis === 'angle'
      ? 'angle'
      : quantity.axis === 'stimulus' || quantity.axis === 'saturation'
        ? 'stimulus'
        : undefined;
  const axis = kind && nearestAxis(scene, kind);
  const { angle } = scene.conditions;
  const isSeat =
    axis?.kind === 'angle' && axis.from === undefined && axis.to !== undefined && axis.to === angle;
  return isSeat ? { ...axis, at: angle, to: undefined } : axis;
}

/** "Red is oversaturated, never by less than 7 %": on the side that was said just before. */
function isSaidOver({ previous }: Scene, { id }: Quantity): boolean {
  return (
    previous?.said?.some((check) => {
      if (check.kind === 'direction')
        return (
          check.operand.type === 'quantity' &&
          check.operand.id === id &&
          check.name === 'over' &&
          !check.negated
        );
      const bound = check.kind === 'bound' ? check.bounds[0] : undefined;
      return (
        bound?.operand.type === 'quantity' && bound.operand.id === id && bound.op === '>' && bound.x >= 0
      );
    }) ?? false
  );
}

/** "The colour shift passes 3 at 31°": where it does so, and not how large it is there. */
function crosses({ items }: Scene, axis: AxisSpan): boolean {
  const verb = items.findIndex((item) =>
    isWord(item, 'passes', 'pass', 'passed', 'crosses', 'cross', 'crossed'),
  );
  const first = axis.items[0];
  return verb >= 0 && first !== undefined && items.indexOf(first) > verb;
}

/** Every angle of a series, where the one that was named is the place of the onset. */
function wholeSeries(operand: Operand): Operand {
  const { angle: _angle, ...conditions } = operand.conditions;
  const { angle: _origin, ...origin } = conditions.origin;
  return { ...operand, conditions: { ...conditions, origin } };
}

/** The check that a limit with its operator makes: an onset where one side of an axis is past it, else a bound. */
export function limitCheck(
  scene: Scene,
  quantity: Quantity,
  op: BoundOp,
  x: number,
  options: { houseWord?: string; unit?: string } = {},
): Check {
  const count = quantity.axis === null ? undefined : countOfLevels(scene);
  if (count) return countCheck(scene, quantity, count, { op, x, ...options });
  const axis = seriesAxis(scene, quantity);
  const mostly = hasKey(scene, 'stat', 'mostly');
  const changes = hasKey(scene, 'verb', 'rise', 'fall', 'exceed', 'cut');
  // "Every step lies past 3" is past it, and stays nowhere.
  const stays = scene.items.some(
    (item) => keyOf(item, 'verb') === 'stay' && !/^(?:lies?|sits?|stands?)$/.test(item.text),
  );
  const ranged =
    axis !== undefined && axis.at === undefined && (axis.from === undefined) !== (axis.to === undefined);
  const becomes = scene.items.some((item) => plays(item, 'beginning'));
  const over = op === '>' || op === '>=';
  const stat = statOf(scene);
  // "The maximum is 5.1. It is visible from 70 % up": what is carried says nothing of a stretch of levels.
  const named = scene.items.some((item) => ['average', 'max', 'min'].includes(keyOf(item, 'stat') ?? ''));
  if (
    ranged &&
    !axis.tone &&
    !isNever(scene) &&
    isPast(quantity, op) &&
    !(stays && !changes) &&
    !(named && (stat === 'average' || stat === 'max')) &&
    !axis.free
  ) {
    return {
      kind: 'onset',
      operand: operandOf(scene, quantity, { stat: 'all' }),
      limit: x,
      side: over ? 'over' : 'under',
      ...(axis.from !== undefined ? { from: axis.from } : { to: axis.to! }),
      edge: axis.free
        ? 'free'
        : (axis.from !== undefined ? axis.fromIncluded : axis.toIncluded)
          ? 'included'
          : 'excluded',
      ...(mostly && { mostly: true }),
      ...(options.unit && { unit: options.unit }),
      ...(options.houseWord && { houseWord: options.houseWord }),
    };
  }
  if (
    axis?.at !== undefined &&
    !isNever(scene) &&
    isPast(quantity, op) &&
    (becomes ||
      (hasKey(scene, 'verb', 'rise', 'exceed') && !saysOnly(scene)) ||
      (hasKey(scene, 'verb', 'cut') && options.houseWord)) &&
    (quantity.axis === 'stimulus' ||
      (quantity.axis === 'saturation' && becomes) ||
      (quantity.axis === 'angle' && crosses(scene, axis))) &&
    !stays
  ) {
    return {
      kind: 'onset',
      operand: wholeSeries(operandOf(scene, quantity, { stat: 'all' })),
      limit: x,
      side: over ? 'over' : 'under',
      from: axis.at,
      edge: 'included',
      ...(options.unit && { unit: options.unit }),
      ...(options.houseWord && { houseWord: options.houseWord }),
    };
  }
  let selector: Selector = selectorOf(scene, quantity, over ? 'over' : 'under');
  // "Neither the average nor the maximum is over 3": where the maximum is not, the average is not.
  if (!over && ['average', 'max'].every((key) => hasKey(scene, 'stat', key)) && isNeither(scene))
    selector = { ...selector, stat: 'max' };
  // "Errors exceed 3" says that some do; "every error exceeds 3" and "errors do not fall below 3" that all do.
  const turned = isNever(scene) || scene.items.some((item) => keyOf(item, 'negation') === 'not');
  if (!turned && over && quantity.better === 'lower' && selector.stat === 'min' && stat === undefined)
    selector = { ...selector, stat: isPlural(scene) || changes || options.houseWord ? 'max' : 'average' };
  if (
    !turned &&
    !over &&
    quantity.better === 'higher' &&
    selector.stat === 'max' &&
    stat === undefined &&
    changes
  )
    selector = { ...selector, stat: 'min' };
  // "Not every level stays below 3" needs one past it; "hardly any level exceeds 3" lets none be.
  const open = scene.items.findIndex((item) => ['all', 'any'].includes(keyOf(item, 'stat') ?? ''));
  const denied = scene.items.findIndex((item) => keyOf(item, 'negation') === 'not');
  if (open > denied && denied >= 0 && ['min', 'max'].includes(selector.stat)) {
    // "Does not exceed 3 at any level" and "… anywhere" let none be, "does not stay below 3 at all levels" one.
    const any =
      /^(?:any|wherever)/.test(scene.items[open]!.text) || keyOf(scene.items[open], 'stat') === 'any';
    selector = { ...selector, stat: over === any ? 'min' : 'max' };
  }
  // "Within 5 %" of a signed error binds both sides.
  if (quantity.signed && !over && x > 0) {
    const both: Bound[] = [
      {
        operand: operandOf(scene, quantity, {
          ...selector,
          stat: selector.stat === 'min' ? 'max' : selector.stat,
        }),
        op,
        x,
        ...(options.unit && { unit: options.unit }),
      },
      {
        operand: operandOf(scene, quantity, {
          ...selector,
          stat: selector.stat === 'max' ? 'min' : selector.stat,
        }),
        op: op === '<' ? '>' : '>=',
        x: -x,
        ...(options.unit && { unit: options.unit }),
      },
    ];
    return { kind: 'bound', bounds: both };
  }
  // "All levels but one": so many may stand outside.
  const allowed = scene.items.find(
    (entry) =>
      entry.number?.spelled &&
      entry.number.dimension === '' &&
      plays(scene.items[scene.items.indexOf(entry) - 1], 'excepting'),
  );
  if (allowed && stat === 'all') selector = { ...selector, stat: 'all', exceptions: allowed.number!.x };
  const bound: Bound = {
    operand: operandOf(scene, quantity, selector),
    op,
    x,
    ...(options.unit && { unit: options.unit }),
  };
  return { kind: 'bound', bounds: [bound], ...(options.houseWord && { houseWord: options.houseWord }) };
}

function isPlural(scene: Scene): boolean {
  return scene.items.some(
    (item) =>
      keyOf(item, 'concept') !== undefined &&
      /s$/.test(item.text) &&
      !/(?:luminance|brightness|ss)$/.test(item.text),
  );
}

/** Subject words, operator words and axis phrase of a limit statement, for its span. */
export function limitWords(scene: Scene, quantity: Quantity): (Item | undefined)[] {
  const words: (Item | undefined)[] = [];
  const axis = seriesAxis(scene, quantity);
  if (axis) words.push(...axis.items);
  words.push(...(countOfLevels(scene)?.items ?? []));
  for (const item of scene.items) {
    const stat = keyOf(item, 'stat');
    if (stat && !scene.conditionItems.has(item)) words.push(item);
    const verb = keyOf(item, 'verb');
    if (verb && ['rise', 'fall', 'stay', 'exceed', 'keep', 'cut'].includes(verb) && !scene.used.has(item))
      words.push(item);
  }
  return words;
}

/** "Comes within 1,000 of its contrast", "under 1 ms separates the sets": how far apart, and not the value. */
function isDistance({ items, units }: Scene, number: Item): boolean {
  const at = items.indexOf(number);
  const whose = items[at + 2];
  const ofSet =
    isWord(items[at - 1], 'within') &&
    isWord(items[at + 1], 'of') &&
    // "Within 3 % of its saturation target" is a limit.
    !items
      .slice(at + 2, at + 6)
      .some(({ text }) =>
        /target|reference|ideal|standard|curve|proper|correct|intended|saturation/.test(text),
      ) &&
    (isWord(whose, 'its') || units.some(({ item }) => item === whose || item === items[at + 3]));
  // "It came within 8 nits of 750"
  const ofMark =
    isWord(items[at - 1], 'within') && isWord(items[at + 1], 'of') && whose?.number !== undefined;
  return (
    ofSet ||
    ofMark ||
    items.slice(at + 1).some((item) => isWord(item, 'separates', 'separate', 'divides', 'parts'))
  );
}

/** Numbers with a limit: "the average stays under 3", "errors exceed 3 from 60 % upwards". */
export function readLimits(scene: Scene, findings: Findings): undefined {
  for (const item of valueNumbers(scene)) {
    const found = operatorOf(scene, item);
    if (!found) continue;
    const number = item.number!;
    if (number.dimension === 'points' || number.dimension === 'times' || number.outOf !== undefined) continue;
    if (number.dimension === '' && isPlainNumber(scene.sentence, item)) {
      number.role = 'ignored';
      continue;
    }
    scene.focus = item;
    const subject = subjectOf(scene, number.dimension, item);
    const words = [item, ...found.items];
    if (isDistance(scene, item)) {
      refuse(
        findings,
        scene,
        'limit',
        'the number says how far two sets lie apart, not what was measured',
        words,
      );
      continue;
    }
    // "Two thirds of the chart stay under 2"
    const part = scene.items.find(
      (entry, place) =>
        entry.index < item.index &&
        keyOf(entry, 'multiple') !== undefined &&
        (/ of(?: the)?$/.test(entry.text) || isWord(scene.items[place + 1], 'of')),
    );
    if (part && number.dimension === '') {
      refuse(findings, scene, 'limit', 'the words leave open how many levels are meant', [part, ...words]);
      continue;
    }
    // "Within 50 K of the target"
    if (number.dimension === 'temperature' && number.x < 1500) {
      refuse(findings, scene, 'limit', 'a distance from the target in kelvin is no check', words);
      continue;
    }
    const count = countOfLevels(scene);
    if (count?.items.includes(item)) continue;
    if (count === null) {
      refuse(findings, scene, 'limit', 'the words leave open how many levels are meant', words);
      continue;
    }
    // "Errors under 1 cannot be seen" is a rule of thumb, not a finding.
    const comparatorAt = scene.items.findIndex(
      (entry) => found.items.includes(entry) && keyOf(entry, 'comparator') !== undefined,
    );
    const thumb =
      comparatorAt > 0 &&
      (keyOf(scene.items[comparatorAt - 1], 'concept') !== undefined ||
        isWord(scene.items[comparatorAt - 1], 'anything', 'everything', 'whatever', 'values', 'numbers')) &&
      scene.items.find((entry) => entry.index > item.index && keyOf(entry, 'house') !== undefined);
    if (thumb) {
      refuse(findings, scene, 'limit', 'a rule of thumb says nothing about this set', [...words, thumb]);
      continue;
    }
    // "Few levels exceed 3", "it rarely exceeds 742 nits"
    const seldom = scene.items.find((entry) => isWord(entry, 'few', 'a few', 'rarely', 'seldom'));
    if (seldom && seldom.index < item.index) {
      refuse(findings, scene, 'limit', 'the words leave open how many levels are meant', [seldom, ...words]);
      continue;
    }
    // "Highlights above 600 nits are clipped", "anything over 600 nits will do"
    const ofSignal =
      number.dimension === 'luminance' &&
      /\b(?:anything|everything|whatever|highlights|details?|tones)$/.test(
        scene.items[comparatorAt - 1]?.text ?? '',
      );
    if (ofSignal) {
      refuse(
        findings,
        scene,
        'limit',
        'the number names a level of the signal, not what was measured',
        words,
      );
      continue;
    }
    if (!isSettled(subject)) {
      refuse(findings, scene, 'limit', subject.problem, words);
      continue;
    }
    const { quantity } = subject;
    if (isShareMissing(scene, quantity, item)) {
      refuse(findings, scene, 'limit', shareMissing, words);
      continue;
    }
    let x = tidy(number.x * number.factor * found.scale);
    let op = found.op;
    let unit = number.unit || quantity.unit;
    const complement = complementOf(scene, quantity, item);
    if (complement) {
      x = 100 - x;
      op = ({ '<': '>', '<=': '>=', '>': '<', '>=': '<=' } as const)[op];
      unit = '%';
      words.push(complement);
    } else if (lossProblem(scene, quantity, item)) {
      refuse(findings, scene, 'limit', 'the words do not say what the loss is taken of', words);
      continue;
    }
    const limit = limitCheck(scene, quantity, op, x, unit ? { unit } : {});
    const check = quantity.dimension === 'de' ? onlyThere(scene, limit) : limit;
    if (check.kind === 'bound' && hasKey(scene, 'stat', 'mostly')) {
      refuse(findings, scene, 'limit', 'the words leave open how many levels may be out', [
        ...words,
        ...subject.items,
        ...limitWords(scene, quantity),
      ]);
      continue;
    }
    const isSided = hasKey(scene, 'direction') || isSaidOver(scene, quantity);
    if (quantity.signed && (op === '>' || op === '>=') && !isSided) {
      refuse(findings, scene, 'limit', 'the words do not say on which side of the target it lies', [
        ...words,
        ...subject.items,
      ]);
      continue;
    }
    propose(findings, scene, 'limit', check, [...words, ...subject.items, ...limitWords(scene, quantity)]);
  }
}
