import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../../app/plots/figures/index.ts';
import { nameSubjects } from '../../../app/plots/figures/subjectText.ts';
import { figureTable } from '../../../app/plots/figureTable.ts';
import { defaultHouse } from '../../../shared/claims/house/defaults.ts';
import { series, subject } from './subjects.ts';

const chart = (a: number, b: number) =>
  series('chart.de2000', 'ΔE2000', [
    ['01', a],
    ['02', b],
  ]);
const cells = (value: number) =>
  series('uniformity.white.cell', '%', [
    ['r1c1', value],
    ['r1c2', 0],
  ]);
const balance = (channel: string, value: number) =>
  series(`grey.balance.${channel}`, '%', [
    [50, value],
    [100, 100],
  ]);
const pair = nameSubjects([
  subject([chart(4, 2), cells(-20), balance('red', 90), balance('green', 100), balance('blue', 104)]),
  subject([chart(1, 5), cells(-5), balance('red', 99), balance('green', 100), balance('blue', 103)], {
    stage: 'adjusted',
  }),
]);
const figure = (id: string) => figuresOf(pair, defaultHouse.limits).find((each) => each.id === id)!;

describe('two runs laid over each other', () => {
  it('share a chart: each patch carries the other run’s error, the table too', () => {
    const laid = figure('chart-patches');
    expect(
      laid.form === 'patches' && laid.patches.map(({ label, value, other }) => [label, value, other]),
    ).toEqual([
      ['01', 4, 1],
      ['02', 2, 5],
    ]);
    expect(figureTable(laid).columns.at(-1)).toEqual({ label: 'adjusted', unit: 'ΔE2000' });
    expect(figureTable(laid).rows.map((row) => row.at(-1))).toEqual([1, 5]);
  });

  it('share a screen: each place carries both values', () => {
    const laid = figure('uniformity-white');
    expect(laid.form === 'grid' && laid.cells.map(({ value, other }) => [value, other])).toEqual([
      [-20, -5],
      [0, 0],
    ]);
  });

  it('share a balance: of the other run come its furthest channel and the lead’s', () => {
    const laid = figure('channel-balance');
    expect(laid.form === 'levels' && laid.lines.map(({ label }) => label)).toEqual([
      'Red',
      'Green',
      'Blue',
      'Red, adjusted',
      'Blue, adjusted',
    ]);
    expect(laid.title).toMatch(/^Red is 10.% under balance.*; adjusted: blue is 3.% over balance/u);
  });
});
