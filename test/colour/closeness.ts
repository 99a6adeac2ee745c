import { expect } from 'vitest';

/** Every number of `found` within `tolerance` of its partner, with the place in the message. */
export function expectClose(found: readonly number[], expected: readonly number[], tolerance: number): void {
  expect(found).toHaveLength(expected.length);
  expected.forEach((value, place) => {
    expect(
      Math.abs(found[place]! - value),
      `number ${place}: ${found[place]} for ${value}`,
    ).toBeLessThanOrEqual(tolerance);
  });
}

/** Within a fraction of the expected value, for quantities over many decades. */
export function expectRelative(found: number, expected: number, fraction: number): void {
  expect(Math.abs(found - expected), `${found} for ${expected}`).toBeLessThanOrEqual(
    fraction * Math.abs(expected),
  );
}
