import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readEvidenceSource } from '../../../main/hosts/cli/evidenceSource.ts';
import { metricsReport } from '../../../main/hosts/cli/metricsReport.ts';
import { createMeasurer } from '../../../shared/certainty/index.ts';

interface Expected {
  quantity: string;
  /** An axis, or `average` or `max` */
  at: number | string | null;
  value: number;
  u: number | null;
  tolerance: number;
}

const here = fileURLToPath(new URL('.', import.meta.url));
const expected: Record<string, Expected[]> = JSON.parse(readFileSync(`${here}expected.json`, 'utf8'));

const source = await readEvidenceSource(`${here}dossier`);
if (!source.ok) throw new Error('the dossier cannot be read');
const unit = source.value.evidence.units.get('tamarick-linden-50')!;
const measurer = createMeasurer();
const { runs } = metricsReport(unit, new Map(unit.runs.map((run) => [run.id, measurer.measure(unit, run)])));

describe('a separate implementation written from the definitions alone agrees', () => {
  for (const [run, rows] of Object.entries(expected))
    for (const quantity of new Set(rows.map((row) => row.quantity)))
      it(`${run}: ${quantity}`, () => {
        const found = runs[run]![quantity]!;
        if (!('values' in found)) throw new Error(`${quantity} has no values`);
        for (const row of rows.filter((each) => each.quantity === quantity)) {
          const estimate =
            row.at === 'average' || row.at === 'max'
              ? found[row.at]!
              : found.values.find(({ axis }) => (axis ?? null) === row.at)!;
          if (!('value' in estimate)) throw new Error(`${quantity} has no ${row.at}`);
          expect(Math.abs(estimate.value - row.value), `${row.at}`).toBeLessThanOrEqual(row.tolerance);
          if (row.u !== null)
            expect(Math.abs(estimate.u! / row.u - 1), `u at ${row.at}`).toBeLessThanOrEqual(0.05);
        }
      });
});
