import { describe, expect, it } from 'vitest';
import { judged, number, quantity } from '../../fixtures/checks.ts';
import {
  benchOf,
  contrast,
  hdrRun,
  hearth,
  hearthWith,
  run,
  sdrRun,
  windows,
} from '../../fixtures/hearth/index.ts';

const peakAt10 = quantity('peak', { stat: 'at', at: 10 });

describe('which run a sentence means', () => {
  const averageUnder = (x: number, conditions = {}) =>
    judged({
      kind: 'bound',
      bounds: [{ operand: quantity('grey.de2000', { stat: 'average' }, conditions), op: '<', x }],
    });

  it('the article’s conditions first, and a named stage against them', () => {
    expect(averageUnder(5).conditions.run).toBe('sdr-grey');
    expect(averageUnder(5, { stage: 'adjusted' }).conditions.run).toBe('sdr-grey-adjusted');
  });

  it('a carried or named condition without a run is unproven; nothing falls back', () => {
    expect(averageUnder(5, { mode: 'Vivid' }).verdict).toBe('unproven');
    expect(averageUnder(5, { signal: 'HLG' }).verdict).toBe('unproven');
    expect(averageUnder(5, { unmatched: 'in Vivid mode' }).reason).toContain('in Vivid mode');
  });

  it('what it was before is that of the run as delivered beside the adjusted one, or of the only one taken earlier', () => {
    const former = (conditions: object, bench = benchOf([hearth])) => {
      const {
        verdict,
        reason,
        conditions: used,
      } = judged(
        {
          kind: 'value',
          operand: quantity('contrast.native', { stat: 'scalar' }, { ...conditions, before: true }),
          stated: number(1000, 25),
        },
        bench,
      );
      return [verdict, used.run ?? reason];
    };
    const taken = (id: string, day: string, stage: 'as-delivered' | 'adjusted', white: number) =>
      run(id, { ...sdrRun, stage, taken: `2026-09-${day}`, firmware: id }, contrast(white, 0.1));
    const [old, late, adjusted] = [
      taken('1.0', '02', 'as-delivered', 100),
      taken('1.2', '20', 'as-delivered', 120),
      taken('1.1', '10', 'adjusted', 90),
    ];
    const only = (...runs: (typeof old)[]) => benchOf([{ ...hearth, runs }]);
    expect(former({ stage: 'adjusted' }, only(old, adjusted))).toEqual(['holds', '1.0']);
    expect(former({ firmware: '1.2' }, only(old, late))).toEqual(['holds', '1.0']);
    expect(former({ firmware: '1.0' }, only(old, late))[1]).toContain('nothing says what it was before');
    expect(former({ stage: 'adjusted' }, only(old, late, adjusted))[1]).toContain('2 runs');
    expect(former({}, only(old))[0]).toBe('unproven');
  });

  it('two runs that fit are a question, whatever their numbers', () => {
    const bench = benchOf([hearthWith([run('hdr-window-b', hdrRun, windows({ 10: 742 }))])]);
    const judgement = judged({ kind: 'value', operand: peakAt10, stated: number(742, 0.5) }, bench);
    expect(judgement.verdict).toBe('unproven');
    expect(judgement.reason).toContain('2 runs');
  });

  it('a superseded run is out of the question', () => {
    const bench = benchOf([
      hearthWith([run('hdr-window-b', { ...hdrRun, supersedes: 'hdr-window' }, windows({ 10: 800 }))]),
    ]);
    const judgement = judged({ kind: 'value', operand: peakAt10, stated: number(800, 0.5) }, bench);
    expect(judgement).toMatchObject({ verdict: 'holds', conditions: { run: 'hdr-window-b' } });
  });

  it('peak luminance means HDR even where an SDR run has it', () => {
    const bench = benchOf([hearthWith([run('sdr-window', sdrRun, windows({ 10: 300 }))])]);
    expect(judged({ kind: 'value', operand: peakAt10, stated: number(742, 0.5) }, bench).verdict).toBe(
      'holds',
    );
  });

  it('where SDR and HDR both have it and differ, a person is asked', () => {
    const bench = benchOf([
      hearthWith([run('hdr-contrast', { ...hdrRun, dimming: 'off' }, contrast(400, 0.4))]),
    ]);
    const check = {
      kind: 'bound',
      bounds: [{ operand: quantity('contrast.native'), op: '>', x: 1500 }],
    } as const;
    const judgement = judged(check, bench);
    expect(judgement.verdict).toBe('unproven');
    expect(judgement.asks).toHaveLength(2);
    expect(judged({ ...check, bounds: [{ ...check.bounds[0], x: 500 }] }, bench).verdict).toBe('holds');
  });

  it('measurements never transfer to another size', () => {
    expect(averageUnder(5, { variantInches: 65 }).verdict).toBe('unproven');
    expect(averageUnder(5, { variantInches: 55 }).verdict).toBe('holds');
  });
});
