import { deltaE2000Loop } from './deltaE2000Kernel.ts';
import { chroma, hueAngle, hueDifference, type Lab } from './lab.ts';

/**
 * CIEDE2000 colour difference with kL = kC = kH = 1. Symmetric, 0 for equal colours.
 * Source: ISO/CIE 11664-6, from memory; all 34 pairs of Sharma, Wu and Dalal 2005, Table 1.
 * Example: (50, 2.6772, −79.7751) and (50, 0, −82.7485) differ by 2.0425.
 * Precondition: finite coordinates (a NaN comes out as NaN).
 */
export function deltaE2000(one: Lab, other: Lab): number {
  L1[0] = one[0];
  a1[0] = one[1];
  b1[0] = one[2];
  L2[0] = other[0];
  a2[0] = other[1];
  b2[0] = other[2];
  deltaE2000Loop(L1, a1, b1, L2, a2, b2, result);
  return result[0]!;
}

// The one pair that the single form hands to the loop; nothing is kept between calls.
const [L1, a1, b1, L2, a2, b2, result] = Array.from({ length: 7 }, () => new Float64Array(1)) as [
  ...Parameters<typeof deltaE2000Loop>,
];

/**
 * {@link deltaE2000} of many pairs into `out`, whose length says how many; returns `out`.
 * @throws RangeError when an input is shorter than `out`
 */
export function deltaE2000Array(
  L1: Float64Array,
  a1: Float64Array,
  b1: Float64Array,
  L2: Float64Array,
  a2: Float64Array,
  b2: Float64Array,
  out: Float64Array,
): Float64Array {
  for (const input of [L1, a1, b1, L2, a2, b2])
    if (input.length < out.length) throw new RangeError('an input is shorter than the output');
  deltaE2000Loop(L1, a1, b1, L2, a2, b2, out);
  return out;
}

/** The parts that CIEDE2000 is made of. */
export type DeltaE2000Parts = {
  /** ΔL′, ΔC′, ΔH′ of `other` minus `one`: signed, before weighting. */
  readonly deltaL: number;
  readonly deltaC: number;
  readonly deltaH: number;
  /** Weights S_L, S_C, S_H that the three are divided by. */
  readonly SL: number;
  readonly SC: number;
  readonly SH: number;
  /** Rotation term R_T of the blue region. */
  readonly RT: number;
};

const radians = Math.PI / 180;

/**
 * ΔL′, ΔC′, ΔH′ with their weights: which of lightness, chroma and hue makes a difference large.
 * ΔE00 = √((ΔL′/SL)² + (ΔC′/SC)² + (ΔH′/SH)² + RT·(ΔC′/SC)·(ΔH′/SH)).
 * Written as the standard prints it, with angles, so that it also checks the fast form.
 */
export function deltaE2000Parts(one: Lab, other: Lab): DeltaE2000Parts {
  const meanLab = (chroma(one) + chroma(other)) / 2;
  const stretch = 1.5 - 0.5 * Math.sqrt(meanLab ** 7 / (meanLab ** 7 + 25 ** 7));
  const first: Lab = [one[0], one[1] * stretch, one[2]];
  const second: Lab = [other[0], other[1] * stretch, other[2]];
  const [C1, C2] = [chroma(first), chroma(second)];
  const [h1, h2] = [hueAngle(first), hueAngle(second)];
  const neutral = C1 * C2 === 0;
  // Exactly opposite hues are not taken the other way round: |h2′ − h1′| ≤ 180° stays as it is.
  const opposite = Math.abs(h2 - h1) === 180;
  const deltaHue = neutral ? 0 : opposite ? h2 - h1 : hueDifference(h1, h2);
  const meanHue = neutral ? h1 + h2 : (h1 + deltaHue / 2 + 360) % 360;
  const meanC = (C1 + C2) / 2;
  const meanL = (one[0] + other[0]) / 2;
  const cosine = (times: number, offset: number) => Math.cos((times * meanHue + offset) * radians);
  const T = 1 - 0.17 * cosine(1, -30) + 0.24 * cosine(2, 0) + 0.32 * cosine(3, 6) - 0.2 * cosine(4, -63);
  const fromBlue = (meanHue - 275) / 25;
  const RC = 2 * Math.sqrt(meanC ** 7 / (meanC ** 7 + 25 ** 7));
  return {
    deltaL: other[0] - one[0],
    deltaC: C2 - C1,
    deltaH: 2 * Math.sqrt(C1 * C2) * Math.sin((deltaHue / 2) * radians),
    SL: 1 + (0.015 * (meanL - 50) ** 2) / Math.sqrt(20 + (meanL - 50) ** 2),
    SC: 1 + 0.045 * meanC,
    SH: 1 + 0.015 * meanC * T,
    RT: -Math.sin(60 * Math.exp(-(fromBlue ** 2)) * radians) * RC,
  };
}
