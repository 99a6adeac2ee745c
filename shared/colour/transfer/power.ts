import { requireFinite, requirePositive } from '../domain.ts';

/**
 * Pure power law: signal (0 to 1) to luminance Lw·V^γ in cd/m². Monotone; signals below 0 give 0.
 * @throws RangeError unless γ and Lw are finite and above 0
 */
export function powerEotf(signal: number, gamma: number, Lw: number): number {
  return (
    requirePositive(Lw, 'Lw') * Math.max(requireFinite(signal, 'signal'), 0) ** requirePositive(gamma, 'γ')
  );
}

/** Inverse of {@link powerEotf}; luminance below 0 is taken as 0. */
export function powerInverseEotf(luminance: number, gamma: number, Lw: number): number {
  const relative = Math.max(requireFinite(luminance, 'luminance'), 0) / requirePositive(Lw, 'Lw');
  return relative ** (1 / requirePositive(gamma, 'γ'));
}
