import type { QuantityDraws } from '../../contract/measurement.ts';

/** What was worked out of the same draws before, by a name that says how. */
type Known<T> = WeakMap<QuantityDraws, Map<string, T>>;

/** Results kept for one quantity's draws; a column is 16 kB. */
const kept = 24;

function remembered<T>(known: Known<T>, draws: QuantityDraws, key: string, make: () => T): T {
  let byKey = known.get(draws);
  if (!byKey) {
    byKey = new Map();
    known.set(draws, byKey);
  }
  let result = byKey.get(key);
  if (result === undefined) {
    result = make();
    if (byKey.size >= kept) byKey.clear();
    byKey.set(key, result);
  }
  return result;
}

const columns: Known<Float64Array> = new WeakMap();
const numbers: Known<number> = new WeakMap();

/**
 * One number in every draw. Made once for the draws and the key, as many sentences speak of the same statistic.
 * @param key says what `read` reads, fully
 */
export function drawnColumn(draws: QuantityDraws, key: string, read: (draw: number) => number): Float64Array {
  return remembered(columns, draws, key, () => {
    const column = new Float64Array(draws.count);
    for (let draw = 0; draw < column.length; draw++) column[draw] = read(draw);
    return column;
  });
}

/** A number that rests on all draws together, made once for the draws and the key. */
export function drawnNumber(draws: QuantityDraws, key: string, make: () => number): number {
  return remembered(numbers, draws, key, make);
}
