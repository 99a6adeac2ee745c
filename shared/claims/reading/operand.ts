import type { Operand, Selector, StatedConditions } from '../../contract/check.ts';
import { isWord, keyOf } from './items.ts';
import type { Quantity } from './quantity.ts';
import type { Scene } from './scene.ts';

const windowed = new Set(['peak', 'peak.sustained', 'peak.hold', 'white']);

/** Conditions that matter for this quantity; an angle says nothing about input lag. */
export function conditionsFor(scene: Scene, quantity: Quantity | undefined): StatedConditions {
  const given = scene.conditions;
  const id = quantity?.id ?? '';
  const ofAngle = id.startsWith('angle.');
  const matters = (key: string) => {
    switch (key) {
      case 'window':
        return windowed.has(id);
      case 'angle':
      case 'side':
      case 'plane':
        return !quantity || ofAngle;
      case 'level':
        return !quantity || ofAngle || id.startsWith('uniformity.');
      case 'room':
        return !quantity;
      // Standby and noise know no signal; a heading's does not bind them.
      case 'signal':
        return !((id === 'standby' || id === 'noise') && given.origin.signal === 'carried');
      case 'dimming':
        return !(id.startsWith('contrast.native') && given.dimming === undefined);
      default:
        return true;
    }
  };
  const kept: Record<string, unknown> = {};
  for (const key in given)
    if (key !== 'origin' && matters(key)) kept[key] = given[key as keyof StatedConditions];
  const origin: Record<string, 'named' | 'carried' | 'article'> = {};
  for (const key in given.origin) if (matters(key)) origin[key] = given.origin[key]!;
  kept.origin = origin;
  return kept as unknown as StatedConditions;
}

export function operandOf(
  scene: Scene,
  quantity: Quantity,
  selector: Selector,
  conditions = conditionsFor(scene, quantity),
): Operand {
  if (quantity.id.startsWith('fact:')) return { type: 'fact', key: quantity.id.slice(5), conditions };
  const id = levelled(quantity.id, conditions);
  const isNamed = quantity.id.startsWith('angle.de')
    ? !leavesDefinitionOpen(scene)
    : quantity.dimension === 'de' && saysColourOnly(scene);
  const others = isNamed ? undefined : quantity.others;
  return {
    type: 'quantity',
    id,
    ...(others && others.length > 0 && { others }),
    selector,
    conditions,
  };
}

/**
 * "Within 30 degrees the ΔE stays under 3": with its luminance or without. A "colour shift" is one of colour by its name;
 * the luminance off axis has a quantity of its own.
 */
function leavesDefinitionOpen({ sentence }: Scene): boolean {
  return (
    sentence.some(
      (item) =>
        (keyOf(item, 'concept') === 'error' && !/shift/.test(item.text)) ||
        // "The shift in its white is under 3"
        isWord(item, 'shift'),
    ) && !sentence.some((item) => /colou?r/.test(item.text))
  );
}

/** "Colour only, the error …", "without luminance": the definition is named, and no other is heard. */
function saysColourOnly({ sentence }: Scene): boolean {
  return sentence.some(
    (item, at) =>
      (/\bcolou?r$/.test(item.text) && isWord(sentence[at + 1], 'only', 'alone')) ||
      isWord(item, 'without luminance', 'ignoring luminance', 'excluding luminance') ||
      (/luminance$/.test(item.text) &&
        isWord(sentence[at + 1], 'set', 'left', 'taken') &&
        isWord(sentence[at + 2], 'aside', 'out')) ||
      (isWord(item, 'luminance') && isWord(sentence[at + 1], 'aside', 'excluded', 'ignored')),
  );
}

/** `angle.luminance` on another level than white has the level in its id. */
export function levelled(id: string, conditions: StatedConditions): string {
  if (id.startsWith('angle.') && conditions.level && conditions.level !== 'white')
    return id.replace('angle.', `angle.${conditions.level}.`);
  return id;
}
