import { describe, expect, it } from 'vitest';
import { headlineRuns } from '../../../app/shelf/headlineRuns.ts';
import { fits, type ShelfEntry, type ShelfFilter, sorted } from '../../../app/shelf/shelfEntries.ts';
import type { UnitSummary } from '../../../shared/contract/door.ts';
import type { RunEvidence } from '../../../shared/contract/evidence.ts';
import type { Measurement } from '../../../shared/contract/measurement.ts';
import type { Run } from '../../../shared/contract/run.ts';

function run(id: string, conditions: Partial<Run> = {}): RunEvidence {
  return {
    id,
    digest: id,
    readings: [],
    conditions: {
      mode: 'Calm',
      stage: 'as-delivered',
      signal: 'SDR',
      target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
      dimming: 'off',
      ...conditions,
    },
  };
}

function entry(
  model: string,
  price: number | null,
  peak: number | null,
  latestRun = '2026-01-01',
): ShelfEntry {
  const summary: UnitSummary = {
    id: model.toLowerCase(),
    maker: 'Orrinvale',
    model,
    diagonalInches: 55,
    panel: 'LCD IPS',
    backlight: 'direct LED',
    price: price === null ? null : { amount: price, currency: 'GBP' },
    provenance: 'loan',
    dueBack: null,
    returned: null,
    firmware: null,
    runs: 1,
    observations: 0,
    photos: 0,
    latestRun,
  };
  const measured = new Map<string, Measurement>(
    peak === null
      ? []
      : [
          [
            'peak',
            {
              state: 'measured',
              id: 'peak',
              unit: 'cd/m²',
              values: [{ axis: 10, value: peak, u: 7, counts: true, rows: [1] }],
              max: { axis: 10, value: peak, u: 7 },
              notes: [],
            },
          ],
        ],
  );
  return {
    summary,
    unit: null,
    sdr: [],
    hdr: [{ run: run('hdr', { signal: 'HDR10' }), measured }],
    articles: [
      {
        id: `on-${model}`,
        title: `On the ${model}`,
        unit: summary.id,
        state: 'draft',
        date: null,
        words: 1,
        revision: 1,
        savedAt: null,
      },
    ],
  };
}

const any: ShelfFilter = { words: '', maker: '', panel: '', priceUnder: null };

describe('the Shelf', () => {
  it('finds a set by any of its words, its price and its maker', () => {
    const hearth = entry('Hearth', 1039, 742);
    expect(fits(hearth, { ...any, words: 'orrin ips' })).toBe(true);
    expect(fits(hearth, { ...any, words: 'on the hearth' })).toBe(true);
    expect(fits(hearth, { ...any, words: 'oled' })).toBe(false);
    expect(fits(hearth, { ...any, priceUnder: 1039 })).toBe(true);
    expect(fits(hearth, { ...any, priceUnder: 1038 })).toBe(false);
    expect(fits(entry('Ember', null, null), { ...any, priceUnder: 5000 })).toBe(false);
    expect(fits(hearth, { ...any, maker: 'Veltrane' })).toBe(false);
  });

  it('puts the brightest first and what was not measured last', () => {
    const entries = [entry('Ember', 900, null), entry('Plain', 449, 412), entry('Hearth', 1039, 742)];
    expect(sorted(entries, 'peak').map((each) => each.summary.model)).toEqual(['Hearth', 'Plain', 'Ember']);
    expect(sorted(entries, 'price').map((each) => each.summary.model)).toEqual(['Plain', 'Ember', 'Hearth']);
  });

  it('lets the article’s conditions choose the run that speaks, never its numbers', () => {
    const unit = {
      id: 'hearth',
      unit: { maker: 'Orrinvale', model: 'Hearth' },
      observations: [],
      runs: [
        run('day', { mode: 'Day', taken: '2026-01-01' }),
        run('calm', { mode: 'Calm', taken: '2026-01-02' }),
        run('calm-adjusted', { stage: 'adjusted', taken: '2026-01-03' }),
      ],
    };
    const article = {
      id: 'a',
      meta: {
        title: 'A',
        unit: 'hearth',
        state: 'draft' as const,
        conditions: { SDR: { mode: 'Calm', stage: 'as-delivered' } },
      },
    };
    expect(headlineRuns(unit, 'SDR', [article]).map(({ id }) => id)).toEqual([
      'calm',
      'day',
      'calm-adjusted',
    ]);
    expect(headlineRuns(unit, 'SDR', [])[0]?.id).toBe('day');
    expect(headlineRuns(unit, 'HDR', [article])).toEqual([]);
  });
});
