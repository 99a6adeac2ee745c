import type { Lab } from './lab.ts';

/**
 * CIE 1976 ΔE*ab: the plain distance in L*a*b*. Symmetric. Source: ISO/CIE 11664-4, from memory.
 * Precondition: finite coordinates (a NaN comes out as NaN).
 */
export function deltaE76(one: Lab, other: Lab): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}
