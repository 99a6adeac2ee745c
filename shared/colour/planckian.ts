import { cie1931, firstWavelengthNm } from './cie1931.ts';
import { requireFinite } from './domain.ts';
import type { Xy } from './xyz.ts';

/** Second radiation constant in nm·K: 1.4388e-2 m·K of the temperature scale ITS-90, as CIE 15 takes it. */
const c2 = 1.4388e7;

/**
 * Chromaticity of a black body at `kelvin`, from Planck's law and the CIE 1931 functions at 1 nm.
 * @throws RangeError for a temperature that is not finite or below 100 K, where the visible power is lost in rounding
 */
export function planckianXy(kelvin: number): Xy {
  if (requireFinite(kelvin, 'temperature') < 100)
    throw new RangeError(`a black body of ${kelvin} K shows no colour`);
  const { xBar, yBar, zBar } = cie1931;
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let i = 0; i < yBar.length; i += 1) {
    const wavelength = firstWavelengthNm + i;
    const power = wavelength ** -5 / Math.expm1(c2 / (wavelength * kelvin));
    X += xBar[i]! * power;
    Y += yBar[i]! * power;
    Z += zBar[i]! * power;
  }
  const sum = X + Y + Z;
  return [X / sum, Y / sum];
}

/**
 * Chromaticity of CIE daylight of nominal temperature `kelvin`. Source: CIE 15:2004, Judd, MacAdam and Wyszecki
 * 1964; numbers checked.
 * @throws RangeError outside 4000 to 25 000 K, where the polynomial is not defined
 */
export function daylightXy(kelvin: number): Xy {
  if (!(kelvin >= 4000 && kelvin <= 25000))
    throw new RangeError(`daylight is defined from 4000 to 25 000 K, not at ${kelvin}`);
  const t = 1000 / kelvin;
  const x =
    kelvin <= 7000
      ? ((-4.607 * t + 2.9678) * t + 0.09911) * t + 0.244063
      : ((-2.0064 * t + 1.9018) * t + 0.24748) * t + 0.23704;
  return [x, (-3 * x + 2.87) * x - 0.275];
}
