import type { Operand, Selector, StatedConditions } from '../../contract/check.ts';
import type { Quantity } from './quantity.ts';
import type { Scene } from './scene.ts';

const windowed = new Set(['peak', 'peak.sustained', 'peak.hold', 'white']);

/** Conditions that matter for this quantity; an angle says nothing about input lag. */
export function conditionsFor(scene: Scene, quantity: Quantity | undefined): StatedConditions {
  const { origin, ...given } = scene.conditions;
  const dropped = new Set<string>();
  const drop = (key: string) => dropped.add(key);
  const id = quantity?.id ?? '';
  if (!windowed.has(id)) drop('window');
  if (quantity && !id.startsWith('angle.')) {
    drop('angle');
    drop('side');
    drop('plane');
  }
  if (quantity && !id.startsWith('angle.') && !id.startsWith('uniformity.')) drop('level');
  if (quantity) drop('room');
  // Standby and noise know no signal; a heading's does not bind them.
  if ((id === 'standby' || id === 'noise') && origin.signal === 'carried') drop('signal');
  if (id.startsWith('contrast.native') && given.dimming === undefined) drop('dimming');
  return { ...without(given, dropped), origin: without(origin, dropped) };
}

function without<T extends object>(members: T, dropped: ReadonlySet<string>): T {
  const kept: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(members)) if (!dropped.has(key)) kept[key] = value;
  return kept as T;
}

export function operandOf(
  scene: Scene,
  quantity: Quantity,
  selector: Selector,
  conditions = conditionsFor(scene, quantity),
): Operand {
  if (quantity.id.startsWith('fact:')) return { type: 'fact', key: quantity.id.slice(5), conditions };
  const id = levelled(quantity.id, conditions);
  return {
    type: 'quantity',
    id,
    ...(quantity.others && quantity.others.length > 0 && { others: quantity.others }),
    selector,
    conditions,
  };
}

/** `angle.luminance` on another level than white has the level in its id. */
export function levelled(id: string, conditions: StatedConditions): string {
  if (id.startsWith('angle.') && conditions.level && conditions.level !== 'white')
    return id.replace('angle.', `angle.${conditions.level}.`);
  return id;
}
