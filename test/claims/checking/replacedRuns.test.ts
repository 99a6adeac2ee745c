import { describe, expect, it } from 'vitest';
import { judged, number, quantity } from '../../fixtures/checks.ts';
import { benchOf, contrast, hearth, run, sdrRun } from '../../fixtures/hearth/index.ts';

const old = run(
  'old',
  { ...sdrRun, stage: 'as-delivered', taken: '2026-09-02', firmware: '3.1.7' },
  contrast(100, 0.1),
);
const late = run(
  'late',
  { ...sdrRun, stage: 'as-delivered', taken: '2026-09-20', firmware: '3.2.0', supersedes: 'old' },
  contrast(120, 0.1),
);

/** What a contrast of 1,000:1 is worth under these conditions, and on which run. */
function contrastOf1000(conditions: object, runs = [old, late]) {
  const operand = quantity('contrast.native', { stat: 'scalar' }, conditions);
  const judgement = judged(
    { kind: 'value', operand, stated: number(1000, 25) },
    benchOf([{ ...hearth, runs }]),
  );
  return [judgement.verdict, judgement.conditions.run ?? judgement.reason];
}

describe('a run that a later one replaces', () => {
  it('is meant by no words but those that name its firmware or the time before the update', () => {
    expect(contrastOf1000({})).toEqual(['breaks', 'late']);
    expect(contrastOf1000({ firmware: '3.1' })).toEqual(['holds', 'old']);
    expect(contrastOf1000({ firmware: '3.1.7' })).toEqual(['holds', 'old']);
    expect(contrastOf1000({ firmware: '3.2' })).toEqual(['breaks', 'late']);
    expect(contrastOf1000({ before: 'update' })).toEqual(['holds', 'old']);
  });

  it('is not found by the beginning of a number alone, nor by an update that it does not know', () => {
    expect(contrastOf1000({ firmware: '3.1.70' })[0]).toBe('unproven');
    expect(contrastOf1000({ firmware: '3' })).toEqual(['breaks', 'late']);
    const same = { ...late, conditions: { ...late.conditions, firmware: '3.1.7' } };
    expect(contrastOf1000({ before: 'update' }, [old, same])[0]).toBe('unproven');
    expect(contrastOf1000({ firmware: '3.1' }, [old, same])).toEqual(['breaks', 'late']);
    expect(contrastOf1000({ before: 'update' }, [late])[1]).toContain('nothing says what it was before');
  });
});
