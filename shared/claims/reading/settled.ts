import type { Item } from './items.ts';
import { type Quantity, quantityById } from './quantity.ts';

/** Why no quantity could be settled, in words for a person. */
export interface Unsettled {
  problem: string;
}
export type Subject = { quantity: Quantity; items: Item[]; concept: string } | Unsettled;

export function isSettled(
  subject: Subject,
): subject is { quantity: Quantity; items: Item[]; concept: string } {
  return 'quantity' in subject;
}

export function settled(id: string, concept: string, items: (Item | undefined)[]): Subject {
  return { quantity: quantityById(id), concept, items: items.filter((item) => item !== undefined) };
}
