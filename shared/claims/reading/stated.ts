import type { StatedNumber } from '../../contract/check.ts';
import type { NumberPhrase } from './items.ts';

/** How a quantity's numbers are rounded in prose. */
export type RoundingFamily = 'plain' | 'luminance' | 'contrast' | 'cct' | 'price';

/** Largest half width that trailing zeros may give, relative to x. */
const zeroShare: Readonly<Record<RoundingFamily, number>> = {
  plain: 0,
  luminance: 0.025,
  contrast: 0.025,
  cct: 0.01,
  price: 0,
};

/** Value of one unit of the last non-zero digit of an integer written with trailing zeros. */
function placeOfLastNonZero(x: number): number {
  let place = 1;
  while (x !== 0 && x % (place * 10) === 0) place *= 10;
  return place;
}

/** Sums such as 74.2 + 0.05 without the tail of binary fractions: to twelve significant digits. */
export function tidy(value: number): number {
  // Text prints few decimals: those are found without writing the number out, which takes fifty times as long.
  const near = Math.round(value * 1e4) / 1e4;
  const size = Math.abs(value);
  return near !== 0 && size < 1e8 && Math.abs(value - near) <= size * 1e-13
    ? near
    : Number(value.toPrecision(12));
}

/**
 * The closed interval that a written number stands for (`judging.md`, "Rounding"): half a unit of the last
 * digit, trailing zeros of luminance, contrast and colour temperature, then the hedge.
 */
export function statedNumber(
  written: { x: number; place: number; factor?: number; unit?: string; hedge?: string; hedgeText?: string },
  family: RoundingFamily,
  fraction = false,
): StatedNumber {
  const factor = written.factor ?? 1;
  const x = tidy(written.x * factor);
  const place = written.place * factor;
  const result: StatedNumber = { x, low: x, high: x, place: tidy(place) };
  if (written.unit) result.unit = written.unit;
  let half = place / 2;
  if (zeroShare[family] > 0 && written.place === 1 && Number.isInteger(written.x)) {
    const zeros = (placeOfLastNonZero(Math.abs(written.x)) * factor) / 2;
    half = Math.max(half, Math.min(zeros, Math.abs(x) * zeroShare[family]));
  }
  if (family === 'price') half = 0;
  const hedge = written.hedge;
  if (hedge) result.hedge = written.hedgeText ?? hedge;
  if (family === 'price' && (!hedge || hedge === 'exactly')) result.exact = true;
  const wide = Math.max(half, Math.abs(x) * (family === 'cct' ? 0.02 : 0.05));
  if (hedge === 'about' || (hedge === 'notFarOff' && !fraction)) half = wide;
  if (hedge === 'almost' || (hedge === 'notFarOff' && fraction)) {
    const share = fraction ? 0.9 : 0.95;
    return { ...result, low: tidy(Math.min(x * share, x)), high: x, highOpen: true };
  }
  if (hedge === 'over') return { ...result, low: x, lowOpen: true, high: tidy(x * 1.05) };
  return { ...result, low: tidy(x - half), high: tidy(x + half) };
}

/** The interval of a number phrase in the quantity's unit. */
export function statedOf(number: NumberPhrase, family: RoundingFamily): StatedNumber {
  return statedNumber(
    {
      x: number.x,
      place: number.place,
      factor: number.factor,
      unit: number.unit,
      ...(number.hedge && { hedge: number.hedge }),
      ...(number.hedgeText && { hedgeText: number.hedgeText }),
    },
    family,
  );
}

/** "half", "a third", "twice" with their own intervals and hedges. */
export function statedMultiple(
  entry: { x: number; low: number; high: number },
  hedge: string | undefined,
  hedgeText: string | undefined,
): StatedNumber {
  const base: StatedNumber = { x: entry.x, low: entry.low, high: entry.high };
  if (hedgeText) base.hedge = hedgeText;
  // Of the multiples only half, twice, a third and a quarter have the wider range (`judging.md`, "Rounding").
  const share = [0.5, 2, 1 / 3, 0.25].some((x) => Math.abs(entry.x - x) < 1e-9) ? 0.9 : 0.95;
  if (hedge === 'almost' || hedge === 'notFarOff')
    return { ...base, low: tidy(entry.x * share), high: entry.x, highOpen: true };
  if (hedge === 'over') return { ...base, low: entry.x, lowOpen: true, high: tidy(entry.x * 1.05) };
  return base;
}
