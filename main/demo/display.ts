import { deltaE2000 } from '../../shared/colour/deltaE2000.ts';
import { type GamutName, gamut } from '../../shared/colour/gamuts.ts';
import { xyzToLab } from '../../shared/colour/lab.ts';
import { apply3, invert3, type Primaries, rgbToXyzMatrix } from '../../shared/colour/rgb.ts';
import { bt1886Eotf } from '../../shared/colour/transfer/bt1886.ts';
import { pqEotf } from '../../shared/colour/transfer/pq.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import { uvToXy, type Xy, type Xyz, xyToUv, xyYToXyz } from '../../shared/colour/xyz.ts';

/** Points of a curve over the stimulus in %, joined by straight lines, level beyond the ends. */
export type Curve = readonly (readonly [stimulus: number, value: number])[];

/** One picture mode of an invented set: what it makes of a signal. */
export interface Display {
  signal: 'SDR' | 'HDR10';
  /** cd/m² at 100 % signal */
  Lw: number;
  /** cd/m² at 0 % signal, dimming off */
  Lb: number;
  /** Chromaticities that the mode shows for full red, green and blue */
  primaries: Primaries;
  /** Gamut of the signal */
  gamut: GamutName;
  /** The greys' shift from D65: its hue angle in u′, v′ and, by level, its size as a colour error in ΔE2000 */
  tint: { angle: number; errors: Curve };
  /** How far the luminance is off the target EOTF, % by level */
  lift: Curve;
  /** HDR: luminance from which tones are compressed towards Lw, cd/m² */
  knee?: number;
}

/** Value of a curve at a stimulus. */
function along(curve: Curve, stimulus: number): number {
  const next = curve.findIndex(([at]) => at >= stimulus);
  if (next === -1) return curve.at(-1)?.[1] ?? 0;
  const [toAt, toValue] = curve[next]!;
  const [fromAt, fromValue] = curve[next - 1] ?? [toAt, toValue];
  return toAt === fromAt
    ? toValue
    : fromValue + ((toValue - fromValue) * (stimulus - fromAt)) / (toAt - fromAt);
}

const d65 = whiteXy('D65');
const [uWhite, vWhite] = xyToUv(...d65);

function shifted(angle: number, distance: number): Xy {
  const radians = (angle * Math.PI) / 180;
  return uvToXy(uWhite + distance * Math.cos(radians), vWhite + distance * Math.sin(radians));
}

/** Chromaticity at which a grey of relative luminance has a given colour error; found by halving. */
function chromaticityOfError(error: number, angle: number, relativeLuminance: number): Xy {
  const white = xyYToXyz(...d65, 1);
  const target = xyzToLab(xyYToXyz(...d65, relativeLuminance), white);
  // Dark greys hardly count in ΔE2000; no set leans further than this.
  let [low, high] = [0, 0.015];
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    const lab = xyzToLab(xyYToXyz(...shifted(angle, middle), relativeLuminance), white);
    if (deltaE2000(lab, target) < error) low = middle;
    else high = middle;
  }
  return shifted(angle, (low + high) / 2);
}

function compressed(Y: number, { Lw, knee = Lw }: Display): number {
  if (Y <= knee) return Y;
  return knee + (Lw - knee) * (1 - Math.exp(-(Y - knee) / (Lw - knee)));
}

/** Luminance that a display gives to a grey, cd/m². */
function greyLuminance(display: Display, stimulus: number): number {
  const { signal, Lw, Lb, lift } = display;
  const factor = 1 + along(lift, stimulus) / 100;
  if (signal === 'SDR') return stimulus === 0 ? Lb : bt1886Eotf(stimulus / 100, Lw, Lb) * factor;
  return Math.max(Lb, compressed(pqEotf(stimulus / 100) * factor, display));
}

/** Chromaticity that a display gives to a grey. */
export function greyChromaticity(display: Display, stimulus: number): Xy {
  if (stimulus < 1) return shifted(display.tint.angle, 0.006);
  const relative = greyLuminance(display, stimulus) / display.Lw;
  return chromaticityOfError(along(display.tint.errors, stimulus), display.tint.angle, relative);
}

/** Absolute XYZ of a grey. */
export function showGrey(display: Display, stimulus: number): Xyz {
  return xyYToXyz(...greyChromaticity(display, stimulus), greyLuminance(display, stimulus));
}

/**
 * Absolute XYZ of a colour whose signal is R′, G′, B′ in %. In SDR each channel is a 2.4 power (the invented sets
 * lift black for greys only), in HDR the grey's curve; black is added, and white carries the tint of the strongest
 * channel's level.
 */
export function showColour(display: Display, signal: readonly [number, number, number]): Xyz {
  const strongest = Math.max(...signal);
  const matrix = rgbToXyzMatrix(display.primaries, greyChromaticity(display, Math.max(strongest, 5)));
  const { Lw, Lb } = display;
  const light = signal.map((level) =>
    display.signal === 'SDR' ? (Lw - Lb) * (level / 100) ** 2.4 : greyLuminance(display, level) - Lb,
  );
  const XYZ = apply3(matrix, [light[0]!, light[1]!, light[2]!]);
  const black = xyYToXyz(...greyChromaticity(display, 0), display.Lb);
  return [XYZ[0] + black[0], XYZ[1] + black[1], XYZ[2] + black[2]];
}

/** Linear amounts of a gamut's primaries, the greatest 1, that give a chromaticity. */
export function amountsOf(name: GamutName, [x, y]: Xy): [number, number, number] {
  const toXyz = rgbToXyzMatrix(gamut(name).primaries, d65);
  const amounts = apply3(invert3(toXyz), xyYToXyz(x, y, 1));
  const greatest = Math.max(...amounts);
  return [
    Math.max(0, amounts[0] / greatest),
    Math.max(0, amounts[1] / greatest),
    Math.max(0, amounts[2] / greatest),
  ];
}
