import { planckianXy } from './planckian.ts';
import { chromaticityFault, type Xy, xyToUv } from './xyz.ts';

/** Correlated colour temperature in K and signed distance from the Planckian locus in CIE 1960 u, v. */
export type CctAndDuv = { readonly cct: number; readonly duv: number };

/** Why a chromaticity has no correlated colour temperature. */
export type NoCct = { readonly undefined: string };

/** Coldest and hottest black body of the table in K. */
export const coldest = 1000;
export const hottest = 100_000;

/** CIE 15: a colour temperature means nothing farther from the locus than this. */
const farthestDuv = 0.05;

// Ratio of neighbouring temperatures. At 0.5 % the parabola through three entries leaves the locus by under 1e-8.
const step = Math.log(1.005);
const size = Math.ceil(Math.log(hottest / coldest) / step) + 1;
const stride = 32;

type Locus = { readonly u: Float64Array; readonly v: Float64Array };
let table: Locus | undefined;

/** The Planckian locus in CIE 1960 u, v at geometric steps; computed once, a few milliseconds. */
function locus(): Locus {
  if (table) return table;
  const u = new Float64Array(size);
  const v = new Float64Array(size);
  for (let i = 0; i < size; i += 1) {
    const [x, y] = planckianXy(coldest * Math.exp(i * step));
    const [uPrime, vPrime] = xyToUv(x, y);
    u[i] = uPrime;
    v[i] = vPrime / 1.5;
  }
  table = { u, v };
  return table;
}

/**
 * Correlated colour temperature and Duv (positive on the green side) of a chromaticity.
 * Method: Ohno 2014 (LEUKOS 10, 47–55): nearest entry of a Planckian table, then a parabola; here the parabola goes
 * through the locus itself and not through the distances, which needs no second solution close to the locus. Agrees
 * with the exact nearest point within 1e-5 of the temperature and 1e-7 of Duv.
 * Domain: 1000 to 100 000 K and |Duv| ≤ 0.05; outside, the reason. D65 (0.3127, 0.3290): 6504 K, Duv +0.0032.
 */
export function cctAndDuv(x: number, y: number): CctAndDuv | NoCct {
  const fault = chromaticityFault(x, y);
  if (fault) return { undefined: fault };
  const [u, vPrime] = xyToUv(x, y);
  const v = vPrime / 1.5;
  const { u: lu, v: lv } = locus();
  const middle = nearestEntry(lu, lv, u, v);

  // Locus near the entry: P(s) = (c + s·b + s²·a), s counted in steps of the table.
  const ub = (lu[middle + 1]! - lu[middle - 1]!) / 2;
  const vb = (lv[middle + 1]! - lv[middle - 1]!) / 2;
  const ua = (lu[middle + 1]! + lu[middle - 1]!) / 2 - lu[middle]!;
  const va = (lv[middle + 1]! + lv[middle - 1]!) / 2 - lv[middle]!;
  const uc = u - lu[middle]!;
  const vc = v - lv[middle]!;
  let s = 0;
  for (let round = 0; round < 3; round += 1) {
    // Newton on (point − P)·P′ = 0: the foot of the perpendicular.
    const du = uc - s * (ub + s * ua);
    const dv = vc - s * (vb + s * va);
    const tu = ub + 2 * s * ua;
    const tv = vb + 2 * s * va;
    s -= (du * tu + dv * tv) / (2 * (du * ua + dv * va) - (tu * tu + tv * tv));
  }
  const cct = coldest * Math.exp((middle + s) * step);
  if (!(cct >= coldest)) return { undefined: `colder than ${coldest} K` };
  if (!(cct <= hottest)) return { undefined: 'hotter than 100 000 K' };
  const du = uc - s * (ub + s * ua);
  const dv = vc - s * (vb + s * va);
  const distance = Math.sqrt(du * du + dv * dv);
  if (distance > farthestDuv) return { undefined: 'more than 0.05 from the Planckian locus' };
  return { cct, duv: dv < 0 ? -distance : distance };
}

/** Index of the entry nearest to (u, v), never the first or the last. */
function nearestEntry(lu: Float64Array, lv: Float64Array, u: number, v: number): number {
  const distance = (i: number) => (lu[i]! - u) ** 2 + (lv[i]! - v) ** 2;
  let best = 1;
  for (let i = 1 + stride; i < size - 1; i += stride) if (distance(i) < distance(best)) best = i;
  const last = Math.min(size - 2, best + stride);
  for (let i = Math.max(1, best - stride); i <= last; i += 1) if (distance(i) < distance(best)) best = i;
  return best;
}

/** CIE 1931 x, y at `duv` from the black body of temperature `cct`: the way back from {@link cctAndDuv}. */
export function xyOfCctAndDuv(cct: number, duv: number): Xy {
  const place = (kelvin: number) => {
    const [x, y] = planckianXy(kelvin);
    const [uPrime, vPrime] = xyToUv(x, y);
    return [uPrime, vPrime / 1.5] as const;
  };
  const [u, v] = place(cct);
  const [uHot, vHot] = place(cct * 1.0001);
  const [uCold, vCold] = place(cct / 1.0001);
  const [tu, tv] = [uCold - uHot, vCold - vHot];
  const length = Math.hypot(tu, tv);
  const [uShifted, vShifted] = [u - (duv * tv) / length, v + (duv * tu) / length];
  const denominator = 2 * uShifted - 8 * vShifted + 4;
  return [(3 * uShifted) / denominator, (2 * vShifted) / denominator];
}
