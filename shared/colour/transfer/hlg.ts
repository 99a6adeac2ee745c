import { requireFinite, requirePositive } from '../domain.ts';

// Rec. ITU-R BT.2100-2 Table 5; b and c follow from a, as the table defines them.
const a = 0.17883277;
const b = 1 - 4 * a;
const c = 0.5 - a * Math.log(4 * a);

// Luminance weights of BT.2020 red, green and blue, rounded as BT.2100 Table 5 rounds them.
const weights = [0.2627, 0.678, 0.0593] as const;

/**
 * HLG OETF: scene light (0 to 1) to signal (0 to 1). Monotone; light below 0 gives 0.
 * @throws RangeError for light that is not finite
 */
export function hlgOetf(scene: number): number {
  if (requireFinite(scene, 'scene light') <= 0) return 0;
  return scene <= 1 / 12 ? Math.sqrt(3 * scene) : a * Math.log(12 * scene - b) + c;
}

/**
 * Inverse HLG OETF: signal (0 to 1) to scene light (0 to 1). Monotone; signals below 0 give 0, codes above nominal
 * peak go on along the curve.
 * @throws RangeError for a signal that is not finite
 */
export function hlgInverseOetf(signal: number): number {
  if (requireFinite(signal, 'signal') <= 0) return 0;
  return signal <= 0.5 ? signal ** 2 / 3 : (Math.exp((signal - c) / a) + b) / 12;
}

/**
 * System gamma for nominal peak luminance Lw in cd/m²: 1.2 + 0.42·log10(Lw/1000) from 400 to 2000 cd/m²
 * (BT.2100-2 Table 5 note 5f), outside 1.2 · 1.111^log2(Lw/1000) (Report BT.2390, extended model; seen).
 * The two differ by 0.011 at 400 and 0.007 at 2000 cd/m²: the published rule has that step.
 * @throws RangeError unless Lw is finite and above 0
 */
export function hlgSystemGamma(Lw: number): number {
  requirePositive(Lw, 'Lw');
  return Lw >= 400 && Lw <= 2000 ? 1.2 + 0.42 * Math.log10(Lw / 1000) : 1.2 * 1.111 ** Math.log2(Lw / 1000);
}

/**
 * HLG OOTF of one colour: linear scene R, G, B (0 to 1) to displayed R, G, B in cd/m² with
 * F = Lw · Ys^(γ − 1) · E (BT.2100-2 Table 5). Scene light of luminance 0 or less gives black.
 */
export function hlgOotf(
  scene: readonly [number, number, number],
  Lw: number,
  gamma = hlgSystemGamma(Lw),
): [number, number, number] {
  const luminance = weights[0] * scene[0] + weights[1] * scene[1] + weights[2] * scene[2];
  if (requireFinite(luminance, 'scene luminance') <= 0) return [0, 0, 0];
  const gain = Lw * luminance ** (gamma - 1);
  return [gain * scene[0], gain * scene[1], gain * scene[2]];
}

/**
 * Black lift β = √(3·(Lb/Lw)^(1/γ)) that puts signal 0 at luminance Lb (BT.2100-2 Table 5).
 * @throws RangeError unless 0 ≤ Lb < Lw
 */
export function hlgBlackLift(Lw: number, Lb: number, gamma = hlgSystemGamma(Lw)): number {
  if (!(Lb >= 0 && Lb < Lw)) throw new RangeError(`black ${Lb} must lie from 0 to below white ${Lw}`);
  return Math.sqrt(3 * (Lb / Lw) ** (1 / gamma));
}

/** Scene light 0 to 1 that an HLG display of black lift `beta` takes a signal for. */
export function hlgDisplayScene(signal: number, beta: number): number {
  return hlgInverseOetf(Math.max(0, (1 - beta) * requireFinite(signal, 'signal') + beta));
}

/**
 * HLG EOTF of a neutral signal (R = G = B, 0 to 1): displayed luminance in cd/m² on a set of peak Lw and black Lb.
 * Source: BT.2100-2 Table 5.
 * @throws RangeError unless 0 ≤ Lb < Lw and the signal is finite
 */
export function hlgEotf(signal: number, Lw: number, Lb = 0, gamma = hlgSystemGamma(Lw)): number {
  return Lw * hlgDisplayScene(signal, hlgBlackLift(Lw, Lb, gamma)) ** gamma;
}

/** Signal that {@link hlgEotf} shows at `luminance`: its inverse from Lb upwards; lower luminance gives 0. */
export function hlgInverseEotf(luminance: number, Lw: number, Lb = 0, gamma = hlgSystemGamma(Lw)): number {
  const beta = hlgBlackLift(Lw, Lb, gamma);
  const scene = (Math.max(0, requireFinite(luminance, 'luminance')) / Lw) ** (1 / gamma);
  return Math.max(0, (hlgOetf(scene) - beta) / (1 - beta));
}
