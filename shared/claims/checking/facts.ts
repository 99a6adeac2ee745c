import { factStatements } from '../../contract/factStatements.ts';
import type { FactStatement, Unit } from '../../contract/unit.ts';

/**
 * Every statement about one key of a unit, or of another size of it: that size's facts only.
 * Keys that identity answers (`price`, `panel`, `backlight`, `zones`, `size`) come from there first.
 */
export function factsOf(unit: Unit, key: string, inches?: number): FactStatement[] {
  const own = unit.size?.diagonal_in;
  if (inches !== undefined && inches !== own) {
    const variant = unit.variants?.find(({ size }) => size.diagonal_in === inches);
    if (!variant) return [];
    return [...fromIdentity(key, variant), ...factStatements(variant.facts, key)];
  }
  return [...fromIdentity(key, unit), ...factStatements(unit.facts, key)];
}

type Identity = Partial<Pick<Unit, 'price' | 'panel' | 'backlight' | 'zones' | 'size' | 'firmware'>>;

function fromIdentity(key: string, identity: Identity): FactStatement[] {
  if (key === 'price')
    return identity.price
      ? [{ value: identity.price.amount, unit: identity.price.currency, on: identity.price.on }]
      : [];
  if (key === 'size' || key === 'diagonal')
    return identity.size ? [{ value: identity.size.diagonal_in, unit: 'in' }] : [];
  if (key === 'panel' || key === 'backlight' || key === 'zones' || key === 'firmware') {
    const value = identity[key];
    return value === undefined || value === null ? [] : [{ value }];
  }
  return [];
}
