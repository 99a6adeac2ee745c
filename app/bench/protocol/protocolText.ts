import { listText } from '../../plots/numberText.ts';
import type { StepStanding } from './protocolState.ts';

/** "1 step is missing and 3 are out of date before a verdict is fair." */
export function openSentence(standings: readonly StepStanding[]): string {
  const count = (state: StepStanding['state']) => standings.filter((each) => each.state === state).length;
  const [missing, outOfDate] = [count('missing'), count('out of date')];
  if (missing === standings.length) return `None of the ${standings.length} steps is taken yet.`;
  const parts = [
    ...(missing > 0 ? [[missing, 'missing'] as const] : []),
    ...(outOfDate > 0 ? [[outOfDate, 'out of date'] as const] : []),
  ].map(([number, word], index) => {
    const of = index === 0 ? ` of ${standings.length} steps` : '';
    return `${number}${of} ${number === 1 ? 'is' : 'are'} ${word}`;
  });
  return parts.length === 0
    ? 'Everything that a fair verdict needs is here.'
    : `${listText(parts)}; until then a verdict is not fair.`;
}

/** What is known of the set's warm-up before its runs; the protocol's own wish while there is no run. */
export function warmUpSentence(runs: number, minutes: number, cold: number): string {
  if (minutes === 0) return '';
  if (runs === 0) return `Let the set run for ${minutes} minutes before the first reading.`;
  if (cold === 0) return `The set was warm, ${minutes} minutes or more, before every run.`;
  return `Before ${cold} of ${runs} runs the set was on for less than ${minutes} minutes, or nobody noted it.`;
}
