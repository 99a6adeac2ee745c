import type { House } from '../../../shared/contract/house.ts';
import type { Figure, Subject } from '../figure.ts';
import { angleError, angleLuminance } from './angle.ts';
import { chartPatches, gamutReach, saturationSweep, sweepError } from './colour.ts';
import { channelBalance, greyscaleError } from './greyscale.ts';
import { bothFindings, layOver } from './layOver.ts';
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
    if (lead && second && !other) return without(lead, second);
    return lead && other ? layOver(lead, other, { lead: first!.label, other: second!.label }) : lead;
  };

/** Plots that draw both runs themselves: the second run's finding joins the first's in the title. */
const together =
  (build: Builder): Builder =>
  (subjects, limits) => {
    const [first, second] = subjects;
    const lead = first ? build([first], limits) : null;
    if (!lead || !second) return lead;
    const other = build([second], limits);
    if (!other) return without(lead, second);
    const both = build(subjects, limits);
    return both && { ...both, title: bothFindings(lead, other, second.label) };
  };

/** What the run laid over has no readings for says so, or the plot would seem to hold both. */
function without(lead: Figure, second: Subject): Figure {
  return { ...lead, note: `${lead.note}; ${second.label} has no such readings` };
}

/** Every plot, in the order in which a run's paragraph shows them; one question each. */
const builders: readonly Builder[] = [
  greyscaleError,
  eachAlone(channelBalance),
  together(eotfError),
  together(gammaByLevel),
  together((subjects) => gamutReach(subjects, 'uv')),
  together((subjects) => gamutReach(subjects, 'xy')),
  eachAlone(saturationSweep),
  eachAlone(sweepError),
  eachAlone(chartPatches),
  together(peakByWindow),
  eachAlone(peakOverTime),
  eachAlone((subjects) => uniformityMap(subjects, 'white')),
  eachAlone((subjects) => uniformityMap(subjects, 'grey50')),
  eachAlone((subjects) => uniformityMap(subjects, 'black')),
  together(angleLuminance),
  together(angleError),
];

/** The plots that the readings allow. The first subject leads; a second is laid over it where that can be read. */
export function figuresOf(subjects: readonly Subject[], limits: House['limits']): Figure[] {
  return builders.flatMap((build) => build(subjects, limits) ?? []);
}
