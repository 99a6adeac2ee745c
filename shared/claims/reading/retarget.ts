import type { Check, Operand, StatedConditions } from '../../contract/check.ts';
import { splitVariant } from './variant.ts';

/** Conditions on another set: its modes, samples and sizes are its own. */
function onSet(conditions: StatedConditions, id: string, own: string): StatedConditions {
  const {
    unit: _unit,
    variantInches: _inches,
    mode: _mode,
    sample: _sample,
    firmware: _firmware,
    ...rest
  } = conditions;
  const origin: Record<string, 'named' | 'carried' | 'article'> = { ...conditions.origin };
  for (const key of ['unit', 'variantInches', 'mode', 'sample', 'firmware']) delete origin[key];
  if (id === own) return { ...rest, origin };
  const { unit, inches } = splitVariant(id);
  return {
    ...rest,
    ...(unit !== own && { unit: unit! }),
    ...(inches !== undefined && { variantInches: inches }),
    origin: { ...origin, unit: 'named' },
  };
}

/**
 * The same statement, said of another set; undefined for kinds that name two sets already.
 * @param id unit id, with `@65` for another size
 * @param own id of the article's own unit
 */
export function saidOf(check: Check, id: string, own: string): Check | undefined {
  const of = (operand: Operand): Operand => ({
    ...operand,
    conditions: onSet(operand.conditions, id, own),
  });
  switch (check.kind) {
    case 'value':
    case 'onset':
    case 'direction':
      return { ...check, operand: of(check.operand) };
    case 'bound':
      return {
        ...check,
        bounds: check.bounds.map((bound) => ({ ...bound, operand: of(bound.operand) })),
      };
    case 'fact':
      return check.by ? undefined : { ...check, conditions: onSet(check.conditions, id, own) };
    case 'observed':
      return { ...check, conditions: onSet(check.conditions, id, own) };
    case 'order':
      return check.cohort.units?.includes(id) || check.cohort.except?.includes(id)
        ? undefined
        : { ...check, key: of(check.key) };
    default:
      return undefined;
  }
}

/** What was said of the set `from`, alone or against another, said of the set `id`. */
export function saidInPlaceOf(check: Check, from: string, id: string, own: string): Check | undefined {
  if (check.kind !== 'ratio' && check.kind !== 'difference') return saidOf(check, id, own);
  const unitOf = ({ conditions }: Operand) => conditions.unit ?? own;
  const of = (operand: Operand): Operand =>
    unitOf(operand) === from ? { ...operand, conditions: onSet(operand.conditions, id, own) } : operand;
  if (unitOf(check.a) === id || unitOf(check.b) === id) return id === from ? check : undefined;
  return { ...check, a: of(check.a), b: of(check.b) };
}

/** "Red is over-saturated by 7 % and blue by 9 %", "… and so is blue": the same of another hue. */
export function ofHue(check: Check, hue: string): Check | undefined {
  if ((check.kind !== 'value' && check.kind !== 'direction') || check.operand.type !== 'quantity')
    return undefined;
  const { operand } = check;
  if (!operand.id.startsWith('sweep.')) return undefined;
  const swap = (key: string) => key.replace(/^sweep\.[a-z]+/, `sweep.${hue}`);
  return {
    ...check,
    operand: {
      ...operand,
      id: swap(operand.id),
      ...(operand.others && { others: operand.others.map(swap) }),
    },
  };
}

/** The statement turned round; undefined where its denial leaves open what is meant. */
export function denied(check: Check): Check | undefined {
  if (check.kind === 'observed') {
    const [low, high] = check.severity;
    if (low === 0 && high === 0) return { ...check, severity: [1, 4] };
    if (low === 1 && high >= 3) return { ...check, severity: [0, 0] };
  }
  // "It does not reach 742 nits" may mean less only.
  if (
    check.kind === 'bound' ||
    check.kind === 'fact' ||
    check.kind === 'observed' ||
    check.kind === 'order' ||
    check.kind === 'direction'
  ) {
    const { negated, ...rest } = check;
    return negated ? (rest as Check) : ({ ...check, negated: true } as Check);
  }
  return undefined;
}
