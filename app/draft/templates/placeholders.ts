import type { JudgingBench } from '../../../shared/claims/index.ts';
import type { RunEvidence, UnitEvidence } from '../../../shared/contract/evidence.ts';
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
  /** The quantities that nothing was measured for, in words */
  missing: readonly string[];
}

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

/**
 * Fills `{quantity@axis}` in a template's sentence from the library: `{peak@10}`, `{grey.de2000@average}`. What was
 * not measured stays a blank `…` and is named.
 */
export function fillPlaceholders(
  text: string,
  unit: UnitEvidence,
  conditions: TemplateConditions,
  bench: Pick<JudgingBench, 'evidence' | 'measure'>,
  locale: string,
  mode?: string,
): FilledText {
  const runs = fitting(unit, conditions, mode);
  const missing: string[] = [];
  const markdown = text.replace(placeholder, (_whole, quantity: string, axis: string | undefined) => {
    for (const run of runs) {
      const address = { unit: unit.id, run: run.id, quantity, ...(axis === undefined ? {} : { axis }) };
      const printed = measuredText(bench, address, locale);
      if (printed !== null) return `[${printed}](${measuredHref(address)})`;
    }
    const entry = catalogueEntry(quantity);
    const label = entry?.label ?? quantity;
    missing.push(
      axis && entry?.axisUnit && /^\d/.test(axis) ? `${label} at ${axis} ${entry.axisUnit}` : label,
    );
    return '…';
  });
  return { markdown, missing: [...new Set(missing)] };
}

/** `SDR, as delivered` */
export function conditionsText({ signal, stage }: TemplateConditions): string {
  return `${signal}, ${stage.replace('-', ' ')}`;
}
