import type { OperandValue } from './operandValue.ts';
import { amount, definitionOf, nameOfFact, nameOfQuantity, nameOfUnit, placeOnAxis } from './terms.ts';

/** "The maximum colour error of the greyscale", "Peak luminance in a 10 % window"; capital first. */
export function subject(value: OperandValue, own: boolean): string {
  const name = value.id.startsWith('fact.') ? nameOfFact(value.id.slice(5)) : nameOfQuantity(value.id);
  const stat = value.rank
    ? `${ordinal(value.rank + 1)} ${value.stat === 'min' ? 'lowest' : 'highest'} `
    : { average: 'average ', max: 'maximum ', min: 'minimum ', at: '', scalar: '' }[value.stat];
  const whose = own ? '' : ` of the ${nameOfUnit(value.unit)}`;
  const isPeak = /^peak(\.|$)/.test(value.id) && value.stat === 'max';
  return `The ${isPeak ? '' : stat}${name}${whose}`;
}

const ordinals = [
  '',
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

function ordinal(n: number): string {
  return ordinals[n] ?? `${n}th`;
}

/** "6.8 ± 0.4 at 80 % (ΔE2000, colour only)" */
export function numberWithPlace(value: OperandValue): string {
  const number = value.over
    ? `over ${amount(value.value, null, value.unitOfMeasure, value.id)}`
    : amount(value.value, value.u, value.unitOfMeasure, value.id);
  const window = /^peak(\.|$)/.test(value.id);
  const place =
    value.axis === undefined ? '' : ` ${window ? 'in' : 'at'} ${placeOnAxis(value.id, value.axis)}`;
  const definition = definitionOf(value.id);
  return `${number}${place}${definition && ` (${definition})`}`;
}

/** Subject and number: "The average colour error of the greyscale is 2.4 ± 0.3 (ΔE2000, colour only)". */
export function says(value: OperandValue, own: string): string {
  return `${subject(value, value.unit.id === own)} is ${numberWithPlace(value)}`;
}
