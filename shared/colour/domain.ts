/**
 * The guard of this folder: a number that is not finite stops here, loudly, and never travels on as NaN.
 * Readings from outside are checked where they enter; whatever trips this guard is a programmer's mistake.
 *
 * @throws RangeError naming the argument
 */
export function requireFinite(value: number, name: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
  return value;
}

/** @throws RangeError unless `value` is finite and above zero */
export function requirePositive(value: number, name: string): number {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY))
    throw new RangeError(`${name} must be a finite number above 0, got ${value}`);
  return value;
}
