import type { Bound, Check } from '../../../contract/check.ts';
import { isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { opposite } from './levelCount.ts';

/** "Only full white is over 3", "solely in the highlights"; "only just" and "only 3.4" say something else. */
export function saysOnly({ items }: Scene): boolean {
  return items.some(
    (item, at) =>
      isWord(item, 'only', 'solely') &&
      !isWord(items[at + 1], 'just') &&
      items[at + 1]?.number?.role !== 'value' &&
      keyOf(items[at + 1], 'hedge') === undefined,
  );
}

/** "Only visible in the highlights": also that nothing is past the limit elsewhere. */
export function onlyThere(scene: Scene, check: Check): Check {
  const first = check.kind === 'bound' ? check.bounds[0] : undefined;
  if (
    check.kind !== 'bound' ||
    first?.operand.type !== 'quantity' ||
    !first.op.startsWith('>') ||
    !saysOnly(scene)
  )
    return check;
  const { operand } = first;
  const { at } = operand.selector;
  const place = typeof at === 'number' ? { from: at, to: at } : operand.selector;
  const outside: Bound[] = [];
  if (place.from !== undefined && place.from > 5)
    outside.push({
      ...first,
      op: opposite[first.op],
      operand: { ...operand, selector: { stat: 'max', to: place.from, toIncluded: false } },
    });
  if (place.to !== undefined && place.to < 100)
    outside.push({
      ...first,
      op: opposite[first.op],
      operand: { ...operand, selector: { stat: 'max', from: place.to, fromIncluded: false } },
    });
  return { ...check, bounds: [...check.bounds, ...outside] };
}
