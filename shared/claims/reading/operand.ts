import type { Operand, Selector, StatedConditions } from '../../contract/check.ts';
import type { Quantity } from './quantity.ts';
import type { Scene } from './scene.ts';

const windowed = new Set(['peak', 'peak.sustained', 'peak.hold', 'white']);

/** Conditions that matter for this quantity; an angle says nothing about input lag. */
export function conditionsFor(scene: Scene, quantity: Quantity | undefined): StatedConditions {
  const result: StatedConditions & Record<string, unknown> = { ...scene.conditions, origin: {} };
  const origin: Record<string, 'named' | 'carried' | 'article'> = { ...scene.conditions.origin };
  const drop = (key: string) => {
    delete result[key];
    delete origin[key];
  };
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
  if (id.startsWith('contrast.native') && result.dimming === undefined) drop('dimming');
  result.origin = origin;
  return result;
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
