import { apply3 } from '../colour/rgb.ts';
import { hlgInverseOetf, hlgSystemGamma } from '../colour/transfer/hlg.ts';
import { uvToXy, type Xy, xyToUv } from '../colour/xyz.ts';
import type { ResolvedConditions, TargetColours } from './conditions.ts';
import { targetLuminance } from './targetLuminance.ts';

/** What a pattern should look like: a chromaticity, and a luminance that may hang on the set's white Yw. */
export interface ColourTarget {
  x: number;
  y: number;
  /** False where the luminance is absolute (PQ) and no white is needed */
  needsWhite: boolean;
  /** Luminance in cd/m² for a white of Yw */
  luminance(Yw: number): number;
}

type Triple = readonly [number, number, number];
export type SaturationHue = 'red' | 'green' | 'blue' | 'cyan' | 'magenta' | 'yellow';

const channelsOf: Record<SaturationHue, Triple> = {
  red: [1, 0, 0],
  green: [0, 1, 0],
  blue: [0, 0, 1],
  cyan: [0, 1, 1],
  magenta: [1, 0, 1],
  yellow: [1, 1, 0],
};

/**
 * Linear light of one channel by the target EOTF with black 0 and white 1: cd/m² for PQ, scene light for HLG (its
 * EOTF acts on the three channels together and is completed in `targetOfLinear`).
 */
function linearOf(conditions: ResolvedConditions, percent: number): number {
  const V = Math.max(percent, 0) / 100;
  return conditions.eotf.kind === 'HLG' ? hlgInverseOetf(V) : targetLuminance(conditions.eotf, V, 1, 0);
}

/** Target of linear R, G, B; undefined for black, which has no chromaticity. */
function targetOfLinear(
  conditions: ResolvedConditions,
  colours: TargetColours,
  linear: Triple,
): ColourTarget | undefined {
  const [X, Y, Z] = apply3(colours.toXyz, linear);
  if (!(Y > 0)) return undefined;
  const sum = X + Y + Z;
  const place = { x: X / sum, y: Y / sum };
  switch (conditions.eotf.kind) {
    case 'PQ':
      return { ...place, needsWhite: false, luminance: () => Y };
    case 'HLG':
      // BT.2100 OOTF: each channel is multiplied by Ys^(γ − 1), the luminance becomes Ys^γ.
      return { ...place, needsWhite: true, luminance: (Yw) => Yw * Y ** hlgSystemGamma(Yw) };
    default:
      return { ...place, needsWhite: true, luminance: (Yw) => Yw * Y };
  }
}

/** The target that a sent signal (R′, G′, B′ in % of range) defines. */
export function targetOfSignal(
  conditions: ResolvedConditions,
  colours: TargetColours,
  signal: Triple,
): ColourTarget | undefined {
  const [r, g, b] = signal;
  return targetOfLinear(conditions, colours, [
    linearOf(conditions, r),
    linearOf(conditions, g),
    linearOf(conditions, b),
  ]);
}

/** The target of a saturation step by the run's law, at an amplitude of `stimulus` %. */
export function targetOfSaturation(
  conditions: ResolvedConditions,
  colours: TargetColours,
  hue: SaturationHue,
  saturation: number,
  stimulus: number,
): ColourTarget | undefined {
  const channels = channelsOf[hue];
  const s = saturation / 100;
  if (conditions.saturationLaw === 'signal') {
    const channel = (full: number) => stimulus * (full === 1 ? 1 : 1 - s);
    return targetOfSignal(conditions, colours, [
      channel(channels[0]),
      channel(channels[1]),
      channel(channels[2]),
    ]);
  }
  const [X, Y, Z] = apply3(colours.toXyz, channels);
  const full: Xy = [X / (X + Y + Z), Y / (X + Y + Z)];
  const [x, y] =
    conditions.saturationLaw === 'xy' ? between(colours.white, full, s) : betweenUv(colours.white, full, s);
  const c = apply3(colours.toRgb, [x / y, 1, (1 - x - y) / y]);
  const gain = linearOf(conditions, stimulus) / Math.max(...c);
  return targetOfLinear(conditions, colours, [c[0] * gain, c[1] * gain, c[2] * gain]);
}

function between(from: readonly [number, number], to: readonly [number, number], share: number): Xy {
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

function betweenUv(from: Xy, to: Xy, share: number): Xy {
  return uvToXy(...between(xyToUv(...from), xyToUv(...to), share));
}
