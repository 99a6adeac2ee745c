import type { House } from '../../../shared/contract/house.ts';
import type { Figure, Subject } from '../figure.ts';
import { angleError, angleLuminance } from './angle.ts';
import { chartPatches, gamutReach, saturationSweep, sweepError } from './colour.ts';
import { channelBalance, greyscaleError } from './greyscale.ts';
import { layOver } from './layOver.ts';
import { peakByWindow, peakOverTime, uniformityMap } from './luminance.ts';
import { eotfError, gammaByLevel } from './tone.ts';

type Builder = (subjects: readonly Subject[], limits: House['limits']) => Figure | null;

/** Plots of several lines or marks for one run: a second run is laid over the finished figure. */
const eachAlone =
  (build: Builder): Builder =>
  (subjects, limits) => {
    const [first, second] = subjects;
    const lead = first ? build([first], limits) : null;
    const other = second ? build([second], limits) : null;
    return lead && other ? layOver(lead, other, { lead: first!.label, other: second!.label }) : lead;
  };

/** Every plot, in the order in which a run's paragraph shows them; one question each. */
const builders: readonly Builder[] = [
  greyscaleError,
  eachAlone(channelBalance),
  eotfError,
  gammaByLevel,
  (subjects) => gamutReach(subjects, 'uv'),
  (subjects) => gamutReach(subjects, 'xy'),
  eachAlone(saturationSweep),
  eachAlone(sweepError),
  eachAlone(chartPatches),
  peakByWindow,
  eachAlone(peakOverTime),
  eachAlone((subjects) => uniformityMap(subjects, 'white')),
  eachAlone((subjects) => uniformityMap(subjects, 'grey50')),
  eachAlone((subjects) => uniformityMap(subjects, 'black')),
  angleLuminance,
  angleError,
];

/** The plots that the readings allow. The first subject leads; a second is laid over it where that can be read. */
export function figuresOf(subjects: readonly Subject[], limits: House['limits']): Figure[] {
  return builders.flatMap((build) => build(subjects, limits) ?? []);
}
