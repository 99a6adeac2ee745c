import type { Operand, StatedConditions, StatedNumber } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { statedMultiple, statedNumber, statedOf, tidy } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { isLedByBy } from './ratioNumber.ts';

const lowering =
  /^(?:cuts?|reduces?|reduced|lowers?|lowered|takes?|took|shaves?|knocks?|halves|halved|brings?|trims?|slashes|shaved|knocked|trimmed)$/;

/** "Adjustment halves the error", "takes 1.5 off the average", "cuts it by 80 %": adjusted against as delivered. */
export function readAdjusting(scene: Scene, findings: Findings): undefined {
  const doer = scene.items.find((item) =>
    isWord(item, 'adjustment', 'calibration', 'adjusting', 'calibrating', 'correction'),
  );
  if (!doer) return scene.conditions.stage === 'adjusted' ? readChange(scene, findings) : undefined;
  const verb = scene.items.find((item) => item.index > doer.index && lowering.test(item.text));
  const multiple = scene.items.find(
    (item) =>
      item.index > doer.index &&
      /^(?:halves|halved|doubles|doubled)$/.test(item.text) &&
      keyOf(item, 'multiple'),
  );
  const number = scene.items.find(
    (item) =>
      item.number !== undefined &&
      item.index > doer.index &&
      !scene.used.has(item) &&
      item.number.to === undefined &&
      (item.number.role === undefined || item.number.role === 'value'),
  );
  const next = number && scene.items[scene.items.indexOf(number) + 1];
  const before = number && scene.items[scene.items.indexOf(number) - 1];
  const by = isWord(before, 'by') || isWord(next, 'off') || isWord(next, 'from');
  if (!multiple && !(verb && number && by)) return readChange(scene, findings);
  const anchor = multiple ?? number!;
  // "Takes" is also a word for power: the verb names no quantity here.
  const items = scene.items.filter((item) => item !== verb);
  const subject = subjectOf({ ...scene, items }, undefined, anchor);
  if (!isSettled(subject)) return refuse(findings, scene, 'adjusting', subject.problem, [doer, anchor]);
  const { quantity } = subject;
  const conditions = conditionsFor(scene, quantity);
  const selector = selectorOf(scene, quantity, 'value');
  const at = (stage: string): Operand => {
    const staged: StatedConditions = {
      ...conditions,
      stage,
      origin: { ...conditions.origin, stage: 'named' },
    };
    return operandOf(scene, quantity, selector, staged);
  };
  const stat = scene.items.find((item) => ['average', 'max', 'min'].includes(keyOf(item, 'stat') ?? ''));
  const words = [doer, anchor, verb, stat, ...subject.items, isWord(next, 'off') ? next : undefined];
  const [adjusted, delivered] = [at('adjusted'), at('as-delivered')];
  if (number && !multiple && number.number!.dimension !== 'percent') {
    const stated = statedOf(number.number!, quantity.family);
    return propose(
      findings,
      scene,
      'adjusting',
      { kind: 'difference', a: delivered, b: adjusted, stated },
      words,
    );
  }
  const stated = multiple ? multipleStated(multiple) : lowered(number!);
  propose(findings, scene, 'adjusting', { kind: 'ratio', a: adjusted, b: delivered, stated }, words);
}

/** A number that says by how much the adjusted set differs, and which way: "loses 26", "by 46", "26 lower". */
function changeOf(scene: Scene): { number: Item; word: Item; down: boolean } | undefined {
  const verb = scene.items.find((item) =>
    ['fall', 'rise', 'lose', 'cut'].includes(keyOf(item, 'verb') ?? ''),
  );
  for (const item of scene.items) {
    const { number } = item;
    if (!number || scene.used.has(item) || number.to || (number.role && number.role !== 'value')) continue;
    if (number.dimension === '' || number.dimension === 'money' || number.dimension === 'angle') continue;
    const at = scene.items.indexOf(item);
    const next = scene.items[at + 1];
    const compared = meaningOf(next, 'comparative')?.data as { direction: string } | undefined;
    if (compared && !isWord(scene.items[at + 2], 'than'))
      return { number: item, word: next!, down: compared.direction === 'lower' };
    if (!verb || verb.index > item.index) continue;
    const key = keyOf(verb, 'verb');
    let left = at - 1;
    while (keyOf(scene.items[left], 'hedge') !== undefined || isWord(scene.items[left], 'a', 'just', 'only'))
      left -= 1;
    if (isLedByBy(scene, item) && key !== 'cut') return { number: item, word: verb, down: key !== 'rise' };
    if (key === 'lose' && scene.items[left] === verb) return { number: item, word: verb, down: true };
  }
  return undefined;
}

/** "White loses 26 cd/m² in the process", "HDR peak drops by 46 nits": adjusted against as delivered. */
function readChange(scene: Scene, findings: Findings): undefined {
  if (scene.units.some(({ role }) => role !== 'subject') || scene.items.some((item) => isWord(item, 'than')))
    return;
  const half = halved(scene);
  const change = half ? undefined : changeOf(scene);
  if (half) return readHalved(scene, findings, half);
  if (!change) return;
  const { number, word, down } = change;
  const phrase = number.number!;
  const items = scene.items.filter((item) => item !== word);
  const subject = subjectOf({ ...scene, items }, phrase.dimension, number);
  const percent = phrase.dimension === 'percent';
  // A share of what is itself a share has its own reading.
  if (!isSettled(subject) || subject.quantity.dimension !== phrase.dimension || percent) return;
  const { quantity } = subject;
  const conditions = conditionsFor(scene, quantity);
  const selector = selectorOf(scene, quantity, 'value');
  const at = (stage: string): Operand =>
    operandOf(scene, quantity, selector, {
      ...conditions,
      stage,
      origin: { ...conditions.origin, stage: 'named' },
    });
  const [a, b] = down ? [at('as-delivered'), at('adjusted')] : [at('adjusted'), at('as-delivered')];
  propose(
    findings,
    scene,
    'adjusting',
    { kind: 'difference', a, b, stated: statedOf(phrase, quantity.family) },
    [
      number,
      word,
      ...subject.items,
      ...scene.items.filter((item) => scene.conditionItems.has(item) && keyOf(item, 'stage') === undefined),
    ],
  );
}

/** "has been halved", "cut in half" */
function halved({ items, used }: Scene): Item[] | undefined {
  const at = items.findIndex(
    (item, place) =>
      !used.has(item) &&
      (isWord(item, 'halved') ||
        (keyOf(item, 'multiple') === 'half' &&
          isWord(items[place - 1], 'in', 'by') &&
          /^cuts?$/.test(items[place - 2]?.text ?? ''))),
  );
  if (at < 0) return undefined;
  return isWord(items[at], 'halved') ? [items[at]!] : items.slice(at - 2, at + 1);
}

/** "After adjustment the average error has been cut in half": adjusted against as delivered. */
function readHalved(scene: Scene, findings: Findings, words: Item[]): undefined {
  const items = scene.items.filter((item) => !words.includes(item));
  const subject = subjectOf({ ...scene, items }, undefined, words[0]);
  if (!isSettled(subject)) return;
  const { quantity } = subject;
  const conditions = conditionsFor(scene, quantity);
  const selector = selectorOf(scene, quantity, 'value');
  const at = (stage: string): Operand =>
    operandOf(scene, quantity, selector, {
      ...conditions,
      stage,
      origin: { ...conditions.origin, stage: 'named' },
    });
  const stated = statedMultiple({ x: 0.5, low: 0.45, high: 0.55 }, undefined, undefined);
  const ratio = { kind: 'ratio' as const, a: at('adjusted'), b: at('as-delivered'), stated };
  const stat = scene.items.find((item) => ['average', 'max', 'min'].includes(keyOf(item, 'stat') ?? ''));
  propose(findings, scene, 'adjusting', ratio, [...words, stat, ...subject.items]);
}

function multipleStated(item: Item): StatedNumber {
  const entry = meaningOf(item, 'multiple')!.data as { x: number; low: number; high: number };
  return statedMultiple(entry, undefined, undefined);
}

/** "by 80 %": a fifth is left. */
function lowered(item: Item): StatedNumber {
  const { x, place, hedge } = item.number!;
  const stated = statedNumber({ x, place, ...(hedge && { hedge }) }, 'plain');
  return {
    ...stated,
    x: tidy(1 - stated.x / 100),
    low: tidy(1 - stated.high / 100),
    high: tidy(1 - stated.low / 100),
    place: tidy(place / 100),
    ...(stated.highOpen && { lowOpen: true, highOpen: undefined }),
    ...(stated.lowOpen && { highOpen: true, lowOpen: undefined }),
  };
}
