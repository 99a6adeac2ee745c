import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blueRotation } from '../../shared/colour/blueRotation.ts';
import { deltaE76 } from '../../shared/colour/deltaE76.ts';
import { deltaE2000, deltaE2000Array, deltaE2000Parts } from '../../shared/colour/deltaE2000.ts';
import type { Lab } from '../../shared/colour/lab.ts';
import { referenceCsv } from '../reference/read.ts';
import { expectClose, expectRelative } from './closeness.ts';
import { seeded } from './seeded.ts';

// Sharma, Wu and Dalal 2005, Table 1.
const pairs = referenceCsv('ciede2000.csv').map((row) => ({
  one: [Number(row.L1), Number(row.a1), Number(row.b1)] as Lab,
  other: [Number(row.L2), Number(row.a2), Number(row.b2)] as Lab,
  dE00: Number(row.dE00),
  dE00Full: Number(row.dE00_full),
  dE76: Number(row.dE76),
}));

/** The printed formula put together from its parts. */
function fromParts(one: Lab, other: Lab): number {
  const { deltaL, deltaC, deltaH, SL, SC, SH, RT } = deltaE2000Parts(one, other);
  const [l, c, h] = [deltaL / SL, deltaC / SC, deltaH / SH];
  return Math.sqrt(l ** 2 + c ** 2 + h ** 2 + RT * c * h);
}

const columns = (colours: readonly Lab[]) =>
  [0, 1, 2].map((k) => Float64Array.from(colours, (colour) => colour[k]!)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];

type SixColumns = [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

const lab = fc.tuple(
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.double({ min: -128, max: 128, noNaN: true }),
  fc.double({ min: -128, max: 128, noNaN: true }),
);

describe('CIEDE2000', () => {
  test('all 34 published pairs, by the fast form and by the printed form, in either order', () => {
    expect(pairs).toHaveLength(34);
    for (const { one, other, dE00, dE00Full, dE76 } of pairs) {
      expect(deltaE2000(one, other).toFixed(4)).toBe(dE00.toFixed(4));
      expectClose([deltaE2000(one, other), deltaE2000(other, one)], [dE00Full, dE00Full], 1e-9);
      expectClose([fromParts(one, other), fromParts(other, one)], [dE00Full, dE00Full], 1e-9);
      expect(deltaE76(one, other)).toBeCloseTo(dE76, 5);
    }
  });

  test('many pairs at once are equal to one by one, bit for bit', () => {
    const out = new Float64Array(34);
    const back = deltaE2000Array(
      ...columns(pairs.map((p) => p.one)),
      ...columns(pairs.map((p) => p.other)),
      out,
    );
    expect(back).toBe(out);
    expect([...out]).toEqual(pairs.map(({ one, other }) => deltaE2000(one, other)));
  });

  test('the fast form equals the printed form within 2e-11 for 50 000 pairs, near and far', () => {
    const random = seeded(2000);
    let worst = 0;
    for (let i = 0; i < 50_000; i += 1) {
      const one: Lab = [100 * random(), 256 * random() - 128, 256 * random() - 128];
      const reach = [256, 10, 0.1][i % 3]!;
      const other: Lab = [
        one[0] + (random() - 0.5) * Math.min(reach, 50),
        one[1] + (random() - 0.5) * reach,
        one[2] + (random() - 0.5) * reach,
      ];
      worst = Math.max(worst, Math.abs(deltaE2000(one, other) - fromParts(one, other)));
    }
    expect(worst).toBeLessThan(2e-11);
  });

  test('exactly opposite hues count from the smaller angle to the larger, in all quadrants', () => {
    for (const [a, b] of [
      [20, 0],
      [0, 20],
      [16, 8],
      [16, -8],
    ] as const)
      for (const [one, other] of [
        [
          [50, a, b],
          [60, -2 * a, -2 * b],
        ],
        [
          [50, -a, -b],
          [60, 2 * a, 2 * b],
        ],
      ] as [Lab, Lab][])
        expectRelative(deltaE2000(one, other), fromParts(one, other), 1e-12);
  });

  test('along the hue circle, the border at 0° included', () => {
    for (let degree = 0; degree < 360; degree += 1)
      for (const span of [0.01, 30, 89, 91, 179]) {
        const at = (angle: number, C: number): Lab => [
          50,
          C * Math.cos((angle * Math.PI) / 180),
          C * Math.sin((angle * Math.PI) / 180),
        ];
        const [one, other] = [at(degree - span / 2 + 0.003, 60), at(degree + span / 2 + 0.003, 70)];
        expectClose([deltaE2000(one, other)], [fromParts(one, other)], 1e-10);
      }
  });

  test('a neutral colour has no hue', () => {
    expectClose(
      [
        deltaE2000([50, 0, 0], [50, 30, -40]),
        deltaE2000([50, 30, -40], [50, 0, 0]),
        deltaE2000([40, 0, 0], [60, 0, 0]),
      ],
      [fromParts([50, 0, 0], [50, 30, -40]), fromParts([50, 0, 0], [50, 30, -40]), 20],
      1e-10,
    );
    expect(deltaE2000Parts([50, 0, 0], [50, 0, -5])).toMatchObject({ deltaL: 0, deltaH: 0 });
    // The mean hue is then that of the other colour: h̄′ = 270°, T = 0.720753, C̄′ = 2.5, by hand.
    for (const parts of [deltaE2000Parts([50, 0, 0], [50, 0, -5]), deltaE2000Parts([50, 0, -5], [50, 0, 0])])
      expectClose([parts.SH], [1 + 0.015 * 2.5 * 0.720753], 1e-7);
  });

  test('at a mean hue of exactly 0° there is no rotation: the standard does not go round from 275°', () => {
    // Mirrored hues, chromas 1 : 2, so that the mean direction is the positive a* axis to the last bit.
    const [one, other]: [Lab, Lab] = [
      [50, 30, 10],
      [50, 60, -20],
    ];
    const { deltaC, deltaH, SC, SH } = deltaE2000Parts(one, other);
    expectClose([deltaE2000(one, other)], [Math.hypot(deltaC / SC, deltaH / SH)], 1e-9);
  });

  test('is symmetric, 0 for equal colours only, and grows with lightness alone', () => {
    fc.assert(
      fc.property(lab, lab, (one, other) => {
        const forth = deltaE2000(one, other);
        expectClose([deltaE2000(other, one)], [forth], 1e-9);
        expect(deltaE2000(one, one)).toBe(0);
        expect(forth).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });

  test('the parts have signs: other minus one', () => {
    const { deltaL, deltaC, deltaH } = deltaE2000Parts([50, 10, 1], [60, 20, 4]);
    expect([deltaL, deltaC > 0, deltaH > 0]).toEqual([10, true, true]);
    const back = deltaE2000Parts([60, 20, 4], [50, 10, 1]);
    expectClose([back.deltaL, back.deltaC, back.deltaH], [-deltaL, -deltaC, -deltaH], 1e-12);
  });

  test('the parts of the first published pair', () => {
    // The paper prints for pair 1: a′ = 2.6774, C′ = 79.8200 and 82.7485, h̄′ = 270.9611, G = 0.0001, T = 0.6907,
    // SL = 1.0000, SC = 4.6578, SH = 1.8421, RT = −1.7042 (from memory, recomputed).
    const parts = deltaE2000Parts(pairs[0]!.one, pairs[0]!.other);
    expectClose(
      [parts.deltaL, parts.deltaC, parts.SL, parts.SC, parts.SH, parts.RT],
      [0, 82.7485 - 79.82, 1, 4.6578, 1.8421, -1.7042],
      6e-5,
    );
  });

  test('the tabulated rotation equals sin(60°·exp(−(δ/25°)²)) over its whole range', () => {
    for (let delta = 0; delta <= 142; delta += 0.05) {
      const q = Math.sin((delta * Math.PI) / 360) ** 2;
      const exact = Math.sin((Math.PI / 3) * Math.exp(-((delta / 25) ** 2)));
      expectClose([blueRotation(q)], [exact], 2e-13);
    }
  });

  test('a NaN comes out as NaN and short inputs throw', () => {
    for (let place = 0; place < 6; place += 1) {
      const numbers = [50, 10, 20, 60, 0, 30];
      numbers[place] = Number.NaN;
      const [L1, a1, b1, L2, a2, b2] = numbers as [number, number, number, number, number, number];
      expect(deltaE2000([L1, a1, b1], [L2, a2, b2])).toBeNaN();
      const inputs = Array.from({ length: 6 }, (_, k) => new Float64Array(k === place ? 1 : 2));
      expect(() => deltaE2000Array(...(inputs as SixColumns), new Float64Array(2))).toThrow(
        'an input is shorter than the output',
      );
    }
    expect(deltaE2000([50, Number.NaN, 0], [50, 0, 0])).toBeNaN();
  });
});
