import type { Operand, StatedConditions } from '../../../contract/check.ts';
import { type Item, isWord } from '../items.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { powerId } from '../powerName.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { sizeCompared } from '../sizes.ts';
import { resolveMention, unitOfSize } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { isFormer, setTakenUp, thisOneBehind } from './comparedWords.ts';
import { multipleAt } from './ratioNumber.ts';
import { thanConditions } from './than.ts';

/** Conditions of the other operand: the same signal, stage and dimming, its own unit and what "than the …" names. */
export function otherConditions(
  scene: Scene,
  unit: string | undefined,
  quantity: Quantity,
): StatedConditions {
  const base = conditionsFor(scene, quantity);
  const {
    mode: _mode,
    sample: _sample,
    unit: _unit,
    variantInches: _inches,
    unmatched: _unmatched,
    ...kept
  } = base;
  const origin: Record<string, 'named' | 'carried' | 'article'> = { ...base.origin };
  for (const key of ['mode', 'sample', 'unit', 'variantInches']) delete origin[key];
  const { unit: id, inches } = splitVariant(unit);
  const result: StatedConditions = { ...kept, origin };
  if (id !== undefined && id !== scene.context.own) {
    result.unit = id;
    origin.unit = 'named';
  }
  if (inches !== undefined) {
    result.variantInches = inches;
    origin.variantInches = 'named';
  }
  return result;
}

export function otherMention(scene: Scene): UnitMention | undefined {
  return scene.units.find((mention) => mention.role === 'compared' || mention.role === 'possessive');
}

/** The operand on the other side of a comparison; undefined when the clause names none. */
export function otherOperand(
  scene: Scene,
  quantity: Quantity,
): { operand: Operand; items: Item[]; id?: string } | { problem: string; items: Item[] } | undefined {
  const selector = selectorOf(scene, quantity, 'value');
  const mention = otherMention(scene);
  if (mention) {
    const id = resolveMention(mention, scene.carry, scene.context);
    if (id === undefined)
      return { problem: `“${mention.item.text}” could be more than one set`, items: [mention.item] };
    // "A third brighter than last year's Hearth": no set is compared with itself.
    if (id === (scene.unit ?? scene.context.own) && isFormer(scene, mention))
      return { problem: 'the set that came before it is not kept', items: [mention.item] };
    return {
      operand: operandOf(scene, quantity, selector, otherConditions(scene, id, quantity)),
      items: [mention.item],
      id,
    };
  }
  const own = thisOneBehind(scene);
  if (own)
    return {
      operand: operandOf(scene, quantity, selector, otherConditions(scene, scene.context.own, quantity)),
      items: [own],
      id: scene.context.own,
    };
  const size = sizeCompared(scene.items);
  if (size) {
    const of = splitVariant(scene.unit).unit ?? scene.context.own;
    const id = unitOfSize(of, size.inches, scene.context);
    return {
      operand: operandOf(scene, quantity, selector, otherConditions(scene, id, quantity)),
      items: [size.item],
      id,
    };
  }
  const times = multipleAt(scene)?.item ?? scene.items.find((item) => timesOf(item));
  const taken = setTakenUp(scene, times);
  if (taken !== undefined && taken !== (scene.unit ?? scene.context.own))
    return {
      operand: operandOf(scene, quantity, selector, otherConditions(scene, taken, quantity)),
      items: [],
      id: taken,
    };
  // "The Kasulind is 30 % brighter": than this review's own set.
  if (
    scene.unit !== undefined &&
    !scene.items.some((item) => isWord(item, 'than')) &&
    thanConditions(scene) === undefined
  )
    return {
      operand: operandOf(scene, quantity, selector, otherConditions(scene, scene.context.own, quantity)),
      items: [],
      id: scene.context.own,
    };
  const than = thanConditions(scene);
  if (than) {
    const own = conditionsFor(scene, quantity);
    const origin: Record<string, 'named' | 'carried' | 'article'> = { ...own.origin };
    for (const key of Object.keys(than)) origin[key] = 'named';
    const conditions: StatedConditions = { ...own, ...than, origin };
    const other = inSignal(scene, quantity, than.signal);
    // The mode of one signal is none of the other's.
    if (than.signal !== undefined && than.mode === undefined) delete conditions.mode;
    const of = other === quantity ? selector : selectorOf(scene, other, 'value');
    return { operand: operandOf(scene, other, of, conditions), items: [] };
  }
  return undefined;
}

/** What stands for the quantity in another signal: the peak is SDR's white, and power is named with its mode. */
function inSignal(scene: Scene, quantity: Quantity, signal: string | undefined): Quantity {
  if (signal === undefined) return quantity;
  if (quantity.id === 'peak' && signal === 'SDR') return quantityById('white');
  if (!quantity.id.startsWith('power.')) return quantity;
  const { mode: _mode, ...rest } = scene.conditions;
  return quantityById(powerId({ ...scene, conditions: { ...rest, signal } as StatedConditions }));
}

/** The number where it says how many times. */
export function timesOf(number: Item | undefined): Item | undefined {
  return number?.number?.dimension === 'times' ? number : undefined;
}
