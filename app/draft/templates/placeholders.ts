import type { JudgingBench } from '../../../shared/claims/index.ts';
import type { RunEvidence, UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { Measurement } from '../../../shared/contract/measurement.ts';
import { catalogueEntry } from '../../../shared/measure/index.ts';
import { entryOrder, supersededBy } from '../../bench/runOrder.ts';
import { measuredHref, measuredText } from '../values/measuredValues.ts';

/** Which of a unit's runs a template speaks of. */
export interface TemplateConditions {
  signal: 'SDR' | 'HDR10';
  stage: 'as-delivered' | 'adjusted';
}

export interface FilledText {
  /** With the numbers as links that follow what was measured, `…` where nothing is */
  markdown: string;
  /** The quantities that nothing, or too little, was measured for, in words */
  missing: readonly string[];
  /** The runs that the numbers are of */
  runs: readonly RunEvidence[];
}

/** An average or an extreme of fewer levels than this is no finding yet; common practice, no source. */
const fewestLevels = 5;

const placeholder = /\{([a-z0-9.]+)(?:@([a-z0-9]+))?\}/g;

/** The unit's runs under these conditions, those that stand and those of the article's own mode first. */
function fitting(
  unit: UnitEvidence,
  { signal, stage }: TemplateConditions,
  mode: string | undefined,
): RunEvidence[] {
  return entryOrder(unit.runs)
    .filter(({ conditions }) => conditions.signal === signal && conditions.stage === stage)
    .filter((run) => !supersededBy(run, unit.runs))
    .sort((a, b) => Number(b.conditions.mode === mode) - Number(a.conditions.mode === mode));
}

/** Why a number that is there should not be printed as a finding; null when it may be. */
function whyNot(
  measurement: Measurement | undefined,
  axis: string | undefined,
  printed: string,
): string | null {
  if (measurement?.state !== 'measured') return null;
  const isOverLevels = axis === 'average' || axis === 'max' || axis === 'min';
  const levels = isOverLevels
    ? measurement.values.filter(({ counts }) => counts).length
    : measurement.id.endsWith('.average')
      ? (measurement.values[0]?.rows.length ?? 0)
      : fewestLevels;
  if (levels < fewestLevels) return `only ${levels === 1 ? 'one level' : `${levels} levels`} read`;
  // A zero is what the printed digits or the instrument could not tell from nothing.
  return /^[^\d]*0[.,]?0*(?!\d)/.test(printed) ? 'reads as zero' : null;
}

/**
 * Fills `{quantity@axis}` in a template's sentence from the library: `{peak@10}`, `{grey.de2000@average}`. What was
 * not measured, or on too few levels, stays a blank `…` and is named.
 */
export function fillPlaceholders(
  text: string,
  unit: UnitEvidence,
  conditions: TemplateConditions,
  bench: Pick<JudgingBench, 'evidence' | 'measure'>,
  locale: string,
  mode?: string,
): FilledText {
  const fittingRuns = fitting(unit, conditions, mode);
  const missing: string[] = [];
  const runs = new Set<RunEvidence>();
  const markdown = text.replace(placeholder, (_whole, quantity: string, axis: string | undefined) => {
    let why: string | null = null;
    for (const run of fittingRuns) {
      const address = { unit: unit.id, run: run.id, quantity, ...(axis === undefined ? {} : { axis }) };
      const printed = measuredText(bench, address, locale);
      const measurement = bench.measure(unit, run).get(quantity);
      if (measurement?.state === 'over') why ??= 'only a lower bound is known';
      if (printed === null) continue;
      const against = whyNot(measurement, axis, printed);
      if (against === null) {
        runs.add(run);
        return `[${printed}](${measuredHref(address)})`;
      }
      why ??= against;
    }
    const entry = catalogueEntry(quantity);
    const label = entry?.label ?? quantity;
    const name =
      axis && entry?.axisUnit && /^\d/.test(axis) ? `${label} at ${axis} ${entry.axisUnit}` : label;
    missing.push(why ? `${name} (${why})` : name);
    return '…';
  });
  return { markdown, missing: [...new Set(missing)], runs: [...runs] };
}

/** `SDR, as delivered` */
export function conditionsText({ signal, stage }: TemplateConditions): string {
  return `${signal}, ${stage.replace('-', ' ')}`;
}
