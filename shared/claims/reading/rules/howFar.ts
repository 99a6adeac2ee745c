import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { statedOf } from '../stated.ts';

/** "Blue is oversaturated, by about 9 % on average": how far the direction goes that stands before the comma. */
export function readHowFar(scene: Scene, findings: Findings): undefined {
  const [first, ...rest] = scene.items.filter(({ type }) => type !== 'mark');
  const numbers = scene.items.filter(({ number }) => number && (number.role ?? 'value') === 'value');
  const [item] = numbers;
  const before = scene.previous?.said?.at(-1);
  if (!item || numbers.length > 1 || scene.used.has(item) || !isWord(first, 'by')) return;
  // ", by 9 %", ", by about 9 %", ", by an average of 9 %"
  const lead = rest.slice(0, rest.indexOf(item));
  if (
    lead.length > 3 ||
    !lead.every(
      (word) =>
        keyOf(word, 'hedge') ??
        keyOf(word, 'stat') ??
        (keyOf(word, 'comparator') === 'upTo' || isWord(word, 'a', 'an', 'some', 'of')),
    )
  )
    return;
  if (before?.kind !== 'direction' || before.negated || before.operand.type !== 'quantity') return;
  const side = { over: 1, under: -1 }[before.name];
  const quantity = quantityById(before.operand.id);
  const number = item.number!;
  if (side === undefined || !quantity.signed || number.dimension !== quantity.dimension) return;
  // ", by up to 14 %"
  const isUpTo = number.comparator === 'upTo';
  if ((number.comparator !== undefined && !isUpTo) || number.to !== undefined) return;
  const stated = statedOf({ ...number, x: Math.abs(number.x) }, quantity.family);
  const own = selectorOf(scene, quantity, 'value');
  const selector = isUpTo
    ? { ...before.operand.selector, stat: 'max' as const }
    : own.stat === 'at' || scene.axes.length > 0
      ? own
      : { ...before.operand.selector };
  propose(
    findings,
    scene,
    'howFar',
    {
      kind: 'value',
      operand: { ...before.operand, selector },
      stated: side > 0 ? stated : { ...stated, x: -stated.x, low: -stated.high, high: -stated.low },
    },
    scene.items.filter((word) => word.type !== 'mark' && word.index >= first!.index),
  );
}
