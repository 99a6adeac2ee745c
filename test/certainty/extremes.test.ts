import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type RunUncertainty, uncertaintyOfRun } from '../../shared/certainty/runUncertainty.ts';
import { deviationOfExtreme } from '../../shared/certainty/spread.ts';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { measureRun } from '../../shared/measure/index.ts';
import type { Plan } from '../../shared/measure/plan.ts';
import { evidenceOf as evidenceOfDossier } from '../corpus/judgeRows.ts';
import { measured } from '../measure/expected.ts';
import { type Draft, evidenceOf, fullRun, readingsOf, sdrConditions } from '../measure/inventedUnit.ts';

/** Plain standard deviation of the greatest (least) of all values that count, each drawn in every world. */
function drawnPlainly(known: RunUncertainty, plan: Plan, which: 'max' | 'min'): number {
  const { values, axes, count } = known.draws(plan)!;
  const counting = [...plan.counts.keys()].filter((i) => plan.counts[i]);
  const extreme = Float64Array.from({ length: count }, (_, d) =>
    Math[which](...counting.map((i) => values[d * axes.length + i]!)),
  );
  const mean = extreme.reduce((sum, value) => sum + value, 0) / count;
  return Math.sqrt(extreme.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
}

function expectPlainExtremes(unit: UnitEvidence, run: RunEvidence): number {
  const known = uncertaintyOfRun(unit, run);
  let compared = 0;
  for (const plan of known.outcomes.values()) {
    if (plan.state !== 'plan' || plan.law === 'none' || !plan.isSeries || !plan.counts.includes(true))
      continue;
    for (const which of ['max', 'min'] as const) {
      const plain = drawnPlainly(known, plan, which);
      const u = known.uOf(plan)[which]()!;
      // A sure extreme has its first-order u: 4 % is more than twice the noise of 2,000 draws.
      expect(Math.abs(u - plain), `${run.id} ${plan.id} ${which}: ${u} for ${plain}`).toBeLessThan(
        0.04 * plain + 1e-9 * Math.max(1, Math.abs(plan.found[0]!)),
      );
      compared += 1;
    }
  }
  return compared;
}

test('u of every greatest and least value is that of the plain joint extreme: a run with every series', () => {
  const { unit, run } = evidenceOf(readingsOf(...fullRun()));
  expect(expectPlainExtremes(unit, run)).toBeGreaterThan(100);
});

test('the same over runs of the demo library, SDR and HDR', async () => {
  const { units } = await evidenceOfDossier(join(import.meta.dirname, '../../main/demo/dossier'));
  let runs = 0;
  for (const unit of units.values())
    for (const run of unit.runs.slice(0, 2)) {
      expectPlainExtremes(unit, run);
      runs += 1;
    }
  expect(runs).toBeGreaterThan(8);
});

test('the maximum of a sure 0 and a value two u below it is a rectified normal deviate', () => {
  const power = { ...sdrConditions, target: { ...sdrConditions.target, eotf: 'gamma 2.2' as const } };
  const grey = (stimulus: number, Y: number): Draft => ({
    series: 'greyscale',
    stimulus,
    x: 0.3127,
    y: 0.329,
    Y,
  });
  const Yt = 200 * 0.5 ** 2.2;
  const of = (error: number, digest: string) => {
    const { unit, run } = evidenceOf(readingsOf(grey(50, Yt * (1 + error / 100)), grey(100, 200)), power);
    return measured(measureRun(unit, { ...run, digest }), 'eotf.error');
  };
  const sigma = of(-0.5, 'any').values[0]!.u!;
  const digests = Array.from({ length: 24 }, (_, n) => `world ${n}`);
  const us = digests.map((digest) => of(-2 * sigma, digest).max!.u!);
  // max(0, X), X normal with mean −2σ: E = σ(φ(2) − 2·Q(2)), E² = σ²(5·Q(2) − 2·φ(2)).
  const [phi, Q] = [Math.exp(-2) / Math.sqrt(2 * Math.PI), 0.0227501];
  const expected = sigma * Math.sqrt(5 * Q - 2 * phi - (phi - 2 * Q) ** 2);
  const mean = us.reduce((sum, u) => sum + u, 0) / us.length;
  expect(of(-2 * sigma, 'any').max!.value).toBe(0);
  expect(Math.abs(mean / expected - 1)).toBeLessThan(0.12);
});

test('a long tail of one of the values itself still gives way to the central interval', () => {
  const wild = Float64Array.from({ length: 2000 }, (_, i) => (i === 7 ? 1e9 : Math.sin(i)));
  const tame = new Float64Array(2000).fill(-3);
  expect(deviationOfExtreme(wild, [wild, tame])).toBeLessThan(2);
  // A value that leads in one world of seventy, without a tail of its own.
  const seldom = Float64Array.from({ length: 2000 }, (_, i) => Math.sin(i) - 0.999);
  const extreme = seldom.map((value) => Math.max(value, 0));
  const mean = extreme.reduce((sum, value) => sum + value, 0) / 2000;
  const plain = Math.sqrt(extreme.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 1999);
  expect(Math.max(...extreme) - mean).toBeGreaterThan(8 * plain);
  expect(deviationOfExtreme(extreme, [new Float64Array(2000), seldom])).toBeCloseTo(plain, 12);
});
