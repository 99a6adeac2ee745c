import { formatNumber, formatWithUncertainty } from '../../shared/article/formatNumber.ts';

/** No-break space: a title never ends a line between a number and its unit. */
export const thin = '\u00a0';

/** A number with a fixed count of decimals: `−1,039.5`. */
export function numberText(value: number, decimals: number): string {
  return formatNumber(value, { decimals });
}

/** `+3`, `−31`, `0`: what is above carries its plus. */
export function signedText(value: number, decimals: number): string {
  const text = numberText(value, decimals);
  return value < 0 || /^0(\.0*)?$/.test(text) ? text : `+${text}`;
}

/** Colour differences are named in words beside the number, so their symbol is left out. */
const printed = (unit: string) => (unit.startsWith('Δ') || unit === '1' ? {} : { unit });

/** `742 cd/m²`, `60 %`, `45°`, `3,260:1`; a colour difference is the bare number. */
export function withUnit(value: number, unit: string, decimals: number): string {
  return formatNumber(value, { decimals, ...printed(unit) });
}

/** `742 ± 15 cd/m²`: ± is the expanded uncertainty U = 2u, with at least one digit of it to be seen. */
export function plusMinus(value: number, u: number | null, unit: string, decimals: number): string {
  const expanded = 2 * (u ?? 0);
  const needed = expanded > 0 && expanded < 0.95 ? Math.ceil(-Math.log10(expanded / 0.95) - 1e-9) : 0;
  return formatWithUncertainty(value, u, {
    decimals: Math.max(decimals, Math.min(6, needed)),
    ...printed(unit),
  });
}

/** `20, 60 and 80` */
export function listText(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}
