import { expect, test } from 'vitest';
import { deltaE2000Parts } from '../../shared/colour/deltaE2000.ts';
import { weightedPart } from '../../shared/colour/deltaE2000Part.ts';
import type { Lab } from '../../shared/colour/lab.ts';

/** Hues all round in both colours, neutral ones too. */
function* pairs(): Generator<[Lab, Lab]> {
  for (let h1 = 0; h1 < 360; h1 += 20)
    for (let h2 = 7; h2 < 367; h2 += 30)
      for (const [C1, C2] of [
        [30, 42],
        [0, 20],
        [3, 90],
      ] as const) {
        const at = (L: number, C: number, h: number): Lab => [
          L,
          C * Math.cos((h * Math.PI) / 180),
          C * Math.sin((h * Math.PI) / 180),
        ];
        yield [at(40, C1, h1), at(63, C2, h2)];
      }
}

test('a weighted part is what the formula with angles divides: ΔL′/SL, ΔC′/SC, ΔH′/SH', () => {
  for (const [one, other] of pairs()) {
    const { deltaL, deltaC, deltaH, SL, SC, SH } = deltaE2000Parts(one, other);
    expect(weightedPart('L', one, other)).toBeCloseTo(deltaL / SL, 10);
    expect(weightedPart('C', one, other)).toBeCloseTo(deltaC / SC, 10);
    expect(weightedPart('H', one, other), `${one} ${other}`).toBeCloseTo(deltaH / SH, 10);
  }
});

test('opposite hues go from the smaller angle to the larger', () => {
  const parts = deltaE2000Parts([50, 0, 5], [50, 0, -5]);
  expect(weightedPart('H', [50, 0, 5], [50, 0, -5])).toBeCloseTo(parts.deltaH / parts.SH, 10);
  const back = deltaE2000Parts([50, 0, -5], [50, 0, 5]);
  expect(weightedPart('H', [50, 0, -5], [50, 0, 5])).toBeCloseTo(back.deltaH / back.SH, 10);
});
