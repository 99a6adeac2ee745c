import type { StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import { firstWith, type Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { statedNumber, statedOf } from '../stated.ts';
import { subjectOf } from '../subject.ts';

/** "From 2.4 as delivered, the average drops to 0.6 after adjustment": each number beside its stage. */
function readTwoStates(scene: Scene, findings: Findings, numbers: Item[]): boolean {
  const lead = (item: Item) => scene.items[scene.items.indexOf(item) - 1];
  const first = numbers.find((item) => isWord(lead(item), 'from'));
  const second = numbers.find((item) => first && item.index > first.index && isWord(lead(item), 'to'));
  const verb = firstWith(scene, 'verb', 'fall', 'rise', 'cut');
  const stages = scene.items.filter((item) => keyOf(item, 'stage') !== undefined);
  if (!first || !second || !verb || stages.length !== 2) return false;
  const subject = subjectOf(scene, second.number!.dimension, second);
  if (!isSettled(subject)) return false;
  const { quantity } = subject;
  const base = conditionsFor(scene, quantity);
  const selector = selectorOf(scene, quantity, 'value');
  const stat = scene.items.find((entry) => ['average', 'max', 'min'].includes(keyOf(entry, 'stat') ?? ''));
  for (const [item, stage] of [
    [first, stages[0]!],
    [second, stages[1]!],
  ] as const) {
    const conditions = {
      ...base,
      stage: keyOf(stage, 'stage')!,
      origin: { ...base.origin, stage: 'named' as const },
    };
    const stated = statedOf(item.number!, quantity.family);
    const check = {
      kind: 'value' as const,
      operand: operandOf(scene, quantity, selector, conditions),
      stated,
    };
    propose(findings, scene, 'fromTo', check, [
      item,
      stage,
      ...(item === second ? [verb, stat, ...subject.items] : []),
    ]);
  }
  return true;
}

/** "falls from 4.1 to 0.6": the first number as delivered, the second as adjusted. */
export function readFromTo(scene: Scene, findings: Findings, numbers: Item[]): boolean {
  const item = numbers.find(
    (entry) =>
      entry.number!.to !== undefined &&
      (entry.number!.rangeWord === 'from' ||
        (entry.number!.rangeWord === 'to' &&
          scene.items.some((other) => isWord(other, 'from') && other.index < entry.index))),
  );
  if (!item) return readTwoStates(scene, findings, numbers);
  const number = item.number!;
  const verb =
    firstWith(scene, 'verb', 'fall', 'rise', 'cut') ??
    firstWith(scene, 'multiple') ??
    scene.items.find((entry) =>
      isWord(
        entry,
        'goes',
        'improves',
        'cuts',
        'brings',
        'brought',
        'takes',
        'took',
        'moves',
        'improved',
        'went',
        'taking',
        'cutting',
        'bringing',
        'reducing',
        'lowering',
        'lowers',
        'reduces',
        'improving',
        'gets',
        'got',
        'go',
        'came',
        'come',
      ),
    ) ??
    (number.moves ? item : undefined);
  if (!verb || number.dimension === 'money') return false;
  const subject = subjectOf(scene, number.dimension, item);
  if (!isSettled(subject)) {
    refuse(findings, scene, 'fromTo', subject.problem, [item, verb]);
    return true;
  }
  const { quantity } = subject;
  const conditions = conditionsFor(scene, quantity);
  if (scene.items.some((entry) => isWord(entry, 'calibration', 'adjustment', 'calibrating', 'adjusting'))) {
    conditions.stage = 'adjusted';
    conditions.origin = { ...conditions.origin, stage: 'named' };
  }
  if (conditions.stage !== 'adjusted' || conditions.origin.stage !== 'named') {
    if (!(conditions.stage === 'adjusted')) {
      refuse(
        findings,
        scene,
        'fromTo',
        'the words do not say under which conditions each of the two numbers was measured',
        [item, verb, ...subject.items],
      );
      return true;
    }
  }
  const selector = selectorOf(scene, quantity, 'value');
  const stat = scene.items.find((entry) => ['average', 'max', 'min'].includes(keyOf(entry, 'stat') ?? ''));
  const first = {
    ...conditions,
    stage: 'as-delivered',
    origin: { ...conditions.origin, stage: 'named' as const },
  };
  const before = statedNumber(
    { x: number.x, place: number.place, factor: number.factor, ...(number.unit && { unit: number.unit }) },
    quantity.family,
  );
  const after = statedNumber(
    {
      x: number.to!.x,
      place: number.to!.place,
      factor: number.factor,
      ...(number.unit && { unit: number.unit }),
    },
    quantity.family,
  );
  const words = [item, verb, stat, ...subject.items];
  propose(
    findings,
    scene,
    'fromTo',
    { kind: 'value', operand: operandOf(scene, quantity, selector, first), stated: before },
    words,
    number.firstEnd === undefined ? {} : { end: number.firstEnd },
  );
  propose(
    findings,
    scene,
    'fromTo',
    { kind: 'value', operand: operandOf(scene, quantity, selector, conditions), stated: after },
    words,
    { ...(number.to!.start !== undefined && { start: number.to!.start }) },
  );
  return true;
}

/**
 * "drops to 0.91 from 3.4", "gets it to 0.91, from 3.4": the number before the change, whose conditions these are;
 * undefined for every other number.
 */
export function conditionsBefore(scene: Scene, item: Item, quantity: Quantity): StatedConditions | undefined {
  if (!isWord(scene.items[scene.items.indexOf(item) - 1], 'from')) return undefined;
  const reached = scene.sentence.find(
    (other) =>
      other !== item &&
      other.index < item.index &&
      other.number !== undefined &&
      other.number.dimension === item.number!.dimension &&
      isWord(scene.sentence[other.index - 1], 'to'),
  );
  if (!reached) return undefined;
  const conditions = conditionsFor(scene, quantity);
  if (conditions.stage === 'adjusted')
    return {
      ...conditions,
      stage: 'as-delivered',
      origin: { ...conditions.origin, stage: 'named' as const },
    };
  return { ...conditions, unmatched: 'before a change that the words do not name' };
}
