import { expect, test } from 'vitest';
import { fillNormal, seededUniform } from '../../shared/certainty/random.ts';
import { drawCount, streamsOf } from '../../shared/certainty/streams.ts';

const moments = (column: Float64Array) => {
  const n = column.length;
  const mean = column.reduce((sum, value) => sum + value, 0) / n;
  const central = (power: number) => column.reduce((sum, value) => sum + (value - mean) ** power, 0) / n;
  return {
    mean,
    sd: Math.sqrt(central(2)),
    skew: central(3) / central(2) ** 1.5,
    kurtosis: central(4) / central(2) ** 2,
  };
};

test('equal seeds give equal numbers, others give others', () => {
  const ten = (seed: string) => Array.from({ length: 10 }, seededUniform(seed));
  expect(ten('one')).toEqual(ten('one'));
  expect(ten('one')).not.toEqual(ten('two'));
  expect(ten('ab')).not.toEqual(ten('ba'));
});

test('uniform numbers fill 0 to 1 evenly', () => {
  const next = seededUniform('evenly');
  const bins = new Array(20).fill(0) as number[];
  for (let i = 0; i < 40_000; i += 1) bins[Math.floor(next() * 20)]! += 1;
  // Chi-squared with 19 degrees of freedom: 43.8 at 0.1 %.
  const chi = bins.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0);
  expect(chi).toBeLessThan(43.8);
});

test('normal numbers have the moments and the tails of the normal distribution', () => {
  const column = fillNormal(seededUniform('normal'), new Float64Array(100_001));
  const { mean, sd, skew, kurtosis } = moments(column);
  expect(Math.abs(mean)).toBeLessThan(0.01);
  expect(Math.abs(sd - 1)).toBeLessThan(0.01);
  expect(Math.abs(skew)).toBeLessThan(0.03);
  expect(Math.abs(kurtosis - 3)).toBeLessThan(0.06);
  const beyond = column.filter((value) => Math.abs(value) > 1.959964).length / column.length;
  expect(Math.abs(beyond - 0.05)).toBeLessThan(0.003);
});

test('the errors that readings share have mean 0, sd 1 and no correlation with each other', () => {
  const { s, ax, ay } = streamsOf('a digest', 's|key');
  const columns = [s, ...ax, ...ay];
  columns.forEach((one, i) => {
    expect(one).toHaveLength(drawCount);
    expect(moments(one).mean).toBeCloseTo(0, 12);
    columns.forEach((other, k) => {
      const product = one.reduce((sum, value, d) => sum + value * other[d]!, 0) / (drawCount - 1);
      expect(product).toBeCloseTo(i === k ? 1 : 0, 10);
    });
  });
});

test('independent errors of different readings are uncorrelated in the same draw', () => {
  const { pool, offset } = streamsOf('another digest', 's|key');
  const stream = (n: number) => Float64Array.from({ length: drawCount }, (_, d) => pool[offset(n) + d]!);
  const streams = Array.from({ length: 40 }, (_, n) => stream(n));
  let worst = 0;
  streams.forEach((one, i) => {
    for (let k = 0; k < i; k += 1) {
      const product = one.reduce((sum, value, d) => sum + value * streams[k]![d]!, 0) / drawCount;
      worst = Math.max(worst, Math.abs(product));
    }
  });
  // 780 pairs of sd 1/√2000 = 0.022: four sd is generous.
  expect(worst).toBeLessThan(0.095);
});

test('runs of one instrument on one panel share s, and nothing else', () => {
  const [one, other] = [streamsOf('digest 1', 's|same'), streamsOf('digest 2', 's|same')];
  expect(one.s).toEqual(other.s);
  expect(one.ax[0]).not.toEqual(other.ax[0]);
  expect(one.pool).not.toEqual(other.pool);
});
