/** A note of one column, in its order. */
export interface Note {
  /** Where its top would be if it stood alone, px from the column's top */
  ideal: number;
  /** px */
  height: number;
  /** Least space to the next note, px */
  gap: number;
  /** How much more its distance counts than another's; above 0 */
  weight: number;
}

/**
 * Tops of notes in one column, px: none overlaps the next, their order stays, none begins above 0, and the sum of
 * weighted squared distances from their ideals is the least there is. A pinned note stands at its ideal exactly and
 * the others give way, up and down; only where all above it do not fit over it does it move down.
 *
 * In shifted coordinates (top less all heights and gaps above) "no overlap" is "never decreasing": weighted isotonic
 * regression, solved in one pass by pooling adjacent violators (Ayer et al. 1955, from memory). Bounds at both ends
 * and a pin are met by clamping, which keeps an isotonic optimum (Robertson, Wright and Dykstra 1988, from memory).
 */
export function stackNotes(notes: readonly Note[], pin = -1): number[] {
  const above: number[] = [];
  let sum = 0;
  for (const { height, gap } of notes) {
    above.push(sum);
    sum += height + gap;
  }
  const wishes = notes.map(({ ideal, weight }, index) => ({ value: ideal - above[index]!, weight }));
  let shifted: number[];
  if (pin < 0) shifted = pool(wishes);
  else {
    const held = Math.max(wishes[pin]!.value, 0);
    shifted = [
      ...pool(wishes.slice(0, pin)).map((value) => Math.min(value, held)),
      held,
      ...pool(wishes.slice(pin + 1)).map((value) => Math.max(value, held)),
    ];
  }
  return shifted.map((value, index) => Math.max(value, 0) + above[index]!);
}

interface Wish {
  value: number;
  weight: number;
}

/** The never decreasing sequence nearest to the wishes, by weighted squares. */
function pool(wishes: readonly Wish[]): number[] {
  const pools: { sum: number; weight: number; count: number }[] = [];
  for (const { value, weight } of wishes) {
    let last = { sum: value * weight, weight, count: 1 };
    while (pools.length > 0 && pools.at(-1)!.sum / pools.at(-1)!.weight > last.sum / last.weight) {
      const before = pools.pop()!;
      last = {
        sum: before.sum + last.sum,
        weight: before.weight + last.weight,
        count: before.count + last.count,
      };
    }
    pools.push(last);
  }
  return pools.flatMap(({ sum, weight, count }) => Array.from({ length: count }, () => sum / weight));
}
