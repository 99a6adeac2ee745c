import type { BoundOp } from '../../../contract/check.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { splitVariant } from '../variant.ts';

/** The key under which the maker's number is kept: the quantity's own, or without its diagram or window. */
export function makerKey(scene: Scene, id: string, of = splitVariant(scene.unit).unit): string {
  const unit = scene.context.units.find((entry) => entry.id === (of ?? scene.context.own));
  const shorter = id.replace(/\.(?:xy|uv|native)$/, '');
  // A maker's cd/m² are the peak, under whatever heading they are quoted.
  const peak = id === 'white' ? 'peak' : id;
  return [id, shorter, peak].find((key) => unit?.facts.includes(key)) ?? id;
}

/** On which side of its number a promise is kept: 15 ms of lag by no more, 1,000 nits by no less. */
export function promisedOp({ better }: Quantity): '<=' | '>=' {
  return better === 'lower' ? '<=' : '>=';
}

/** The side of a limit on which a statistic is taken. */
export function sideOf(op: BoundOp): 'under' | 'over' {
  return op.startsWith('<') ? 'under' : 'over';
}
