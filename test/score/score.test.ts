import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { type ScoreSheet, scoreSheetSchema } from '../../shared/contract/scoreSheet.ts';
import {
  awardFor,
  cohortRanks,
  driftOfWords,
  pointsOnCurve,
  roundTo,
  scoreUnit,
  turnedWords,
  valueForPoints,
  weightedTotal,
} from '../../shared/score/index.ts';
import { article, hearth } from '../fixtures/hearth/index.ts';

const curve = [
  [200, 0],
  [600, 6],
  [1000, 10],
] as const;

describe('curves', () => {
  it('are straight between corners and flat outside', () => {
    expect([100, 200, 400, 600, 800, 1000, 2000].map((value) => pointsOnCurve(curve, value))).toEqual([
      0, 0, 3, 6, 8, 10, 10,
    ]);
  });

  it('say which value a score would need', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 10, noNaN: true }), (points) => {
        expect(pointsOnCurve(curve, valueForPoints(curve, points)!)).toBeCloseTo(points, 9);
      }),
    );
    expect(valueForPoints(curve, 11)).toBeNull();
  });

  it('round halves as a person does', () => {
    expect([roundTo(1.005, 2), roundTo(7.25, 1), roundTo(-7.25, 1), roundTo(2.5, 0)]).toEqual([
      1.01, 7.3, -7.3, 3,
    ]);
  });
});

describe('totals and awards', () => {
  it('weigh the points, and are nothing while a weighted criterion has none', () => {
    expect(
      weightedTotal([
        { weight: 3, points: 8 },
        { weight: 1, points: 4 },
        { weight: 0, points: null },
      ]),
    ).toBe(7);
    expect(
      weightedTotal([
        { weight: 3, points: 8 },
        { weight: 1, points: null },
      ]),
    ).toBeNull();
  });

  it('give the highest award whose threshold and minimums are met', () => {
    const rules = [
      { name: 'Recommended', from: 7 },
      { name: 'Lantern', from: 8, minimums: { contrast: 7 } },
    ];
    expect(awardFor(rules, 8.2, new Map([['contrast', 6]]))).toBe('Recommended');
    expect(awardFor(rules, 8.2, new Map([['contrast', 7]]))).toBe('Lantern');
    expect(awardFor(rules, 6.9, new Map())).toBeNull();
  });
});

describe('a unit on the score sheet', () => {
  const sheet: ScoreSheet = scoreSheetSchema.parse({
    version: 1,
    max: 10,
    decimals: 1,
    criteria: [
      { id: 'brightness', label: 'Brightness', weight: 2, quantity: 'peak', curve },
      {
        id: 'greys',
        label: 'Greys',
        weight: 1,
        quantity: 'grey.de2000',
        stat: 'average',
        curve: [
          [0, 10],
          [5, 0],
        ],
      },
      { id: 'sound', label: 'Sound', weight: 1 },
    ],
    awards: [{ name: 'Lantern', from: 6 }],
  });
  const measurer = createMeasurer();
  const bench = {
    article: { id: 'hearth-55', meta: article },
    measure: (run: Parameters<typeof measurer.measure>[1]) => measurer.measure(hearth, run),
  };

  it('lacks a total while points given by hand are missing, and says which', () => {
    expect(scoreUnit(sheet, hearth, bench)).toMatchObject({ total: null, award: null, missing: ['Sound'] });
  });

  it('scores measured values by the run under the article’s conditions', () => {
    const scored = scoreUnit({ ...sheet, given: { [hearth.id]: { sound: 5 } } }, hearth, bench);
    const [brightness, greys] = scored.criteria;
    expect(brightness).toMatchObject({ run: 'hdr-window', value: 742, points: 7.42 });
    expect(greys).toMatchObject({ run: 'sdr-grey' });
    expect(greys!.points).toBeCloseTo(10 - 2 * 2.92, 2);
    expect(scored).toMatchObject({
      total: roundTo((2 * 7.42 + greys!.points! + 5) / 4, 1),
      award: 'Lantern',
    });
  });
});

describe('cohorts and drift', () => {
  it('share a place and count on', () => {
    const members = [
      { id: 'a', value: 5 },
      { id: 'b', value: 7 },
      { id: 'c', value: 5 },
      { id: 'd', value: 1 },
    ];
    expect(cohortRanks(members, 'higher').map(({ id, place }) => `${place}${id}`)).toEqual([
      '1b',
      '2a',
      '2c',
      '4d',
    ]);
    expect(cohortRanks(members, 'lower').map(({ id, place }) => `${place}${id}`)).toEqual([
      '1d',
      '2a',
      '2c',
      '4b',
    ]);
  });

  const use = (word: string, value: number, date: string) => ({
    word,
    article: date,
    unit: 'u',
    date,
    value,
    u: 10,
  });

  it('finds one word for clearly different numbers', () => {
    const uses = [
      use('punchy', 350, '2026-03-01'),
      use('punchy', 900, '2026-09-01'),
      use('dim', 300, '2026-03-02'),
    ];
    expect(driftOfWords(uses)).toMatchObject([{ word: 'punchy', ratio: 900 / 350 }]);
    expect(driftOfWords([use('punchy', 350, '2026-03-01'), use('punchy', 400, '2026-09-01')])).toEqual([]);
  });

  it('finds opposite words the wrong way round: 350 punchy in spring, 420 dim in autumn', () => {
    const uses = [use('punchy', 350, '2026-03-01'), use('dim', 420, '2026-09-01')];
    expect(turnedWords(uses, [['punchy', 'dim']])).toMatchObject([{ word: 'punchy', against: 'dim' }]);
    expect(
      turnedWords([use('punchy', 500, '2026-03-01'), use('dim', 420, '2026-09-01')], [['punchy', 'dim']]),
    ).toEqual([]);
  });
});
