import { bt1886Eotf } from '../colour/transfer/bt1886.ts';
import { hlgEotf } from '../colour/transfer/hlg.ts';
import { pqEotf } from '../colour/transfer/pq.ts';
import { srgbEotf } from '../colour/transfer/srgb.ts';
import type { TargetEotf } from './conditions.ts';

/**
 * Luminance in cd/m² that the target EOTF gives at signal V (0 to 1) on a set of white Lw and black Lb.
 * BT.1886 Annex 1; PQ absolute (ST 2084), Lw and Lb unused; HLG by BT.2100 with Lw measured; sRGB and power laws
 * as Lw·E(V), black unused. A black drawn below 0 counts as 0.
 * A black drawn to white or above is held just under it, a white drawn to 0 or below just over 0.
 */
export function targetLuminance(eotf: TargetEotf, V: number, white: number, Lb: number): number {
  const Lw = Math.max(white, leastWhite);
  switch (eotf.kind) {
    case 'PQ':
      return pqEotf(Math.min(V, 1.1));
    case 'BT.1886':
      return bt1886Eotf(V, Lw, possibleBlack(Lw, Lb));
    case 'HLG':
      return hlgEotf(V, Lw, possibleBlack(Lw, Lb));
    case 'sRGB':
      return Lw * Math.max(srgbEotf(V), 0);
    case 'power':
      return Lw * Math.max(V, 0) ** eotf.gamma;
  }
}

const leastWhite = 1e-9;

function possibleBlack(Lw: number, Lb: number): number {
  return Math.min(Math.max(Lb, 0), 0.999 * Lw);
}

/** True for curves that are anchored at the set's own white. */
export function needsWhite(eotf: TargetEotf): boolean {
  return eotf.kind !== 'PQ';
}

/** True for curves that take the set's black into account. */
export function needsBlack(eotf: TargetEotf): boolean {
  return eotf.kind === 'BT.1886' || eotf.kind === 'HLG';
}
