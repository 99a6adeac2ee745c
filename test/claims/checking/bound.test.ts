import { describe, expect, it } from 'vitest';
import { benchWith, judged, normal, number, quantity } from '../../fixtures/checks.ts';
import reference from '../../reference/data/uncertainty.json' with { type: 'json' };

/** One scalar under (or over) a limit. */
function probabilityOf(value: number, u: number, op: '<=' | '>=', x: number) {
  return judged(
    { kind: 'bound', bounds: [{ operand: quantity('white'), op, x }] },
    benchWith({ id: 'white', unit: '', levels: [[undefined, value, u]] }),
  );
}

describe('certainty of a bound (JCGM 106)', () => {
  it.each(reference.jcgm106_upper_limit.rows)(
    'upper limit %o: the printed probability of conformity',
    (row) => {
      const { probability, verdict } = probabilityOf(row.y, row.u, '<=', row.TU);
      expect(probability).toBeCloseTo(row.pc, 2);
      const reported = row.y <= row.TU + 1e-9;
      const sure = reported ? row.pc >= 0.95 : row.pc <= 0.05;
      if (Math.abs(row.pc - 0.95) > 0.001 && Math.abs(row.pc - 0.05) > 0.001)
        expect(verdict).toBe(sure ? (reported ? 'holds' : 'breaks') : 'close');
    },
  );

  it.each(reference.jcgm106_lower_limit.rows)('lower limit %o', (row) => {
    expect(probabilityOf(row.y, row.u, '>=', row.TL).probability).toBeCloseTo(row.pc, 2);
  });

  it('takes joint draws over a series, never a product of single probabilities', () => {
    const u = 0.5;
    const levels = [10, 20, 30].map((axis) => [axis, 2.2, u] as const);
    const bench = benchWith({ id: 'grey.de2000', unit: 'ΔE2000', levels });
    const all = judged(
      { kind: 'bound', bounds: [{ operand: quantity('grey.de2000', { stat: 'all' }), op: '<=', x: 3 }] },
      bench,
    );
    // Independent noise here, so the joint probability is near the product, and well under a single level's.
    expect(all.probability).toBeCloseTo(normal(1.6) ** 3, 1);
    expect(all.verdict).toBe('close');
  });

  it('counts a number within 1e-9 of its limit as holding', () => {
    expect(probabilityOf(3 + 5e-10, 0, '<=', 3).verdict).not.toBe('breaks');
    expect(probabilityOf(3 + 2e-9, 0, '<=', 3).verdict).toBe('breaks');
  });

  it('judges single values as reported only', () => {
    const bench = benchWith({ id: 'lag', unit: 'ms', levels: [[undefined, 14.2, null]] });
    const check = { kind: 'bound', bounds: [{ operand: quantity('lag'), op: '<', x: 15 }] } as const;
    expect(judged(check, bench)).toMatchObject({ verdict: 'holds', probability: null });
  });

  it('lets the stated exceptions stand outside', () => {
    const bench = benchWith({
      id: 'grey.de2000',
      unit: 'ΔE2000',
      levels: [
        [10, 1, 0.01],
        [20, 9, 0.01],
        [30, 2, 0.01],
      ],
    });
    const bound = (exceptions?: number) =>
      judged(
        {
          kind: 'bound',
          bounds: [
            {
              operand: quantity('grey.de2000', { stat: 'all', ...(exceptions ? { exceptions } : {}) }),
              op: '<',
              x: 3,
            },
          ],
        },
        bench,
      ).verdict;
    expect([bound(), bound(1)]).toEqual(['breaks', 'holds']);
  });

  it('leaves out levels that do not count, and says nothing of a level that was not measured', () => {
    const bench = benchWith({
      id: 'grey.de2000',
      unit: 'ΔE2000',
      levels: [
        [0, 9, 0.01, false],
        [50, 1, 0.01],
      ],
    });
    const at = (level: number) =>
      judged(
        {
          kind: 'bound',
          bounds: [{ operand: quantity('grey.de2000', { stat: 'at', at: level }), op: '<', x: 3 }],
        },
        bench,
      );
    const all = {
      kind: 'bound',
      bounds: [{ operand: quantity('grey.de2000', { stat: 'all' }), op: '<', x: 3 }],
    } as const;
    expect(judged(all, bench).verdict).toBe('holds');
    expect(at(60)).toMatchObject({ verdict: 'unproven' });
    expect(at(60).reason).toContain('nearest: 50');
  });

  it('is close where the other definition of a colour difference says otherwise', () => {
    const bench = benchWith(
      { id: 'grey.de2000', unit: 'ΔE2000', levels: [[50, 1, 0.01]] },
      { id: 'grey.de2000.total', unit: 'ΔE2000', levels: [[50, 4, 0.01]] },
    );
    const operand = quantity('grey.de2000', { stat: 'all' }, {}, ['grey.de2000.total']);
    const named = quantity('grey.de2000', { stat: 'all' });
    const bound = { op: '<', x: 3 } as const;
    expect(judged({ kind: 'bound', bounds: [{ operand, ...bound }] }, bench).verdict).toBe('close');
    expect(judged({ kind: 'bound', bounds: [{ operand: named, ...bound }] }, bench).verdict).toBe('holds');
    const value = judged(
      { kind: 'value', operand: { ...operand, selector: { stat: 'max' } }, stated: number(1, 0.05) },
      bench,
    );
    expect(value.verdict).toBe('holds');
    expect(value.reason).toContain('ΔE2000 with luminance: 4.00');
  });

  it('shows work in progress while draws are pending, never holds', () => {
    const bench = benchWith({ id: 'white', unit: '', levels: [[undefined, 1, 0.01]] });
    const check = { kind: 'bound', bounds: [{ operand: quantity('white'), op: '<', x: 9 }] } as const;
    expect(judged(check, { ...bench, draws: () => 'pending' })).toMatchObject({
      verdict: 'working',
      probability: null,
    });
  });
});
