import { describe, expect, it } from 'vitest';
import type { Subject } from '../../../app/plots/figure.ts';
import { figuresOf } from '../../../app/plots/figures/index.ts';
import { nameSubjects } from '../../../app/plots/figures/subjectText.ts';
import { figureCsv, figureTable } from '../../../app/plots/figureTable.ts';
import { largeTraces } from '../../../app/plots/large/traces.ts';
import { cellPairs, patchPairs } from '../../../app/plots/pairs.ts';
import { spotsOf } from '../../../app/plots/pointText.ts';
import { defaultHouse } from '../../../shared/claims/house/defaults.ts';
import { scalar, series, subject } from './subjects.ts';

const ink = {
  paper: 'rgb(255, 255, 255)',
  ink: 'rgb(0, 0, 0)',
  quiet: 'rgb(90, 90, 90)',
  hair: 'rgb(220, 220, 220)',
  rule: 'rgb(140, 140, 140)',
  accent: 'rgb(0, 80, 140)',
  breaks: 'rgb(180, 30, 20)',
  shade: 'rgb(200, 200, 200)',
  sans: 'sans-serif',
};
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
      laid.form === 'patches' &&
        patchPairs(laid).map(({ own, other }) => [own.label, own.value, other?.value]),
    ).toEqual([
      ['01', 4, 1],
      ['02', 2, 5],
    ]);
    expect(figureCsv(laid)).toBe(
      `patch,error (ΔE2000),U = 2u,readings,adjusted (ΔE2000),"U = 2u, adjusted","readings, adjusted"
01,4,,calm-as-delivered#1,1,,calm-adjusted#1
02,2,,calm-as-delivered#2,5,,calm-adjusted#2
`,
    );
  });

  it('can be pointed at and picked one by one, each mark by its own run', () => {
    expect(spotsOf(figure('chart-patches')).map(({ text, ref }) => [text, ref?.run])).toEqual([
      ['01, as delivered: 4.0', 'calm-as-delivered'],
      ['01, adjusted: 1.0', 'calm-adjusted'],
      ['02, as delivered: 2.0', 'calm-as-delivered'],
      ['02, adjusted: 5.0', 'calm-adjusted'],
    ]);
  });

  it('share a screen: each place carries both values', () => {
    const laid = figure('uniformity-white');
    expect(
      laid.form === 'grid' && cellPairs(laid).map(({ own, other }) => [own.value, other?.value]),
    ).toEqual([
      [-20, -5],
      [0, 0],
    ]);
  });

  it('become paired bars in the large chart, the second hollow', () => {
    const { data, layout } = largeTraces(figure('chart-patches'), ink);
    const bars = data as unknown as {
      name: string;
      x: string[];
      y: number[];
      customdata: string[];
      marker: { color: unknown };
      showlegend?: boolean;
      offsetgroup?: string;
    }[];
    const drawn = bars.filter(({ customdata }) => customdata);
    expect(drawn.map(({ name, x, y, customdata }) => [name, x, y, customdata])).toEqual([
      ['as delivered', ['01', '02'], [4, 2], ['0', '1']],
      ['adjusted', ['01', '02'], [1, 5], ['o1', 'o0']],
    ]);
    expect(drawn[1]!.marker.color).toBe(ink.paper);
    expect(layout.showlegend).toBe(true);
  });

  it('stand in the legend in the colour of a bar that is within the limit, whatever the first bar is', () => {
    const { data } = largeTraces(figure('chart-patches'), ink);
    const bars = data as unknown as {
      name: string;
      y: unknown[];
      marker: { color: unknown };
      showlegend?: boolean;
      offsetgroup: string;
    }[];
    const [lead] = bars;
    expect([lead!.showlegend, (lead!.marker.color as string[])[0]]).toEqual([false, ink.breaks]);
    expect(
      bars
        .filter(({ showlegend }) => showlegend !== false)
        .map(({ name, marker, offsetgroup }) => [name, marker.color, offsetgroup]),
    ).toEqual([
      ['as delivered', ink.rule, lead!.offsetgroup],
      ['adjusted', ink.paper, 'other'],
    ]);
  });

  it('become two large maps side by side and their difference', () => {
    const { data, layout } = largeTraces(figure('uniformity-white'), ink);
    const maps = data as unknown as { text: string[]; customdata: string[] }[];
    expect(maps.map(({ text, customdata }) => [text, customdata])).toEqual([
      [
        ['−20', '0'],
        ['0', '1'],
      ],
      [
        ['−5', '0'],
        ['o0', 'o1'],
      ],
      [
        ['+15', '0'],
        ['0', '1'],
      ],
    ]);
    expect(layout.annotations?.map(({ text }) => text)).toEqual([
      'as delivered',
      'adjusted',
      'adjusted minus as delivered',
    ]);
  });

  it('on another grid share no place: the large plot shows both maps, without a difference', () => {
    const [first] = pair;
    const nine = series('uniformity.white.cell', '%', [
      ['r1c1', -9],
      ['r2c1', 0],
    ]);
    const other = subject([nine], { stage: 'adjusted' });
    const laid = figuresOf(nameSubjects([first!, other]), defaultHouse.limits).find(
      (each) => each.id === 'uniformity-white',
    )!;
    expect(laid.form === 'grid' && cellPairs(laid).map((each) => each.other)).toEqual([null, null]);
    expect(largeTraces(laid, ink).data).toHaveLength(2);
    expect(figureTable(laid).rows.map((row) => [row[2], row[5]])).toEqual([
      [-20, null],
      [0, null],
      [null, -9],
      [null, 0],
    ]);
  });

  it('both say their finding, and one without such readings says that', () => {
    const gamma = (value: number) => [
      series('gamma', '', [
        [50, value],
        [90, value],
      ]),
      scalar('gamma.average', '', value),
    ];
    const titled = (a: Subject, b: Subject) =>
      figuresOf(nameSubjects([a, b]), defaultHouse.limits).find((each) => each.id === 'gamma')!;
    const [a, b] = [subject(gamma(2.2)), subject(gamma(2.4), { stage: 'adjusted' })];
    expect(titled(a, b).title).toBe(
      'Gamma averages 2.20, from 2.20 to 2.20; adjusted: gamma averages 2.40, from 2.40 to 2.40',
    );
    expect(titled(a, subject([], { stage: 'adjusted' })).note).toMatch(/; adjusted has no such readings$/);
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
