/** Units that prose and box print, folded, with their size in a common unit of the same kind. */
const units: Readonly<Record<string, readonly [kind: string, size: number]>> = {
  mm: ['length', 1],
  cm: ['length', 10],
  m: ['length', 1000],
  in: ['length', 25.4],
  inch: ['length', 25.4],
  inches: ['length', 25.4],
  '"': ['length', 25.4],
  '″': ['length', 25.4],
  g: ['mass', 1],
  kg: ['mass', 1000],
  lb: ['mass', 453.59237],
  s: ['time', 1000],
  ms: ['time', 1],
  months: ['months', 1],
  month: ['months', 1],
  years: ['months', 12],
  year: ['months', 12],
  w: ['power', 1],
  kw: ['power', 1000],
  hz: ['frequency', 1],
  khz: ['frequency', 1000],
  'cd/m²': ['luminance', 1],
  'cd/m2': ['luminance', 1],
  nit: ['luminance', 1],
  nits: ['luminance', 1],
  // 1 fL = 3.4263 cd/m² (10.7639/π)
  fl: ['luminance', 3.4263],
  '%': ['percent', 1],
  points: ['percent', 1],
  k: ['temperature', 1],
  db: ['level', 1],
  'db(a)': ['level', 1],
  gbp: ['GBP', 1],
  '£': ['GBP', 1],
  eur: ['EUR', 1],
  '€': ['EUR', 1],
  usd: ['USD', 1],
  $: ['USD', 1],
};

/**
 * Factor from one unit to another: 0.1 from mm to cm. 1 when either is unknown or not given; null when both are
 * known and differ in kind (another currency, or kilograms for millimetres).
 */
export function convertUnit(from: string | undefined, to: string | undefined): number | null {
  if (from === undefined || to === undefined) return 1;
  const [one, other] = [kindOf(from), kindOf(to)];
  if (!one || !other) return 1;
  return one[0] === other[0] ? one[1] / other[1] : null;
}

function kindOf(unit: string): readonly [kind: string, size: number] | undefined {
  // An ISO 4217 code that the table does not list is still a currency of its own.
  return units[unit.toLowerCase()] ?? (/^[A-Z]{3}$/.test(unit) ? [unit, 1] : undefined);
}
