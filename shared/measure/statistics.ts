/** Unweighted mean of the values that count; undefined when none does. */
export function meanOfCounting(values: Float64Array, counts: readonly boolean[]): number | undefined {
  let sum = 0;
  let n = 0;
  for (let i = 0; i < counts.length; i += 1) {
    if (!counts[i]) continue;
    sum += values[i]!;
    n += 1;
  }
  return n === 0 ? undefined : sum / n;
}

/** Indices of the greatest and the smallest value that counts; the first of equals. Precondition: one counts. */
export function extremesOf(values: Float64Array, counts: readonly boolean[]): { max: number; min: number } {
  let max = -1;
  let min = -1;
  for (let i = 0; i < counts.length; i += 1) {
    if (!counts[i]) continue;
    if (max < 0 || values[i]! > values[max]!) max = i;
    if (min < 0 || values[i]! < values[min]!) min = i;
  }
  return { max, min };
}
