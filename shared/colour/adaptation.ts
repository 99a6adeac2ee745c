import { apply3, invert3, type Matrix3, multiply3 } from './rgb.ts';
import type { Xyz } from './xyz.ts';

/**
 * Cone-like responses in which whites are scaled.
 * Sources: Bradford, Lam 1985 as used in ICC.1 Annex E; CAT16, Li et al. 2017. Both from memory, cross-checked
 * with two open colour libraries.
 */
const responses = {
  bradford: [
    [0.8951, 0.2664, -0.1614],
    [-0.7502, 1.7135, 0.0367],
    [0.0389, -0.0685, 1.0296],
  ],
  cat16: [
    [0.401288, 0.650173, -0.051461],
    [-0.250268, 1.204414, 0.045854],
    [-0.002079, 0.048952, 0.953127],
  ],
} as const satisfies Record<string, Matrix3>;

export type AdaptationMethod = keyof typeof responses;

/**
 * Matrix that takes colours seen under white `from` to the corresponding colours under white `to` (complete
 * von Kries adaptation). Whites as X, Y, Z on one scale, usually with Y = 1.
 * Adaptation makes targets; it is never applied to readings.
 * @throws RangeError when a white has no positive response in one of the three channels
 */
export function adaptationMatrix(from: Xyz, to: Xyz, method: AdaptationMethod = 'bradford'): Matrix3 {
  const toResponse = responses[method];
  const source = apply3(toResponse, from);
  const destination = apply3(toResponse, to);
  const gain = source.map((value, channel) => {
    const ratio = destination[channel]! / value;
    if (!(ratio > 0 && Number.isFinite(ratio)))
      throw new RangeError('a white lies outside the range of the adaptation transform');
    return ratio;
  });
  const scaling: Matrix3 = [
    [gain[0]!, 0, 0],
    [0, gain[1]!, 0],
    [0, 0, gain[2]!],
  ];
  return multiply3(invert3(toResponse), multiply3(scaling, toResponse));
}
