import { describe, expect, it } from 'vitest';
import type { JudgingBench } from '../../../shared/claims/index.ts';
import { pqEotf } from '../../../shared/colour/transfer/pq.ts';
import type { FactCheck, OrderCheck } from '../../../shared/contract/check.ts';
import { benchWith, judged, named, number, quantity } from '../../fixtures/checks.ts';
import {
  benchOf,
  contrast,
  hdrRun,
  hearth,
  hearthWith,
  rivals,
  run,
  sdrRun,
  windows,
} from '../../fixtures/hearth/index.ts';

const peakAt10 = quantity('peak', { stat: 'at', at: 10 });

describe('value', () => {
  it('compares with the closed interval of its rounding and says by how much it misses', () => {
    expect(judged({ kind: 'value', operand: peakAt10, stated: number(742, 0.5, { place: 1 }) }).verdict).toBe(
      'holds',
    );
    const missed = judged({ kind: 'value', operand: peakAt10, stated: number(750, 5, { place: 10 }) });
    expect(missed).toMatchObject({ verdict: 'breaks', probability: null, suggestion: '742\u00a0cd/m²' });
    expect(missed.reason).toContain('by 3');
  });

  it('notes digits that are finer than the instrument', () => {
    const { reason } = judged({ kind: 'value', operand: peakAt10, stated: number(742, 0.5, { place: 1 }) });
    expect(reason).toContain('finer than the instrument (±15)');
  });

  it('says when only rounding saves a number', () => {
    const { verdict, reason } = judged({
      kind: 'value',
      operand: peakAt10,
      stated: number(740, 5, { place: 10 }),
    });
    expect(verdict).toBe('holds');
    expect(reason).toContain('only rounding saves 740');
  });

  it('takes the distance from the target where the words name no side', () => {
    const bench = benchWith({
      id: 'sweep.cyan.hue',
      unit: '°',
      levels: [25, 50, 75, 100].map((axis) => [axis, -4.1, 0.2] as const),
    });
    const of = (x: number, eitherSide?: true) =>
      judged(
        {
          kind: 'value',
          operand: quantity('sweep.cyan.hue', { stat: 'average' }),
          stated: number(x, 0.5, { unit: '°' }),
          ...(eitherSide && { eitherSide }),
        },
        bench,
      );
    expect(of(4).verdict).toBe('breaks');
    expect(of(4, true)).toMatchObject({ verdict: 'holds', probability: null });
    expect(of(4, true).reason).toContain('on either side of the target');
    expect(of(6, true).verdict).toBe('breaks');
  });

  it('keeps open ends open: just under 742 is not 742', () => {
    const stated = { x: 742, low: 704.9, high: 742, highOpen: true, hedge: 'just under' };
    expect(judged({ kind: 'value', operand: peakAt10, stated }).verdict).toBe('breaks');
  });

  it('asks for a window only of a series that needs one: a bare peak is the greatest', () => {
    const bare = judged({ kind: 'value', operand: quantity('peak'), stated: number(742, 0.5) });
    expect(bare).toMatchObject({ verdict: 'holds' });
    expect(bare.reason).toContain('10\u202f% window');
    const grey = judged({ kind: 'value', operand: quantity('grey.de2000'), stated: number(3, 0.5) });
    expect(grey.verdict).toBe('unproven');
  });

  it('is neither proven nor disproven above a lower bound, and broken under it', () => {
    const bench = benchOf([hearthWith([run('sdr-contrast', sdrRun, contrast(200, 0.001))])]);
    const of = (x: number) =>
      judged({ kind: 'value', operand: quantity('contrast.native'), stated: number(x, x / 40) }, bench)
        .verdict;
    expect([of(100_000), of(20_000)]).toEqual(['unproven', 'breaks']);
  });

  it('converts units of one kind and refuses others', () => {
    const of = (x: number, unit: string) =>
      judged({
        kind: 'value',
        operand: { type: 'fact', key: 'depth', conditions: named() },
        stated: number(x, 0.05, { unit }),
      }).verdict;
    expect([of(7.1, 'cm'), of(71, 'mm'), of(71, 'kg')]).toEqual(['holds', 'holds', 'unproven']);
  });
});

describe('instruments at their limit', () => {
  it('says that an error under 1 cannot be proven, and its floor', () => {
    const cond = { ...sdrRun, instrument: { ...sdrRun.instrument, u_x: 0.003, u_y: 0.003 } };
    const grey = hearth.runs.find(({ id }) => id === 'sdr-grey-adjusted')!;
    const bench = benchOf([hearthWith([run('sdr-grey', cond, grey.readings)])]);
    const judgement = judged(
      { kind: 'bound', bounds: [{ operand: quantity('grey.de2000', { stat: 'all' }), op: '<', x: 1 }] },
      bench,
    );
    expect(judgement.verdict).toBe('close');
    expect(judgement.reason).toMatch(
      /this instrument cannot prove an error under 1 \(its floor here is \d\.\d\)/,
    );
  });
});

describe('ratio and difference', () => {
  const price = (unit?: string) =>
    ({ type: 'fact', key: 'price', conditions: named(unit ? { unit } : {}) }) as const;

  it('divides what was measured', () => {
    const check = {
      kind: 'ratio',
      a: price(),
      b: price('tamarick-loom-55'),
      stated: { x: 4 / 3, low: 1.3, high: 1.3667 },
    } as const;
    expect(judged(check)).toMatchObject({
      verdict: 'holds',
      stated: { other: 'tamarick-loom-55', low: 1.3, high: 1.3667 },
    });
    expect(judged({ ...check, stated: number(1.5, 0.05) }).verdict).toBe('breaks');
  });

  it('refuses to compare currencies', () => {
    const foreign = { ...rivals[2]!, unit: { ...rivals[2]!.unit, price: { amount: 779, currency: 'EUR' } } };
    const check = {
      kind: 'difference',
      a: price(),
      b: price('tamarick-loom-55'),
      stated: number(260, 0, { unit: 'GBP' }),
    } as const;
    expect(judged(check).verdict).toBe('holds');
    expect(judged(check, benchOf([foreign])).verdict).toBe('unproven');
  });

  it('asks whether a difference of two percentages is meant in points', () => {
    const at = (angle: number) => quantity('angle.luminance', { stat: 'at', at: angle });
    const check = {
      kind: 'difference',
      a: at(30),
      b: at(45),
      stated: number(22, 0.5, { unit: '%' }),
    } as const;
    expect(judged(check).verdict).toBe('unproven');
    expect(judged({ ...check, stated: number(22, 0.5, { unit: 'points' }) }).verdict).toBe('holds');
  });
});

describe('order', () => {
  const order = (change: Partial<OrderCheck>, bench = benchOf()) =>
    judged(
      {
        kind: 'order',
        key: quantity('peak'),
        direction: 'higher',
        rank: { type: 'best' },
        cohort: {},
        ...change,
      },
      bench,
    );

  it('knows places, "among" as the top quarter, ahead and behind', () => {
    expect(order({}).verdict).toBe('breaks');
    expect(order({ rank: { type: 'position', n: 2 } }).verdict).toBe('close');
    expect(order({ rank: { type: 'position', n: 4 } }).verdict).toBe('breaks');
    expect(order({ rank: { type: 'among' } }).verdict).toBe('breaks');
    expect(order({ rank: { type: 'ahead' }, cohort: { units: ['tamarick-loom-55'] } }).verdict).toBe('holds');
    expect(order({ rank: { type: 'behind' }, cohort: { units: ['nocthale-vigil-55'] } }).verdict).toBe(
      'holds',
    );
  });

  it('lets 742 and 731 match within 5 %, and 742 and 571 not', () => {
    expect(order({ rank: { type: 'matches' }, cohort: { units: ['kasulind-marl-55'] } }).verdict).toBe(
      'holds',
    );
    expect(order({ rank: { type: 'matches' }, cohort: { units: ['tamarick-loom-55'] } }).verdict).toBe(
      'breaks',
    );
  });

  it('leaves out sets dated after the article, of another year or over the price', () => {
    const future = rivals.map((unit) => ({
      ...unit,
      runs: unit.runs.map((one) =>
        run(one.id, { ...one.conditions, taken: '2026-12-01T09:00:00Z' }, one.readings),
      ),
    }));
    expect(order({}, benchOf(future)).reason).toContain('no other unit');
    expect(order({ cohort: { year: 2025 } }).verdict).toBe('unproven');
    expect(order({ cohort: { priceUnder: { amount: 800, currency: 'GBP' } } }).reason).toContain(
      'its own price',
    );
  });

  it('makes "best ever" unproven where a set was never measured, and lists it', () => {
    const unmeasured = {
      ...rivals[3]!,
      id: 'veltrane-new-65',
      runs: [],
      unit: { ...rivals[3]!.unit, model: 'New 65', maker: 'Veltrane' },
    };
    const dim = { ...rivals[3]!, runs: [run('hdr-window', hdrRun, windows({ 10: 300 }))] };
    const close = { ...rivals[1]!, runs: [run('hdr-window', hdrRun, windows({ 10: 500 }))] };
    expect(order({}, benchOf([dim, close])).verdict).toBe('holds');
    const judgement = order({}, benchOf([dim, close, unmeasured]));
    expect(judgement.verdict).toBe('unproven');
    expect(judgement.reason).toContain('Veltrane New 65');
    expect(order({ cohort: { year: 2026 } }, benchOf([dim, close, unmeasured])).verdict).toBe('holds');
  });

  it('judges facts as reported', () => {
    const key = { type: 'fact', key: 'price', conditions: named() } as const;
    expect(order({ key, direction: 'lower' })).toMatchObject({ verdict: 'breaks', probability: null });
    expect(order({ key, rank: { type: 'position', n: 2 } })).toMatchObject({
      verdict: 'holds',
      probability: null,
    });
  });
});

describe('direction', () => {
  const direction = (id: string, name: string, bench = benchOf(), size?: 'slight' | 'mild' | 'obvious') =>
    judged(
      { kind: 'direction', operand: quantity(id, { stat: 'average' }), name, ...(size ? { size } : {}) },
      bench,
    ).verdict;

  it('averages a tint as vectors over 50 to 100 %, and names it by hue', () => {
    expect(direction('grey.tint', 'green')).toBe('holds');
    expect(direction('grey.tint', 'magenta')).toBe('breaks');
    expect(direction('grey.tint', 'none')).toBe('breaks');
    expect(direction('grey.tint', 'tinted')).toBe('holds');
  });

  it('holds an over- or undersaturated colour against the house limit, else "on target"', () => {
    const made = (value: number) =>
      benchWith({
        id: 'sweep.red.saturation',
        unit: '%',
        levels: [25, 50, 75, 100].map((axis) => [axis, value, 0.2] as const),
      });
    expect(direction('sweep.red.saturation', 'under', made(-7))).toBe('holds');
    expect(direction('sweep.red.saturation', 'over', made(-7))).toBe('breaks');
    expect(direction('sweep.red.saturation', 'on-target', made(-3))).toBe('holds');
    expect(direction('sweep.red.saturation', 'under', made(-3))).toBe('breaks');
    expect(direction('sweep.red.saturation', 'under', made(-5.1))).toBe('close');
  });

  it('asks of a roll-off both what the curve does and from where', () => {
    // The luminance of each level by SMPTE ST 2084; above the knee the set gives less, or no more at all.
    const curve = (above: (level: number) => number) =>
      benchOf([
        hearthWith([
          run(
            'hdr-greys',
            { ...hdrRun, title: 'HDR greys' },
            Array.from({ length: 11 }, (_, at) => at * 10).map((stimulus, row) => ({
              row: row + 1,
              series: 'greyscale' as const,
              stimulus,
              x: 0.3127,
              y: 0.329,
              Y: stimulus <= 60 ? Math.max(0.001, pqEotf(stimulus / 100)) : above(stimulus),
            })),
          ),
        ]),
      ]);
    const knee = pqEotf(0.6) * 1.2;
    const clipping = curve(() => knee);
    const rolling = curve((level) => knee * (1 + (level - 70) / 100));
    const said = (name: string, from: number, bench: JudgingBench) =>
      judged(
        {
          kind: 'direction',
          operand: quantity('eotf.rolloff', { stat: 'scalar' }, { signal: 'HDR10' }),
          name,
          from: number(from, 0.5, { unit: '%' }),
        },
        bench,
      );
    expect(said('clips', 70, clipping).verdict).toBe('holds');
    expect(said('clips', 80, clipping).verdict).toBe('breaks');
    expect(said('clips', 80, clipping).probability).toBeLessThanOrEqual(0.05);
    expect(said('rolls-off', 70, clipping).verdict).toBe('breaks');
    expect(said('rolls-off', 70, rolling).verdict).toBe('holds');
    expect(said('rolls-off', 60, rolling).reason).toContain('the text says from 60 %');
    // 10.5 % under its target at 70 %: a perfect instrument might see the curve leave it at 80 %.
    const nearly = curve((level) => pqEotf(level / 100) * (level === 70 ? 0.895 : 0.6 - level / 1000));
    expect(said('rolls-off', 70, nearly)).toMatchObject({ verdict: 'close' });
    expect(said('rolls-off', 80, nearly).verdict).toBe('close');
    expect(said('rolls-off', 90, nearly).verdict).toBe('breaks');
  });

  it('wants a colour temperature outside 200 K and outside its uncertainty', () => {
    const made = (value: number, u: number) =>
      benchWith({ id: 'white.cct', unit: 'K', levels: [[undefined, value, u]] });
    expect(direction('white.cct', 'cool', made(7100, 50))).toBe('holds');
    expect(direction('white.cct', 'warm', made(7100, 50))).toBe('breaks');
    expect(direction('white.cct', 'on-target', made(6550, 40))).toBe('holds');
    expect(direction('white.cct', 'cool', made(6800, 200))).not.toBe('holds');
  });
});

describe('fact', () => {
  const fact = (key: string, x: FactCheck['x'], more: Partial<FactCheck> = {}) =>
    judged({ kind: 'fact', key, op: '=', x, conditions: named(), ...more }).verdict;

  it('compares numbers, names and sets by inclusion, case folded', () => {
    expect(fact('hdmi.count', 4)).toBe('holds');
    expect(fact('hdmi.count', 3)).toBe('breaks');
    expect(fact('hdmi.count', 3, { op: '>=' })).toBe('holds');
    expect(fact('hdr.formats', 'hdr10')).toBe('holds');
    expect(fact('hdr.formats', ['HLG', 'HDR10'])).toBe('holds');
    expect(fact('hdr.formats', ['HDR10', 'Other'])).toBe('breaks');
    // "HDR10 only" names the whole list
    expect(fact('hdr.formats', ['HDR10'], { op: '=' })).toBe('breaks');
    expect(fact('hdr.formats', ['HDR10'], { op: 'includes' })).toBe('holds');
    expect(fact('hdr.formats', 'Other', { op: 'excludes' })).toBe('holds');
    expect(fact('panel', 'IPS')).toBe('holds');
    expect(fact('panel', 'VA')).toBe('breaks');
  });

  it('hears the maker only where the sentence does', () => {
    expect(fact('peak', 1000, { by: 'maker' })).toBe('holds');
    expect(fact('depth', 71, { by: 'maker' })).toBe('unproven');
  });

  it('counts ports of a version, and knows a version by its ports', () => {
    expect(fact('hdmi.count.2.1', 3)).toBe('holds');
    expect(fact('hdmi.version', '2.1')).toBe('holds');
    expect(fact('hdmi.version', '2.0')).toBe('holds');
  });

  it('answers for another size from that size’s facts alone', () => {
    expect(fact('price', 1299, { conditions: named({ variantInches: 65 }), unit: 'GBP' })).toBe('holds');
    expect(fact('hdmi.count', 4, { conditions: named({ variantInches: 65 }) })).toBe('unproven');
    expect(fact('hdmi.count', 4, { conditions: named({ variantInches: 75 }) })).toBe('unproven');
  });

  it('takes the number of a run before a statement called measured', () => {
    const content = { ...hearth.unit, facts: { lag: { value: 20, unit: 'ms', by: 'measured' } } };
    const lag = {
      row: 1,
      series: 'single',
      x: null,
      y: null,
      Y: null,
      quantity: 'lag',
      value: 14.2,
      unit: 'ms',
    } as const;
    const bench = benchOf([{ ...hearth, unit: content, runs: [run('sdr-lag', sdrRun, [lag])] }]);
    const of = (x: number) =>
      judged({ kind: 'fact', key: 'lag', op: '=', x, conditions: named() }, bench).verdict;
    expect([of(14.2), of(20)]).toEqual(['holds', 'breaks']);
  });
});

describe('observed and score', () => {
  const observed = (severity: readonly [number, number], conditions = {}) =>
    judged({ kind: 'observed', topic: 'blooming', severity, conditions: named(conditions) }).verdict;

  it('holds the worst that was seen under the named conditions', () => {
    expect(observed([0, 1])).toBe('holds');
    expect(observed([0, 0])).toBe('breaks');
    expect(observed([0, 1], { room: 'dark' })).toBe('holds');
    expect(observed([0, 1], { room: 'lit' })).toBe('unproven');
    expect(observed([0, 1], { angle: 45 })).toBe('unproven');
    expect(observed([0, 1], { signal: 'HDR10' })).toBe('unproven');
  });

  it('takes the score recorded with the article where there is no score sheet', () => {
    const score = (criterion: string, x: number | string | null, max?: number) =>
      judged({ kind: 'score', criterion, x, conditions: named(), ...(max ? { max } : {}) }).verdict;
    expect(score('total', 7.5, 10)).toBe('holds');
    expect(score('total', 8, 10)).toBe('breaks');
    expect(score('award', null)).toBe('holds');
    expect(score('award', 'Lantern')).toBe('breaks');
    expect(score('contrast', 8)).toBe('unproven');
  });
});
