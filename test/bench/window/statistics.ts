/** The p-quantile by nearest rank (ISO 3534-1 leaves the kind open; this one is always a value that was seen). */
export function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(p * sorted.length) - 1)] ?? Number.NaN;
}

export const median = (values: readonly number[]) => quantile(values, 0.5);
