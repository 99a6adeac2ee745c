import type { House } from '../../../shared/contract/house.ts';
import type { Figure, Subject } from '../figure.ts';
import { angleError, angleLuminance } from './angle.ts';
import { chartPatches, gamutReach, saturationSweep, sweepError } from './colour.ts';
import { channelBalance, greyscaleError } from './greyscale.ts';
import { peakByWindow, peakOverTime, uniformityMap } from './luminance.ts';
import { eotfError, gammaByLevel } from './tone.ts';

type Builder = (subjects: readonly Subject[], limits: House['limits']) => Figure | null;

/** Every plot, in the order in which a run's paragraph shows them; one question each. */
const builders: readonly Builder[] = [
  greyscaleError,
  channelBalance,
  eotfError,
  gammaByLevel,
  (subjects) => gamutReach(subjects, 'uv'),
  (subjects) => gamutReach(subjects, 'xy'),
  saturationSweep,
  sweepError,
  chartPatches,
  peakByWindow,
  peakOverTime,
  (subjects) => uniformityMap(subjects, 'white'),
  (subjects) => uniformityMap(subjects, 'grey50'),
  (subjects) => uniformityMap(subjects, 'black'),
  angleLuminance,
  angleError,
];

/** The plots that the readings allow. The first subject leads; a second is laid over it where that can be read. */
export function figuresOf(subjects: readonly Subject[], limits: House['limits']): Figure[] {
  return builders.flatMap((build) => build(subjects, limits) ?? []);
}
