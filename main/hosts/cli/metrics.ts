import { formatWithUncertainty } from '../../../shared/article/formatNumber.ts';
import { createMeasurer } from '../../../shared/certainty/index.ts';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { Estimate, Measurement } from '../../../shared/contract/measurement.ts';
import { catalogueEntry } from '../../../shared/measure/index.ts';
import { type Command, report, required } from './command.ts';
import { readEvidenceSource } from './evidenceSource.ts';
import { metricsReport } from './metricsReport.ts';

export const metricsCommand: Command = {
  name: 'metrics',
  usage: 'metrics DOSSIER|LIBRARY --unit U [--json]',
  summary: 'Prints every quantity of every run of a unit with its uncertainty.',
  optionHelp: { '--unit U': 'the unit’s id', '--json': 'as JSON, with standard uncertainty u' },
  options: { unit: { type: 'string' }, json: { type: 'boolean' } },
  positionals: 1,
  async run(input, terminal) {
    const id = required(input, 'unit', terminal);
    if (id === undefined) return 2;
    const source = await readEvidenceSource(input.positionals[0]!);
    if (!source.ok) return report(source.faults, terminal);
    const unit = source.value.evidence.units.get(id);
    if (unit === undefined) {
      const ids = [...source.value.evidence.units.keys()];
      const known = ids.length > 0 ? `It has ${ids.join(', ')}.` : 'It has none.';
      terminal.error(`${input.positionals[0]}: There is no unit "${id}". ${known}\n`);
      return 2;
    }
    const measurer = createMeasurer();
    const measured = new Map(unit.runs.map((run) => [run.id, measurer.measure(unit, run)]));
    terminal.out(
      input.values.json === true
        ? `${JSON.stringify(metricsReport(unit, measured), null, 2)}\n`
        : metricsText(unit, measured),
    );
    return 0;
  },
};

function metricsText(
  unit: UnitEvidence,
  measured: ReadonlyMap<string, ReadonlyMap<string, Measurement>>,
): string {
  const lines = [`${unit.unit.maker} ${unit.unit.model} (${unit.id}); ± is the expanded uncertainty 2u`];
  for (const [run, quantities] of measured) {
    lines.push('', run);
    for (const [id, measurement] of quantities) lines.push(`  ${id}: ${measurementText(id, measurement)}`);
  }
  return `${lines.join('\n')}\n`;
}

function measurementText(id: string, measurement: Measurement): string {
  if (measurement.state === 'undefined') return `undefined (${measurement.undefined})`;
  if (measurement.state === 'over')
    return `over ${printed(id, { value: measurement.over, u: null }, measurement.unit)}`;
  const values = measurement.values
    .map(
      (value) => `${value.axis === undefined ? '' : `${value.axis} `}${printed(id, value, measurement.unit)}`,
    )
    .join('; ');
  const average =
    measurement.average === undefined
      ? ''
      : `; average ${printed(id, measurement.average, measurement.unit)}`;
  const max = measurement.max === undefined ? '' : `; max ${printed(id, measurement.max, measurement.unit)}`;
  return values + average + max;
}

function printed(id: string, { value, u }: Estimate, unit: string): string {
  const decimals = catalogueEntry(id)?.decimals;
  return formatWithUncertainty(value, u, {
    unit,
    ...(decimals === undefined ? {} : { decimals }),
  });
}
