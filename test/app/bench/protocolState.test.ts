import { describe, expect, it } from 'vitest';
import { mustBeReadFirst, needsFlashing } from '../../../app/bench/protocol/cautions.ts';
import { coldRuns, currentFirmware, protocolState } from '../../../app/bench/protocol/protocolState.ts';
import type { RunEvidence, UnitEvidence } from '../../../shared/contract/evidence.ts';

function run(id: string, taken: string, firmware: string, warm: number | null = 45): RunEvidence {
  return {
    id,
    digest: id,
    conditions: {
      taken,
      firmware,
      mode: 'Calm',
      stage: 'as-delivered',
      signal: 'SDR',
      target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
      warm_up_min: warm,
    },
    readings: [
      { row: 1, series: 'greyscale', x: 0.31, y: 0.33, Y: 100, stimulus: 100 },
      { row: 2, series: 'single', x: null, y: null, Y: null, quantity: 'lag', value: 14.2, unit: 'ms' },
    ],
  };
}

const unitOf = (runs: readonly RunEvidence[]): UnitEvidence => ({
  id: 'orrinvale-hearth-55',
  unit: { maker: 'Orrinvale', model: 'Hearth 55', firmware: '3.1.7' },
  runs,
  observations: [],
});
const step = (id: string, foundIn: string[], more: object = {}) => ({
  id,
  title: id,
  cautions: [],
  foundIn,
  done: foundIn.length > 0,
  why: 'Because.',
  ...more,
});
const protocol = (...steps: ReturnType<typeof step>[]) => ({ warmUpMinutes: 45, cautions: [], steps });

describe('the protocol’s steps', () => {
  it('are done when a run of the present firmware has the readings', () => {
    const unit = unitOf([run('old', '2026-09-15', '3.1.7'), run('new', '2026-09-30', '3.2.0')]);
    const [grey] = protocolState(
      unit,
      protocol(step('grey', ['run/old', 'run/new'], { series: 'greyscale' })),
    );
    expect(grey).toMatchObject({ state: 'done', run: 'new', sentence: '1 reading' });
  });

  it('are out of date when only older firmware was measured', () => {
    const unit = unitOf([run('old', '2026-09-15', '3.1.7'), run('new', '2026-09-30', '3.2.0')]);
    const [grey] = protocolState(unit, protocol(step('grey', ['run/old'], { series: 'greyscale' })));
    expect(grey).toMatchObject({
      state: 'out of date',
      run: 'old',
      sentence: 'of firmware 3.1.7; the set now runs 3.2.0',
    });
  });

  it('are missing, with the reason, when nothing was found', () => {
    const [seen, grey] = protocolState(
      unitOf([]),
      protocol(step('banding', [], { topic: 'banding' }), step('grey', [], { series: 'greyscale' })),
    );
    expect([seen?.state, seen?.sentence, grey?.state]).toEqual(['missing', 'Because.', 'missing']);
  });

  it('follow the newest run’s firmware, and the unit’s while there is no run', () => {
    expect(currentFirmware(unitOf([]))).toBe('3.1.7');
    expect(
      currentFirmware(unitOf([run('new', '2026-09-30', '3.2.0'), run('old', '2026-09-15', '3.1.7')])),
    ).toBe('3.2.0');
  });

  it('count a run without a noted warm-up as cold', () => {
    const runs = [
      run('a', '2026-09-15', '1', 45),
      run('b', '2026-09-15', '1', 10),
      run('c', '2026-09-15', '1', null),
    ];
    expect(coldRuns(unitOf(runs), 45).map(({ id }) => id)).toEqual(['b', 'c']);
  });
});

describe('cautions on flashing', () => {
  it('must be read before such a step is noted', () => {
    expect(mustBeReadFirst(['Flashing patterns can cause seizures.'])).toBe(true);
    expect(mustBeReadFirst(['A static pattern can leave an image.'])).toBe(false);
  });

  it('stand in the form for topics that need flashing patterns', () => {
    expect(['flicker', 'Black frame insertion', 'banding'].map(needsFlashing)).toEqual([true, true, false]);
  });
});
